package io.github.formulationmath.record;

import io.github.formulationmath.number.Excerpt;
import java.io.Serializable;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The code of a batch, as it goes into the notebook and onto the label: {@code PRODUCT-YYYYMMDD-NN-C}.
 *
 * <p>PRODUCT is one to twelve capital letters and digits of the maker's choice, then the day of making, the number of the
 * batch on that day (two to four digits), and a check character C over all letters and digits before it (ISO/IEC 7064,
 * hybrid system MOD 37,36). A code copied with one character wrong is refused.
 *
 * <p>Example: {@code BatchCode.of("OATLOT", LocalDate.of(2026, 11, 25), 1)} is {@code OATLOT-20261125-01-8}, with 8 as
 * its check character; {@link #parse} reads it again.
 *
 * <p>Immutable and thread-safe.
 *
 * @param product capital letters and digits
 * @param day the day of making
 * @param number the number of the batch on that day, from 1
 */
public record BatchCode(String product, LocalDate day, int number) implements Comparable<BatchCode>, Serializable {

    private static final Pattern FORM =
            Pattern.compile("([0-9A-Z]{1,12})-([0-9]{8})-([0-9]{2}|[1-9][0-9]{2,3})-([0-9A-Z])");
    private static final int MOST_ON_A_DAY = 9999;

    /**
     * Checks the parts.
     *
     * @param product one to twelve capital letters A–Z and digits
     * @param day the day of making, in the years 1000 to 9999
     * @param number the number of the batch on that day, from 1 to 9999
     * @throws IllegalArgumentException if a part is out of range
     */
    public BatchCode {
        Objects.requireNonNull(product, "product");
        boolean letters = product.chars().allMatch(c -> CheckCharacter.isInAlphabet((char) c));
        if (product.isEmpty() || product.length() > 12 || !letters) {
            throw new IllegalArgumentException("product is \"" + (product.length() > 40 ? "…" : product)
                    + "\": it must be one to twelve capital letters A-Z and digits");
        }
        if (Objects.requireNonNull(day, "day").getYear() < 1000 || day.getYear() > 9999) {
            throw new IllegalArgumentException("day is " + Excerpt.of(day) + ": the year must have four digits");
        }
        if (number < 1 || number > MOST_ON_A_DAY) {
            throw new IllegalArgumentException("number is " + number + ": it must lie between 1 and " + MOST_ON_A_DAY);
        }
    }

    /**
     * A code.
     *
     * @param product one to twelve capital letters A–Z and digits
     * @param day the day of making, in the years 1000 to 9999
     * @param number the number of the batch on that day, from 1 to 9999
     * @return the code
     * @throws IllegalArgumentException if a part is out of range
     */
    public static BatchCode of(String product, LocalDate day, int number) {
        return new BatchCode(product, day, number);
    }

    /**
     * A code, the day as text.
     *
     * @param product one to twelve capital letters A–Z and digits
     * @param day the day of making, for example {@code "2026-11-25"}
     * @param number the number of the batch on that day, from 1 to 9999
     * @return the code
     * @throws IllegalArgumentException as {@link #of(String, LocalDate, int)}, or if the text is no day
     */
    public static BatchCode of(String product, String day, int number) {
        try {
            return of(product, LocalDate.parse(Objects.requireNonNull(day, "day")), number);
        } catch (DateTimeException e) {
            throw new IllegalArgumentException(
                    "day is \"" + Excerpt.of(day) + "\", no day: write year, month and day like 2026-11-26", e);
        }
    }

    /**
     * Reads a code.
     *
     * @param text the code, with its hyphens and in capital letters
     * @return the code
     * @throws IllegalArgumentException if the text has another form, no such day exists, or the check character does not
     *     fit
     */
    public static BatchCode parse(String text) {
        Matcher m = FORM.matcher(Objects.requireNonNull(text, "text"));
        if (!m.matches()) {
            throw new IllegalArgumentException("text is \"" + (text.length() > 40 ? text.substring(0, 40) + "…" : text)
                    + "\": a batch code looks like OATLOT-20261125-01-X");
        }
        BatchCode code = of(m.group(1), dayOf(text, m.group(2)), Integer.parseInt(m.group(3)));
        if (code.checkCharacter() != m.group(4).charAt(0)) {
            throw new IllegalArgumentException("text is \"" + Excerpt.of(text) + "\": its check character would be "
                    + code.checkCharacter() + "; look for a slip of the pen");
        }
        return code;
    }

    private static LocalDate dayOf(String text, String digits) {
        try {
            return LocalDate.parse(digits, DateTimeFormatter.BASIC_ISO_DATE);
        } catch (DateTimeException e) {
            throw new IllegalArgumentException(
                    "text is \"" + Excerpt.of(text) + "\": there is no day " + Excerpt.of(digits), e);
        }
    }

    /**
     * The check character.
     *
     * @return a digit or capital letter
     */
    public char checkCharacter() {
        return CheckCharacter.of(body().replace("-", ""));
    }

    private String body() {
        return product + "-" + day.format(DateTimeFormatter.BASIC_ISO_DATE) + "-" + (number < 10 ? "0" : "") + number;
    }

    @Override
    public int compareTo(BatchCode other) {
        return toString().compareTo(other.toString());
    }

    /** The whole code with its check character. */
    @Override
    public String toString() {
        return body() + "-" + checkCharacter();
    }
}
