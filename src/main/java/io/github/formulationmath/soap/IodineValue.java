package io.github.formulationmath.soap;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.NumberTextException;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Sentence;
import io.github.formulationmath.quantity.Amount;
import java.io.Serial;
import java.io.Serializable;
import java.util.Objects;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * The halogen, reckoned as iodine, that a fat adds: grams of I2 in 100 g (ISO 3961). It counts double bonds and tells nothing
 * of how long a fat keeps.
 *
 * <p>{@code equals} means the same exact number. Immutable and thread-safe.
 */
public final class IodineValue implements Comparable<IodineValue>, Serializable {

    private static final String UNIT = "g I2/100 g";

    @Serial
    private static final long serialVersionUID = 1L;

    private final Ratio gramsPerHundred;

    private IodineValue(Ratio gramsPerHundred) {
        this.gramsPerHundred = gramsPerHundred;
    }

    static IodineValue of(Ratio gramsPerHundred) {
        if (gramsPerHundred.signum() < 0) {
            throw new IllegalArgumentException(
                    "iodine value is " + Excerpt.of(gramsPerHundred) + " " + UNIT + ": it must not be below 0");
        }
        return new IodineValue(gramsPerHundred);
    }

    /**
     * The value of a fat that adds a mass of iodine.
     *
     * @param iodine how much iodine, 0 or more
     * @param fat how much fat adds it, above 0
     * @return the value
     * @throws IllegalArgumentException if a mass is out of range
     */
    public static IodineValue of(Amount<Mass> iodine, Amount<Mass> fat) {
        return of(Amount.requireNotNegative("iodine", iodine)
                .ratioTo(Amount.requirePositive("fat", fat))
                .times(100));
    }

    /**
     * Reads a number and its unit.
     *
     * @param text such as {@code "86 g I2/100 g"}
     * @return the value
     * @throws NumberTextException if the text is not of that form
     */
    public static IodineValue parse(String text) {
        String plain = Objects.requireNonNull(text, "text").strip();
        if (!plain.endsWith(UNIT)) {
            throw new NumberTextException(
                    text,
                    Sentence.of(
                            "refusal.text.iodine-unit",
                            "an iodine value is given in {unit}, as in \"86 g I2/100 g\"",
                            "unit",
                            UNIT));
        }
        return of(Ratio.parse(plain.substring(0, plain.length() - UNIT.length()).strip()));
    }

    Ratio gramsPerHundred() {
        return gramsPerHundred;
    }

    @Override
    public int compareTo(IodineValue other) {
        return gramsPerHundred.compareTo(Objects.requireNonNull(other, "other").gramsPerHundred);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof IodineValue that && gramsPerHundred.equals(that.gramsPerHundred);
    }

    @Override
    public int hashCode() {
        return gramsPerHundred.hashCode();
    }

    /** The exact number and its unit; {@link #parse} reads it again. */
    @Override
    public String toString() {
        return gramsPerHundred + " " + UNIT;
    }
}
