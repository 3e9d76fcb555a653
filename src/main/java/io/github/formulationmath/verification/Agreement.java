package io.github.formulationmath.verification;

/** How a figure stands to ours. */
public enum Agreement {
    /** The same number exactly. */
    AGREES,
    /** Ours, rounded to the step of the figure, a tie either way. */
    AGREES_AS_ROUNDED,
    /** Ours, as a program prints a binary floating-point number: within half of 10<sup>−13</sup> of itself. */
    AGREES_AS_BINARY,
    /** Ours, with the divisions left over by rounding shared out so that the total closes. */
    AGREES_AS_CLOSED,
    /** Ours, by the habit of showing figures that {@link Verification#habit()} names. */
    AGREES_BY_HABIT,
    /** 0, where ours is more: no digit counts. As shown, the line would be left out. */
    SHOWS_NOTHING,
    /** Another number. */
    DISAGREES
}
