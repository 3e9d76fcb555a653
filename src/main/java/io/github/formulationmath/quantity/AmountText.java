package io.github.formulationmath.quantity;

import io.github.formulationmath.number.NumberTextException;
import io.github.formulationmath.number.Ratio;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** A text taken apart into its number and its unit. */
record AmountText(Ratio number, UnitScale scale) {

    private static final int MAX_LENGTH = 1000;

    // Possessive quantifiers: no backtracking, whatever the text. Group 1 is the number, the rest is the unit.
    private static final Pattern NUMBER = Pattern.compile("([+-]?(?:[0-9]++ ++[0-9]++/[0-9]++|[0-9]++/[0-9]++"
            + "|(?:[0-9]++(?:\\.[0-9]++)?|\\.[0-9]++)(?:[eE][+-]?[0-9]++)?)) *+");

    /** Reads strictly; what to write instead is added by the {@link TextReader}. */
    static AmountText read(String text, char decimalMark, @Nullable Measured wanted) {
        NumberAndRest parts = NumberAndRest.split(text, decimalMark);
        return new AmountText(parts.number(), UnitNames.find(text, parts.rest(), wanted));
    }

    /** The number at the head of a text, and what follows it. */
    record NumberAndRest(Ratio number, String rest) {

        static NumberAndRest split(String text, char decimalMark) {
            if (text.length() > MAX_LENGTH) {
                throw new NumberTextException(text, "longer than " + MAX_LENGTH + " characters");
            }
            requirePlainCharacters(text, decimalMark);
            String plain = text.strip().replace(decimalMark, '.');
            Matcher m = NUMBER.matcher(plain);
            if (!m.lookingAt()) {
                throw new NumberTextException(text, "a number and a unit are needed");
            }
            String rest = plain.substring(m.end());
            requireUnit(text, rest, decimalMark);
            return new NumberAndRest(number(text, m.group(1)), rest.replace('.', decimalMark));
        }

        private static Ratio number(String text, String number) {
            try {
                return Ratio.parse(number);
            } catch (NumberTextException e) {
                throw (NumberTextException) new NumberTextException(text, e.reason()).initCause(e);
            }
        }
    }

    private static void requirePlainCharacters(String text, char decimalMark) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c != ' ' && (Character.isWhitespace(c) || Character.isSpaceChar(c) || Character.isISOControl(c))) {
                throw new NumberTextException(
                        text,
                        String.format(
                                Locale.ROOT, "character %d is U+%04X, and only the plain space is read", i + 1, (int)
                                        c));
            }
            if ((c == '.' || c == ',') && c != decimalMark) {
                throw new NumberTextException(
                        text,
                        "the decimal mark here is \"" + decimalMark + "\", and grouping marks are not read: \"" + c
                                + "\" could mean either");
            }
        }
    }

    private static void requireUnit(String text, String rest, char decimalMark) {
        if (rest.isEmpty()) {
            throw new NumberTextException(text, "the unit is missing");
        }
        char next = rest.charAt(0);
        if (Character.isDigit(next) || next == '.' || next == '/' || next == decimalMark) {
            throw new NumberTextException(text, "not one number before the unit");
        }
    }
}
