package io.github.formulationmath.simulation;

import io.github.formulationmath.number.Ratio;
import java.io.Serial;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.jspecify.annotations.Nullable;

/**
 * The number k by which a standard uncertainty u is multiplied to give an expanded uncertainty U = k · u.
 *
 * <p>Either stated, k = 2 being common, or taken from the normal law for a level of confidence, which is right only as
 * far as the error is nearly normal: a single large rectangular error reaches 100 % at k = √3 already.
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

    private CoverageFactor(Ratio factor, @Nullable Ratio probability) {
        this.factor = factor;
        this.probability = probability;
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
        return new CoverageFactor(factor, null);
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
        Objects.requireNonNull(probability, "probability");
        double upper = probability.plus(Ratio.ONE).dividedBy(2).doubleValue();
        if (!(upper > 0.5 && upper < 1)) {
            throw new IllegalArgumentException(
                    "probability is " + probability + ": a level of confidence lies between 0 and 1, often 0.95");
        }
        double quantile = new NormalDistribution(null, 0, 1).inverseCumulativeProbability(upper);
        return new CoverageFactor(Ratio.from(quantile), probability);
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
     * @return p, if the factor is that of the normal law
     */
    public Optional<Ratio> probability() {
        return Optional.ofNullable(probability);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof CoverageFactor that
                && factor.equals(that.factor)
                && Objects.equals(probability, that.probability);
    }

    @Override
    public int hashCode() {
        return Objects.hash(factor, probability);
    }

    @Override
    public String toString() {
        return "k = " + factor + (probability == null ? "" : " (normal law, p = " + probability + ")");
    }
}
