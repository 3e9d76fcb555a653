package io.github.formulationmath.number;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Numbers as text, in one form for all locales. */
final class RatioText {

    /** Longest text that is read; longer ones are no number anyone writes. */
    static final int MAX_LENGTH = 1000;

    /** Largest power of ten, up or down, that is read. */
    static final int MAX_EXPONENT = 1000;

    private static final List<String> EXAMPLES = List.of("12.5", "1e-3", "3/4", "1 3/4");

    /** Made when first needed: most texts are plain numbers. */
    private static final class Forms {

        // Possessive quantifiers: the match never backtracks, whatever the text.
        static final Pattern DECIMAL =
                Pattern.compile("[+-]?(?:[0-9]++(?:\\.[0-9]++)?|\\.[0-9]++)(?:[eE]([+-]?[0-9]++))?");
        static final Pattern FRACTION = Pattern.compile("([+-]?)(?:([0-9]++) ++)?([0-9]++)/([0-9]++)");
    }

    /** So many digits always fit a long. */
    private static final int LONGEST_SHORT = 18;

    private RatioText() {}

    static Ratio parse(String text) {
        Ratio small = shortDecimal(text);
        if (small != null) {
            return small;
        }
        if (text.length() > MAX_LENGTH) {
            throw new NumberTextException(text, NumberTextException.longerThan(MAX_LENGTH));
        }
        String trimmed = trim(text);
        Matcher decimal = Forms.DECIMAL.matcher(trimmed);
        if (decimal.matches()) {
            return decimal(text, decimal);
        }
        Matcher fraction = Forms.FRACTION.matcher(trimmed);
        if (fraction.matches()) {
            return fraction(text, fraction);
        }
        throw NumberTextException.withExamples(text, notANumber(trimmed), EXAMPLES);
    }

    /** The number that most texts are: a few digits with or without a point, and nothing else; null for any other. */
    private static @Nullable Ratio shortDecimal(String text) {
        int length = text.length();
        if (length == 0 || length > LONGEST_SHORT || text.charAt(length - 1) == '.') {
            return null;
        }
        long digits = 0;
        long below = 0;
        for (int i = 0; i < length; i++) {
            char c = text.charAt(i);
            if (c >= '0' && c <= '9') {
                digits = digits * 10 + (c - '0');
                below *= 10;
            } else if (c == '.' && below == 0) {
                below = 1;
            } else {
                return null;
            }
        }
        return below == 0 ? Ratio.of(digits) : Ratio.of(digits, below);
    }

    static String format(Ratio value) {
        if (value.isInteger()) {
            return value.numerator().toString();
        }
        if (value.isDecimal()) {
            return value.toBigDecimal().toPlainString();
        }
        return value.numerator() + "/" + value.denominator();
    }

    static void requireExponent(long exponent, String what) {
        if (Math.abs(exponent) > MAX_EXPONENT) {
            throw new IllegalArgumentException("a number of " + what + " times 10^" + exponent
                    + " is out of range: the power of ten must lie between -" + MAX_EXPONENT + " and " + MAX_EXPONENT);
        }
    }

    private static Ratio decimal(String text, Matcher m) {
        String exponent = m.group(1);
        if (exponent != null && new BigInteger(exponent).abs().compareTo(BigInteger.valueOf(MAX_EXPONENT)) > 0) {
            throw new NumberTextException(
                    text,
                    Sentence.of(
                            "refusal.text.power-of-ten",
                            "the power of ten must lie between -{most} and {most}",
                            "most",
                            String.valueOf(MAX_EXPONENT)));
        }
        return Ratio.ofDecimal(new BigDecimal(m.group()));
    }

    private static Ratio fraction(String text, Matcher m) {
        BigInteger bottom = new BigInteger(m.group(4));
        if (bottom.signum() == 0) {
            throw new NumberTextException(
                    text, Sentence.of("refusal.text.zero-below", "the number below the line is 0"));
        }
        Ratio part = Ratio.of(new BigInteger(m.group(3)), bottom);
        Ratio size =
                m.group(2) == null ? part : Ratio.of(new BigInteger(m.group(2))).plus(part);
        return m.group(1).equals("-") ? size.unaryMinus() : size;
    }

    /** Only the plain space: other blanks are not what people type, and are refused by name below. */
    private static String trim(String text) {
        int from = 0;
        int to = text.length();
        while (from < to && text.charAt(from) == ' ') {
            from++;
        }
        while (to > from && text.charAt(to - 1) == ' ') {
            to--;
        }
        return text.substring(from, to);
    }

    private static Sentence notANumber(String text) {
        return text.indexOf(',') < 0
                ? Sentence.of("refusal.text.not-a-number", "not a number")
                : Sentence.of("refusal.text.comma", "not a number (a decimal point, no comma and no grouping marks)");
    }
}
