package io.github.formulationmath.verification;

import java.util.Locale;

/**
 * What came of verifying a claim, the gravest finding first: {@link #DOES_NOT_HOLD}, then {@link
 * #SHOWS_NOTHING_FOR_SOME_LINES}, {@link #INCOMPLETE}, {@link #HOLDS_BY_HABIT}. Only {@link #HOLDS} says that every line
 * has a figure and every figure is ours, rounded. None says that the product is safe.
 */
public enum Outcome {
    /** Every line has a figure with digits that count; all are ours, rounded, or a closed set of ours; so is the total. */
    HOLDS,
    /** As {@link #HOLDS}, but only by another habit of showing figures, which {@link Verification#habit()} names. */
    HOLDS_BY_HABIT,
    /** What was shown agrees, but some lines have no figure. */
    INCOMPLETE,
    /** No figure disagrees, but some are 0 where ours are more. */
    SHOWS_NOTHING_FOR_SOME_LINES,
    /** At least one figure, or the total, is another number than ours. */
    DOES_NOT_HOLD;

    String inWords() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
