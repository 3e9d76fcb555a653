package io.github.formulationmath.simulation;

import io.github.formulationmath.number.Ratio;

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
        return scale.times(scale).dividedBy(divisor);
    }
}
