package io.github.formulationmath.verification;

import io.github.formulationmath.number.Ratio;
import java.io.Serializable;
import java.text.Normalizer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The text of a figure taken apart.
 *
 * @param plain the text with fractions in digits, as amounts are read
 * @param number the number before the unit
 * @param lastDigit what one in the last digit, or in the numerator, is worth
 * @param decimal the digits of a plain decimal; null for a fraction
 */
record FigureText(
        String plain,
        Ratio number,
        Ratio lastDigit,
        @Nullable String decimal) implements Serializable {

    /** What survives from decimal to binary64 and back, whatever the number. */
    static final int DIGITS_OF_A_DOUBLE = 15;

    private static final char FRACTION_SLASH = '\u2044';

    private static final String UNIT = " [^ 0-9].{0,20}";
    private static final Pattern DECIMAL = Pattern.compile("([0-9]{1,100}(?:\\.([0-9]{1,100}))?)" + UNIT);
    private static final Pattern FRACTION = Pattern.compile("(?:([0-9]{1,100}) )?([0-9]{1,9})/([0-9]{1,9})" + UNIT);

    static FigureText read(String text) {
        String plain = inDigits(text);
        Matcher decimal = DECIMAL.matcher(plain);
        if (decimal.matches()) {
            int places = decimal.group(2) == null ? 0 : decimal.group(2).length();
            return new FigureText(plain, Ratio.parse(decimal.group(1)), Ratio.parse("1e-" + places), decimal.group(1));
        }
        Matcher fraction = FRACTION.matcher(plain);
        if (fraction.matches()) {
            return fraction(text, plain, fraction);
        }
        throw new IllegalArgumentException("figure is \"" + text
                + "\": write a plain decimal or a fraction, a space and a unit, like 12.0 g or 3 3/4 oz");
    }

    private static FigureText fraction(String text, String plain, Matcher fraction) {
        long above = Long.parseLong(fraction.group(2));
        long below = Long.parseLong(fraction.group(3));
        if (below == 0 || fraction.group(1) != null && above >= below) {
            throw new IllegalArgumentException("figure is \"" + text + "\": the number below the line must be above "
                    + (below == 0 ? "0" : "the one above it, as in 3 3/4 oz"));
        }
        Ratio whole = fraction.group(1) == null ? Ratio.ZERO : Ratio.parse(fraction.group(1));
        return new FigureText(plain, whole.plus(Ratio.of(above, below)), Ratio.of(1, below), null);
    }

    /** 3½ as 3 1/2: a fraction that is one character becomes digits, apart from the whole number before it. */
    private static String inDigits(String text) {
        StringBuilder plain = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            String parts = c < 128 ? "" : Normalizer.normalize(String.valueOf(c), Normalizer.Form.NFKD);
            boolean follows = i > 0 && Character.isDigit(text.charAt(i - 1));
            if (parts.length() > 1 && parts.indexOf(FRACTION_SLASH) > 0) {
                plain.append(follows ? " " : "").append(parts.replace(FRACTION_SLASH, '/'));
            } else {
                plain.append(c == FRACTION_SLASH ? '/' : c);
            }
        }
        return plain.toString();
    }

    /** As {@link #significantDigits()}, less the zeros at the end where there is no point. */
    int digitsWritten() {
        return decimal == null || decimal.contains(".")
                ? significantDigits()
                : decimal.replaceFirst("^0+", "").replaceFirst("0+$", "").length();
    }

    /** How many digits stand from the first that is not 0; none in a fraction. */
    int significantDigits() {
        return decimal == null
                ? 0
                : decimal.replace(".", "").replaceFirst("^0+", "").length();
    }
}
