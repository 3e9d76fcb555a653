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
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;

/**
 * The mass of a part in a volume of the whole (w/v), not below 0.
 *
 * <p>{@code c = m(part) / V(whole)}; one per cent w/v is one gram in 100 mL. It is no share: it becomes a {@link
 * MassFraction} through the density of the mixture only.
 *
 * <p>Example: 0.9 % w/v is 4.5 g in 500 mL; in a mixture of 1.2 g/mL it is 0.75 % w/w.
 *
 * <p>{@code equals} means the same exact concentration, however it was written. Immutable and thread-safe.
 */
public final class MassConcentration implements Comparable<MassConcentration>, Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private final Ratio gramsPerMillilitre;
    private final @Nullable String asWritten;

    private MassConcentration(Ratio gramsPerMillilitre, @Nullable String asWritten) {
        if (gramsPerMillilitre.signum() < 0) {
            throw new IllegalArgumentException("mass concentration is " + Excerpt.of(gramsPerMillilitre.times(100))
                    + " % w/v: it must not be below 0");
        }
        this.gramsPerMillilitre = gramsPerMillilitre;
        this.asWritten = asWritten;
    }

    /**
     * A concentration in grams per millilitre.
     *
     * @param value grams of the part in a millilitre of the whole, not below 0
     * @return the concentration
     * @throws IllegalArgumentException if the value is below 0
     */
    public static MassConcentration ofGramsPerMillilitre(Ratio value) {
        return new MassConcentration(Objects.requireNonNull(value, "value"), null);
    }

    /**
     * A concentration from its percentage.
     *
     * @param percent grams in 100 mL, not below 0
     * @return the concentration
     * @throws IllegalArgumentException if the percentage is below 0
     */
    public static MassConcentration ofPercent(Ratio percent) {
        return ofGramsPerMillilitre(Objects.requireNonNull(percent, "percent").dividedBy(100));
    }

    /**
     * A concentration from its percentage as text.
     *
     * @param percent grams in 100 mL, not below 0, as {@link Ratio#parse(String)} reads it; kept as written
     * @return the concentration
     * @throws NumberTextException if the text is not a number
     * @throws IllegalArgumentException if the percentage is below 0
     */
    public static MassConcentration ofPercent(String percent) {
        Objects.requireNonNull(percent, "percent");
        return new MassConcentration(Ratio.parse(percent).dividedBy(100), percent.strip() + " % w/v");
    }

    /**
     * The concentration of a mass dissolved to a volume.
     *
     * @param part the mass of the part, not below 0
     * @param whole the volume of the finished mixture, above 0
     * @return the concentration
     * @throws IllegalArgumentException if the volume is not above 0 or the mass is below 0
     */
    public static MassConcentration of(Amount<Mass> part, Amount<Volume> whole) {
        Objects.requireNonNull(part, "part");
        Amount.requirePositive("whole", whole);
        return ofGramsPerMillilitre(part.canonical().dividedBy(whole.canonical()));
    }

    /**
     * Reads a concentration such as {@code "50 g/L"} or {@code "0.9 % w/v"}; a share must say its basis.
     *
     * @param text number and a mass per volume: {@code g/L}, {@code mg/mL}, {@code g/100 mL}, {@code kg/m³}, {@code g·L⁻¹}; or
     *     number, one of %, ‰, ppm (g per 100 mL, per litre, mg per litre), and {@code w/v}, which some write {@code m/v}; kept
     *     as written
     * @return the concentration
     * @throws NumberTextException if the text is not such a concentration, or says w/w, v/v or nothing
     * @throws IllegalArgumentException if it is below 0
     */
    public static MassConcentration parse(String text) {
        Objects.requireNonNull(text, "text");
        return parse(text, '.');
    }

    static MassConcentration parse(String text, char decimalMark) {
        return ShareText.parse(text, decimalMark, ShareText.Basis.W_V, MassConcentration::new);
    }

    /**
     * The concentration in grams per millilitre.
     *
     * @return grams of the part in a millilitre of the whole
     */
    public Ratio gramsPerMillilitre() {
        return gramsPerMillilitre;
    }

    /**
     * The concentration in per cent w/v.
     *
     * @return grams in 100 mL
     */
    public Ratio percent() {
        return gramsPerMillilitre.times(100);
    }

    /**
     * The text the concentration was read from, with the digits as written; no part of its value.
     *
     * @return the text; empty if the concentration was not given as text
     */
    public Optional<String> asWritten() {
        return Optional.ofNullable(asWritten);
    }

    /**
     * The part in a volume.
     *
     * @param whole the volume of the whole
     * @return the exact mass of the part, in grams
     */
    public Amount<Mass> amountIn(Amount<Volume> whole) {
        Objects.requireNonNull(whole, "whole");
        return Amount.grams(whole.canonical().times(gramsPerMillilitre));
    }

    /**
     * The same part as a share by mass: {@code w = c / ρ(mixture)}.
     *
     * @param ofMixture the density of the whole mixture
     * @return the exact share by mass
     * @throws IllegalArgumentException if the part would be more than the whole
     */
    public MassFraction toMassFraction(Density ofMixture) {
        return MassFraction.of(gramsPerMillilitre.dividedBy(
                Objects.requireNonNull(ofMixture, "ofMixture").gramsPerMillilitre()));
    }

    /**
     * The same part as a share by volume: {@code φ = c / ρ(part)}.
     *
     * @param ofPart the density of the part
     * @return the exact share by volume
     * @throws IllegalArgumentException if the part would be more than the whole
     */
    public VolumeFraction toVolumeFraction(Density ofPart) {
        return VolumeFraction.of(gramsPerMillilitre.dividedBy(
                Objects.requireNonNull(ofPart, "ofPart").gramsPerMillilitre()));
    }

    @Override
    public int compareTo(MassConcentration other) {
        return gramsPerMillilitre.compareTo(Objects.requireNonNull(other, "other").gramsPerMillilitre);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof MassConcentration that && gramsPerMillilitre.equals(that.gramsPerMillilitre);
    }

    @Override
    public int hashCode() {
        return gramsPerMillilitre.hashCode();
    }

    /** The exact percentage with its basis: {@code 0.9 % w/v}. {@link #parse(String)} reads it again. */
    @Override
    public String toString() {
        return percent() + " % w/v";
    }

    @Serial
    private Object readResolve() throws InvalidObjectException {
        return Deserialized.checked("mass concentration", () -> new MassConcentration(gramsPerMillilitre, asWritten));
    }
}
