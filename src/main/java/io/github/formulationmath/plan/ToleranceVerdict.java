package io.github.formulationmath.plan;

import io.github.formulationmath.reckoning.Phrase;

/**
 * What can be said of a line and its tolerance, before anything is weighed or by what the displays showed.
 *
 * <p>Example: a line that may come out between 0.95 and 1.12 times its share is, at 10 %, {@link #NOT_SHOWN_WITHIN}. Asked for
 * 2 % ± 0.1 %, a share that was read and lies between 1.95 and 2.05 % is {@link #WITHIN}; one read as 2.08 % that may be
 * anything from 2.03 to 2.13 % is {@link #WITHIN_AS_READ}.
 */
public enum ToleranceVerdict {
    /** Whatever the bounded errors do, the line keeps its tolerance. */
    WITHIN("verdict.tolerance-within"),
    /** The share as read is within; the true one may not be. */
    WITHIN_AS_READ("verdict.tolerance-within-as-read"),
    /** Nothing was read yet, and the line may keep its tolerance or not: the balance is too coarse to be sure. */
    NOT_SHOWN_WITHIN("verdict.tolerance-not-shown-within"),
    /** The share as read is outside; the true one may be within. */
    OUTSIDE_AS_READ("verdict.tolerance-outside-as-read"),
    /** Whatever the bounded errors do, the line misses its tolerance. */
    OUTSIDE("verdict.tolerance-outside"),
    /** Nobody wrote the mass down. */
    NOT_KNOWN("verdict.tolerance-not-known");

    private final String key;

    ToleranceVerdict(String key) {
        this.key = key;
    }

    /**
     * The verdict in words.
     *
     * @param line the name of the line
     * @return a phrase for the wording
     */
    public Phrase phrase(String line) {
        return Phrase.of(key, line);
    }

    /**
     * Whether a line that was made is to be mended.
     *
     * @return true unless the line is within, at least as read
     */
    public boolean asksForCorrection() {
        return this != WITHIN && this != WITHIN_AS_READ;
    }
}
