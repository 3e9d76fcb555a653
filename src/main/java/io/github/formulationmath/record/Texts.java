package io.github.formulationmath.record;

import java.util.Objects;

/** The rules for texts that people write into a record. */
final class Texts {

    static final int MAX_LENGTH = BenchEntry.LONGEST_TEXT;

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
