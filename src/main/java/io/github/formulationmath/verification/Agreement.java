package io.github.formulationmath.verification;

/** How a figure stands to ours. */
public enum Agreement {
    /** The same number exactly. */
    AGREES,
    /** Ours, rounded to the step of the figure. */
    AGREES_AS_ROUNDED,
    /** Ours, with the divisions left over by rounding shared out so that the total closes. */
    AGREES_AS_CLOSED,
    /** Another number. */
    DISAGREES
}
