package io.github.formulationmath.limit;

import io.github.formulationmath.number.Ratio;
import java.util.Objects;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.integration.SimpsonIntegrator;
import org.apache.commons.math3.distribution.GammaDistribution;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.RealDistribution;

/**
 * What an acceptance limit A does in the long run, when batches scatter by a known law g and each is found with a standard
 * uncertainty u: how many are accepted though above the limit T (consumer's risk), and how many rejected though within
 * (producer's risk).
 *
 * <p>{@code R_C = ∫_{y>T} g(y) · Φ((A − y)/u) dy}, {@code R_P = ∫_{y≤T} g(y) · (1 − Φ((A − y)/u)) dy}.
 *
 * <p>Example: y ~ Gamma(4, 4), T = 2, u = 0.25, A = 2 − 0.65 · 0.5: R_C = 0.1 %, R_P = 7.5 % (JCGM 106:2012, 9.5.4).
 *
 * <p>The integrals are numerical, to about nine digits. Immutable and thread-safe.
 */
public final class GlobalRisk {

    /** What lies outside these quantiles is less than can be seen in nine digits. */
    private static final double TAIL = 1e-13;

    private static final int MOST_EVALUATIONS = 2_000_000;
    private static final double RELATIVE = 1e-10;
    private static final double ABSOLUTE = 1e-13;

    private final RealDistribution batches;
    private final double limit;
    private final double acceptance;
    private final double uncertainty;

    private GlobalRisk(RealDistribution batches, Ratio limit, Ratio acceptance, Ratio uncertainty) {
        this.batches = batches;
        this.limit = Objects.requireNonNull(limit, "limit").doubleValue();
        this.acceptance = Objects.requireNonNull(acceptance, "acceptance").doubleValue();
        this.uncertainty = requirePositive("standardUncertainty", uncertainty);
    }

    /**
     * Batches that scatter by a normal law.
     *
     * @param mean the mean of the batches
     * @param standardDeviation how they scatter, above 0
     * @param limit the highest value T
     * @param acceptance the acceptance limit A
     * @param standardUncertainty the standard uncertainty u with which a batch is found, above 0
     * @return the risks
     * @throws IllegalArgumentException if a number that must be is not above 0
     */
    public static GlobalRisk ofNormal(
            Ratio mean, Ratio standardDeviation, Ratio limit, Ratio acceptance, Ratio standardUncertainty) {
        Objects.requireNonNull(mean, "mean");
        double sigma = requirePositive("standardDeviation", standardDeviation);
        return new GlobalRisk(
                new NormalDistribution(null, mean.doubleValue(), sigma), limit, acceptance, standardUncertainty);
    }

    /**
     * Batches that scatter by a gamma law, whose mean is shape / rate.
     *
     * @param shape the shape, above 0
     * @param rate the rate, above 0
     * @param limit the highest value T
     * @param acceptance the acceptance limit A
     * @param standardUncertainty the standard uncertainty u with which a batch is found, above 0
     * @return the risks
     * @throws IllegalArgumentException if a number that must be is not above 0
     */
    public static GlobalRisk ofGamma(
            Ratio shape, Ratio rate, Ratio limit, Ratio acceptance, Ratio standardUncertainty) {
        double scale = 1 / requirePositive("rate", rate);
        return new GlobalRisk(
                new GammaDistribution(null, requirePositive("shape", shape), scale),
                limit,
                acceptance,
                standardUncertainty);
    }

    private static double requirePositive(String name, Ratio value) {
        if (Objects.requireNonNull(value, name).signum() <= 0) {
            throw new IllegalArgumentException(name + " is " + value + ": it must be above 0");
        }
        return value.doubleValue();
    }

    /**
     * How many batches are above the limit, whatever is done with them.
     *
     * @return a probability
     */
    public double nonConforming() {
        return 1 - batches.cumulativeProbability(limit);
    }

    /**
     * How many batches are accepted though they are above the limit.
     *
     * @return a probability
     */
    public double consumerRisk() {
        return integral(y -> batches.density(y) * accepted(y), limit, batches.inverseCumulativeProbability(1 - TAIL));
    }

    /**
     * How many batches are rejected though they are within the limit.
     *
     * @return a probability
     */
    public double producerRisk() {
        return integral(y -> batches.density(y) * (1 - accepted(y)), batches.inverseCumulativeProbability(TAIL), limit);
    }

    private double accepted(double y) {
        return StandardNormal.DISTRIBUTION.applyAsDouble((acceptance - y) / uncertainty);
    }

    private static double integral(UnivariateFunction function, double from, double to) {
        if (from >= to) {
            return 0;
        }
        return new SimpsonIntegrator(RELATIVE, ABSOLUTE, 12, SimpsonIntegrator.SIMPSON_MAX_ITERATIONS_COUNT)
                .integrate(MOST_EVALUATIONS, function, from, to);
    }

    @Override
    public String toString() {
        return "accepted up to " + acceptance + " under a limit of " + limit;
    }
}
