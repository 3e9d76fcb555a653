package io.github.formulationmath.weighing;

/**
 * Where the error of an addition comes from.
 *
 * <p>Example: the largest entry of an {@link ErrorBudget} says which of these to work on.
 */
public enum ErrorSource {
    /** What the display hid when it was set to zero, or tared, before the addition. */
    TARE,
    /** What the display hides after the addition. */
    READING,
    /** The balance does not show the same twice. */
    REPEATABILITY,
    /** The balance does not rise evenly over its range. */
    LINEARITY,
    /** The balance as a whole shows too much or too little, by the same ratio everywhere. */
    CALIBRATION,
    /** What stays behind in the boat from which the addition was poured. */
    RESIDUE,
    /** The air carries part of what is weighed. */
    BUOYANCY
}
