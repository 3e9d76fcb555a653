package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.working.Explained;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import java.util.Objects;
import javax.measure.quantity.Mass;

/**
 * The least net mass that a balance weighs well enough, by one of the published rules. The vessel does not count.
 *
 * <ul>
 *   <li>{@link #pharmacopoeial}: {@code m = k · s / τ} with k = 2 and τ = 0.10 %; s is replaced by 0.41 d if smaller.
 *   <li>{@link #byRepeatability}: the same rule for another tolerance.
 *   <li>{@link #bySensitivity}: the pharmacy's rule, sensitivity requirement / permitted error.
 *   <li>{@link #byUncertainty}: from a calibration certificate, {@code m = α · SF / (τ − β · SF)}.
 * </ul>
 *
 * <p>Example: s = 0.00015 g gives 2 · 0.00015 g / 0.001 = 0.3 g.
 *
 * <p>Sources: USP general chapter 41 (1 August 2019); Ph. Eur. 2.1.7 has the same structure (numbers from memory). The
 * 0.41 is d/√6 = 0.408 d, the standard uncertainty of the difference of two readings (JCGM 100:2008, F.2.2.1), rounded up.
 * Minimum weighable quantity: teaching of pharmacy, for example the weighing laboratory of the University of North
 * Carolina. Uncertainty function: EURAMET cg-18, from memory.
 *
 * <p>Immutable and thread-safe.
 */
public final class MinimumWeight implements Explained {

    private final Relation relation;
    private final Ratio grams;
    private final String rule;

    private MinimumWeight(String rule, Relation relation) {
        this.rule = rule;
        this.relation = relation;
        this.grams = relation.in(Reckoning.plain());
    }

    /**
     * The pharmacopoeial rule: 2 s within 0.10 % of the net mass, s at least 0.41 d.
     *
     * @param balance the balance, its repeatability from at least ten weighings
     * @return the least net mass
     */
    public static MinimumWeight pharmacopoeial(Balance balance) {
        return byRepeatability(balance, Ratio.of(1, 1000), CoverageFactor.of(2));
    }

    /**
     * The structure of the pharmacopoeial rule with another tolerance.
     *
     * @param balance the balance with its repeatability
     * @param tolerance the permitted relative error τ, above 0 and at most 1
     * @param factor the coverage factor k
     * @return the least net mass
     * @throws IllegalArgumentException if the tolerance is out of range
     */
    public static MinimumWeight byRepeatability(Balance balance, Ratio tolerance, CoverageFactor factor) {
        Objects.requireNonNull(balance, "balance");
        Objects.requireNonNull(factor, "factor");
        MinimumWeightRules.Repeatability rule = new MinimumWeightRules.Repeatability(
                balance.errors().repeatability().in(FormulationUnits.GRAM),
                balance.gramsPerDivision(),
                requireShare("tolerance", tolerance),
                factor.factor());
        return new MinimumWeight("repeatability", rule);
    }

    /**
     * The minimum weighable quantity of pharmacy.
     *
     * @param sensitivityRequirement the mass that moves the pointer, or the last digit, by one division; above 0
     * @param permittedError the permitted relative error, above 0 and at most 1; 5 % is common
     * @return the least net mass
     * @throws IllegalArgumentException if a number is out of range
     */
    public static MinimumWeight bySensitivity(Amount<Mass> sensitivityRequirement, Ratio permittedError) {
        if (Objects.requireNonNull(sensitivityRequirement, "sensitivityRequirement")
                        .signum()
                <= 0) {
            throw new IllegalArgumentException(
                    "sensitivityRequirement is " + Excerpt.of(sensitivityRequirement) + ": it must be above 0");
        }
        Ratio grams = sensitivityRequirement.in(FormulationUnits.GRAM);
        return new MinimumWeight(
                "sensitivity",
                new MinimumWeightRules.Sensitivity(grams, requireShare("permittedError", permittedError)));
    }

    /**
     * From an expanded uncertainty that rises with the reading, U = α + β · R. From memory of EURAMET cg-18.
     *
     * @param constant α, above 0
     * @param slope β, a plain number, at least 0
     * @param tolerance the permitted relative error τ, above 0 and at most 1
     * @param safetyFactor SF, at least 1, for the conditions of use; 2 or 3 are common
     * @return the least net mass
     * @throws IllegalArgumentException if a number is out of range, or if the slope alone passes the tolerance, so that no
     *     mass is large enough
     */
    public static MinimumWeight byUncertainty(Amount<Mass> constant, Ratio slope, Ratio tolerance, Ratio safetyFactor) {
        Ratio alpha = Objects.requireNonNull(constant, "constant").in(FormulationUnits.GRAM);
        requireShare("tolerance", tolerance);
        if (alpha.signum() <= 0 || Objects.requireNonNull(slope, "slope").signum() < 0) {
            throw new IllegalArgumentException("constant is " + Excerpt.of(constant) + " and slope " + Excerpt.of(slope)
                    + ": the constant must be above 0 and the slope at least 0");
        }
        if (Objects.requireNonNull(safetyFactor, "safetyFactor").compareTo(Ratio.ONE) < 0) {
            throw new IllegalArgumentException(
                    "safetyFactor is " + Excerpt.of(safetyFactor) + ": it must be at least 1");
        }
        if (slope.times(safetyFactor).compareTo(tolerance) >= 0) {
            throw new IllegalArgumentException("slope times safetyFactor is " + Excerpt.of(slope.times(safetyFactor))
                    + ", not below the tolerance " + Excerpt.of(tolerance)
                    + ": no mass is large enough on this balance");
        }
        return new MinimumWeight(
                "uncertainty", new MinimumWeightRules.Uncertainty(alpha, slope, tolerance, safetyFactor));
    }

    private static Ratio requireShare(String name, Ratio value) {
        if (Objects.requireNonNull(value, name).signum() <= 0 || value.compareTo(Ratio.ONE) > 0) {
            throw new IllegalArgumentException(
                    name + " is " + value + ": it is a share, above 0 and at most 1; 5 % is 1/20");
        }
        return value;
    }

    /**
     * The least net mass.
     *
     * @return the mass in grams
     */
    public Amount<Mass> mass() {
        return Amount.grams(grams);
    }

    @Override
    public Phrase question() {
        return Phrase.of("question.minimum-weight");
    }

    /** The least net mass in grams. */
    @Override
    public Ratio result() {
        return grams;
    }

    @Override
    public <V> V derive(Reckoning<V> reckoning) {
        return relation.in(reckoning);
    }

    @Override
    public String toString() {
        return mass() + " by " + rule;
    }
}
