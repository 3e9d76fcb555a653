package io.github.formulationmath.simulation;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import java.util.Objects;
import javax.measure.Quantity;

/**
 * An input of a Monte Carlo simulation: a law, its middle, and its scale.
 *
 * <p>Example: {@code InputQuantity.rectangular(Amount.mass("1.1 g"), Amount.mass("1.3 g"))} stands for 1.2 g ± 0.1 g, every value
 * alike.
 *
 * <p>A model is handed the number of units in which the middle was given: of a middle in mg, milligrams.
 *
 * <p>Immutable and thread-safe.
 *
 * @param law the law
 * @param middle its middle
 * @param scale half-width or standard deviation, at least 0; of a temperature a difference, in kelvin
 * @param <Q> what is measured
 */
public record InputQuantity<Q extends Quantity<Q>>(Law law, Amount<Q> middle, Amount<Q> scale) {

    /**
     * Checks the amounts.
     *
     * @param law the law
     * @param middle its middle
     * @param scale half-width or standard deviation, at least 0; of a temperature a difference, in kelvin
     * @throws IllegalArgumentException if the scale is negative or a temperature in °C or °F, or an amount too large to be drawn
     */
    public InputQuantity {
        Objects.requireNonNull(law, "law");
        Objects.requireNonNull(middle, "middle");
        Amount.requireNotNegative("scale", scale);
        // What can be added to the middle is a difference of its kind.
        Amount<Q> end = middle.plus(scale);
        requireDrawable("middle", middle, middle.exactValue());
        requireDrawable("scale", scale, end.exactValue().minus(middle.exactValue()));
    }

    private static void requireDrawable(String name, Amount<?> amount, Ratio number) {
        if (!Double.isFinite(number.doubleValue())) {
            throw new IllegalArgumentException(name + " is " + Excerpt.of(amount)
                    + ": draws are binary floating point, and reach to 1.7e308 of its unit; take a larger unit");
        }
    }

    /**
     * An input that lies anywhere between two bounds.
     *
     * @param lower the lower bound
     * @param upper the upper bound, at least the lower
     * @param <Q> what is measured
     * @return the input, its middle in the unit of the lower bound
     * @throws IllegalArgumentException if the bounds are the wrong way round
     */
    public static <Q extends Quantity<Q>> InputQuantity<Q> rectangular(Amount<Q> lower, Amount<Q> upper) {
        return between(Law.RECTANGULAR, lower, upper);
    }

    private static <Q extends Quantity<Q>> InputQuantity<Q> between(Law law, Amount<Q> lower, Amount<Q> upper) {
        Objects.requireNonNull(lower, "lower");
        if (lower.compareTo(Objects.requireNonNull(upper, "upper")) > 0) {
            throw new IllegalArgumentException("lower is " + Excerpt.of(lower) + " and upper is " + Excerpt.of(upper)
                    + ": the two may have been exchanged");
        }
        Amount<Q> half = upper.minus(lower).dividedBy(Ratio.of(2));
        return new InputQuantity<>(law, lower.plus(half), half);
    }

    /**
     * An input between two bounds, likeliest in the middle.
     *
     * @param lower the lower bound
     * @param upper the upper bound, at least the lower
     * @param <Q> what is measured
     * @return the input, its middle in the unit of the lower bound
     * @throws IllegalArgumentException if the bounds are the wrong way round
     */
    public static <Q extends Quantity<Q>> InputQuantity<Q> triangular(Amount<Q> lower, Amount<Q> upper) {
        return between(Law.TRIANGULAR, lower, upper);
    }

    /**
     * An input of the normal law.
     *
     * @param mean its mean
     * @param standardDeviation its standard deviation, at least 0; of a temperature a difference, in kelvin
     * @param <Q> what is measured
     * @return the input
     * @throws IllegalArgumentException if the standard deviation is negative or a temperature in °C or °F
     */
    public static <Q extends Quantity<Q>> InputQuantity<Q> normal(Amount<Q> mean, Amount<Q> standardDeviation) {
        Objects.requireNonNull(mean, "mean");
        return new InputQuantity<>(Law.NORMAL, mean, Objects.requireNonNull(standardDeviation, "standardDeviation"));
    }

    /** The middle as the model is handed it, in its own unit. */
    double middleNumber() {
        return middle.exactValue().doubleValue();
    }

    /** The scale in the unit of the middle. */
    double scaleNumber() {
        return scale.canonical().dividedBy(middle.unitSize()).doubleValue();
    }

    @Override
    public String toString() {
        return law + " " + middle.told() + " ± " + scale.told();
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
