package io.github.formulationmath.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.number.Ratio;
import java.util.List;
import javax.measure.Unit;
import javax.measure.quantity.Mass;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Laws of amounts: units come and go without a trace, texts read back, the sum does not depend on the order. */
class AmountPropertiesTest {

    private static final List<Unit<Mass>> UNITS = List.of(
            FormulationUnits.KILOGRAM,
            FormulationUnits.GRAM,
            FormulationUnits.MICROGRAM,
            FormulationUnits.OUNCE,
            FormulationUnits.POUND,
            FormulationUnits.GRAIN,
            FormulationUnits.TROY_OUNCE);

    @Provide
    Arbitrary<Ratio> numbers() {
        return Combinators.combine(Arbitraries.longs(), Arbitraries.longs().greaterOrEqual(1))
                .as(Ratio::of);
    }

    @Provide
    Arbitrary<Amount<Mass>> masses() {
        return Combinators.combine(numbers(), Arbitraries.of(UNITS)).as((n, u) -> Amount.of(n, u));
    }

    @Provide
    Arbitrary<Unit<Mass>> units() {
        return Arbitraries.of(UNITS);
    }

    @Property
    void converting_there_and_back_changes_nothing(@ForAll("masses") Amount<Mass> a, @ForAll("units") Unit<Mass> unit) {
        assertThat(a.to(unit).to(a.getUnit())).isEqualTo(a);
        assertThat(a.to(unit)).isEqualByComparingTo(a);
        assertThat(a.to(unit).isEquivalentTo(a)).isTrue();
    }

    @Property
    void sums_do_not_depend_on_the_order(
            @ForAll("masses") Amount<Mass> a, @ForAll("masses") Amount<Mass> b, @ForAll("masses") Amount<Mass> c) {
        assertThat(a.plus(b)).isEqualByComparingTo(b.plus(a));
        assertThat(a.plus(b).plus(c)).isEqualTo(a.plus(b.plus(c)));
        assertThat(a.plus(b).minus(b)).isEqualTo(a);
        assertThat(Integer.signum(a.compareTo(b))).isEqualTo(a.minus(b).signum());
    }

    @Property
    void the_text_reads_back(@ForAll("masses") Amount<Mass> a) {
        assertThat(Amount.mass(a.toString())).isEqualTo(a);
    }

    @Property
    void scaling_is_linear(
            @ForAll("masses") Amount<Mass> a, @ForAll("masses") Amount<Mass> b, @ForAll("numbers") Ratio factor) {
        assertThat(a.plus(b).times(factor)).isEqualTo(a.times(factor).plus(b.times(factor)));
        if (!a.isZero()) {
            assertThat(a.times(factor).ratioTo(a)).isEqualTo(factor);
        }
    }

    @Property
    void a_density_leads_there_and_back(@ForAll("masses") Amount<Mass> a, @ForAll("numbers") Ratio number) {
        Density density = Density.ofGramsPerMillilitre(number.abs().plus(Ratio.ONE));
        assertThat(density.massOf(density.volumeOf(a))).isEqualByComparingTo(a);
    }
}
