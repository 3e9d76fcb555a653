package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.quantity.FormulationUnits;
import java.util.Objects;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;

/**
 * The density of moist air, which carries part of everything that is weighed in it.
 *
 * <p>Worked out in binary floating point: the formulas are fits with exponentials, good to a few parts in 100 000 at best,
 * and only the range of the result matters to {@link AirBuoyancy}.
 *
 * <p>Example: 1.1993 kg/m³, or 0.0011993 g/mL, at 20 °C, 1013.25 hPa and 50 % humidity.
 */
public final class AirDensity {

    private static final double GAS_CONSTANT = 8.314472;
    private static final double DRY_AIR = 0.02896546;
    private static final double WATER = 0.01801528;
    private static final double CARBON_DIOXIDE = 0.0004;

    private AirDensity() {}

    /**
     * The formula of the international committee for weights and measures, with a carbon dioxide content of 0.0004.
     *
     * <p>Source: A. Picard, R. S. Davis, M. Gläser, K. Fujii, Revised formula for the density of moist air (CIPM-2007),
     * Metrologia 45 (2008) 149-155; the coefficients b0, b1, c0, c1, a1, a2 and d of the compressibility from memory.
     *
     * @param temperature the temperature, from 15 °C to 27 °C
     * @param pressure the pressure, from 600 hPa to 1100 hPa
     * @param relativeHumidity the pressure of the vapour against that of saturation, from 0 to 1
     * @return the density
     * @throws IllegalArgumentException if an argument is out of the range of the formula
     */
    public static Density cipm2007(Amount<Temperature> temperature, Amount<Pressure> pressure, Ratio relativeHumidity) {
        double celsius = celsius(temperature);
        double pascals = pascals(pressure, 60_000);
        double humidity = humidity(relativeHumidity, Ratio.ONE);
        double kelvin = celsius + 273.15;
        double vapour = humidity * enhancement(pascals, celsius) * saturationPressure(kelvin) / pascals;
        double compressibility = compressibility(celsius, kelvin, pascals, vapour);
        double dry = DRY_AIR + 0.012011 * (CARBON_DIOXIDE - 0.0004);
        return density(pascals * dry / (compressibility * GAS_CONSTANT * kelvin) * (1 - vapour * (1 - WATER / dry)));
    }

    private static double saturationPressure(double kelvin) {
        return StrictMath.exp(
                1.2378847e-5 * kelvin * kelvin - 1.9121316e-2 * kelvin + 33.93711047 - 6343.1645 / kelvin);
    }

    private static double enhancement(double pascals, double celsius) {
        return 1.00062 + 3.14e-8 * pascals + 5.6e-7 * celsius * celsius;
    }

    private static double compressibility(double celsius, double kelvin, double pascals, double vapour) {
        double virial = 1.58123e-6
                - 2.9331e-8 * celsius
                + 1.1043e-10 * celsius * celsius
                + (5.707e-6 - 2.051e-8 * celsius) * vapour
                + (1.9898e-4 - 2.376e-6 * celsius) * vapour * vapour;
        double ratio = pascals / kelvin;
        return 1 - ratio * virial + ratio * ratio * (1.83e-11 - 0.765e-8 * vapour * vapour);
    }

    /**
     * The short formula for everyday use, good to 0.02 % between 15 °C and 27 °C.
     *
     * <p>Source: OIML R 111-1:2004, E.3, from memory.
     *
     * @param temperature the temperature, from 15 °C to 27 °C
     * @param pressure the pressure, from 900 hPa to 1100 hPa
     * @param relativeHumidity the pressure of the vapour against that of saturation, from 0 to 0.8
     * @return the density
     * @throws IllegalArgumentException if an argument is out of the range of the formula
     */
    public static Density simplified(
            Amount<Temperature> temperature, Amount<Pressure> pressure, Ratio relativeHumidity) {
        double celsius = celsius(temperature);
        double pascals = pascals(pressure, 90_000);
        double humidity = humidity(relativeHumidity, Ratio.of(4, 5));
        double vapour = 0.009 * humidity * 100 * StrictMath.exp(0.061 * celsius);
        return density((0.34848 * (pascals / 100) - vapour) / (273.15 + celsius));
    }

    /** From kg/m³. */
    private static Density density(double kilogramsPerCubicMetre) {
        return Density.ofGramsPerMillilitre(Ratio.from(kilogramsPerCubicMetre).dividedBy(1000));
    }

    private static double celsius(Amount<Temperature> temperature) {
        Ratio celsius = Objects.requireNonNull(temperature, "temperature").in(FormulationUnits.CELSIUS);
        return inRange("temperature", temperature, celsius, Bounds.closed(Ratio.of(15), Ratio.of(27)), " °C");
    }

    private static double pascals(Amount<Pressure> pressure, long least) {
        Ratio pascals = Objects.requireNonNull(pressure, "pressure").canonical();
        return inRange("pressure", pressure, pascals, Bounds.closed(Ratio.of(least), Ratio.of(110_000)), " Pa");
    }

    private static double humidity(Ratio relativeHumidity, Ratio most) {
        Objects.requireNonNull(relativeHumidity, "relativeHumidity");
        return inRange("relativeHumidity", relativeHumidity, relativeHumidity, Bounds.closed(Ratio.ZERO, most), "");
    }

    private static double inRange(String name, Object argument, Ratio value, Bounds range, String unit) {
        if (!range.contains(value)) {
            throw new IllegalArgumentException(
                    name + " is " + Excerpt.of(argument) + ": the formula holds in " + range + unit);
        }
        return value.doubleValue();
    }
}
