package io.github.formulationmath.reckoning;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Operation.Arithmetic;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Powers of mass, volume, amount of substance, money and temperature, and the unit that a term is printed in. */
class DimensionTest {

    private static final Dimension ODD = new Dimension(1, 2, 3, 4, 5);

    private static Step step(String letter, Kind kind) {
        return Step.given(Symbol.of(letter, "line-mass", kind), Subject.of("", ""), Ratio.of(4), Source.user());
    }

    private static String unit(Operation operation, Term... inputs) {
        return KindOf.measure(Term.Applied.of(operation, List.of(inputs)), UnitChoice.canonical())
                .text();
    }

    @Test
    void powers_add_and_subtract_and_a_root_halves_them() {
        assertThat(ODD.times(new Dimension(10, 20, 30, 40, 50))).isEqualTo(new Dimension(11, 22, 33, 44, 55));
        assertThat(ODD.dividedBy(new Dimension(10, 20, 30, 40, 50))).isEqualTo(new Dimension(-9, -18, -27, -36, -45));
        assertThat(new Dimension(2, 4, 6, 8, 10).root()).isEqualTo(ODD);
    }

    @Test
    void a_term_is_printed_in_the_unit_its_operations_lead_to() {
        Step mass = step("m", Kind.MASS);
        Step volume = step("V", Kind.VOLUME);
        Step density = step("ρ", Kind.DENSITY);
        Step share = step("w", Kind.SHARE);
        Step money = step("p", Kind.MONEY);
        Step number = step("n", Kind.NUMBER);
        assertThat(unit(Arithmetic.PRODUCT, share, mass)).isEqualTo("g");
        assertThat(unit(Arithmetic.PRODUCT, density, volume)).isEqualTo("g");
        assertThat(unit(Arithmetic.QUOTIENT, mass, density)).isEqualTo("mL");
        assertThat(unit(Arithmetic.QUOTIENT, mass, mass)).isEmpty();
        assertThat(unit(Arithmetic.PRODUCT, mass, mass)).isEqualTo("g²");
        assertThat(unit(Arithmetic.SUM, new Term.Literal(Ratio.ONE), share)).isEqualTo("%");
        assertThat(unit(Arithmetic.PRODUCT, share, number)).isEqualTo("%");
        assertThat(unit(Arithmetic.PRODUCT, number, share)).isEqualTo("%");
        assertThat(unit(Arithmetic.PRODUCT, number, number)).isEmpty();
        assertThat(unit(Arithmetic.QUOTIENT, share, number)).isEqualTo("%");
        assertThat(unit(Arithmetic.QUOTIENT, share, share)).isEmpty();
        assertThat(unit(Arithmetic.QUOTIENT, number, share)).isEmpty();
        assertThat(unit(Operation.Root.SQUARE_ROOT, Term.Applied.of(Arithmetic.PRODUCT, List.of(mass, mass))))
                .isEqualTo("g");
        assertThat(unit(Operation.Root.SQUARE_ROOT, share)).isEqualTo("%");
        assertThat(unit(Operation.Power.TEN_TO, share)).isEmpty();
        assertThat(unit(Arithmetic.QUOTIENT, money, mass))
                .isEqualTo(UnitChoice.canonical().of(Kind.MONEY_PER_MASS).text());
        assertThat(unit(Arithmetic.PRODUCT, mass, volume)).isEqualTo("g·mL");
    }
}
