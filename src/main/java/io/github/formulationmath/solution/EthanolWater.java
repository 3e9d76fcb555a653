package io.github.formulationmath.solution;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.quantity.VolumeFraction;
import java.util.Objects;
import javax.measure.quantity.Temperature;

/**
 * Mixtures of ethanol and water: density by the formula of the law, and the strength by volume that goes with one by mass.
 *
 * <p>The density ρ(p, t) is a polynomial in the mass fraction p of ethanol and the temperature t, whose coefficients are decimals,
 * so that it is evaluated exactly. The strength by volume at a reference temperature is {@code q = p · ρ(p, t₀) / ρ(1, t₀)}: the
 * volume of the ethanol by itself over that of the mixture. The two shrink when they are mixed, so that the volumes poured do not add.
 *
 * <p>"% vol" is meant at 20 °C in the European Union and at 60 °F in the United States; the two differ by up to a third of a
 * per cent in mass, and have to be chosen.
 *
 * <p>Example: 50 % vol at 20 °C is 42.4257 % by mass, of 930.142 kg/m³.
 *
 * <p>The formula keeps within 0.005 kg/m³ of the tables it was made for. It is of ethanol and water alone: denaturants and
 * perfume change the density.
 *
 * <p>Source: Council Directive 76/766/EEC, Annex; OIML R 22 (1973).
 */
public final class EthanolWater {

    /** Where "per cent by volume" is measured. */
    public enum Reference {
        /** 20 °C, the European Union and OIML. */
        AT_20_CELSIUS(Ratio.of(20)),
        /** 60 °F, 140/9 °C, the United States. */
        AT_60_FAHRENHEIT(Ratio.of(140, 9));

        private final Ratio celsius;

        Reference(Ratio celsius) {
            this.celsius = celsius;
        }

        Ratio celsius() {
            return celsius;
        }
    }

    private static final Ratio COLDEST = Ratio.of(-20);
    private static final Ratio WARMEST = Ratio.of(40);
    private static final Ratio THOUSAND = Ratio.of(1000);

    /** An interval this narrow names a strength to twelve decimals. */
    private static final Ratio NARROW = Ratio.parse("1e-12");

    private EthanolWater() {}

    /**
     * The density of a mixture.
     *
     * @param ethanol the mass fraction of ethanol
     * @param temperature between −20 °C and 40 °C
     * @return the exact value of the formula, at that temperature
     * @throws IllegalArgumentException if the temperature lies outside
     */
    public static Density density(MassFraction ethanol, Amount<Temperature> temperature) {
        Objects.requireNonNull(ethanol, "ethanol");
        Ratio celsius = Objects.requireNonNull(temperature, "temperature").in(FormulationUnits.CELSIUS);
        if (celsius.compareTo(COLDEST) < 0 || celsius.compareTo(WARMEST) > 0) {
            throw new IllegalArgumentException("temperature is " + Excerpt.of(temperature)
                    + ": the formula of the law holds from -20 °C to 40 °C; bring the alcohol into that range");
        }
        return Density.ofGramsPerMillilitre(
                        kilogramsPerCubicMetre(ethanol.fraction(), celsius).dividedBy(THOUSAND))
                .at(temperature);
    }

    static Ratio kilogramsPerCubicMetre(Ratio p, Ratio celsius) {
        return EthanolWaterFormula.BUNDLED.density(p, celsius);
    }

    /**
     * The strength by volume of a mixture.
     *
     * @param ethanol the mass fraction of ethanol
     * @param reference where "per cent by volume" is measured
     * @return the exact value of the formula
     */
    public static VolumeFraction byVolume(MassFraction ethanol, Reference reference) {
        return VolumeFraction.of(
                volume(Objects.requireNonNull(ethanol, "ethanol").fraction(), reference));
    }

    private static Ratio volume(Ratio p, Reference reference) {
        Ratio t = Objects.requireNonNull(reference, "reference").celsius();
        return p.times(kilogramsPerCubicMetre(p, t)).dividedBy(kilogramsPerCubicMetre(Ratio.ONE, t));
    }

    /**
     * The strength by mass of a mixture given by volume. The strength by volume rises with that by mass, so that halving the
     * interval encloses the exact answer: at the lower end the formula gives no more than was asked for, at the upper end no less.
     *
     * @param strength the strength by volume
     * @param reference where "per cent by volume" is measured
     * @return both ends, at most 10⁻¹² apart
     */
    public static Interval<MassFraction> byMass(VolumeFraction strength, Reference reference) {
        Ratio wanted = Objects.requireNonNull(strength, "strength").fraction();
        Ratio low = Ratio.ZERO;
        Ratio high = Ratio.ONE;
        while (high.minus(low).compareTo(NARROW) > 0) {
            Ratio middle = low.plus(high).dividedBy(2);
            int side = volume(middle, reference).compareTo(wanted);
            low = side <= 0 ? middle : low;
            high = side >= 0 ? middle : high;
        }
        return Interval.of(MassFraction.of(low), MassFraction.of(high));
    }
}
