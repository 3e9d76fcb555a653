package io.github.formulationmath.record;

import java.util.Objects;

/** The rules for texts that people write into a record. */
public final class Texts {

    /**
     * The longest note; longer texts belong into a document of their own.
     */
    public static final int MAX_LENGTH = 10_000;

    static final int MAX_NAME = 500;

    private Texts() {}

    static String require(String argument, String text, int most) {
        if (Objects.requireNonNull(text, argument).isBlank()) {
            throw new IllegalArgumentException(argument + " is blank: write something");
        }
        if (text.length() > most) {
            throw new IllegalArgumentException(
                    argument + " has " + text.length() + " characters: at most " + most + " are kept");
        }
        return text;
    }
}
