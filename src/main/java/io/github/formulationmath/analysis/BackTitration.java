package io.github.formulationmath.analysis;

import io.github.formulationmath.chemistry.MolarMass;
import io.github.formulationmath.chemistry.MolecularFormula;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.soap.Alkali;
import io.github.formulationmath.soap.AlkaliNumber;
import io.github.formulationmath.soap.IodineValue;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;

/**
 * A titration of what a reagent given in excess has left: blank minus sample.
 *
 * <p>Example, Simmons and Appleton 1908: 25.6 mL and 18.95 mL of 1 N acid for 1.8976 g of fat give a saponification value of 196.618
 * mg KOH/g; the book reckons with 56.1 and prints 196.6.
 *
 * <p>Immutable and thread-safe.
 */
public final class BackTitration {

    private static final Subject SAMPLE = Subject.of("1", "the sample");
    private static final Subject BLANK = Subject.of("0", "the blank");
    private static final Symbol SAPONIFICATION = Symbol.of("SV", "saponification-value-found", Kind.ALKALI_NUMBER);
    private static final Symbol ESTER = Symbol.of("EV", "ester-value", Kind.ALKALI_NUMBER);
    private static final Symbol EQUIVALENT = Symbol.of("SE", "saponification-equivalent", Kind.MOLAR_MASS);
    private static final Symbol IODINE = Symbol.of("IV", "iodine-value-found", Kind.IODINE_NUMBER);
    private static final MolarMass I2 = MolarMass.of(MolecularFormula.parse("I2"));

    private final Consumed consumed;

    private BackTitration(Consumed consumed) {
        this.consumed = consumed;
    }

    /**
     * The two titrations, of as much reagent each.
     *
     * @param titrant the solution in the burette
     * @param blank what the reagent alone consumed, 0 or more
     * @param sample what was left for it beside the sample, 0 or more and at most the blank
     * @return the titration
     * @throws IllegalArgumentException if a volume is negative, or the blank smaller than the sample
     */
    public static BackTitration of(Titrant titrant, Estimate<Volume> blank, Estimate<Volume> sample) {
        Objects.requireNonNull(blank, "blank");
        Objects.requireNonNull(sample, "sample");
        Input whole = Consumed.volume(BLANK, blank);
        Input left = Consumed.volume(SAMPLE, sample);
        Consumed.requireNotLess(
                whole,
                left,
                "a sample takes reagent up and leaves less of it than the blank; are the two exchanged, or is it a"
                        + " Titration?");
        return new BackTitration(new Consumed(Objects.requireNonNull(titrant, "titrant"), SAMPLE, whole, left));
    }

    private PerMass perMass(String question, Symbol symbol, Estimate<Mass> sample, MolarMass as, Ratio molecules) {
        return new PerMass(question, symbol, consumed, Consumed.mass(SAMPLE, sample), as, molecules);
    }

    private PerMass saponification(Estimate<Mass> sample) {
        return perMass(
                "question.saponification-value",
                SAPONIFICATION,
                sample,
                Alkali.POTASSIUM_HYDROXIDE.molarMass(),
                Ratio.ONE);
    }

    /**
     * The saponification value, {@code M(KOH) · c · f · (V₀ − V) / m}, from a titration with acid (ISO 3657).
     *
     * @param sample the mass of fat, above 0
     * @return the value
     * @throws IllegalArgumentException if the mass is not above 0
     */
    public Determination<AlkaliNumber> saponificationValue(Estimate<Mass> sample) {
        Objects.requireNonNull(sample, "sample");
        return new Determination<>(saponification(sample), Result.ALKALI_NUMBER);
    }

    /**
     * The ester value, saponification value less acid value. An input that both share, such as one solution with one factor, or
     * the same estimate of it, is counted once in the budget.
     *
     * @param sample the mass of fat saponified, above 0
     * @param acids the titration of its free acids
     * @param acidSample the mass of fat titrated for them, above 0
     * @return the value
     * @throws IllegalArgumentException if a mass is not above 0, or the acid value is the greater
     */
    public Determination<AlkaliNumber> esterValue(Estimate<Mass> sample, Titration acids, Estimate<Mass> acidSample) {
        Objects.requireNonNull(sample, "sample");
        Objects.requireNonNull(acids, "acids");
        Objects.requireNonNull(acidSample, "acidSample");
        Esters esters = new Esters(saponification(sample), acids.acids(acidSample));
        Ratio difference = esters.in(Reckoning.plain());
        if (difference.signum() < 0) {
            throw new IllegalArgumentException("ester value is " + Excerpt.of(difference.times(1000))
                    + " mg KOH/g: a saponification value counts the free acids too, so the acid value cannot exceed it; are both"
                    + " of the same fat?");
        }
        return new Determination<>(esters, Result.ALKALI_NUMBER);
    }

    /** SV − AV. */
    private record Esters(PerMass all, PerMass acids) implements Relation {

        @Override
        public Phrase question() {
            return Phrase.of("question.ester-value");
        }

        @Override
        public List<Input> inputs() {
            List<Input> inputs = new ArrayList<>(all.inputs());
            inputs.addAll(acids.inputs());
            return inputs;
        }

        @Override
        public <V> V in(Reckoning<V> r) {
            return r.named(ESTER, r.difference(all.in(r), acids.in(r)));
        }
    }

    /**
     * The saponification equivalent, {@code m / n}.
     *
     * @param sample the mass of fat, above 0
     * @return grams of fat to a mole of alkali
     * @throws IllegalArgumentException if the mass is not above 0, or nothing was consumed
     */
    public Determination<SaponificationEquivalent> saponificationEquivalent(Estimate<Mass> sample) {
        Objects.requireNonNull(sample, "sample");
        Input mass = Consumed.mass(SAMPLE, sample);
        if (consumed.moles(Reckoning.plain()).isZero()) {
            throw new IllegalArgumentException("sample " + Excerpt.of(sample)
                    + " consumed nothing: what takes up no alkali has no saponification equivalent");
        }
        return new Determination<>(new Equivalent(consumed, mass), Result.EQUIVALENT);
    }

    private record Equivalent(Consumed consumed, Input mass) implements Relation {

        @Override
        public Phrase question() {
            return Phrase.of("question.saponification-equivalent");
        }

        @Override
        public List<Input> inputs() {
            List<Input> inputs = new ArrayList<>(consumed.inputs());
            inputs.add(mass);
            return inputs;
        }

        @Override
        public <V> V in(Reckoning<V> r) {
            return r.named(EQUIVALENT, r.quotient(mass.in(r), consumed.moles(r)));
        }
    }

    /**
     * The iodine value, {@code M(I2)/2 · c · f · (V₀ − V) / m}, from a titration with thiosulfate (ISO 3961): one thiosulfate stands for
     * one atom of iodine.
     *
     * @param sample the mass of fat, above 0
     * @return the value
     * @throws IllegalArgumentException if the mass is not above 0
     */
    public Determination<IodineValue> iodineValue(Estimate<Mass> sample) {
        Objects.requireNonNull(sample, "sample");
        return new Determination<>(
                perMass("question.iodine-value", IODINE, sample, I2, Ratio.of(1, 2)), Result.IODINE_VALUE);
    }
}
