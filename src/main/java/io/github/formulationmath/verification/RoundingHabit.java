package io.github.formulationmath.verification;

import java.util.Locale;

/**
 * How figures that agree were rounded, as one set. The first three are roundings of the exact masses; the others are habits
 * of the trade (common practice, no published source) that can leave a figure farther off than half its last digit.
 */
public enum RoundingHabit {
    /** Each figure to its nearest step. */
    EACH_TO_NEAREST,
    /** The q.s. line as the batch less the other figures, and these to their nearest steps. */
    QS_TAKES_REST,
    /** Each figure down or up to a step, up where most was left over, so that together they make the batch. */
    LARGEST_REMAINDERS,
    /** As {@link #QS_TAKES_REST}, but with the line that has the largest mass. */
    LARGEST_LINE_TAKES_REST,
    /** As {@link #QS_TAKES_REST}, but with the last line. */
    LAST_LINE_TAKES_REST,
    /** The ounce taken as 28.35 g. */
    OUNCE_OF_28_35_GRAMS,
    /** To the nearest half gram. */
    HALF_GRAMS,
    /** To a number of significant digits, two at least. */
    SIGNIFICANT_DIGITS,
    /** Figures, or the total, with more digits before the point to fewer places behind it, and never to more. */
    COARSER_WHEN_LARGER;

    /** Whether the figures are the exact masses rounded, and no more than that. */
    boolean isPlainRounding() {
        return this == EACH_TO_NEAREST || this == QS_TAKES_REST || this == LARGEST_REMAINDERS;
    }

    /** The key of its name in the wording. */
    String key() {
        return "habit." + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
