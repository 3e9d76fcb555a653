package io.github.formulationmath.simulation;

import java.util.Objects;

/**
 * An input of a Monte Carlo simulation: a law, its middle, and its scale.
 *
 * <p>Example: {@code rectangular(1.1, 1.3)} stands for 1.2 ± 0.1, every value alike.
 *
 * <p>Immutable and thread-safe.
 *
 * @param law the law
 * @param middle its middle, finite
 * @param scale half-width or standard deviation, finite, at least 0
 */
public record InputQuantity(Law law, double middle, double scale) {

    /**
     * Checks the numbers.
     *
     * @param law the law
     * @param middle its middle, finite
     * @param scale half-width or standard deviation, finite, at least 0
     * @throws IllegalArgumentException if a number is out of range
     */
    public InputQuantity {
        Objects.requireNonNull(law, "law");
        if (!Double.isFinite(middle)) {
            throw new IllegalArgumentException("middle is " + middle + ": a finite number is needed");
        }
        if (!Double.isFinite(scale) || scale < 0) {
            throw new IllegalArgumentException("scale is " + scale + ": a finite number from 0 is needed");
        }
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
        return new InputQuantity(Law.RECTANGULAR, lower / 2 + upper / 2, upper / 2 - lower / 2);
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
        return new InputQuantity(Law.TRIANGULAR, lower / 2 + upper / 2, upper / 2 - lower / 2);
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
        return new InputQuantity(Law.NORMAL, mean, standardDeviation);
    }

    @Override
    public String toString() {
        return law + " " + middle + " ± " + scale;
    }
}
