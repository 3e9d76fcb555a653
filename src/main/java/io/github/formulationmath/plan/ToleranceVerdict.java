package io.github.formulationmath.plan;

import io.github.formulationmath.reckoning.Phrase;

/**
 * What can be said of a line as made and its tolerance, before anything is weighed.
 *
 * <p>Example: a line that may come out between 0.95 and 1.12 times its share is, at 10 %, {@link #NOT_SHOWN_WITHIN}.
 */
public enum ToleranceVerdict {
    /** Whatever the bounded errors do, the line keeps its tolerance. */
    WITHIN("verdict.tolerance-within"),
    /** The line may keep its tolerance or not: the balance is too coarse to be sure. */
    NOT_SHOWN_WITHIN("verdict.tolerance-not-shown-within"),
    /** Whatever the bounded errors do, the line misses its tolerance. */
    OUTSIDE("verdict.tolerance-outside");

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
}
