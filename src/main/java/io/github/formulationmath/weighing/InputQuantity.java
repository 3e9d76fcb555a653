package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Ratio;
import java.io.Serial;
import java.io.Serializable;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * An input of a Monte Carlo simulation: a law, its middle, and its scale.
 *
 * <p>Example: {@code rectangular(1.1, 1.3)} stands for 1.2 ± 0.1, every value alike.
 *
 * <p>Immutable and thread-safe.
 */
public final class InputQuantity implements Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private final Law law;
    private final double middle;
    private final double scale;

    private InputQuantity(Law law, double middle, double scale) {
        this.law = law;
        this.middle = middle;
        this.scale = scale;
    }

    /**
     * An input of a law.
     *
     * @param law the law
     * @param middle its middle, finite
     * @param scale half-width or standard deviation, finite, at least 0
     * @return the input
     * @throws IllegalArgumentException if a number is out of range
     */
    public static InputQuantity of(Law law, double middle, double scale) {
        Objects.requireNonNull(law, "law");
        if (!Double.isFinite(middle)) {
            throw new IllegalArgumentException("middle is " + middle + ": a finite number is needed");
        }
        if (!Double.isFinite(scale) || scale < 0) {
            throw new IllegalArgumentException("scale is " + scale + ": a finite number from 0 is needed");
        }
        return new InputQuantity(law, middle, scale);
    }

    /**
     * An input that lies anywhere between two bounds.
     *
     * @param lower the lower bound, finite
     * @param upper the upper bound, finite, at least the lower
     * @return the input
     * @throws IllegalArgumentException if a bound is out of range
     */
    public static InputQuantity rectangular(double lower, double upper) {
        requireInOrder(lower, upper);
        return of(Law.RECTANGULAR, lower / 2 + upper / 2, upper / 2 - lower / 2);
    }

    private static void requireInOrder(double lower, double upper) {
        if (lower > upper) {
            throw new IllegalArgumentException(
                    "lower is " + lower + " and upper is " + upper + ": the two may have been exchanged");
        }
    }

    /**
     * An input between two bounds, likeliest in the middle.
     *
     * @param lower the lower bound, finite
     * @param upper the upper bound, finite, at least the lower
     * @return the input
     * @throws IllegalArgumentException if a bound is out of range
     */
    public static InputQuantity triangular(double lower, double upper) {
        requireInOrder(lower, upper);
        return of(Law.TRIANGULAR, lower / 2 + upper / 2, upper / 2 - lower / 2);
    }

    /**
     * An input of the normal law.
     *
     * @param mean its mean, finite
     * @param standardDeviation its standard deviation, finite, at least 0
     * @return the input
     * @throws IllegalArgumentException if a number is out of range
     */
    public static InputQuantity normal(double mean, double standardDeviation) {
        return of(Law.NORMAL, mean, standardDeviation);
    }

    static InputQuantity from(Law law, Ratio middle, Ratio scale) {
        return of(law, middle.doubleValue(), scale.doubleValue());
    }

    /**
     * The law.
     *
     * @return the law
     */
    public Law law() {
        return law;
    }

    /**
     * The middle.
     *
     * @return a finite number
     */
    public double middle() {
        return middle;
    }

    /**
     * Half-width or standard deviation.
     *
     * @return a finite number, at least 0
     */
    public double scale() {
        return scale;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof InputQuantity that
                && law == that.law
                && Double.compare(middle, that.middle) == 0
                && Double.compare(scale, that.scale) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(law, middle, scale);
    }

    @Override
    public String toString() {
        return law + " " + middle + " ± " + scale;
    }
}
