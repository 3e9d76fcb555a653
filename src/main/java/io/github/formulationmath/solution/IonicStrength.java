package io.github.formulationmath.solution;

import io.github.formulationmath.number.NumberTextException;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Sentence;
import java.io.Serial;
import java.io.Serializable;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The ionic strength of a solution, half the sum over its ions of concentration times the square of the charge, in mol/L. A constant
 * holds at one of them.
 *
 * <p>{@code equals} means the same exact number. Immutable and thread-safe.
 */
public final class IonicStrength implements Comparable<IonicStrength>, Serializable {

    /** Infinite dilution. */
    public static final IonicStrength ZERO = new IonicStrength(Ratio.ZERO);

    @Serial
    private static final long serialVersionUID = 1L;

    private final Ratio molesPerLitre;

    private IonicStrength(Ratio molesPerLitre) {
        this.molesPerLitre = molesPerLitre;
    }

    /**
     * Reads an ionic strength and its unit.
     *
     * @param text such as {@code "0.1 mol/L"}
     * @return the ionic strength
     * @throws NumberTextException if the text is not a number and mol/L, or is below 0
     */
    public static IonicStrength parse(String text) {
        Ratio value = Molarity.read(
                "text",
                text,
                Sentence.of(
                        "refusal.text.ionic-strength-unit", "an ionic strength needs its unit, as in \"0.1 mol/L\""),
                Sentence.of("refusal.text.ionic-strength-negative", "it is a sum of squares: write 0 mol/L or more"));
        return new IonicStrength(value);
    }

    Ratio molesPerLitre() {
        return molesPerLitre;
    }

    @Override
    public int compareTo(IonicStrength other) {
        return molesPerLitre.compareTo(Objects.requireNonNull(other, "other").molesPerLitre);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof IonicStrength that && molesPerLitre.equals(that.molesPerLitre);
    }

    @Override
    public int hashCode() {
        return molesPerLitre.hashCode();
    }

    /** The exact number and its unit; {@link #parse} reads it again. */
    @Override
    public String toString() {
        return molesPerLitre + " " + Molarity.UNIT;
    }
}
