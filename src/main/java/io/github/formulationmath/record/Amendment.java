package io.github.formulationmath.record;

import java.io.Serial;
import java.io.Serializable;
import java.time.Instant;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What was said about a record after it was closed: who, when and what. Who and when are what the caller says; nothing is
 * signed or proved.
 *
 * <p>Example: {@code Amendment.of("the maker", instant, "Reading of line 3 should be 48.2 g: a 3 was read as an 8.")}.
 *
 * <p>Immutable and thread-safe.
 */
public final class Amendment implements Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private final String who;
    private final Instant time;
    private final String text;

    private Amendment(String who, Instant time, String text) {
        this.who = who;
        this.time = time;
        this.text = text;
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
        return new Amendment(
                Texts.requireName("who", who), Objects.requireNonNull(time, "time"), Texts.requireText("text", text));
    }

    /**
     * Who said it.
     *
     * @return the name as given
     */
    public String who() {
        return who;
    }

    /**
     * When it was said.
     *
     * @return the time as given
     */
    public Instant time() {
        return time;
    }

    /**
     * What was said.
     *
     * @return the text as given
     */
    public String text() {
        return text;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Amendment that
                && who.equals(that.who)
                && time.equals(that.time)
                && text.equals(that.text);
    }

    @Override
    public int hashCode() {
        return Objects.hash(who, time, text);
    }

    @Override
    public String toString() {
        return time + " " + who + ": " + text;
    }
}
