package io.github.formulationmath.formula;

import java.util.Objects;

/** The one rule for names. */
final class Names {

    /** Longer texts are no names. */
    static final int MAX_LENGTH = 500;

    private Names() {}

    static String require(String argument, String name) {
        Objects.requireNonNull(name, argument);
        if (name.isBlank()) {
            throw new IllegalArgumentException(argument + " is blank: give a name");
        }
        if (name.length() > MAX_LENGTH) {
            throw new IllegalArgumentException(
                    argument + " has " + name.length() + " characters: at most " + MAX_LENGTH + " are allowed");
        }
        return name;
    }
}
