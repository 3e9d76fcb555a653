package io.github.formulationmath.weighing;

/**
 * The density of moist air, which carries part of everything that is weighed in it.
 *
 * <p>Numbers go in and come out as {@code double}: the formulas are fits with exponentials, good to a few parts in 100 000
 * at best, and only the range of the result matters to {@link AirBuoyancy}.
 *
 * <p>Example: 1.1993 kg/m³ at 20 °C, 1013.25 hPa and 50 % humidity.
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
     * @param celsius the temperature in °C, from 15 to 27
     * @param hectopascals the pressure in hPa, from 600 to 1100
     * @param relativeHumidity the relative humidity as a plain fraction, from 0 to 1
     * @return the density in kg/m³
     * @throws IllegalArgumentException if a number is out of the range of the formula
     */
    public static double cipm2007(double celsius, double hectopascals, double relativeHumidity) {
        requireRange("celsius", celsius, 15, 27);
        requireRange("hectopascals", hectopascals, 600, 1100);
        requireRange("relativeHumidity", relativeHumidity, 0, 1);
        double kelvin = celsius + 273.15;
        double pascals = hectopascals * 100;
        double vapour = relativeHumidity * enhancement(pascals, celsius) * saturationPressure(kelvin) / pascals;
        double compressibility = compressibility(celsius, kelvin, pascals, vapour);
        double dry = DRY_AIR + 0.012011 * (CARBON_DIOXIDE - 0.0004);
        return pascals * dry / (compressibility * GAS_CONSTANT * kelvin) * (1 - vapour * (1 - WATER / dry));
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
     * @param celsius the temperature in °C, from 15 to 27
     * @param hectopascals the pressure in hPa, from 900 to 1100
     * @param relativeHumidity the relative humidity as a plain fraction, from 0 to 0.8
     * @return the density in kg/m³
     * @throws IllegalArgumentException if a number is out of the range of the formula
     */
    public static double simplified(double celsius, double hectopascals, double relativeHumidity) {
        requireRange("celsius", celsius, 15, 27);
        requireRange("hectopascals", hectopascals, 900, 1100);
        requireRange("relativeHumidity", relativeHumidity, 0, 0.8);
        double humidity = 0.009 * relativeHumidity * 100 * StrictMath.exp(0.061 * celsius);
        return (0.34848 * hectopascals - humidity) / (273.15 + celsius);
    }

    private static void requireRange(String name, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(
                    name + " is " + value + ": the formula holds from " + least + " to " + most);
        }
    }
}
