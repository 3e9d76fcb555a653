package io.github.formulationmath.record;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.working.Explained;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Working;
import java.io.Serial;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * The smallest additions, in total mass, that bring every line within its tolerance and keep every cap; where there are
 * none, the additions that leave the caps exceeded as little as possible and then the worst line off as little as possible.
 *
 * <p>The additions solve a linear program in exact arithmetic. The working of the total shows that all conditions are kept,
 * and multipliers that prove that nothing smaller keeps them.
 *
 * <p>Example: 80 + 20 g were planned within 5 %, 22 g of the second were poured. Its share may be 21 % at most, so the pot
 * has to grow to 22/0.21 = 104.76… g: 2.76… g of the first do, where the exact restoration takes 8 g.
 *
 * <p>Immutable and thread-safe.
 */
public final class Correction implements Explained, Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    /** The most lines that a correction is worked out for. */
    public static final int MAX_LINES = 100;

    /** What comes of a correction. */
    public enum Outcome {
        /** Every line is within its tolerance as read, and every cap is kept: there is nothing to do. */
        NOTHING_TO_DO,
        /** The additions bring every line within its tolerance and keep every cap. */
        MENDED,
        /** No additions can; these are the best there are. */
        BEST_POSSIBLE
    }

    private final MadeBatch made;
    private final CorrectionRules rules;
    private final CorrectionPlan plan;

    private Correction(MadeBatch made, CorrectionRules rules) {
        this.made = made;
        this.rules = rules;
        this.plan = CorrectionPlan.of(made, rules);
    }

    /**
     * Works out the smallest additions.
     *
     * @param made what is in the pot
     * @param rules what to reach, and what stands in the way
     * @return the correction
     * @throws IllegalArgumentException if the rules name a line that is none of the formula or cap a substance that it does
     *     not contain, or the formula has more than {@value #MAX_LINES} lines (restoring it exactly has no such limit)
     */
    public static Correction smallest(MadeBatch made, CorrectionRules rules) {
        Objects.requireNonNull(made, "made");
        CorrectionRules checked = Objects.requireNonNull(rules, "rules").checkedFor(made);
        if (made.lines().size() > MAX_LINES) {
            throw new IllegalArgumentException("made has " + made.lines().size() + " lines, more than " + MAX_LINES
                    + ": restore the formula exactly, or mend one phase at a time");
        }
        return new Correction(made, checked);
    }

    /**
     * What comes of it.
     *
     * @return the outcome
     */
    public Outcome outcome() {
        return plan.outcome();
    }

    /**
     * What to add.
     *
     * @return the additions above 0, in the order of the formula
     */
    public List<LineAddition> additions() {
        return LineAddition.listOf(made, plan.additions());
    }

    /**
     * The mass of all additions.
     *
     * @return the total in grams
     */
    public Amount<Mass> total() {
        return Amount.grams(result());
    }

    /**
     * What stands in the way, if the lines cannot all be brought within their tolerances: conditions that contradict each
     * other.
     *
     * @return the obstacles; none unless the outcome is {@link Outcome#BEST_POSSIBLE}
     */
    public List<Obstacle> obstacles() {
        return plan.obstacles();
    }

    /**
     * How far the worst line is off after the best additions.
     *
     * @return the least possible worst deviation, as a share of the line's own; only with {@link Outcome#BEST_POSSIBLE}
     */
    public Optional<Ratio> worstDeviation() {
        return Optional.ofNullable(plan.deviationProof())
                .map(proof -> proof.answer().cost());
    }

    /**
     * Why no additions leave the worst line less far off.
     *
     * @return the working; only with {@link Outcome#BEST_POSSIBLE}
     */
    public Optional<Working> worstDeviationWorking() {
        @Nullable LinearProof proof = plan.deviationProof();
        return Optional.ofNullable(proof)
                .map(p -> Working.of(
                        Phrase.of("question.worst-deviation"), p.answer().cost(), p::derive));
    }

    /**
     * By how much the worst cap is exceeded after the best additions.
     *
     * @return the least possible excess as a fraction of everything in the pot; 0 if all caps are kept
     */
    public Ratio capExcess() {
        return plan.capExcess();
    }

    /**
     * The pot after the additions, as if they could be weighed exactly.
     *
     * @return what would be in the pot
     */
    public MadeBatch after() {
        return made.plus(additions());
    }

    /**
     * Additions that a display can show: the smallest that still bring every line within its tolerance, if there are any
     * and they are found; else the nearest, with what comes of them.
     *
     * @return whole steps of the display of the bench
     */
    public DisplayedAdditions onDisplay() {
        return outcome() == Outcome.MENDED
                ? new DisplaySearch(made, rules, plan).search()
                : DisplayedAdditions.nearest(made, rules, plan.additions());
    }

    @Override
    public Phrase question() {
        return Phrase.of("question.total-addition");
    }

    @Override
    public Ratio result() {
        return plan.proof() == null ? Ratio.ZERO : plan.proof().answer().cost();
    }

    @Override
    public <V> V derive(Reckoning<V> r) {
        return plan.derive(r);
    }

    @Override
    public String toString() {
        return outcome() + " " + additions();
    }
}
