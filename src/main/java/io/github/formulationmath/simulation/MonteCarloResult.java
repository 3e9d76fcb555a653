package io.github.formulationmath.simulation;

import java.util.Objects;

/**
 * What a Monte Carlo simulation found: the law of the output quantity, as far as it was drawn.
 *
 * <p>Example: {@code result.symmetricInterval()} holds as many values below as above it.
 *
 * <p>Immutable and thread-safe.
 */
public final class MonteCarloResult {

    private final SortedTrials trials;
    private final double probability;
    private final double tolerance;
    private final boolean stable;

    MonteCarloResult(SortedTrials trials, double probability, double tolerance, boolean stable) {
        this.trials = trials;
        this.probability = probability;
        this.tolerance = tolerance;
        this.stable = stable;
    }

    /**
     * How many values were drawn.
     *
     * @return the number of trials
     */
    public int trials() {
        return trials.size();
    }

    /**
     * Whether estimate, uncertainty and interval had settled within the numerical tolerance before the work ran out. Then
     * three standard deviations of each, found from at least {@value MonteCarlo#LEAST_BLOCKS} blocks, lie within the
     * tolerance; an end of the interval is further off in less than 1 % of the runs.
     *
     * @return true if they had; if not, the figures are the best there are, and less certain than was asked for
     */
    public boolean isStable() {
        return stable;
    }

    /**
     * The numerical tolerance of the standard uncertainty.
     *
     * @return half a unit of its last digit that counts; 0 if the output does not vary
     */
    public double tolerance() {
        return tolerance;
    }

    /**
     * The probability of the coverage intervals.
     *
     * @return a number between 0 and 1
     */
    public double probability() {
        return probability;
    }

    /**
     * The estimate.
     *
     * @return the mean of the values
     */
    public double estimate() {
        return trials.mean();
    }

    /**
     * The standard uncertainty.
     *
     * @return the standard deviation of the values
     */
    public double standardUncertainty() {
        return trials.standardDeviation();
    }

    /**
     * The interval with as many values below as above it (JCGM 101:2008, 7.7.2).
     *
     * @return the probabilistically symmetric coverage interval
     */
    public CoverageInterval symmetricInterval() {
        return trials.symmetric(probability);
    }

    /**
     * The shortest interval (JCGM 101:2008, 7.7.3); better for laws that lean to one side.
     *
     * @return the shortest coverage interval
     */
    public CoverageInterval shortestInterval() {
        return trials.shortest(probability);
    }

    /**
     * The value that a share of all values does not pass.
     *
     * @param share the share, above 0, at most 1
     * @return the quantile
     * @throws IllegalArgumentException if the share is out of range
     */
    public double quantile(double share) {
        if (!(share > 0 && share <= 1)) {
            throw new IllegalArgumentException("share is " + share + ": it must lie above 0 and at most at 1");
        }
        return trials.quantile(share);
    }

    /**
     * How probable it is that the quantity is at most a limit.
     *
     * @param limit the limit
     * @return the share of the values that do not pass it
     */
    public double probabilityAtMost(double limit) {
        return (double) trials.countAtMost(limit) / trials.size();
    }

    /**
     * Whether an interval found in another way agrees with the one drawn: both ends within the numerical tolerance (JCGM
     * 101:2008, 8.1).
     *
     * @param other the other interval, for example {@link CoverageInterval#around}
     * @return true if it agrees with the symmetric interval
     */
    public boolean validates(CoverageInterval other) {
        Objects.requireNonNull(other, "other");
        CoverageInterval own = symmetricInterval();
        return Math.abs(own.low() - other.low()) <= tolerance && Math.abs(own.high() - other.high()) <= tolerance;
    }

    @Override
    public String toString() {
        return estimate() + ", u = " + standardUncertainty() + ", " + symmetricInterval() + " at p = " + probability
                + " from " + trials() + " trials" + (stable ? "" : ", not settled");
    }

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
}
