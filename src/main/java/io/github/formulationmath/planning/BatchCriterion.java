package io.github.formulationmath.planning;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.working.Phrase;
import java.io.Serial;
import java.io.Serializable;
import java.util.Objects;
import javax.measure.quantity.Mass;

/**
 * What makes a batch large enough for a balance. Several rules are in use under the one name "minimum batch"; they
 * disagree, so each has its own name here. Lines have shares w, the balance steps of d, the batch a mass M; x = w·M/d is a
 * line in divisions, n what the display shows.
 *
 * <table>
 * <caption>The criteria</caption>
 * <tr><th>name</th><th>a batch passes if, for every line,</th><th>passing sizes</th></tr>
 * <tr><td>{@link #oneDivision}</td><td>w·M ≥ d</td><td>all from one size on</td></tr>
 * <tr><td>{@link #roundingWithin}</td><td>|n − x| ≤ τ·x</td><td>islands, then all from one size on</td></tr>
 * <tr><td>{@link #madeWithin}</td><td>M = N·d, and some whole n that add up to N have |n/N − w| ≤ τ·w</td><td>certain
 * N, then all from some N on</td></tr>
 * <tr><td>{@link #exactReadings}</td><td>x is whole</td><td>the multiples of one size</td></tr>
 * </table>
 *
 * <p>Immutable and thread-safe.
 */
public abstract sealed class BatchCriterion implements Serializable
        permits LineBoundCriterion, RoundingWithin, MadeWithin, ExactReadings {

    @Serial
    private static final long serialVersionUID = 1L;

    BatchCriterion() {}

    /**
     * Every line is at least one division: {@code M ≥ d / min w}. Common practice at the bench, no published source; it
     * bounds no error but that of losing a line altogether.
     *
     * <p>Example: 0.5 % on a display of 1 g needs 200 g; on one of 0.1 g, 20 g.
     *
     * @return the criterion
     */
    public static BatchCriterion oneDivision() {
        return new OneDivision();
    }

    /**
     * Rounding to the display, each line alone, stays within tolerance: {@code |n − x| ≤ τ·x}. Nothing but rounding is
     * counted. A larger batch is not always better: between the islands of passing sizes there are failing ones.
     *
     * @param tolerances how far each line may be off
     * @return the criterion
     */
    public static BatchCriterion roundingWithin(Tolerances tolerances) {
        return new RoundingWithin(Objects.requireNonNull(tolerances, "tolerances"));
    }

    /**
     * The product as made stays within tolerance, its readings adding up: there are whole n, together N, with {@code |n/N
     * − w| ≤ τ·w} for every line. The readings are taken as true.
     *
     * @param tolerances how far each share may be off
     * @return the criterion
     */
    public static BatchCriterion madeWithin(Tolerances tolerances) {
        return madeWithin(tolerances, Amount.grams(io.github.formulationmath.number.Ratio.ZERO));
    }

    /**
     * As {@link #madeWithin(Tolerances)}, when what lies in the vessel may differ from each reading by up to e: every line
     * stays within tolerance even if it is off by e one way and all others by e the other way.
     *
     * @param tolerances how far each share may be off
     * @param readingError e, the half-width of the error of one addition, at least 0
     * @return the criterion
     * @throws IllegalArgumentException if the reading error is negative
     */
    public static BatchCriterion madeWithin(Tolerances tolerances, Amount<Mass> readingError) {
        Objects.requireNonNull(tolerances, "tolerances");
        if (Objects.requireNonNull(readingError, "readingError").signum() < 0) {
            throw new IllegalArgumentException("readingError is " + readingError + ": a half-width is at least 0");
        }
        return new MadeWithin(tolerances, readingError);
    }

    /**
     * Every line is a whole number of divisions, so that nothing is rounded: M is a multiple of d·L, L the least common
     * multiple of all 1/w.
     *
     * @return the criterion
     */
    public static BatchCriterion exactReadings() {
        return new ExactReadings();
    }

    /** What the criterion is called. */
    abstract Phrase name();

    /** The criterion put to a formula on a balance. */
    abstract Requirement of(Formula formula, Balance balance);
}
