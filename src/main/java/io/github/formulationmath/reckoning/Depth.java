package io.github.formulationmath.reckoning;

/** How much of a working is printed. */
enum Depth {
    /** What was asked and the answer. */
    ANSWER,
    /** Also the given values, each computed step and the assumptions. */
    STEPS,
    /** Also where the given values come from, each comparison, and what each rounding changed. */
    EVERYTHING
}
