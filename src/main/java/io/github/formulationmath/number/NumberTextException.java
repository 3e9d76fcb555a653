package io.github.formulationmath.number;

import java.io.Serial;
import java.util.List;
import java.util.Objects;

/**
 * A text that should be a number (or an amount) and is not; the message quotes the text, says what was expected, and what
 * may be typed instead.
 */
public final class NumberTextException extends IllegalArgumentException {

    private static final int LONGEST_QUOTE = 60;

    @Serial
    private static final long serialVersionUID = 2L;

    private final String text;
    private final String reason;
    private final List<String> remedies;

    /**
     * Makes the exception.
     *
     * @param text the text that could not be read; long texts are shortened in the message
     * @param reason what is wrong with it and what was expected
     */
    public NumberTextException(String text, String reason) {
        this(text, reason, List.of());
    }

    /**
     * Makes the exception with what may be written instead.
     *
     * @param text the text that could not be read; long texts are shortened in the message
     * @param reason what is wrong with it and what was expected, without the remedies
     * @param remedies whole texts that the same reader takes; the message ends with them
     */
    public NumberTextException(String text, String reason, List<String> remedies) {
        this(text, reason, "; write ", remedies);
    }

    private NumberTextException(String text, String reason, String lead, List<String> remedies) {
        super(quoted(Objects.requireNonNull(text, "text")) + ": " + Objects.requireNonNull(reason, "reason")
                + (remedies.isEmpty() ? "" : lead + listed(remedies)));
        this.text = text;
        this.reason = reason;
        this.remedies = List.copyOf(remedies);
    }

    /**
     * Makes the exception with examples, for a text that does not show what was meant.
     *
     * @param text the text that could not be read; long texts are shortened in the message
     * @param reason what is wrong with it and what was expected, without the examples
     * @param examples whole texts that the same reader takes; the message ends with them
     * @return the exception
     */
    public static NumberTextException withExamples(String text, String reason, List<String> examples) {
        return new NumberTextException(text, reason, "; write it like ", examples);
    }

    private NumberTextException(String place, NumberTextException refused) {
        super(place + ": " + refused.getMessage(), refused);
        this.text = refused.text;
        this.reason = refused.reason;
        this.remedies = refused.remedies;
    }

    /**
     * The same exception with what the text is of, where the reader of the text could not know it.
     *
     * @param place what the text is of, for example {@code the amount of Glycerin}; the message begins with it
     * @return the exception, caused by this one, with the same text, reason and remedies
     */
    public NumberTextException at(String place) {
        return new NumberTextException(Objects.requireNonNull(place, "place"), this);
    }

    /**
     * The whole text that could not be read.
     *
     * @return the text as given
     */
    public String text() {
        return text;
    }

    /**
     * What is wrong with the text and what was expected.
     *
     * @return the reason without the text and without the remedies
     */
    public String reason() {
        return reason;
    }

    /**
     * Texts that the same reader takes: what the text may have meant, or examples if it does not show that.
     *
     * @return an unmodifiable list, in the order of the message; empty if nothing can be proposed
     */
    public List<String> remedies() {
        return remedies;
    }

    private static String listed(List<String> remedies) {
        int last = remedies.size() - 1;
        return last == 0 ? remedies.get(0) : String.join(", ", remedies.subList(0, last)) + " or " + remedies.get(last);
    }

    private static String quoted(String text) {
        return text.length() <= LONGEST_QUOTE
                ? "\"" + text + "\""
                : "\"" + text.substring(0, LONGEST_QUOTE - 3) + "...\" (" + text.length() + " characters)";
    }
}
