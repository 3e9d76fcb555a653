package io.github.formulationmath.formula;

import io.github.formulationmath.number.Excerpt;
import java.util.Objects;

/** What can be a name. */
final class Names {

    /** Longer texts are no names. */
    static final int MAX_LENGTH = 500;

    private Names() {}

    static String require(String argument, String name) {
        Objects.requireNonNull(name, argument);
        if (name.length() > MAX_LENGTH) {
            throw new IllegalArgumentException(
                    argument + " has " + name.length() + " characters: at most " + MAX_LENGTH + " are allowed");
        }
        if (SubstanceName.normalise(name).isEmpty()) {
            throw new IllegalArgumentException(argument + " is blank: give a name"
                    + (name.isBlank() ? "" : ", with a letter or a digit that can be seen"));
        }
        for (int i = 0; i < name.length(); i++) {
            if (isLineBreak(name.charAt(i))) {
                throw new IllegalArgumentException(argument + " has a line break after \""
                        + Excerpt.of(name.substring(0, i)) + "\": write the name on one line");
            }
        }
        return name;
    }

    /** The mandatory breaks of the Unicode Standard, Annex 14. */
    private static boolean isLineBreak(char c) {
        return c >= '\n' && c <= '\r' || c == '\u0085' || c == '\u2028' || c == '\u2029';
    }
}
