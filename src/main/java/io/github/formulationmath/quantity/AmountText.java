package io.github.formulationmath.quantity;

import io.github.formulationmath.number.NumberTextException;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Sentence;
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
                throw new NumberTextException(text, NumberTextException.longerThan(MAX_LENGTH));
            }
            requirePlainCharacters(text, decimalMark);
            String plain = text.strip().replace(decimalMark, '.');
            Matcher m = NUMBER.matcher(plain);
            if (!m.lookingAt()) {
                throw refused(text, "refusal.text.no-amount", "a number and a unit are needed");
            }
            String rest = plain.substring(m.end());
            requireUnit(text, rest, decimalMark);
            return new NumberAndRest(number(text, m.group(1)), rest.replace('.', decimalMark));
        }

        private static Ratio number(String text, String number) {
            try {
                return Ratio.parse(number);
            } catch (NumberTextException e) {
                throw e.in(text);
            }
        }
    }

    /** Refuses a text for a reason that has a key. */
    static NumberTextException refused(String text, String key, String english, String... namesAndValues) {
        return new NumberTextException(text, Sentence.of(key, english, namesAndValues));
    }

    private static void requirePlainCharacters(String text, char decimalMark) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c != ' ' && (Character.isWhitespace(c) || Character.isSpaceChar(c) || Character.isISOControl(c))) {
                throw refused(
                        text,
                        "refusal.text.space",
                        "character {at} is U+{code}, and only the plain space is read",
                        "at",
                        String.valueOf(i + 1),
                        "code",
                        String.format(Locale.ROOT, "%04X", (int) c));
            }
            if ((c == '.' || c == ',') && c != decimalMark) {
                throw refused(
                        text,
                        "refusal.text.decimal-mark",
                        "the decimal mark here is \"{mark}\", and grouping marks are not read: \"{found}\" could mean"
                                + " either",
                        "mark",
                        String.valueOf(decimalMark),
                        "found",
                        String.valueOf(c));
            }
        }
    }

    private static void requireUnit(String text, String rest, char decimalMark) {
        if (rest.isEmpty()) {
            throw refused(text, "refusal.text.no-unit", "the unit is missing");
        }
        char next = rest.charAt(0);
        if (Character.isDigit(next) || next == '.' || next == '/' || next == decimalMark) {
            throw refused(text, "refusal.text.numbers", "not one number before the unit");
        }
    }
}
