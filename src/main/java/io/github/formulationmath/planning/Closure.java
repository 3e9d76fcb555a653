package io.github.formulationmath.planning;

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
     * ties to the earlier line.
     */
    CLOSED,
    /** Every line but the q.s. line is rounded by itself; the q.s. line takes what is left of the rounded batch. */
    QS_TAKES_REST
}
