package io.github.formulationmath.simulation;

/**
 * An interval that holds the value of a quantity with a stated probability.
 *
 * <p>Example: {@code new CoverageInterval(-3.92, 3.92)} for a normal law with u = 2 and 95 %.
 *
 * @param low the lower end
 * @param high the upper end, not below the lower
 */
public record CoverageInterval(double low, double high) {

    /**
     * Checks the ends.
     *
     * @param low the lower end
     * @param high the upper end
     * @throws IllegalArgumentException if an end is not a number, or they are the wrong way round
     */
    public CoverageInterval {
        if (!(low <= high)) {
            throw new IllegalArgumentException("the interval from " + low + " to " + high
                    + " has no inside: give the lower end first, both as numbers");
        }
    }

    /**
     * The length of the interval.
     *
     * @return high − low
     */
    public double length() {
        return high - low;
    }

    /**
     * The interval of the law-of-propagation approach, estimate ± expanded uncertainty.
     *
     * @param estimate the estimate
     * @param expanded the expanded uncertainty U, at least 0
     * @return [estimate − U, estimate + U]
     * @throws IllegalArgumentException if a number is not finite or U negative
     */
    public static CoverageInterval around(double estimate, double expanded) {
        if (!Double.isFinite(estimate) || !Double.isFinite(expanded)) {
            throw new IllegalArgumentException("estimate is " + estimate + " and expanded " + expanded
                    + ": both must be finite numbers, the second at least 0");
        }
        return new CoverageInterval(estimate - expanded, estimate + expanded);
    }
}
