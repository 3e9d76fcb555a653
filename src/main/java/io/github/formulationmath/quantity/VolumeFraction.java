package io.github.formulationmath.quantity;

import io.github.formulationmath.number.NumberTextException;
import io.github.formulationmath.number.Ratio;
import java.io.InvalidObjectException;
import java.io.Serial;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;

/**
 * The share of a volume in a volume (v/v), from 0 to 1.
 *
 * <p>{@code φ = V(part) / V(whole)}, the volume of the whole being that of the finished mixture. It becomes a {@link
 * MassFraction} through the densities of part and whole only.
 *
 * <p>Example: 70 % v/v of ethanol at 0.8 g/mL in a mixture of 0.875 g/mL is 0.7 · 0.8 / 0.875 = 64 % w/w (round
 * numbers).
 *
 * <p>{@code equals} means the same exact share, however it was written. Immutable and thread-safe.
 */
public final class VolumeFraction implements Comparable<VolumeFraction>, Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private final Ratio fraction;
    private final @Nullable String asWritten;

    private VolumeFraction(Ratio fraction, @Nullable String asWritten) {
        this.fraction = ShareText.requireShare("volume fraction", fraction);
        this.asWritten = asWritten;
    }

    /**
     * A share from its fraction of one.
     *
     * @param fraction the volume of the part divided by that of the whole, from 0 to 1
     * @return the share
     * @throws IllegalArgumentException if the fraction lies outside 0 to 1
     */
    public static VolumeFraction of(Ratio fraction) {
        return new VolumeFraction(Objects.requireNonNull(fraction, "fraction"), null);
    }

    /**
     * A share from its percentage.
     *
     * @param percent millilitres in 100 mL, from 0 to 100
     * @return the share
     * @throws IllegalArgumentException if the percentage lies outside 0 to 100
     */
    public static VolumeFraction ofPercent(Ratio percent) {
        return of(Objects.requireNonNull(percent, "percent").dividedBy(100));
    }

    /**
     * A share from its percentage as text.
     *
     * @param percent millilitres in 100 mL, from 0 to 100, as {@link Ratio#parse(String)} reads it; kept as written
     * @return the share
     * @throws NumberTextException if the text is not a number
     * @throws IllegalArgumentException if the percentage lies outside 0 to 100
     */
    public static VolumeFraction ofPercent(String percent) {
        Objects.requireNonNull(percent, "percent");
        return new VolumeFraction(Ratio.parse(percent).dividedBy(100), percent.strip() + " % v/v");
    }

    /**
     * Reads a share such as {@code "70 % v/v"}; the basis must be said.
     *
     * @param text number, one of %, ‰, ppm, and {@code v/v}; kept as written
     * @return the share
     * @throws NumberTextException if the text is not such a share, or says w/w, w/v or nothing
     * @throws IllegalArgumentException if the share lies outside 0 to 1
     */
    public static VolumeFraction parse(String text) {
        Objects.requireNonNull(text, "text");
        return parse(text, '.');
    }

    static VolumeFraction parse(String text, char decimalMark) {
        return ShareText.parse(text, decimalMark, ShareText.Basis.V_V, VolumeFraction::new);
    }

    /**
     * The share as a fraction of one.
     *
     * @return the volume of the part divided by that of the whole, from 0 to 1
     */
    public Ratio fraction() {
        return fraction;
    }

    /**
     * The share in per cent.
     *
     * @return millilitres in 100 mL, from 0 to 100
     */
    public Ratio percent() {
        return fraction.times(100);
    }

    /**
     * The text the share was read from, with the digits as written; no part of its value.
     *
     * @return the text; empty if the share was not given as text
     */
    public Optional<String> asWritten() {
        return Optional.ofNullable(asWritten);
    }

    /**
     * The part of a volume.
     *
     * @param whole the volume of the whole
     * @return the exact volume of the part, in the unit of the whole
     */
    public Amount<Volume> amountIn(Amount<Volume> whole) {
        return Objects.requireNonNull(whole, "whole").times(fraction);
    }

    /**
     * The same share by mass: {@code w = φ · ρ(part) / ρ(whole)}.
     *
     * @param ofPart the density of the part
     * @param ofWhole the density of the whole
     * @return the exact share by mass
     * @throws IllegalArgumentException if the densities make it more than the whole
     */
    public MassFraction toMassFraction(Density ofPart, Density ofWhole) {
        return MassFraction.of(
                fraction.times(Objects.requireNonNull(ofPart, "ofPart").gramsPerMillilitre())
                        .dividedBy(Objects.requireNonNull(ofWhole, "ofWhole").gramsPerMillilitre()));
    }

    /**
     * The same share as a mass in a volume: {@code c = φ · ρ(part)}.
     *
     * @param ofPart the density of the part
     * @return the exact mass concentration
     */
    public MassConcentration toMassConcentration(Density ofPart) {
        return MassConcentration.ofGramsPerMillilitre(
                fraction.times(Objects.requireNonNull(ofPart, "ofPart").gramsPerMillilitre()));
    }

    @Override
    public int compareTo(VolumeFraction other) {
        return fraction.compareTo(Objects.requireNonNull(other, "other").fraction);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof VolumeFraction that && fraction.equals(that.fraction);
    }

    @Override
    public int hashCode() {
        return fraction.hashCode();
    }

    /** The exact percentage with its basis: {@code 70 % v/v}. {@link #parse(String)} reads it again. */
    @Override
    public String toString() {
        return percent() + " % v/v";
    }

    @Serial
    private Object readResolve() throws InvalidObjectException {
        return Deserialized.checked("volume fraction", () -> new VolumeFraction(fraction, asWritten));
    }
}
