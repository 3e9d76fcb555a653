package io.github.formulationmath.limit;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import java.util.List;
import java.util.Objects;
import java.util.TreeSet;
import javax.measure.Quantity;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.integration.SimpsonIntegrator;
import org.apache.commons.math3.distribution.GammaDistribution;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.RealDistribution;
import org.apache.commons.math3.exception.MaxCountExceededException;

/**
 * What an acceptance limit A does in the long run, when batches scatter by a known law g and each is found with a standard
 * uncertainty u: how many are accepted though above the limit T (consumer's risk), and how many rejected though within
 * (producer's risk).
 *
 * <p>{@code R_C = ∫_{y>T} g(y) · Φ((A − y)/u) dy}, {@code R_P = ∫_{y≤T} g(y) · (1 − Φ((A − y)/u)) dy}. A batch is accepted
 * if y ≤ A + u·z, z being standard normal; with the distribution function G of the batches this is {@code R_C = ∫ φ(z) ·
 * max(G(A + u·z) − G(T), 0) dz}, and R_P the same with the difference the other way round. So it is worked out, for G
 * is bounded where g need not be.
 *
 * <p>Example: y ~ Gamma(4, 4), which has the mean 1 and the standard deviation 1/2, T = 2, u = 0.25, A = 2 − 0.65 · 0.5: R_C = 0.1 %, R_P = 7.5
 * % (JCGM 106:2012, 9.5.4).
 *
 * <p>The integrals are numerical, to about nine decimal places. Immutable and thread-safe.
 */
public final class GlobalRisk {

    /** The normal law has less than 1e-18 beyond. */
    private static final double REACH = 9;

    /** Between neighbours of these quantiles the law of the batches is tame at the scale of the piece. */
    private static final double[] QUANTILES = {
        1e-12, 1e-9, 1e-6, 1e-4, 1e-3, 1e-2, 0.1, 0.5, 0.9, 0.99, 1 - 1e-3, 1 - 1e-4, 1 - 1e-6, 1 - 1e-9, 1 - 1e-12
    };

    private static final int LEAST_ROUNDS = 6;
    private static final int MOST_EVALUATIONS = 2_000_000;
    private static final double RELATIVE = 1e-10;
    private static final double ABSOLUTE = 1e-13;

    private final RealDistribution batches;
    private final double limit;
    private final double acceptance;
    private final double uncertainty;
    private final String text;

    private <Q extends Quantity<Q>> GlobalRisk(
            RealDistribution batches, Amount<Q> limit, Amount<Q> acceptance, Amount<Q> uncertainty) {
        this.batches = batches;
        this.limit = Objects.requireNonNull(limit, "limit").canonical().doubleValue();
        this.acceptance =
                Objects.requireNonNull(acceptance, "acceptance").canonical().doubleValue();
        this.uncertainty =
                spread("standardUncertainty", uncertainty, limit).canonical().doubleValue();
        this.text = "accepted up to " + acceptance.told() + " under a limit of " + limit.told();
    }

    /**
     * Batches that scatter by a normal law.
     *
     * @param mean the mean of the batches
     * @param standardDeviation how they scatter, above 0; of temperatures a difference, in kelvin
     * @param limit the highest value T
     * @param acceptance the acceptance limit A
     * @param standardUncertainty the standard uncertainty u with which a batch is found, above 0
     * @param <Q> what is measured
     * @return the risks
     * @throws IllegalArgumentException if an amount that must be is not above 0, or a spread is a temperature in °C or °F
     */
    public static <Q extends Quantity<Q>> GlobalRisk ofNormal(
            Amount<Q> mean,
            Amount<Q> standardDeviation,
            Amount<Q> limit,
            Amount<Q> acceptance,
            Amount<Q> standardUncertainty) {
        Objects.requireNonNull(mean, "mean");
        double sigma =
                spread("standardDeviation", standardDeviation, mean).canonical().doubleValue();
        return new GlobalRisk(
                new NormalDistribution(null, mean.canonical().doubleValue(), sigma),
                limit,
                acceptance,
                standardUncertainty);
    }

    /**
     * Batches that scatter by a gamma law, which has no values below 0: its shape is (mean / standard deviation)², its rate mean /
     * standard deviation².
     *
     * @param mean the mean of the batches, above 0
     * @param standardDeviation how they scatter, above 0
     * @param limit the highest value T
     * @param acceptance the acceptance limit A
     * @param standardUncertainty the standard uncertainty u with which a batch is found, above 0
     * @param <Q> what is measured
     * @return the risks
     * @throws IllegalArgumentException if an amount that must be is not above 0, or mean or a spread is a temperature in °C or °F
     */
    public static <Q extends Quantity<Q>> GlobalRisk ofGamma(
            Amount<Q> mean,
            Amount<Q> standardDeviation,
            Amount<Q> limit,
            Amount<Q> acceptance,
            Amount<Q> standardUncertainty) {
        Ratio steps = Amount.requirePositive("mean", mean)
                .ratioTo(Amount.requirePositive("standardDeviation", standardDeviation));
        double shape = steps.times(steps).doubleValue();
        double scale = standardDeviation.canonical().dividedBy(steps).doubleValue();
        return new GlobalRisk(new GammaDistribution(null, shape, scale), limit, acceptance, standardUncertainty);
    }

    private static <Q extends Quantity<Q>> Amount<Q> spread(String name, Amount<Q> value, Amount<Q> about) {
        Conformance.requireDifference(about, Amount.requirePositive(name, value));
        return value;
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
     * @throws ArithmeticException if the integral does not settle, the law of the batches being far too steep
     */
    public double consumerRisk() {
        double inLimit = batches.cumulativeProbability(limit);
        return integral(y -> Math.max(batches.cumulativeProbability(y) - inLimit, 0), reached(limit), REACH);
    }

    /**
     * How many batches are rejected though they are within the limit.
     *
     * @return a probability
     * @throws ArithmeticException if the integral does not settle, the law of the batches being far too steep
     */
    public double producerRisk() {
        double inLimit = batches.cumulativeProbability(limit);
        return integral(y -> Math.max(inLimit - batches.cumulativeProbability(y), 0), -REACH, reached(limit));
    }

    /** By how many standard uncertainties a value lies above the acceptance limit, cut off where nothing is left. */
    private double reached(double value) {
        return Math.max(-REACH, Math.min((value - acceptance) / uncertainty, REACH));
    }

    /** ∫ φ(z) · f(A + u·z) dz, piece by piece, so that no bend is narrow in its piece. */
    private double integral(UnivariateFunction atValue, double from, double to) {
        TreeSet<Double> ends = new TreeSet<>(List.of(from, to));
        for (double quantile : QUANTILES) {
            ends.add(Math.max(from, Math.min(reached(batches.inverseCumulativeProbability(quantile)), to)));
        }
        UnivariateFunction weighted = z -> StandardNormal.density(z) * atValue.value(acceptance + uncertainty * z);
        double sum = 0;
        for (double end : ends.tailSet(from, false)) {
            sum += piece(weighted, ends.lower(end), end);
        }
        return sum;
    }

    private double piece(UnivariateFunction function, double from, double to) {
        try {
            return new SimpsonIntegrator(
                            RELATIVE, ABSOLUTE, LEAST_ROUNDS, SimpsonIntegrator.SIMPSON_MAX_ITERATIONS_COUNT)
                    .integrate(MOST_EVALUATIONS, function, from, to);
        } catch (MaxCountExceededException e) {
            throw new ArithmeticException(
                    "the risk of " + this + " does not settle within " + MOST_EVALUATIONS
                            + " evaluations: the law of the batches is too steep; is its standard deviation far above its mean?");
        }
    }

    @Override
    public String toString() {
        return text;
    }
}
