package io.github.formulationmath.annex;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** One line of our own reading of Annex II: by what an entry is looked for besides the names it prints. */
record WordReading(String entry, Match match, String text) {

    /** How the text is compared with a name. */
    enum Match {
        /** Another name of what the entry names. */
        NAME,
        /** A name or number listed there that is not surely meant. */
        MAYBE,
        /** A whole word. */
        WORD,
        /** A part of the name. */
        PART,
        /** How the name begins. */
        START,
        /** A part of names that are not meant. */
        EXCEPT;

        String code() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** Whether a name, in the form of {@link KeyFile#keyOf}, has it. */
    boolean isIn(String name) {
        return switch (match) {
            case NAME, MAYBE -> name.equals(text);
            case PART, EXCEPT -> name.contains(text);
            case START -> name.startsWith(text);
            case WORD -> name.contains(text) && words(name).contains(text);
        };
    }

    private static List<String> words(String name) {
        return Arrays.asList(name.split("[^\\p{L}\\p{N}]+", -1));
    }
}
