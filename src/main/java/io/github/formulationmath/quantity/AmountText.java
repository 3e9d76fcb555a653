package io.github.formulationmath.quantity;

import io.github.formulationmath.number.NumberTextException;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Sentence;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A text taken apart into its number and its unit. */
record AmountText(Ratio number, UnitScale scale) {

    private static final int MAX_LENGTH = 1000;

    /** Longer texts are slips of a program, not of a person, and would fill the message. */
    private static final int LONGEST_REPAIRED = 60;

    private static final int MOST_REMEDIES = 3;

    // Possessive quantifiers: no backtracking, whatever the text. Group 1 is the number, the rest is the unit.
    private static final Pattern NUMBER = Pattern.compile("([+-]?(?:[0-9]++(?: ++|- ?)[0-9]++/[0-9]++|[0-9]++/[0-9]++"
            + "|(?:[0-9]++(?:\\.[0-9]++)?|\\.[0-9]++)(?:[eE][+-]?[0-9]++)?)) *+");

    /** A unit, and another number with a unit behind it. */
    private static final Pattern TWO_UNITS = Pattern.compile("([^0-9,;]++),?+ ?+([0-9][^,;]*+)");

    /**
     * Reads a text strictly and, if it is refused, says what to write instead. Nothing is proposed that the same reader has
     * not just taken.
     *
     * @param strict reads or refuses
     * @param proposals what the text may have meant; it need not be readable
     * @param examples readable texts with a decimal point, for a text that does not show what was meant
     */
    static <T> T orProposals(
            String text,
            char decimalMark,
            Function<String, T> strict,
            Function<String, Stream<String>> proposals,
            List<String> examples) {
        try {
            return strict.apply(text);
        } catch (NumberTextException e) {
            List<String> remedies = text.length() > LONGEST_REPAIRED
                    ? List.of()
                    : proposals
                            .apply(text)
                            .distinct()
                            .filter(proposal -> isTaken(proposal, strict))
                            .limit(MOST_REMEDIES)
                            .toList();
            throw remedies.isEmpty()
                    ? NumberTextException.withExamples(text, e.reason(), withMark(examples, decimalMark))
                    : new NumberTextException(text, e.reason(), remedies);
        }
    }

    private static <T> boolean isTaken(String text, Function<String, T> strict) {
        try {
            return Objects.nonNull(strict.apply(text));
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    /** Examples that are written with a decimal point, as they are read where the mark is another. */
    private static List<String> withMark(List<String> examples, char decimalMark) {
        return examples.stream()
                .map(example -> example.replace('.', decimalMark))
                .toList();
    }

    /** Reads strictly; what to write instead is added by {@link #orProposals}. */
    static AmountText read(String text, char decimalMark, @Nullable Measured wanted) {
        NumberAndRest parts = NumberAndRest.split(text, decimalMark);
        if (hasDigit(parts.rest())) {
            Matcher two = TWO_UNITS.matcher(parts.rest().replace(decimalMark, '.'));
            if (two.matches()
                    && UnitNames.known(two.group(1)).map(KnownUnit::partOf).isPresent()) {
                return twoUnits(text, parts, two, decimalMark);
            }
        }
        return new AmountText(parts.number(), UnitNames.find(text, parts.rest(), wanted));
    }

    private static boolean hasDigit(String rest) {
        for (int i = 0; i < rest.length(); i++) {
            if (isDigitAt(rest, i)) {
                return true;
            }
        }
        return false;
    }

    /** {@code 2 lb 3 1/2 oz}: whole pounds, and ounces that are less than one. */
    private static AmountText twoUnits(String text, NumberAndRest first, Matcher two, char decimalMark) {
        Ratio large = first.number();
        UnitScale larger = UnitNames.known(two.group(1)).orElseThrow();
        NumberAndRest rest = NumberAndRest.split(first.rest().substring(two.start(2)), decimalMark);
        UnitScale smaller = UnitNames.known(rest.rest()).orElse(null);
        if (smaller == null || smaller != KnownUnit.partOf(larger)) {
            throw refused(text, "refusal.text.two-units", "these two units do not make one amount");
        }
        Ratio part = rest.number().times(smaller.factor()).dividedBy(larger.factor());
        if (!large.isInteger() || part.compareTo(Ratio.ONE) >= 0) {
            throw refused(
                    text,
                    "refusal.text.carry",
                    "before {smaller} the number of {larger} is whole, and {smaller} are less than one {larger}",
                    "smaller",
                    smaller.symbol(),
                    "larger",
                    larger.symbol());
        }
        return new AmountText(first.isNegative() ? large.minus(part) : large.plus(part), larger);
    }

    /** A number alone. */
    static Ratio number(String text, char decimalMark) {
        return NumberAndRest.number(text, typed(text, decimalMark).replace(decimalMark, '.'));
    }

    /** A text in its plain form, with the decimal mark as it was typed. */
    private static String typed(String text, char decimalMark) {
        if (text.length() > MAX_LENGTH) {
            throw new NumberTextException(text, NumberTextException.longerThan(MAX_LENGTH));
        }
        String typed = isPlain(text) ? text : TypedText.plain(text, decimalMark);
        requirePlainCharacters(text, typed, decimalMark);
        return typed;
    }

    /** Whether nothing of it can be put into a plainer form, as nothing of most texts can: every rule of {@link TypedText} leaves it alone. */
    private static boolean isPlain(String text) {
        boolean mark = false;
        char before = ' ';
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean isMark = c == '.' || c == ',';
            if (c < ' ' || c > '~' || c == '\'' || isMark && mark || c == ' ' && before == ' ') {
                return false;
            }
            mark |= isMark;
            before = c;
        }
        return before != ' ';
    }

    /** The number at the head of a text, whether a minus stands before it, were it 0, and what follows it. */
    record NumberAndRest(Ratio number, boolean isNegative, String rest) {

        static NumberAndRest split(String text, char decimalMark) {
            String typed = typed(text, decimalMark);
            // Character for character the same, so that what follows the number is what somebody typed there.
            String plain = typed.replace(decimalMark, '.');
            int digits = headOfDigits(plain);
            if (digits > 0) {
                int unit = digits < plain.length() && plain.charAt(digits) == ' ' ? digits + 1 : digits;
                String rest = typed.substring(unit);
                requireUnit(text, rest, decimalMark);
                return new NumberAndRest(Ratio.parse(plain.substring(0, digits)), false, rest);
            }
            Matcher m = NUMBER.matcher(plain);
            if (!m.lookingAt()) {
                throw refused(text, "refusal.text.no-amount", "a number and a unit are needed");
            }
            String rest = typed.substring(m.end());
            requireUnit(text, rest, decimalMark);
            return new NumberAndRest(number(text, m.group(1)), plain.charAt(0) == '-', rest);
        }

        /** How many characters the number has that most texts begin with, a decimal one and no more; 0 for any other. */
        private static int headOfDigits(String plain) {
            int whole = pastDigits(plain, 0);
            int end = plain.startsWith(".", whole) ? pastDigits(plain, whole + 1) : whole;
            boolean isDecimal = whole > 0 && (end == whole || end > whole + 1);
            boolean goesOn = end < plain.length() && "./-eE".indexOf(plain.charAt(end)) >= 0;
            boolean isMixed = plain.startsWith(" ", end) && pastDigits(plain, end + 1) > end + 1;
            return isDecimal && !goesOn && !isMixed ? end : 0;
        }

        private static int pastDigits(String text, int from) {
            int at = from;
            while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
                at++;
            }
            return at;
        }

        private static Ratio number(String text, String number) {
            try {
                return Ratio.parse(
                        number.lastIndexOf('-') > 0 && number.indexOf('/') > 0
                                ? number.charAt(0) + number.substring(1).replace('-', ' ')
                                : number);
            } catch (NumberTextException e) {
                throw e.in(text);
            }
        }
    }

    /** Refuses a text for a reason that has a key. */
    static NumberTextException refused(String text, String key, String english, String... namesAndValues) {
        return new NumberTextException(text, Sentence.of(key, english, namesAndValues));
    }

    private static void requirePlainCharacters(String text, String typed, char decimalMark) {
        for (int i = 0; i < typed.length(); i++) {
            char c = typed.charAt(i);
            boolean isSeen = c >= ' ' && c <= '~';
            if (!isSeen
                    && (Character.isWhitespace(c)
                            || Character.isISOControl(c)
                            || Character.getType(c) == Character.FORMAT)) {
                throw refused(
                        text,
                        "refusal.text.space",
                        "it holds the character U+{code}, which nobody sees and which is not read",
                        "code",
                        String.format(Locale.ROOT, "%04X", (int) c));
            }
            if ((c == '.' || c == ',') && c != decimalMark && (isDigitAt(typed, i - 1) || isDigitAt(typed, i + 1))) {
                throw refused(
                        text,
                        "refusal.text.decimal-mark",
                        "the decimal mark here is \"{mark}\": \"{found}\" may part groups of digits or be a decimal mark, so that it"
                                + " could mean either",
                        "mark",
                        String.valueOf(decimalMark),
                        "found",
                        String.valueOf(c));
            }
        }
    }

    private static boolean isDigitAt(String text, int at) {
        return at >= 0 && at < text.length() && Character.isDigit(text.charAt(at));
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
