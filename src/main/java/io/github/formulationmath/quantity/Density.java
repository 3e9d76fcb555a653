package io.github.formulationmath.quantity;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.NumberTextException;
import io.github.formulationmath.number.Ratio;
import java.io.InvalidObjectException;
import java.io.Serial;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;

/**
 * Mass per volume of a material: the only way between grams and millilitres, and always the caller's.
 *
 * <p>{@code m = ρ · V}. It may say at which temperature it holds; that is kept and shown, and nothing is corrected for
 * it.
 *
 * <p>Example: at 0.92 g/mL, 50 mL of an oil weigh 46 g, and 23 g of it take 25 mL.
 *
 * <p>{@code equals} means the same exact density and the same stated temperature. Immutable and thread-safe.
 */
public final class Density implements Comparable<Density>, Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private static final String UNIT = "g/mL";

    private final Ratio gramsPerMillilitre;
    private final @Nullable Amount<Temperature> temperature;

    private Density(Ratio gramsPerMillilitre, @Nullable Amount<Temperature> temperature) {
        if (gramsPerMillilitre.signum() <= 0) {
            throw new IllegalArgumentException(
                    "density is " + Excerpt.of(gramsPerMillilitre) + " " + UNIT + ": it must be above 0");
        }
        this.gramsPerMillilitre = gramsPerMillilitre;
        this.temperature = temperature;
    }

    /**
     * A density in grams per millilitre, which is also kilograms per litre.
     *
     * @param value the number of grams in a millilitre, above 0
     * @return the density
     * @throws IllegalArgumentException if the value is not above 0
     */
    public static Density ofGramsPerMillilitre(Ratio value) {
        return new Density(Objects.requireNonNull(value, "value"), null);
    }

    /**
     * A density in grams per millilitre from a number as text.
     *
     * @param number the number of grams in a millilitre, above 0, as {@link Ratio#parse(String)} reads it
     * @return the density
     * @throws NumberTextException if the text is not a number
     * @throws IllegalArgumentException if the number is not above 0
     */
    public static Density ofGramsPerMillilitre(String number) {
        return ofGramsPerMillilitre(Ratio.parse(Objects.requireNonNull(number, "number")));
    }

    /**
     * The density of a mass that takes a volume.
     *
     * @param mass the mass, above 0
     * @param volume the volume it takes, above 0
     * @return the density
     * @throws IllegalArgumentException if mass or volume is not above 0
     */
    public static Density of(Amount<Mass> mass, Amount<Volume> volume) {
        Objects.requireNonNull(mass, "mass");
        Amount.requirePositive("volume", volume);
        return ofGramsPerMillilitre(mass.canonical().dividedBy(volume.canonical()));
    }

    /**
     * The density of a material whose specific gravity (relative density) is known.
     *
     * @param specificGravity the density of the material divided by that of the reference, above 0
     * @param reference the density of the reference, usually water at a stated temperature
     * @return the density
     * @throws IllegalArgumentException if the specific gravity is not above 0
     */
    public static Density ofSpecificGravity(Ratio specificGravity, Density reference) {
        Objects.requireNonNull(specificGravity, "specificGravity");
        return ofGramsPerMillilitre(
                specificGravity.times(Objects.requireNonNull(reference, "reference").gramsPerMillilitre));
    }

    /**
     * The density of a material whose specific gravity is known, from a number as text.
     *
     * @param specificGravity the density of the material divided by that of the reference, above 0
     * @param reference the density of the reference, usually water at a stated temperature
     * @return the density
     * @throws NumberTextException if the text is not a number
     * @throws IllegalArgumentException if the specific gravity is not above 0
     */
    public static Density ofSpecificGravity(String specificGravity, Density reference) {
        return ofSpecificGravity(Ratio.parse(Objects.requireNonNull(specificGravity, "specificGravity")), reference);
    }

    /**
     * Reads a density such as {@code "0.92 g/mL"}, optionally with its temperature: {@code "0.92 g/mL at 20 °C"}.
     *
     * @param text number, one of g/mL, g/ml, g/cm³, g/cm3, kg/L, kg/l, and optionally "at" and a temperature
     * @return the density
     * @throws NumberTextException if the text is not a density
     * @throws IllegalArgumentException if the number is not above 0
     */
    public static Density parse(String text) {
        return new DensityText('.').parse(Objects.requireNonNull(text, "text"));
    }

    /**
     * The same density with the temperature at which it holds.
     *
     * @param newTemperature the temperature
     * @return the density with that temperature
     */
    public Density at(Amount<Temperature> newTemperature) {
        return new Density(gramsPerMillilitre, Objects.requireNonNull(newTemperature, "newTemperature"));
    }

    /**
     * The number of grams in a millilitre.
     *
     * @return the density in g/mL, above 0
     */
    public Ratio gramsPerMillilitre() {
        return gramsPerMillilitre;
    }

    /**
     * The temperature at which the density holds, if it was stated.
     *
     * @return the temperature
     */
    public Optional<Amount<Temperature>> temperature() {
        return Optional.ofNullable(temperature);
    }

    /**
     * The mass of a volume of the material.
     *
     * @param volume the volume
     * @return the exact mass, in grams
     */
    public Amount<Mass> massOf(Amount<Volume> volume) {
        Objects.requireNonNull(volume, "volume");
        return Amount.grams(volume.canonical().times(gramsPerMillilitre));
    }

    /**
     * The volume of a mass of the material.
     *
     * @param mass the mass
     * @return the exact volume, in millilitres
     */
    public Amount<Volume> volumeOf(Amount<Mass> mass) {
        Objects.requireNonNull(mass, "mass");
        return Amount.millilitres(mass.canonical().dividedBy(gramsPerMillilitre));
    }

    /** Compares the densities themselves; the stated temperatures do not count. */
    @Override
    public int compareTo(Density other) {
        return gramsPerMillilitre.compareTo(Objects.requireNonNull(other, "other").gramsPerMillilitre);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Density that
                && gramsPerMillilitre.equals(that.gramsPerMillilitre)
                && Objects.equals(temperature, that.temperature);
    }

    @Override
    public int hashCode() {
        return Objects.hash(gramsPerMillilitre, temperature);
    }

    /** The exact density and its temperature: {@code 0.92 g/mL at 20 °C}. {@link #parse(String)} reads it again. */
    @Override
    public String toString() {
        return gramsPerMillilitre + " " + UNIT + (temperature == null ? "" : DensityText.AT + temperature);
    }

    @Serial
    private Object readResolve() throws InvalidObjectException {
        return Deserialized.checked("density", () -> new Density(gramsPerMillilitre, temperature));
    }
}
