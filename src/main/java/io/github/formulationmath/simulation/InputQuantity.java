package io.github.formulationmath.simulation;

import io.github.formulationmath.number.Ratio;
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

    /**
     * How an error is spread about its middle, when no more is known of it than its scale.
     *
     * <p>Example: a display that rounds to 0.1 g hides at most 0.05 g, every value alike: rectangular with the half-width 0.05
     * g, hence a variance of 0.05² / 3 g².
     *
     * <p>Source: JCGM 100:2008 (GUM), 4.3.7 (rectangular), 4.3.9 (triangular), 4.3.4 (normal).
     */
    public enum Law {
        /** All values between two bounds alike; the scale is the half-width a, the variance a²/3. */
        RECTANGULAR(3),
        /** Values between two bounds, the middle likeliest; the scale is the half-width a, the variance a²/6. */
        TRIANGULAR(6),
        /** The bell curve, without bounds; the scale is the standard deviation s, the variance s². */
        NORMAL(1);

        private final long divisor;

        Law(long divisor) {
            this.divisor = divisor;
        }

        /**
         * Whether no value lies further from the middle than the scale.
         *
         * @return true for the laws with bounds
         */
        public boolean isBounded() {
            return this != NORMAL;
        }

        /**
         * The number by which the square of the scale is divided to give the variance.
         *
         * @return 3, 6 or 1
         */
        public long divisor() {
            return divisor;
        }

        /**
         * The variance.
         *
         * @param scale half-width or standard deviation
         * @return scale² / {@link #divisor()}, exact
         */
        public Ratio variance(Ratio scale) {
            return Objects.requireNonNull(scale, "scale").times(scale).dividedBy(divisor);
        }
    }
}
