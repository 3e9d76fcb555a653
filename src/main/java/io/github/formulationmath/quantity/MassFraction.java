package io.github.formulationmath.quantity;

import io.github.formulationmath.number.NumberTextException;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Origin.Figure;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import java.io.InvalidObjectException;
import java.io.Serial;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * The share of a mass in a mass (w/w), from 0 to 1.
 *
 * <p>{@code w = m(part) / m(whole)}. A share by volume is a {@link VolumeFraction}, a mass in a volume a {@link
 * MassConcentration}; they cannot be mixed up with this one, and meet it through a {@link Density} only.
 *
 * <p>Example: 0.5 % of 200 g is 1 g: {@code MassFraction.parse("0.5 %").amountIn(Amount.mass("200 g"))}.
 *
 * <p>{@code equals} means the same exact share, however it was written. Immutable and thread-safe.
 */
public final class MassFraction implements Explained, Comparable<MassFraction>, Serializable {

    /** Nothing of the whole: 0 %. */
    public static final MassFraction ZERO = of(Ratio.ZERO);

    /** All of the whole: 100 %. */
    public static final MassFraction WHOLE = of(Ratio.ONE);

    @Serial
    private static final long serialVersionUID = 1L;

    private static final Symbol GIVEN = Symbol.of("x", "given-value", Kind.SHARE);

    private final Ratio fraction;
    private final @Nullable String asWritten;
    private final transient @Nullable Origin origin;

    private MassFraction(Ratio fraction, @Nullable String asWritten) {
        this(ShareText.requireShare("mass fraction", fraction), asWritten, null);
    }

    private MassFraction(Ratio fraction, @Nullable String asWritten, @Nullable Origin origin) {
        this.fraction = fraction;
        this.asWritten = asWritten;
        this.origin = origin;
    }

    /**
     * A share from its fraction of one.
     *
     * @param fraction the mass of the part divided by that of the whole, from 0 to 1
     * @return the share
     * @throws IllegalArgumentException if the fraction lies outside 0 to 1
     */
    public static MassFraction of(Ratio fraction) {
        return new MassFraction(Objects.requireNonNull(fraction, "fraction"), null);
    }

    /**
     * A share from two masses.
     *
     * @param part the mass of the part
     * @param whole the mass of the whole, above 0
     * @return the share
     * @throws IllegalArgumentException if the whole is not above 0, or the part lies outside 0 to the whole
     */
    public static MassFraction of(Amount<Mass> part, Amount<Mass> whole) {
        Objects.requireNonNull(part, "part");
        Amount.requirePositive("whole", whole);
        return of(part.ratioTo(whole));
    }

    /**
     * A share from its percentage.
     *
     * @param percent grams in 100 g, from 0 to 100
     * @return the share
     * @throws IllegalArgumentException if the percentage lies outside 0 to 100
     */
    public static MassFraction ofPercent(Ratio percent) {
        return of(Objects.requireNonNull(percent, "percent").dividedBy(100));
    }

    /**
     * A share from its percentage as text.
     *
     * @param percent grams in 100 g, from 0 to 100, as {@link Ratio#parse(String)} reads it; kept as written
     * @return the share
     * @throws NumberTextException if the text is not a number
     * @throws IllegalArgumentException if the percentage lies outside 0 to 100
     */
    public static MassFraction ofPercent(String percent) {
        Objects.requireNonNull(percent, "percent");
        return new MassFraction(Ratio.parse(percent).dividedBy(100), percent.strip() + " %");
    }

    /**
     * Reads a share such as {@code "0.5 %"}, {@code "5 ‰"} or {@code "200 ppm"}; {@code "w/w"} may follow.
     *
     * @param text number and unit; kept as written
     * @return the share
     * @throws NumberTextException if the text is not such a share, or says w/v or v/v
     * @throws IllegalArgumentException if the share lies outside 0 to 1
     */
    public static MassFraction parse(String text) {
        Objects.requireNonNull(text, "text");
        return parse(text, '.');
    }

    static MassFraction parse(String text, char decimalMark) {
        return ShareText.parse(text, decimalMark, ShareText.Basis.W_W, MassFraction::new);
    }

    /**
     * The share as a fraction of one.
     *
     * @return the mass of the part divided by that of the whole, from 0 to 1
     */
    public Ratio fraction() {
        return fraction;
    }

    /**
     * The share in per cent.
     *
     * @return grams in 100 g, from 0 to 100
     */
    public Ratio percent() {
        return fraction.times(100);
    }

    /**
     * The text the share was read from, with the digits as written ({@code "0.50 %"}); no part of its value.
     *
     * @return the text; empty if the share was not given as text
     */
    public Optional<String> asWritten() {
        return Optional.ofNullable(asWritten);
    }

    /**
     * The same share, able to tell how it came about. Two shares that differ in that alone are equal.
     *
     * @param question what the share answers
     * @param owner whose share it is
     * @param figure the relation that made it, leading to {@link #fraction()}
     * @param <T> whose share it is
     * @return the share with its working
     */
    public <T> MassFraction withWorking(Function<? super T, Phrase> question, T owner, Figure<? super T> figure) {
        return new MassFraction(fraction, asWritten, Origin.of(question, fraction, owner, figure));
    }

    /**
     * The same share as if it were given, so that nothing it came from is kept in memory for its sake.
     *
     * @return the share alone
     */
    public MassFraction withoutWorking() {
        return origin == null ? this : new MassFraction(fraction, asWritten, null);
    }

    /** Where the share comes from; of one that was given, only that it was. */
    @Override
    public Origin origin() {
        return origin != null
                ? origin
                : Origin.given(
                        GIVEN, Subject.none(), fraction, Source.written(asWritten != null ? asWritten : toString()));
    }

    /**
     * Where the share comes from, for a working.
     *
     * @return the text as it was written, or the caller
     */
    public Source source() {
        return asWritten == null ? Source.user() : Source.written(asWritten);
    }

    /**
     * The part of a mass.
     *
     * @param whole the mass of the whole
     * @return the exact mass of the part, in the unit of the whole
     */
    public Amount<Mass> amountIn(Amount<Mass> whole) {
        return Objects.requireNonNull(whole, "whole").times(fraction);
    }

    /**
     * The whole that holds a part.
     *
     * @param part the mass of the part
     * @return the exact mass of the whole, in the unit of the part
     * @throws ArithmeticException if this share is 0, so that no whole holds the part
     */
    public Amount<Mass> wholeOf(Amount<Mass> part) {
        return Objects.requireNonNull(part, "part").dividedBy(fraction);
    }

    /**
     * The same share by volume: {@code φ = w · ρ(whole) / ρ(part)}.
     *
     * @param ofPart the density of the part
     * @param ofWhole the density of the whole
     * @return the exact share by volume
     * @throws IllegalArgumentException if the densities make it more than the whole
     */
    public VolumeFraction toVolumeFraction(Density ofPart, Density ofWhole) {
        return VolumeFraction.of(
                fraction.times(Objects.requireNonNull(ofWhole, "ofWhole").gramsPerMillilitre())
                        .dividedBy(Objects.requireNonNull(ofPart, "ofPart").gramsPerMillilitre()));
    }

    /**
     * The same share as a mass in a volume: {@code c = w · ρ(mixture)}.
     *
     * @param ofMixture the density of the whole mixture
     * @return the exact mass concentration
     */
    public MassConcentration toMassConcentration(Density ofMixture) {
        return MassConcentration.ofGramsPerMillilitre(
                fraction.times(Objects.requireNonNull(ofMixture, "ofMixture").gramsPerMillilitre()));
    }

    @Override
    public int compareTo(MassFraction other) {
        return fraction.compareTo(Objects.requireNonNull(other, "other").fraction);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof MassFraction that && fraction.equals(that.fraction);
    }

    @Override
    public int hashCode() {
        return fraction.hashCode();
    }

    /** The exact percentage: {@code 0.5 %}, {@code 100/3 %}. {@link #parse(String)} reads it again. */
    @Override
    public String toString() {
        return percent() + " %";
    }

    @Serial
    private Object readResolve() throws InvalidObjectException {
        return Deserialized.checked("mass fraction", () -> new MassFraction(fraction, asWritten));
    }
}
