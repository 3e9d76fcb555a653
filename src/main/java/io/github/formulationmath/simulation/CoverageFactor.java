package io.github.formulationmath.simulation;

import io.github.formulationmath.number.Ratio;
import java.io.Serial;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.TDistribution;
import org.jspecify.annotations.Nullable;

/**
 * The number k by which a standard uncertainty u is multiplied to give an expanded uncertainty U = k · u.
 *
 * <p>Either stated, k = 2 being common, or taken from the normal law for a level of confidence, or from Student's where the
 * uncertainty rests on few readings. That is right only as far as the error is nearly normal: a single large rectangular error
 * reaches 100 % at k = √3 already.
 *
 * <p>Example: {@code normal(Ratio.parse("0.95"))} holds 1.960 (JCGM 100:2008, table G.1), {@code of(2)} covers about 95.45 % of a normal law.
 *
 * <p>Immutable and thread-safe.
 */
public final class CoverageFactor implements Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private final Ratio factor;
    private final @Nullable Ratio probability;
    private final String law;

    private CoverageFactor(Ratio factor, @Nullable Ratio probability, String law) {
        this.factor = factor;
        this.probability = probability;
        this.law = law;
    }

    /**
     * A stated factor.
     *
     * @param factor the factor k, above 0
     * @return the factor
     * @throws IllegalArgumentException if it is 0 or negative
     */
    public static CoverageFactor of(Ratio factor) {
        if (Objects.requireNonNull(factor, "factor").signum() <= 0) {
            throw new IllegalArgumentException("factor is " + factor + ": a coverage factor is above 0, often 2");
        }
        return new CoverageFactor(factor, null, "");
    }

    /**
     * A stated whole factor.
     *
     * @param factor the factor k, above 0
     * @return the factor
     * @throws IllegalArgumentException if it is 0 or negative
     */
    public static CoverageFactor of(long factor) {
        return of(Ratio.of(factor));
    }

    /**
     * The factor of the normal law for a level of confidence, two-sided.
     *
     * @param probability the level of confidence p, above 0 and below 1; 0.95 for 95 %
     * @return the quantile of the standard normal law at (1 + p) / 2, kept by the digits of its {@code double}
     * @throws IllegalArgumentException if p is out of range, or so near to an end that a {@code double} cannot tell
     */
    public static CoverageFactor normal(Ratio probability) {
        double upper = upper(probability);
        double quantile = new NormalDistribution(null, 0, 1).inverseCumulativeProbability(upper);
        return new CoverageFactor(Ratio.from(quantile), probability, "normal law");
    }

    /**
     * The factor of Student's law for a level of confidence, two-sided: what a standard uncertainty of few degrees of freedom needs
     * (JCGM 100:2008, G.3 and table G.2).
     *
     * @param probability the level of confidence p, above 0 and below 1; 0.95 for 95 %
     * @param degreesOfFreedom how many, at least 1
     * @return the quantile of the law at (1 + p) / 2, kept by the digits of its {@code double}
     * @throws IllegalArgumentException if p is out of range, or there is no degree of freedom
     */
    public static CoverageFactor student(Ratio probability, long degreesOfFreedom) {
        double upper = upper(probability);
        if (degreesOfFreedom < 1) {
            throw new IllegalArgumentException(
                    "degreesOfFreedom is " + degreesOfFreedom + ": Student's law has at least 1; take more readings");
        }
        double quantile = new TDistribution(null, degreesOfFreedom).inverseCumulativeProbability(upper);
        return new CoverageFactor(
                Ratio.from(quantile), probability, "Student's law, " + degreesOfFreedom + " degrees of freedom");
    }

    private static double upper(Ratio probability) {
        Objects.requireNonNull(probability, "probability");
        double upper = probability.plus(Ratio.ONE).dividedBy(2).doubleValue();
        if (!(upper > 0.5 && upper < 1)) {
            throw new IllegalArgumentException(
                    "probability is " + probability + ": a level of confidence lies between 0 and 1, often 0.95");
        }
        return upper;
    }

    /**
     * The factor.
     *
     * @return k, above 0
     */
    public Ratio factor() {
        return factor;
    }

    /**
     * The level of confidence for which the factor was taken.
     *
     * @return p, if the factor is that of the normal or of Student's law
     */
    public Optional<Ratio> probability() {
        return Optional.ofNullable(probability);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof CoverageFactor that
                && factor.equals(that.factor)
                && Objects.equals(probability, that.probability)
                && law.equals(that.law);
    }

    @Override
    public int hashCode() {
        return Objects.hash(factor, probability, law);
    }

    @Override
    public String toString() {
        return "k = " + factor + (probability == null ? "" : " (" + law + ", p = " + probability + ")");
    }
}
