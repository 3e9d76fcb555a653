package io.github.formulationmath.quantity;

import static javax.measure.MetricPrefix.CENTI;
import static javax.measure.MetricPrefix.DECI;
import static javax.measure.MetricPrefix.MICRO;
import static javax.measure.MetricPrefix.MILLI;

import io.github.formulationmath.number.Ratio;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.function.AddConverter;
import tech.units.indriya.function.MultiplyConverter;
import tech.units.indriya.function.RationalNumber;
import tech.units.indriya.unit.TransformedUnit;
import tech.units.indriya.unit.Units;

/**
 * The units of the bench, each with its exact factor.
 *
 * <p>Three spoons and three cups carry one name in kitchens and differ by up to 6 %, two fluid ounces by 4 %: each is a
 * unit of its own here, and none is called plainly "cup" or "fluid ounce".
 *
 * <p>Example: {@code factorOf(OUNCE)} is 28.349523125, the grams in an avoirdupois ounce.
 *
 * <p>Sources. SI units and prefixes: BIPM, SI Brochure, 9th edition, 2019. Customary units: NIST Handbook 44, Appendix
 * C, General Tables of Units of Measurement; the pound is that of the international yard and pound agreement of 1959
 * (US Federal Register 24 FR 5348), the imperial gallon that of the United Kingdom's Units of Measurement Regulations
 * 1995 (SI 1995/1804): 4.54609 L.
 */
public final class FormulationUnits {

    private static final Map<KnownUnit, Unit<?>> UNITS = new EnumMap<>(KnownUnit.class);

    /** Kilogram, kg: 1000 g exactly; the SI base unit of mass. */
    public static final Unit<Mass> KILOGRAM = known(KnownUnit.KILOGRAM, Units.KILOGRAM);

    /** Gram, g: 1/1000 kg exactly; the unit to which {@link #factorOf} leads for mass. */
    public static final Unit<Mass> GRAM = known(KnownUnit.GRAM, Units.GRAM);

    /** Milligram, mg: 0.001 g exactly. */
    public static final Unit<Mass> MILLIGRAM = known(KnownUnit.MILLIGRAM, MILLI(GRAM));

    /** Microgram, µg: 0.000001 g exactly. */
    public static final Unit<Mass> MICROGRAM = known(KnownUnit.MICROGRAM, MICRO(GRAM));

    /** Avoirdupois ounce, oz: 28.349523125 g exactly, one sixteenth of the {@link #POUND}. */
    public static final Unit<Mass> OUNCE = mass(KnownUnit.OUNCE, "Ounce");

    /** Avoirdupois pound, lb: 453.59237 g exactly (agreement of 1959). */
    public static final Unit<Mass> POUND = mass(KnownUnit.POUND, "Pound");

    /**
     * Grain, grain: 0.06479891 g exactly, 1/7000 of the {@link #POUND}. Written out, since "gr" is what many people write
     * for the gram.
     */
    public static final Unit<Mass> GRAIN = mass(KnownUnit.GRAIN, "Grain");

    /** Troy ounce, oz t: 31.1034768 g exactly, 480 {@linkplain #GRAIN grains}. */
    public static final Unit<Mass> TROY_OUNCE = mass(KnownUnit.TROY_OUNCE, "Troy ounce");

    /** Litre, L: 1000 mL exactly, one cubic decimetre. */
    public static final Unit<Volume> LITRE = known(KnownUnit.LITRE, Units.LITRE);

    /** Millilitre, mL: 1/1000 L exactly; the unit to which {@link #factorOf} leads for volume. */
    public static final Unit<Volume> MILLILITRE = known(KnownUnit.MILLILITRE, MILLI(LITRE));

    /** Centilitre, cL: 10 mL exactly. */
    public static final Unit<Volume> CENTILITRE = known(KnownUnit.CENTILITRE, CENTI(LITRE));

    /** Decilitre, dL: 100 mL exactly. */
    public static final Unit<Volume> DECILITRE = known(KnownUnit.DECILITRE, DECI(LITRE));

    /** Cubic centimetre, cm³: 1 mL exactly. */
    public static final Unit<Volume> CUBIC_CENTIMETRE =
            known(KnownUnit.CUBIC_CENTIMETRE, CENTI(Units.METRE).pow(3).asType(Volume.class));

    /** US fluid ounce, US fl oz: 29.5735295625 mL exactly, 1/128 of the gallon of 231 cubic inches. */
    public static final Unit<Volume> US_FLUID_OUNCE = volume(KnownUnit.US_FLUID_OUNCE, "US fluid ounce");

    /** Imperial fluid ounce, imp fl oz: 28.4130625 mL exactly, 1/160 of the imperial gallon of 4.54609 L. */
    public static final Unit<Volume> IMPERIAL_FLUID_OUNCE =
            volume(KnownUnit.IMPERIAL_FLUID_OUNCE, "Imperial fluid ounce");

    /** US customary cup, US cup: 236.5882365 mL exactly, 8 {@linkplain #US_FLUID_OUNCE US fluid ounces}. */
    public static final Unit<Volume> US_CUP = volume(KnownUnit.US_CUP, "US cup");

    /** US customary tablespoon, US tbsp: 14.78676478125 mL exactly, half a {@link #US_FLUID_OUNCE}. */
    public static final Unit<Volume> US_TABLESPOON = volume(KnownUnit.US_TABLESPOON, "US tablespoon");

    /** US customary teaspoon, US tsp: 4.92892159375 mL exactly, one sixth of a {@link #US_FLUID_OUNCE}. */
    public static final Unit<Volume> US_TEASPOON = volume(KnownUnit.US_TEASPOON, "US teaspoon");

    /** Metric cup: 250 mL exactly (common practice, no published source). */
    public static final Unit<Volume> METRIC_CUP = volume(KnownUnit.METRIC_CUP, "Metric cup");

    /** Metric tablespoon: 15 mL exactly (NIST SP 430 gives the same rounded size for household use). */
    public static final Unit<Volume> METRIC_TABLESPOON = volume(KnownUnit.METRIC_TABLESPOON, "Metric tablespoon");

    /** Metric teaspoon: 5 mL exactly (NIST SP 430 gives the same rounded size for household use). */
    public static final Unit<Volume> METRIC_TEASPOON = volume(KnownUnit.METRIC_TEASPOON, "Metric teaspoon");

    /** The number one, without a symbol; the unit to which {@link #factorOf} leads for pure numbers. */
    public static final Unit<Dimensionless> ONE = known(KnownUnit.ONE, AbstractUnit.ONE);

    /** Per cent, %: 1/100 exactly. What it is a share of must be said by the type that carries it. */
    public static final Unit<Dimensionless> PERCENT = known(KnownUnit.PERCENT, Units.PERCENT);

    /** Per mille, ‰: 1/1000 exactly. */
    public static final Unit<Dimensionless> PER_MILLE = share(KnownUnit.PER_MILLE, "Per mille");

    /** Parts per million, ppm: 1/1 000 000 exactly. */
    public static final Unit<Dimensionless> PPM = share(KnownUnit.PPM, "Parts per million");

    /** Kelvin, K, the SI base unit of temperature; also the unit of temperature differences. */
    public static final Unit<Temperature> KELVIN = known(KnownUnit.KELVIN, Units.KELVIN);

    /** Degree Celsius, °C: t in °C is t + 273.15 in K exactly (SI Brochure, 2.3.1). */
    public static final Unit<Temperature> CELSIUS = known(KnownUnit.CELSIUS, Units.CELSIUS);

    /** Degree Fahrenheit, °F: t in °F is (t + 459.67) · 5/9 in K exactly (NIST SP 811, Appendix B.8). */
    public static final Unit<Temperature> FAHRENHEIT = known(KnownUnit.FAHRENHEIT, fahrenheit());

    private FormulationUnits() {}

    /**
     * The exact factor from a unit to the one its kind is counted in: gram, millilitre, the number one, kelvin; for
     * every other kind the unit of the SI.
     *
     * <p>It is found from the whole numbers that define the unit, so it does not depend on any setting of the JVM.
     *
     * @param unit a unit, of this class or of any other maker
     * @return how many of the counting unit make one of this unit
     * @throws IllegalArgumentException if the unit has a shifted zero (°C, °F), or is not defined by a rational factor
     */
    public static Ratio factorOf(Unit<?> unit) {
        UnitScale scale = UnitScale.of(Objects.requireNonNull(unit, "unit"));
        if (scale.isShifted()) {
            throw new IllegalArgumentException("unit " + scale.symbol()
                    + " has a shifted zero, so no factor alone converts it: convert an Amount with to(KELVIN)");
        }
        return scale.factor();
    }

    /**
     * The symbol by which this library prints a unit and reads it again.
     *
     * @param unit a unit, of this class or of any other maker
     * @return the symbol; empty for {@link #ONE}; for a product of units its factors and their powers, {@code
     *     J/(kg·K)}; for a unit that cannot be written so, its own symbol or name, or how many of an SI unit it is, {@code (× 1/3 J²)}
     * @throws IllegalArgumentException if the unit is not defined by a rational factor
     */
    public static String symbolOf(Unit<?> unit) {
        return UnitScale.of(Objects.requireNonNull(unit, "unit")).symbol();
    }

    /** The known unit that a unit is, or is equal to. */
    static @Nullable KnownUnit find(Unit<?> unit) {
        for (KnownUnit known : KnownUnit.values()) {
            if (unitOf(known) == unit) {
                return known;
            }
        }
        for (KnownUnit known : KnownUnit.values()) {
            if (unitOf(known).equals(unit)) {
                return known;
            }
        }
        return null;
    }

    static Unit<?> unitOf(KnownUnit known) {
        return Objects.requireNonNull(UNITS.get(known));
    }

    private static <Q extends Quantity<Q>> Unit<Q> known(KnownUnit known, Unit<Q> unit) {
        UNITS.put(known, unit);
        return unit;
    }

    private static Unit<Mass> mass(KnownUnit known, String name) {
        return transformed(known, name, KILOGRAM, 1000);
    }

    private static Unit<Volume> volume(KnownUnit known, String name) {
        return transformed(known, name, Units.CUBIC_METRE, 1_000_000);
    }

    private static Unit<Dimensionless> share(KnownUnit known, String name) {
        return transformed(known, name, ONE, 1);
    }

    private static <Q extends Quantity<Q>> Unit<Q> transformed(
            KnownUnit known, String name, Unit<Q> system, long divisor) {
        Ratio factor = known.factor().dividedBy(divisor);
        return known(
                known,
                new TransformedUnit<>(
                        known.symbol(),
                        name,
                        system,
                        MultiplyConverter.ofRational(factor.numerator(), factor.denominator())));
    }

    private static Unit<Temperature> fahrenheit() {
        // The converter named last is applied first.
        return new TransformedUnit<>(
                "°F",
                "Fahrenheit",
                KELVIN,
                MultiplyConverter.ofRational(5, 9).concatenate(new AddConverter(RationalNumber.of(45967, 100))));
    }
}
