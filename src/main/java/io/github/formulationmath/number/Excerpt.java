package io.github.formulationmath.number;

import java.util.Objects;

/**
 * A value as a message quotes it: whole if it is short, else its beginning and its end with the number of its characters, so
 * that no value, however long, fills a message or a log.
 *
 * <p>Example: {@code Excerpt.of(Ratio.parse("1e400"))} is the digit 1 and zeros, three dots, zeros again, and {@code (401
 * characters)}.
 */
public final class Excerpt {

    /** The longest text that is quoted whole. */
    static final int LONGEST = 100;

    private static final int HEAD = 60;
    private static final int TAIL = 20;

    private Excerpt() {}

    /**
     * The text of a value, shortened if it is long.
     *
     * @param value the value; its {@code toString} is quoted
     * @return at most about 100 characters, and how many there were if some are left out
     */
    public static String of(Object value) {
        String text = Objects.requireNonNull(value, "value").toString();
        return text.length() <= LONGEST
                ? text
                : text.substring(0, HEAD) + "..." + text.substring(text.length() - TAIL) + " (" + text.length()
                        + " characters)";
    }
}
