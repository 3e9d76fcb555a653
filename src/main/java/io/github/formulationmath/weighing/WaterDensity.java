package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Symbol;
import java.util.Objects;
import javax.measure.quantity.Temperature;

/**
 * The density of pure water, free of air, at 101.325 kPa, from 0 °C to 40 °C: {@code ρ = a5 · (1 − (t + a1)² · (t + a2) /
 * (a3 · (t + a4)))}. A rational formula, so its value is exact for an exact temperature; as a statement about water it
 * holds to about 0.001 kg/m³.
 *
 * <p>Example: 998.2067 kg/m³ at 20 °C, or 0.9982067 g/mL.
 *
 * <p>Source: M. Tanaka, G. Girard, R. Davis, A. Peuto, N. Bignell, Recommended table for the density of water between 0 °C
 * and 40 °C based on recent experimental reports, Metrologia 38 (2001) 301-309.
 *
 * <p>Immutable and thread-safe.
 *
 * @param temperature the temperature, from 0 °C to 40 °C
 */
public record WaterDensity(Amount<Temperature> temperature) implements Explained {

    private static final Symbol TEMPERATURE = Symbol.of("t", "water-temperature", Kind.NUMBER);
    private static final Symbol DENSITY = Symbol.of("ρ_w", "water-density", Kind.DENSITY);
    private static final Symbol LARGEST = Symbol.of("a_5", "largest-water-density", Kind.DENSITY);
    private static final Source TABLE = Source.published("Tanaka et al., Metrologia 38 (2001) 301-309", "");
    private static final Ratio WARMEST = Ratio.of(40);
    private static final Ratio A1 = Ratio.parse("-3.983035");
    private static final Ratio A2 = Ratio.parse("301.797");
    private static final Ratio A3 = Ratio.parse("522528.9");
    private static final Ratio A4 = Ratio.parse("69.34881");
    /** In g/mL. */
    private static final Ratio A5 = Ratio.parse("0.999974950");

    /**
     * Checks the temperature.
     *
     * @param temperature the temperature, from 0 °C to 40 °C
     * @throws IllegalArgumentException if the temperature is out of the range of the formula
     */
    public WaterDensity {
        Ratio celsius = Objects.requireNonNull(temperature, "temperature").in(FormulationUnits.CELSIUS);
        if (celsius.signum() < 0 || celsius.compareTo(WARMEST) > 0) {
            throw new IllegalArgumentException("temperature is " + Excerpt.of(temperature)
                    + ": the formula holds from 0 °C to 40 °C; for other temperatures give a density from a table");
        }
    }

    /**
     * The density of water at a temperature.
     *
     * @param temperature the temperature, from 0 °C to 40 °C
     * @return its density
     * @throws IllegalArgumentException if the temperature is out of the range of the formula
     */
    public static WaterDensity at(Amount<Temperature> temperature) {
        return new WaterDensity(temperature);
    }

    /**
     * The density with its temperature.
     *
     * @return the density
     */
    public Density density() {
        return Density.ofGramsPerMillilitre(in(Reckoning.plain())).at(temperature);
    }

    /** The working of the {@link #density() density}. */
    @Override
    public Origin origin() {
        return Origin.of(water -> Phrase.of("question.water-density"), in(Reckoning.plain()), this, WaterDensity::in);
    }

    private <V> V in(Reckoning<V> r) {
        V t = r.given(TEMPERATURE, temperature.in(FormulationUnits.CELSIUS), Source.user());
        V first = r.sum(t, r.literal(A1));
        V above = r.product(r.product(first, first), r.sum(t, r.literal(A2)));
        V below = r.product(r.literal(A3), r.sum(t, r.literal(A4)));
        V part = r.difference(r.literal(1), r.quotient(above, below));
        return r.named(DENSITY, r.product(r.given(LARGEST, A5, TABLE), part));
    }

    @Override
    public String toString() {
        return "water at " + temperature;
    }
}
