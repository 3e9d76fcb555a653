package io.github.formulationmath.solution;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.NumberTextException;
import io.github.formulationmath.number.Ratio;
import java.io.Serial;
import java.io.Serializable;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A number on the scale of negative decadic logarithms: a pH, or the pK of an acid. Between −2 and 16; a bare pH outside 0 to 14 is
 * no pH of a watery product.
 *
 * <p>{@code equals} means the same exact number. Immutable and thread-safe.
 */
public final class Ph implements Comparable<Ph>, Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private static final Ratio LEAST = Ratio.of(-2);
    private static final Ratio GREATEST = Ratio.of(16);

    private final Ratio value;

    private Ph(Ratio value) {
        this.value = value;
    }

    static Ph of(Ratio value) {
        if (value.compareTo(LEAST) < 0 || value.compareTo(GREATEST) > 0) {
            throw new IllegalArgumentException(
                    "pH or pK is " + Excerpt.of(value) + ": it lies between " + LEAST + " and " + GREATEST);
        }
        return new Ph(value);
    }

    /**
     * Reads a number.
     *
     * @param text such as {@code "5.0"}
     * @return the pH or pK
     * @throws NumberTextException if the text is no number
     * @throws IllegalArgumentException if the number lies outside −2 to 16
     */
    public static Ph parse(String text) {
        return of(Ratio.parse(Objects.requireNonNull(text, "text")));
    }

    Ratio value() {
        return value;
    }

    @Override
    public int compareTo(Ph other) {
        return value.compareTo(Objects.requireNonNull(other, "other").value);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Ph that && value.equals(that.value);
    }

    @Override
    public int hashCode() {
        return value.hashCode();
    }

    /** The exact number; {@link #parse} reads it again. */
    @Override
    public String toString() {
        return value.toString();
    }
}
