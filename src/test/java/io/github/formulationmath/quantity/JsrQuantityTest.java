package io.github.formulationmath.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.number.Ratio;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;
import tech.units.indriya.function.RationalNumber;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/** The face to JSR 385, with its reference implementation on the other side. */
class JsrQuantityTest {

    private static final Amount<Mass> THIRD = Amount.mass("1/3 g");

    @Test
    void quantities_of_every_number_type_come_in_exactly() {
        List<Number> halves = List.of(0.5, 0.5f, new BigDecimal("0.50"), RationalNumber.of(1, 2));
        for (Number half : halves) {
            assertThat(Amount.mass("1 g").multiply(half)).isEqualTo(Amount.mass("0.5 g"));
        }
        List<Number> twos =
                List.of((byte) 2, (short) 2, 2, 2L, BigInteger.TWO, new AtomicInteger(2), new AtomicLong(2));
        for (Number two : twos) {
            assertThat(Amount.mass("1 g").divide(two)).isEqualTo(Amount.mass("0.5 g"));
        }
        assertThat(Amount.from(Quantities.getQuantity(0.1f, Units.GRAM))).isEqualTo(Amount.mass("0.1 g"));
        assertThat(Amount.from(Quantities.getQuantity(0.1, Units.GRAM))).isEqualTo(Amount.mass("0.1 g"));
        assertThat(Amount.from(THIRD)).isSameAs(THIRD);
    }

    @Test
    void nonsense_numbers_are_refused() {
        assertThatThrownBy(() -> THIRD.multiply(Double.NaN)).hasMessageContaining("NaN");
        assertThatThrownBy(() -> THIRD.divide(Float.POSITIVE_INFINITY)).hasMessageContaining("Infinity");
        assertThatThrownBy(() -> THIRD.divide(0)).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> THIRD.multiply(new BigDecimal("1e999999999")))
                .isInstanceOf(IllegalArgumentException.class);
        Number own = new java.util.concurrent.atomic.DoubleAdder();
        assertThatThrownBy(() -> THIRD.multiply(own))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("DoubleAdder");
    }

    @Test
    void the_value_goes_out_in_the_plainest_exact_type() {
        assertThat(Amount.mass("5 g").getValue()).isEqualTo(5L);
        assertThat(Amount.mass("1e30 g").getValue()).isEqualTo(BigInteger.TEN.pow(30));
        assertThat(Amount.mass("12.50 g").getValue()).isEqualTo(new BigDecimal("12.5"));
        assertThat(THIRD.getValue()).isEqualTo(RationalNumber.of(1, 3));
        assertThat(THIRD.getScale()).isEqualTo(Quantity.Scale.ABSOLUTE);
    }

    @Test
    void sums_with_foreign_quantities_are_exact_both_ways() {
        Quantity<Mass> foreign = Quantities.getQuantity(2, Units.KILOGRAM);
        assertThat(THIRD.add(foreign)).hasToString("6001/3 g");
        assertThat(THIRD.subtract(foreign)).hasToString("-5999/3 g");
        assertThat(Amount.mass("2000 g").isEquivalentTo(foreign)).isTrue();
        assertThat(Amount.from(foreign.add(THIRD)).to(FormulationUnits.GRAM)).isEqualTo(THIRD.add(foreign));
        assertThat(THIRD.negate()).hasToString("-1/3 g");
    }

    @Test
    void percent_of_a_mass_is_a_mass() {
        // 200 g x 25 % is "5000 g·%" elsewhere.
        Amount<?> part = Amount.of(25, FormulationUnits.PERCENT).multiply(Amount.mass("200 g"));
        assertThat(part.asType(Mass.class).to(FormulationUnits.GRAM)).isEqualTo(Amount.mass("50 g"));
        assertThatThrownBy(() -> part.asType(Length.class)).isInstanceOf(ClassCastException.class);
    }

    @Test
    void a_quotient_of_masses_is_a_pure_number() {
        assertThat(Amount.mass("1 kg").divide(Amount.mass("3 g"))).hasToString("1000/3");
        assertThat(Amount.mass("1 g").divide(Amount.mass("4 g"))).isEqualTo(Amount.of("0.25", FormulationUnits.ONE));
        assertThat(Amount.mass("2 g").multiply(Amount.mass("2 g").inverse())).hasToString("1");
        assertThat(Amount.of(92, FormulationUnits.GRAM)
                        .divide(Amount.volume("100 mL"))
                        .multiply(Amount.volume("50 mL"))
                        .asType(Mass.class))
                .isEqualByComparingTo(Amount.mass("46 g"));
        assertThatThrownBy(() -> Amount.mass("0 g").inverse()).isInstanceOf(ArithmeticException.class);
    }

    @Test
    void the_system_unit_is_reached_exactly() {
        assertThat(Amount.mass("1 oz").toSystemUnit())
                .isEqualTo(Amount.of("0.028349523125", FormulationUnits.KILOGRAM));
        assertThat(Amount.volume("1 L").to(Units.CUBIC_METRE).exactValue()).isEqualTo(Ratio.of(1, 1000));
    }
}
