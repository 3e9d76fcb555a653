package io.github.formulationmath.analysis;

import io.github.formulationmath.chemistry.MolarMass;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.soap.Alkali;
import io.github.formulationmath.soap.AlkaliNumber;
import java.util.Objects;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;

/**
 * A direct titration: what the sample consumes is read off the burette, less what the solvent alone consumes.
 *
 * <p>Example, Simmons and Appleton 1908: 1.8976 g of fat and 5.2 mL of 0.1 N alkali give an acid value of 15.375 mg KOH/g; the book
 * prints 15.3, cut off and not rounded.
 *
 * <p>Immutable and thread-safe.
 */
public final class Titration {

    private static final Subject SAMPLE = Subject.of("a", "the sample");
    private static final Subject BLANK = Subject.of("a0", "the solvent");
    private static final Symbol ACID_VALUE = Symbol.of("AV", "acid-value", Kind.ALKALI_NUMBER);
    private static final Symbol FREE_ACIDS = Symbol.of("w", "free-fatty-acids", Kind.SHARE);
    private static final Symbol FREE_ALKALI = Symbol.of("w", "free-alkali", Kind.SHARE);

    private final Consumed consumed;

    private Titration(Consumed consumed) {
        this.consumed = consumed;
    }

    /**
     * A titration of which the solvent consumes nothing: it was neutralised before.
     *
     * @param titrant the solution in the burette
     * @param volume what the sample consumed, 0 or more
     * @return the titration
     * @throws IllegalArgumentException if the volume is negative
     */
    public static Titration of(Titrant titrant, Estimate<Volume> volume) {
        Objects.requireNonNull(volume, "volume");
        return new Titration(new Consumed(
                Objects.requireNonNull(titrant, "titrant"), SAMPLE, Consumed.volume(SAMPLE, volume), null));
    }

    /**
     * A titration with that of the solvent alone.
     *
     * @param titrant the solution in the burette
     * @param volume what sample and solvent consumed
     * @param blank what as much solvent consumed alone, 0 or more and at most the volume
     * @return the titration
     * @throws IllegalArgumentException if a volume is negative, or the solvent alone consumed more than with the sample
     */
    public static Titration of(Titrant titrant, Estimate<Volume> volume, Estimate<Volume> blank) {
        Objects.requireNonNull(volume, "volume");
        Objects.requireNonNull(blank, "blank");
        Input sample = Consumed.volume(SAMPLE, volume);
        Input solvent = Consumed.volume(BLANK, blank);
        Consumed.requireNotLess(
                sample,
                solvent,
                "a sample cannot take back what the solvent consumed; are the two exchanged, or is it a BackTitration?");
        return new Titration(new Consumed(Objects.requireNonNull(titrant, "titrant"), SAMPLE, sample, solvent));
    }

    private PerMass perMass(String question, Symbol symbol, Estimate<Mass> sample, MolarMass as) {
        return new PerMass(question, symbol, consumed, Consumed.mass(SAMPLE, sample), as, Ratio.ONE);
    }

    /** The acid value as part of another relation. */
    PerMass acids(Estimate<Mass> sample) {
        return perMass("question.acid-value", ACID_VALUE, sample, Alkali.POTASSIUM_HYDROXIDE.molarMass());
    }

    /**
     * The acid value, {@code M(KOH) · c · f · (V − V₀) / m}, from a titration with alkali (ISO 660).
     *
     * @param sample the mass of fat, above 0
     * @return the value
     * @throws IllegalArgumentException if the mass is not above 0
     */
    public Determination<AlkaliNumber> acidValue(Estimate<Mass> sample) {
        Objects.requireNonNull(sample, "sample");
        return new Determination<>(acids(sample), Result.ALKALI_NUMBER);
    }

    /**
     * The share of free fatty acids, from a titration with alkali. The figure depends on the acid it is expressed as, which has to be
     * said: one titration gives 7.74 % as oleic and 5.49 % as lauric acid.
     *
     * @param sample the mass of fat, above 0
     * @param as the molar mass of that acid
     * @return the share
     * @throws IllegalArgumentException if the mass is not above 0, or the share above 100 %
     */
    public Determination<MassFraction> freeFattyAcids(Estimate<Mass> sample, MolarMass as) {
        Objects.requireNonNull(sample, "sample");
        return new Determination<>(
                perMass("question.free-fatty-acids", FREE_ACIDS, sample, Objects.requireNonNull(as, "as")),
                Result.SHARE);
    }

    /**
     * The share of free alkali in a soap, from a titration with acid in alcohol, in which carbonate does not dissolve.
     *
     * @param sample the mass of soap, above 0
     * @param as the alkali it is expressed as: for a potash soap it is customary either way, so it has to be said
     * @return the share
     * @throws IllegalArgumentException if the mass is not above 0, or the share above 100 %
     */
    public Determination<MassFraction> freeAlkali(Estimate<Mass> sample, Alkali as) {
        Objects.requireNonNull(sample, "sample");
        Objects.requireNonNull(as, "as");
        return new Determination<>(perMass("question.free-alkali", FREE_ALKALI, sample, as.molarMass()), Result.SHARE);
    }
}
