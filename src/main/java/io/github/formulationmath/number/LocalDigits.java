package io.github.formulationmath.number;

import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.Pattern;

/**
 * The decimal mark and the digits of a locale, for numbers that the library has printed: {@code 12.5 g} is {@code 12,5 g} in
 * German. Digits are not grouped, so that what stands on paper is what {@code AmountFormat.forLocale} reads.
 *
 * <p>For what a person reads. Data, {@code toString} and JSON have the decimal point in every locale.
 *
 * <p>Immutable and thread-safe.
 */
public final class LocalDigits {

    // Possessive quantifiers: no backtracking, whatever the text.
    private static final String NUMBER = "(?:[≈±] )?+[+−-]?+[0-9]++(?:\\.[0-9]++)?+(?:/[0-9]++)?+";
    /** What is less than one of a unit, told in parts of it: 2 lb 3.5 oz. */
    private static final String TWO_UNITS = "(?:lb|kg|L) [0-9]++(?:\\.[0-9]++)?+ (?:oz|g|mL)";

    private static final String LETTERS = "[\\p{L}\\p{Sc}°%‰µ/·²³⁻¹⁰⁴-⁹]{1,24}+";
    private static final String UNIT = "(?: (?:" + TWO_UNITS + "|g I2/100 g|mg (?:KOH|NaOH)/g|(?:(?:US|imp|metric) )?+"
            + LETTERS + "(?: oz)?+(?:(?<=/)\\(" + LETTERS + "\\))?+))?+";
    private static final Pattern NUMBERS =
            Pattern.compile("\\[?+" + NUMBER + UNIT + "(?:(?: ≈ |, | – )" + NUMBER + UNIT + ")*+(?:]" + UNIT + ")?+");

    private final char decimalMark;
    private final char zero;

    private LocalDigits(DecimalFormatSymbols symbols) {
        this.decimalMark = symbols.getDecimalSeparator();
        this.zero = symbols.getZeroDigit();
    }

    /**
     * The digits of a locale.
     *
     * @param locale the locale
     * @return its digits and its decimal mark
     */
    public static LocalDigits of(Locale locale) {
        return new LocalDigits(DecimalFormatSymbols.getInstance(Objects.requireNonNull(locale, "locale")));
    }

    /**
     * The digits and points of a number in those of the locale.
     *
     * @param number a number without unit, as the library prints it
     * @return the same number; every other character stays
     */
    public String digits(String number) {
        Objects.requireNonNull(number, "number");
        if (decimalMark == '.' && zero == '0') {
            return number;
        }
        StringBuilder text = new StringBuilder(number.length());
        number.chars().forEach(c -> text.append(digit((char) c)));
        return text.toString();
    }

    private char digit(char c) {
        return c == '.' ? decimalMark : c >= '0' && c <= '9' ? (char) (zero + (c - '0')) : c;
    }

    /**
     * A text in the digits of the locale if it is numbers, with or without units, and nothing else: {@code 12.5 g}, {@code ≈
     * 0.666667 %}, {@code 2/3 g ≈ 0.666667 g}, {@code [0.99, 1.01] %}, {@code
     * ± 2.5 %}. A name that holds a number, such as {@code Gel 2.5},
     * stays as it is.
     *
     * @param text a number as the library prints it, or any other text
     * @return the text in the digits of the locale, or as it was
     */
    public String text(String text) {
        Objects.requireNonNull(text, "text");
        return NUMBERS.matcher(text).matches() ? digits(text) : text;
    }

    /** The number one and a half in these digits: {@code 1,5}. */
    @Override
    public String toString() {
        return digits("1.5");
    }
}
