package io.github.formulationmath.chemistry;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** A factor lies between its bounds for all atomic masses that their printed uncertainties allow, whatever the formulas. */
class GravimetricFactorPropertiesTest {

    private static final List<String> ELEMENTS =
            List.of("C", "H", "O", "N", "Na", "K", "Ca", "Mg", "S", "Cl", "Zn", "Al");

    private static String formula(Random random) {
        StringBuilder formula = new StringBuilder("C" + (1 + random.nextInt(20)));
        ELEMENTS.stream()
                .skip(1)
                .filter(element -> random.nextInt(3) == 0)
                .forEach(element -> formula.append(element).append(1 + random.nextInt(12)));
        return formula.toString();
    }

    private static BigDecimal decimal(Ratio ratio) {
        return new BigDecimal(ratio.numerator()).divide(new BigDecimal(ratio.denominator()), new MathContext(40));
    }

    @Property(tries = 300)
    void a_factor_lies_between_its_bounds_for_all_atomic_masses(@ForAll Random random) {
        String whole = formula(random);
        String reference = formula(random);
        int units = 1 + random.nextInt(4);
        GravimetricFactor factor = GravimetricFactor.of(
                MolarMass.of(MolecularFormula.parse(whole)),
                MolarMass.of(MolecularFormula.parse(reference)),
                Ratio.of(units));
        Bounds bounds = factor.bounds();
        BigDecimal slip = new BigDecimal("1e-30");
        assertThat(AtomicEnds.factor(whole, reference, Integer.toString(units), random.nextLong()))
                .as("%s %s in %s", units, reference, whole)
                .isBetween(
                        decimal(bounds.lower().orElseThrow()).subtract(slip),
                        decimal(bounds.upper().orElseThrow()).add(slip));
        assertThat(bounds.contains(factor.factor())).isTrue();
    }

    /** By this no factor is off by a part in a hundred. */
    @Example
    void no_atomic_mass_is_uncertain_by_a_part_in_a_thousand() {
        AtomicEnds.masses()
                .forEach((element, atom) ->
                        assertThat(atom[1].movePointRight(3)).as(element).isLessThan(atom[0]));
    }
}
