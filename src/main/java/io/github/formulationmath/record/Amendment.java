package io.github.formulationmath.record;

import java.io.Serializable;
import java.time.Instant;
import java.util.Objects;

/**
 * What was said about a record after it was closed: who, when and what. Who and when are what the caller says; nothing is
 * signed or proved.
 *
 * <p>Example: {@code Amendment.of("the maker", instant, "Reading of line 3 should be 48.2 g: a 3 was read as an 8.")}.
 *
 * <p>Immutable and thread-safe.
 *
 * @param who who said it, as given
 * @param time when it was said, as given
 * @param text what was said, as given
 */
public record Amendment(String who, Instant time, String text) implements Serializable {

    /**
     * Checks the texts.
     *
     * @param who who says it, at most 500 characters
     * @param time when it was said
     * @param text what is said, at most 10000 characters
     * @throws IllegalArgumentException if a text is blank or too long
     */
    public Amendment {
        Texts.require("who", who, Texts.MAX_NAME);
        Objects.requireNonNull(time, "time");
        Texts.require("text", text, Texts.MAX_LENGTH);
    }

    /**
     * An amendment.
     *
     * @param who who says it, at most 500 characters
     * @param time when it was said
     * @param text what is said, at most 10000 characters
     * @return the amendment
     * @throws IllegalArgumentException if a text is blank or too long
     */
    public static Amendment of(String who, Instant time, String text) {
        return new Amendment(who, time, text);
    }

    @Override
    public String toString() {
        return time + " " + who + ": " + text;
    }
}
