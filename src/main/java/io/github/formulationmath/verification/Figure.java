package io.github.formulationmath.verification;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import java.io.Serial;
import java.io.Serializable;
import java.text.Normalizer;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * A mass or volume as somebody's calculator showed it. Its last digit tells how finely it was rounded: {@code 12.0 g} to
 * 0.1 g, {@code 12 g} to 1 g; a fraction by its denominator: {@code 3 3/4 oz} to a quarter of an ounce.
 *
 * <p>A decimal of more than 15 significant digits, such as {@code 56.00000000000001 g}, is what a program prints of a
 * binary floating-point number of 53 bits (15 digits always survive there, IEEE 754-2019). Its last digits are no claim:
 * it is held to half of 10<sup>−13</sup> of itself, so that a wrong thirteenth digit is none of them.
 *
 * <p>Immutable and thread-safe.
 */
public final class Figure implements Serializable {

    @Serial
    private static final long serialVersionUID = 3L;

    /** Half of it either way is less than one in the thirteenth digit, and hundreds of times what one addition loses. */
    private static final Ratio BINARY_STEP = Ratio.parse("1e-13");

    /** What survives from decimal to binary64 and back, whatever the number. */
    private static final int DIGITS_OF_A_DOUBLE = 15;

    private static final char FRACTION_SLASH = '\u2044';

    private static final String UNIT = " ([^ 0-9].{0,20})";
    private static final Pattern DECIMAL = Pattern.compile("([0-9]{1,100}(?:\\.([0-9]{1,100}))?)" + UNIT);
    private static final Pattern FRACTION = Pattern.compile("(?:([0-9]{1,100}) )?([0-9]{1,9})/([0-9]{1,9})" + UNIT);

    private final String written;
    private final @Nullable String decimal;
    private final Ratio number;
    private final Ratio lastDigit;

    private final Amount<?> amount;

    /** One of the unit. */
    private final Amount<?> one;

    private final boolean volume;

    private Figure(String written, String plain, String unit, @Nullable String decimal, Ratio number, Ratio lastDigit) {
        @Nullable Amount<?> mass = massOrNull(plain);
        this.written = written;
        this.decimal = decimal;
        this.number = number;
        this.lastDigit = lastDigit;
        this.volume = mass == null;
        this.amount = mass == null ? Amount.volume(plain) : mass;
        this.one = mass == null ? Amount.volume("1 " + unit) : Amount.mass("1 " + unit);
    }

    /**
     * Reads a figure.
     *
     * @param text a plain decimal or a fraction, a space, and a unit of mass or volume, for example {@code 12.0 g}, {@code
     *     3 3/4 oz} or {@code ½ oz}
     * @return the figure
     * @throws IllegalArgumentException if the text is anything else
     */
    public static Figure parse(String text) {
        String plain = inDigits(Objects.requireNonNull(text, "text"));
        Matcher decimal = DECIMAL.matcher(plain);
        if (decimal.matches()) {
            int places = decimal.group(2) == null ? 0 : decimal.group(2).length();
            String digits = decimal.group(1);
            return new Figure(text, plain, decimal.group(3), digits, Ratio.parse(digits), Ratio.parse("1e-" + places));
        }
        Matcher fraction = FRACTION.matcher(plain);
        if (fraction.matches()) {
            return fraction(text, plain, fraction);
        }
        throw new IllegalArgumentException("figure is \"" + text
                + "\": write a plain decimal or a fraction, a space and a unit, like 12.0 g or 3 3/4 oz");
    }

    private static Figure fraction(String text, String plain, Matcher fraction) {
        long above = Long.parseLong(fraction.group(2));
        long below = Long.parseLong(fraction.group(3));
        if (below == 0 || fraction.group(1) != null && above >= below) {
            throw new IllegalArgumentException("figure is \"" + text + "\": the number below the line must be above "
                    + (below == 0 ? "0" : "the one above it, as in 3 3/4 oz"));
        }
        Ratio whole = fraction.group(1) == null ? Ratio.ZERO : Ratio.parse(fraction.group(1));
        return new Figure(text, plain, fraction.group(4), null, whole.plus(Ratio.of(above, below)), Ratio.of(1, below));
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

    private static @Nullable Amount<?> massOrNull(String text) {
        try {
            return Amount.mass(text);
        } catch (IllegalArgumentException e) {
            // Not a mass: then it is read as a volume, whose exception names what is wrong with it.
            return null;
        }
    }

    /**
     * The figure as written.
     *
     * @return the text
     */
    public String written() {
        return written;
    }

    /**
     * The mass or volume.
     *
     * @return the exact amount in the unit of the figure
     */
    public Amount<?> amount() {
        return amount;
    }

    /**
     * Whether the figure is a volume.
     *
     * @return false for a mass
     */
    public boolean isVolume() {
        return volume;
    }

    /**
     * What one in the last digit is worth.
     *
     * @return 0.1 g for {@code 12.0 g}, 1/4 oz for {@code 3 3/4 oz}
     */
    public Amount<?> lastDigit() {
        return inUnit(lastDigit);
    }

    /**
     * Whether no digit counts: the number is 0, in however many digits. A formula has no line of nothing, so such a figure
     * shows nothing of its line.
     *
     * @return true for {@code 0 g} and {@code 0.00 g}
     */
    public boolean showsNothing() {
        return number.isZero();
    }

    /**
     * Whether the figure is what a program prints of a binary floating-point number.
     *
     * @return true for a decimal of more than 15 significant digits
     */
    public boolean isBinary() {
        return significantDigits() > DIGITS_OF_A_DOUBLE;
    }

    /** How many digits stand from the first that is not 0; none in a fraction. */
    private int significantDigits() {
        return decimal == null
                ? 0
                : decimal.replace(".", "").replaceFirst("^0+", "").length();
    }

    /** How many digits were written to be read: without a point the zeros at the end may only hold the place. */
    int digitsWritten() {
        return decimal == null || decimal.contains(".")
                ? significantDigits()
                : decimal.replaceFirst("^0+", "").replaceFirst("0+$", "").length();
    }

    /** The digits of a plain decimal with their point, to exchange two of them; null for a fraction. */
    @Nullable
    String decimal() {
        return decimal;
    }

    /** How finely the figure by itself was rounded, in its unit. */
    Ratio ownStep() {
        return isBinary() ? binaryStep() : lastDigit;
    }

    /** How finely a binary number is told from another, in the unit. */
    Ratio binaryStep() {
        return number.times(BINARY_STEP);
    }

    Ratio number() {
        return number;
    }

    Ratio digit() {
        return lastDigit;
    }

    /** So many of the unit. */
    Amount<?> inUnit(Ratio numberOfUnits) {
        return one.times(numberOfUnits);
    }

    /** A mass in the unit of the figure, or in grams if that is one of volume. */
    Amount<Mass> massInUnit(Ratio grams) {
        Amount<Mass> mass = Amount.grams(grams);
        return volume ? mass : mass.to(one.getUnit().asType(Mass.class));
    }

    String symbol() {
        return one.symbol();
    }

    /** How many grams or millilitres one of the unit is. */
    Ratio unitSize() {
        return one.canonical();
    }

    /** How many grams of a line one of the unit is. */
    Ratio gramsPerUnit(FormulaLine line) {
        return volume ? unitSize().times(densityOf(line)) : unitSize();
    }

    /** In grams per millilitre; of a line that was found to have one. */
    static Ratio densityOf(FormulaLine line) {
        return line.ingredient()
                .density()
                .orElseThrow(() -> new IllegalStateException(Excerpt.of(line.name()) + " lost its density"))
                .gramsPerMillilitre();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Figure that && written.equals(that.written);
    }

    @Override
    public int hashCode() {
        return written.hashCode();
    }

    @Override
    public String toString() {
        return written;
    }
}
