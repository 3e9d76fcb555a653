package io.github.formulationmath.number;

import java.util.Collection;
import java.util.Objects;

/**
 * A value as a message quotes it: whole if it is short, else its beginning and its end with the number of its characters, so
 * that no value, however long, fills a message or a log.
 *
 * <p>Example: {@code Excerpt.of(Ratio.parse("1e400"))} shows the digit 1 and zeros, three dots, zeros again, and {@code (401
 * characters)}.
 */
public final class Excerpt {

    /** The longest text that is quoted whole. */
    static final int LONGEST = 100;

    private static final int HEAD = 60;
    private static final int TAIL = 20;

    /** The longest list that is quoted whole; one value is shorter. */
    private static final int LONGEST_LIST = 300;

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
                : text.substring(0, whole(text, HEAD)) + "..." + text.substring(whole(text, text.length() - TAIL))
                        + " (" + text.length() + " characters)";
    }

    /** A place that cuts no character of two halves in two. */
    private static int whole(String text, int place) {
        return Character.isLowSurrogate(text.charAt(place)) ? place - 1 : place;
    }

    /**
     * Several values as a message lists them, each as {@link #of(Object)} quotes it, with commas between.
     *
     * @param values the values in the order to be listed
     * @return as many as fit into about 300 characters, at least one if there is one, and how many more there are
     */
    public static String ofAll(Collection<?> values) {
        StringBuilder text = new StringBuilder();
        int listed = 0;
        for (Object value : Objects.requireNonNull(values, "values")) {
            String next = of(value);
            if (text.length() + next.length() > LONGEST_LIST) {
                return text.append(" and ")
                        .append(values.size() - listed)
                        .append(" more")
                        .toString();
            }
            text.append(listed == 0 ? "" : ", ").append(next);
            listed++;
        }
        return text.toString();
    }
}
