package io.github.formulationmath.number;

import java.io.Serial;
import java.util.Objects;

/** A text that should be a number (or an amount) and is not; the message quotes the text and says what was expected. */
public final class NumberTextException extends IllegalArgumentException {

    @Serial
    private static final long serialVersionUID = 1L;

    private final String text;
    private final String reason;

    /**
     * Makes the exception.
     *
     * @param text the text that could not be read; long texts are shortened in the message
     * @param reason what is wrong with it and what was expected
     */
    public NumberTextException(String text, String reason) {
        super("\"" + shortened(Objects.requireNonNull(text, "text")) + "\": "
                + Objects.requireNonNull(reason, "reason"));
        this.text = text;
        this.reason = reason;
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
     * @return the reason without the text
     */
    public String reason() {
        return reason;
    }

    private static String shortened(String text) {
        return text.length() <= 60 ? text : text.substring(0, 57) + "...";
    }
}
