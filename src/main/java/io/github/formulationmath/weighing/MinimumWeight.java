package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.simulation.CoverageFactor;
import java.util.List;
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
 */
public final class MinimumWeight {

    private static final Symbol LEAST = Symbol.of("m_min", "minimum-weight", Kind.MASS);
    private static final Symbol TOLERANCE = Symbol.of("τ", "permitted-error", Kind.SHARE);
    private static final Symbol FACTOR = Symbol.of("k", "coverage-factor", Kind.NUMBER);
    private static final Symbol FLOOR = Symbol.of("s_0", "least-repeatability", Kind.MASS);
    private static final Symbol SENSITIVITY = Symbol.of("SR", "sensitivity-requirement", Kind.MASS);
    private static final Symbol CONSTANT = Symbol.of("α", "uncertainty-constant", Kind.MASS);
    private static final Symbol SLOPE = Symbol.of("β", "uncertainty-slope", Kind.NUMBER);
    private static final Symbol SAFETY = Symbol.of("SF", "safety-factor", Kind.NUMBER);
    private static final Source USP = Source.published("USP general chapter 41, 1 August 2019", "");

    private MinimumWeight() {}

    /** A rule with its figures, in grams. */
    private interface Rule {

        <V> V least(Reckoning<V> r);

        default Amount<Mass> mass(Amount<Mass> unit) {
            return Amount.grams(least(Reckoning.plain()))
                    .withWorking(rule -> Phrase.of("question.minimum-weight"), this, Rule::least)
                    .inUnitOf(unit);
        }
    }

    /**
     * The pharmacopoeial rule: 2 s within 0.10 % of the net mass, s at least 0.41 d.
     *
     * @param balance the balance, its repeatability from at least ten weighings
     * @return the least net mass
     */
    public static Amount<Mass> pharmacopoeial(Balance balance) {
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
    public static Amount<Mass> byRepeatability(Balance balance, Ratio tolerance, CoverageFactor factor) {
        Objects.requireNonNull(balance, "balance");
        Objects.requireNonNull(factor, "factor");
        return new Repeatability(
                        balance.errors().repeatability(),
                        balance.readability(),
                        requireShare("tolerance", tolerance),
                        factor.factor())
                .mass(balance.readability());
    }

    /**
     * The minimum weighable quantity of pharmacy.
     *
     * @param sensitivityRequirement the mass that moves the pointer, or the last digit, by one division; above 0
     * @param permittedError the permitted relative error, above 0 and at most 1; 5 % is common
     * @return the least net mass
     * @throws IllegalArgumentException if a number is out of range
     */
    public static Amount<Mass> bySensitivity(Amount<Mass> sensitivityRequirement, Ratio permittedError) {
        Amount.requirePositive("sensitivityRequirement", sensitivityRequirement);
        return new Sensitivity(sensitivityRequirement, requireShare("permittedError", permittedError))
                .mass(sensitivityRequirement);
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
    public static Amount<Mass> byUncertainty(Amount<Mass> constant, Ratio slope, Ratio tolerance, Ratio safetyFactor) {
        Ratio alpha = Objects.requireNonNull(constant, "constant").canonical();
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
        return new Uncertainty(constant, slope, tolerance, safetyFactor).mass(constant);
    }

    private static Ratio requireShare(String name, Ratio value) {
        if (Objects.requireNonNull(value, name).signum() <= 0 || value.compareTo(Ratio.ONE) > 0) {
            throw new IllegalArgumentException(
                    name + " is " + value + ": it is a share, above 0 and at most 1; 5 % is 1/20");
        }
        return value;
    }

    /** k · max(s, 0.41 d) / τ. */
    private record Repeatability(Amount<Mass> deviation, Amount<Mass> step, Ratio tolerance, Ratio factor)
            implements Rule {

        @Override
        public <V> V least(Reckoning<V> r) {
            V s = r.given(ErrorTerm.REPEATABILITY, deviation, Source.user());
            V d = r.displayStep(ErrorTerm.READABILITY, Subject.none(), step, Source.user());
            V floor = r.named(FLOOR, r.product(r.literal(Ratio.of(41, 100)), d));
            r.note(() -> Phrase.of("note.repeatability-floor", USP.citation()));
            V spread = r.maximum(List.of(s, floor));
            V k = r.given(FACTOR, factor, Source.user());
            return r.named(LEAST, r.quotient(r.product(k, spread), permitted(r, tolerance)));
        }
    }

    /** SR / τ. */
    private record Sensitivity(Amount<Mass> requirement, Ratio error) implements Rule {

        @Override
        public <V> V least(Reckoning<V> r) {
            V given = r.given(SENSITIVITY, requirement, Source.user());
            return r.named(LEAST, r.quotient(given, permitted(r, error)));
        }
    }

    /** α · SF / (τ − β · SF). */
    private record Uncertainty(Amount<Mass> constant, Ratio slope, Ratio tolerance, Ratio safety) implements Rule {

        @Override
        public <V> V least(Reckoning<V> r) {
            V factor = r.given(SAFETY, safety, Source.user());
            V above = r.product(r.given(CONSTANT, constant, Source.user()), factor);
            V below = r.difference(permitted(r, tolerance), r.product(r.given(SLOPE, slope, Source.user()), factor));
            return r.named(LEAST, r.quotient(above, below));
        }
    }

    private static <V> V permitted(Reckoning<V> r, Ratio value) {
        return r.given(TOLERANCE, value, Source.user());
    }
}
