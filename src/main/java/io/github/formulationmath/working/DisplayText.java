package io.github.formulationmath.working;

import java.util.Objects;

/**
 * Texts of people, such as the names of ingredients, made fit to be printed: one rule for workings, reports, sheets and
 * labels.
 *
 * <p>Example: {@code columns("膏")} is 2, and {@code clean("a\nb")} is {@code "a b"}.
 */
public final class DisplayText {

    private DisplayText() {}

    /**
     * A text that cannot leave its place: line ends and other controls become spaces, controls of the writing direction
     * become the replacement character U+FFFD, and a text with letters written from right to left stands between the
     * isolating marks U+2068 and U+2069, so that it cannot turn round what stands beside it.
     *
     * @param text the text
     * @return one line
     */
    public static String clean(String text) {
        return Words.clean(Objects.requireNonNull(text, "text"));
    }

    /**
     * The columns that a text takes where letters have a fixed width, as on a terminal: two for a wide letter (Chinese,
     * Japanese, Korean, emoji), none for a mark on the letter before it.
     *
     * @param text the text
     * @return the number of columns
     */
    public static int columns(String text) {
        return Columns.width(Objects.requireNonNull(text, "text"));
    }

    /**
     * A cleaned text for HTML, as content or inside a quoted attribute.
     *
     * @param text the text
     * @return the text, {@linkplain #clean cleaned}, with what HTML would read as markup escaped
     */
    public static String html(String text) {
        return Escape.html(clean(text));
    }
}
