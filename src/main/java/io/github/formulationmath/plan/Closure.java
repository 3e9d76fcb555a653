package io.github.formulationmath.plan;

/**
 * What becomes of the difference between the batch and the sum of its rounded lines.
 *
 * <p>Example: 44.42, 36.38 and 19.20 g on a display of 1 g. Each alone: 44 + 36 + 19 = 99, one short of 100. Closed: 45 +
 * 36 + 19 = 100, for the first has the largest remainder.
 */
public enum Closure {
    /** Each line is rounded by itself; the difference to the batch is reported. */
    INDEPENDENT,
    /**
     * The lines add up to the batch rounded to the display: floors first, then one division each to the largest remainders,
     * ties to the earlier line. On several balances the lines of the coarsest step close first, to what they should be
     * together; what that leaves over goes to the lines of the next finer step, as far as one division each can take it, and
     * what is left in the end is told.
     */
    CLOSED,
    /**
     * The lines add up to the batch rounded to the display, N divisions, so that the line that is off most is off as little
     * as can be: of all whole n that add up to N, those whose deviations {@code |n − x|/x} from {@code x = w·N}, sorted from
     * the greatest down, are least in dictionary order; among equals the earlier line takes the division. A size that {@code
     * Criterion.madeWithin} calls good for one tolerance of all lines has readings within it here, which
     * {@link #CLOSED} may miss. Where lines have tolerances of their own, {@link Bench#closingWithin(Tolerances)} measures each
     * deviation against its own.
     *
     * <p>Example: 47, 37 and 51 parts on 9 divisions, x = 3.133, 2.467 and 3.4, come out as 3, 2 and 4, off by 19 % at most, where the largest
     * remainder gives 3, 3 and 3 and 22 %; of 1, 1 and 98 parts on
     * 20 divisions (0.2, 0.2 and 19.6) the small ones read 0: one division would be four times too much. Readings may be
     * outside any tolerance; {@link PlannedLine#relativeRoundingError()} tells.
     */
    WITHIN_TOLERANCE,
    /**
     * Every line but the q.s. line is rounded by itself; the q.s. line takes what is left of the rounded batch, or, where the
     * steps differ, what is left of the batch, rounded to its own display.
     */
    QS_TAKES_REST
}
