package io.github.formulationmath.quantity;

import io.github.formulationmath.number.NumberTextException;
import io.github.formulationmath.number.Ratio;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A text taken apart into its number and its unit. */
record AmountText(Ratio number, UnitScale scale) {

    private static final int MAX_LENGTH = 1000;

    // Possessive quantifiers: no backtracking, whatever the text. Group 1 is the number, the rest is the unit.
    private static final Pattern NUMBER = Pattern.compile("([+-]?(?:[0-9]++ ++[0-9]++/[0-9]++|[0-9]++/[0-9]++"
            + "|(?:[0-9]++(?:\\.[0-9]++)?|\\.[0-9]++)(?:[eE][+-]?[0-9]++)?)) *+");

    private static final Pattern GROUPED = Pattern.compile("[+-]?[1-9][0-9]{0,2}[.,][0-9]{3}(?![0-9])");

    static AmountText read(String text, char decimalMark) {
        NumberAndRest parts = NumberAndRest.split(text, decimalMark);
        return new AmountText(parts.number(), UnitNames.find(text, parts.rest()));
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
                throw new NumberTextException(text, "a number and a unit are needed, like 12.5 g or 1 3/4 oz");
            }
            String rest = plain.substring(m.end());
            requireUnit(text, rest, decimalMark);
            return new NumberAndRest(number(text, m.group(1)), rest);
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
                        String.format(Locale.ROOT, "character %d is U+%04X: use the plain space", i + 1, (int) c));
            }
            if ((c == '.' || c == ',') && c != decimalMark) {
                throw new NumberTextException(
                        text,
                        "the decimal mark here is \"" + decimalMark + "\", and grouping marks are not read: \"" + c
                                + "\" could mean either; " + remedy(text.strip(), c, decimalMark));
            }
        }
    }

    /** What to write instead; three digits behind the mark leave both readings open. */
    private static String remedy(String text, char mark, char decimalMark) {
        boolean single = text.indexOf(mark) == text.lastIndexOf(mark) && text.indexOf(decimalMark) < 0;
        if (!single) {
            return "write one decimal mark and no other, like 1000" + decimalMark + "5";
        }
        String decimal = "write " + text.replace(mark, decimalMark);
        boolean mayGroup = GROUPED.matcher(text).lookingAt();
        return mayGroup ? decimal + " or " + text.replace(String.valueOf(mark), "") : decimal;
    }

    private static void requireUnit(String text, String rest, char decimalMark) {
        if (rest.isEmpty()) {
            throw new NumberTextException(text, "the unit is missing, like g in 12.5 g or % in 3 %");
        }
        char next = rest.charAt(0);
        if (Character.isDigit(next) || next == '.' || next == '/' || next == decimalMark) {
            throw new NumberTextException(
                    text, "not one number before the unit; write it like 12.5, 1e-3, 3/4 or 1 3/4");
        }
    }
}
