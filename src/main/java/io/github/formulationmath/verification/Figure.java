package io.github.formulationmath.verification;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import java.io.Serial;
import java.io.Serializable;
import java.util.Objects;
import javax.measure.Unit;
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
    private static final long serialVersionUID = 2L;

    /** Half of it either way is less than one in the thirteenth digit, and hundreds of times what one addition loses. */
    private static final Ratio BINARY_STEP = Ratio.parse("1e-13");

    private final String written;
    private final FigureText text;
    private final Amount<?> amount;
    private final boolean volume;

    private Figure(String written, FigureText text, Amount<?> amount, boolean volume) {
        this.written = written;
        this.text = text;
        this.amount = amount;
        this.volume = volume;
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
        FigureText parts = FigureText.read(Objects.requireNonNull(text, "text"));
        Amount<?> mass = massOrNull(parts.plain());
        return mass == null
                ? new Figure(text, parts, Amount.volume(parts.plain()), true)
                : new Figure(text, parts, mass, false);
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
     * The number before the unit.
     *
     * @return the exact number
     */
    public Ratio number() {
        return text.number();
    }

    /**
     * The unit after the number.
     *
     * @return a unit of mass or of volume
     */
    public Unit<?> unit() {
        return amount.getUnit();
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
     * @return 0.1 for {@code 12.0 g}, 1/4 for {@code 3 3/4 oz}, in the unit of the figure
     */
    public Ratio lastDigit() {
        return text.lastDigit();
    }

    /**
     * Whether no digit counts: the number is 0, in however many digits. A formula has no line of nothing, so such a figure
     * shows nothing of its line.
     *
     * @return true for {@code 0 g} and {@code 0.00 g}
     */
    public boolean showsNothing() {
        return number().isZero();
    }

    /**
     * Whether the figure is what a program prints of a binary floating-point number.
     *
     * @return true for a decimal of more than 15 significant digits
     */
    public boolean isBinary() {
        return text.significantDigits() > FigureText.DIGITS_OF_A_DOUBLE;
    }

    /** The digits of a plain decimal with their point, to exchange two of them; null for a fraction. */
    @Nullable
    String decimal() {
        return text.decimal();
    }

    /** How many digits were written to be read: without a point the zeros at the end may only hold the place. */
    int digitsWritten() {
        return text.digitsWritten();
    }

    /** How finely the figure by itself was rounded, in its unit. */
    Ratio ownStep() {
        return isBinary() ? binaryStep() : lastDigit();
    }

    /** How finely a binary number is told from another, in the unit. */
    Ratio binaryStep() {
        return number().times(BINARY_STEP);
    }

    /** How many grams or millilitres one of the unit is. */
    Ratio unitSize() {
        return FormulationUnits.factorOf(unit());
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
