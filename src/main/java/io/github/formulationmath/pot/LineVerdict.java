package io.github.formulationmath.pot;

/**
 * Whether a made line is within its tolerance, and how sure that is, given what the display hides.
 *
 * <p>Example: asked for 2 % ± 0.1 %. A share between 1.95 and 2.05 % is within; one read as 2.08 % that may be anything
 * from 2.03 to 2.13 % is within as read.
 */
public enum LineVerdict {
    /** Every share that the readings allow is within. */
    WITHIN,
    /** The share as read is within; the true one may not be. */
    WITHIN_AS_READ,
    /** The share as read is outside; the true one may be within. */
    OUTSIDE_AS_READ,
    /** Every share that the readings allow is outside. */
    OUTSIDE,
    /** Nobody wrote the mass down. */
    NOT_KNOWN;

    /**
     * Whether the line is to be mended.
     *
     * @return true unless the line is within, at least as read
     */
    public boolean asksForCorrection() {
        return this != WITHIN && this != WITHIN_AS_READ;
    }
}
