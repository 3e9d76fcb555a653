package io.github.formulationmath.limit;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Symbol;
import java.util.Objects;
import javax.measure.quantity.Dimensionless;

/**
 * The probability that a quantity lies within its tolerance, when it was found to be y with a standard uncertainty u and
 * may be taken as normal: {@code p = Φ((b − y)/u) − Φ((a − y)/u)} for the tolerance [a, b], without the term of an end
 * that is missing.
 *
 * <p>Example: y = −5.47, u = 0.05, no more than −5.40 allowed: p = Φ(1.4) = 0.92 (JCGM 106:2012, 7.3.3, example 1).
 *
 * <p>Source: JCGM 106:2012, 7.3 and 7.4.
 *
 * <p>Immutable and thread-safe.
 *
 * @param tolerance what is allowed; an end may be missing
 * @param value y, what was found, in the unit of the tolerance
 * @param standardUncertainty u, in the same unit, above 0
 */
public record Conformance(Bounds tolerance, Ratio value, Ratio standardUncertainty) implements Explained {

    private static final Symbol VALUE = Symbol.of("y", "found-value", Kind.NUMBER);
    private static final Symbol UNCERTAINTY = Symbol.of("u_y", "found-uncertainty", Kind.NUMBER);
    private static final Symbol UPPER = Symbol.of("b", "upper-tolerance", Kind.NUMBER);
    private static final Symbol LOWER = Symbol.of("a", "lower-tolerance", Kind.NUMBER);
    private static final Symbol PROBABILITY = Symbol.of("p", "conformance-probability", Kind.SHARE);

    /**
     * The probability of conformance.
     *
     * @param tolerance what is allowed; an end may be missing
     * @param value y, what was found, in the unit of the tolerance
     * @param standardUncertainty u, in the same unit, above 0
     * @throws IllegalArgumentException if the uncertainty is not above 0
     */
    public Conformance {
        Objects.requireNonNull(tolerance, "tolerance");
        Objects.requireNonNull(value, "value");
        if (Objects.requireNonNull(standardUncertainty, "standardUncertainty").signum() <= 0) {
            throw new IllegalArgumentException("standardUncertainty is " + standardUncertainty
                    + ": it must be above 0; without uncertainty compare the value with the tolerance");
        }
    }

    /**
     * The probability of conformance.
     *
     * @param tolerance what is allowed; an end may be missing
     * @param value y, what was found, in the unit of the tolerance
     * @param standardUncertainty u, in the same unit, above 0
     * @return the probability
     * @throws IllegalArgumentException if the uncertainty is not above 0
     */
    public static Conformance of(Bounds tolerance, Ratio value, Ratio standardUncertainty) {
        return new Conformance(tolerance, value, standardUncertainty);
    }

    /**
     * The probability.
     *
     * @return up to 100 %, correct to a {@code double}, with its working
     */
    public Amount<Dimensionless> probability() {
        return Amount.percent(probabilityIn(Reckoning.plain()).times(100))
                .withWorking(
                        conformance -> Phrase.of("question.conformance-probability"), this, Conformance::probabilityIn);
    }

    /** The working of the {@link #probability() probability}. */
    @Override
    public Origin origin() {
        return probability().origin();
    }

    private <V> V probabilityIn(Reckoning<V> r) {
        V y = r.given(VALUE, value, Source.user());
        V u = r.given(UNCERTAINTY, standardUncertainty, Source.user());
        V below = tolerance
                .upper()
                .map(b -> phi(r, r.given(UPPER, b, Source.user()), y, u))
                .orElseGet(() -> r.literal(1));
        V p = tolerance
                .lower()
                .map(a -> r.difference(below, phi(r, r.given(LOWER, a, Source.user()), y, u)))
                .orElse(below);
        return r.named(PROBABILITY, p);
    }

    private static <V> V phi(Reckoning<V> r, V end, V y, V u) {
        return StandardNormal.probabilityBelow(r, r.difference(end, y), u);
    }

    @Override
    public String toString() {
        return "probability " + NumberText.percent(probability().canonical()) + " of lying in "
                + tolerance.lower().map(end -> "[" + NumberText.of(end)).orElse("(−∞") + ", "
                + tolerance.upper().map(end -> NumberText.of(end) + "]").orElse("∞)");
    }
}
