package io.github.formulationmath.limit;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Symbol;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;

/**
 * The probability that a quantity lies within its tolerance, when it was found to be y with a standard uncertainty u and
 * may be taken as normal: {@code p = Φ((b − y)/u) − Φ((a − y)/u)} for the tolerance [a, b], without the term of an end
 * that is missing.
 *
 * <p>Example: 9 g were found with u = 0.5 g, no more than 10 g is allowed: {@code
 * Conformance.atMost(Amount.mass("10 g"), Amount.mass("9 g"), Amount.mass("0.5 g"))} has p = Φ(2) = 97.7 %. JCGM 106:2012, 7.3.3,
 * example 1: y = −5.47, u = 0.05, no more than −5.40 allowed: p = Φ(1.4) = 0.92.
 *
 * <p>The working tells all numbers in the unit in which the value was given.
 *
 * <p>Source: JCGM 106:2012, 7.3 and 7.4.
 *
 * <p>Immutable and thread-safe.
 *
 * @param lower a, the least that is allowed, if there is one
 * @param upper b, the most that is allowed, if there is one
 * @param value y, what was found
 * @param standardUncertainty u, above 0; of a temperature a difference, in kelvin
 * @param <Q> what is measured
 */
public record Conformance<Q extends Quantity<Q>>(
        Optional<Amount<Q>> lower, Optional<Amount<Q>> upper, Amount<Q> value, Amount<Q> standardUncertainty)
        implements Explained {

    private static final Symbol VALUE = Symbol.of("y", "found-value", Kind.NUMBER);
    private static final Symbol UNCERTAINTY = Symbol.of("u_y", "found-uncertainty", Kind.NUMBER);
    private static final Symbol UPPER = Symbol.of("b", "upper-tolerance", Kind.NUMBER);
    private static final Symbol LOWER = Symbol.of("a", "lower-tolerance", Kind.NUMBER);
    private static final Symbol PROBABILITY = Symbol.of("p", "conformance-probability", Kind.SHARE);

    /**
     * The probability of conformance.
     *
     * @param lower a, the least that is allowed, if there is one
     * @param upper b, the most that is allowed, if there is one
     * @param value y, what was found
     * @param standardUncertainty u, above 0; of a temperature a difference, in kelvin
     * @throws IllegalArgumentException if there is no end or they are the wrong way round, or the uncertainty is not above 0 or a
     *     temperature in °C or °F
     */
    public Conformance {
        Objects.requireNonNull(lower, "lower");
        Objects.requireNonNull(upper, "upper");
        Objects.requireNonNull(value, "value");
        if (lower.isEmpty() && upper.isEmpty()) {
            throw new IllegalArgumentException(
                    "lower and upper are both missing: a tolerance needs one end at least, else everything is within");
        }
        if (lower.isPresent() && upper.isPresent()) {
            Interval.of(lower.get(), upper.get());
        }
        if (Objects.requireNonNull(standardUncertainty, "standardUncertainty").signum() <= 0) {
            throw new IllegalArgumentException("standardUncertainty is " + Excerpt.of(standardUncertainty)
                    + ": it must be above 0; without uncertainty compare the value with the tolerance");
        }
        requireDifference(value, standardUncertainty);
    }

    /** An uncertainty is no point on a scale: what can be added to the value is a difference. */
    static <Q extends Quantity<Q>> void requireDifference(Amount<Q> value, Amount<Q> standardUncertainty) {
        value.plus(standardUncertainty);
    }

    /**
     * The probability of lying between two ends.
     *
     * @param tolerance what is allowed
     * @param value y, what was found
     * @param standardUncertainty u, above 0
     * @param <Q> what is measured
     * @return the probability
     * @throws IllegalArgumentException if the uncertainty is not above 0, or a temperature in °C or °F
     */
    public static <Q extends Quantity<Q>> Conformance<Q> within(
            Interval<Amount<Q>> tolerance, Amount<Q> value, Amount<Q> standardUncertainty) {
        Objects.requireNonNull(tolerance, "tolerance");
        return new Conformance<>(
                Optional.of(tolerance.least()), Optional.of(tolerance.greatest()), value, standardUncertainty);
    }

    /**
     * The probability of lying at or below a limit.
     *
     * @param limit b, the most that is allowed
     * @param value y, what was found
     * @param standardUncertainty u, above 0
     * @param <Q> what is measured
     * @return the probability
     * @throws IllegalArgumentException if the uncertainty is not above 0, or a temperature in °C or °F
     */
    public static <Q extends Quantity<Q>> Conformance<Q> atMost(
            Amount<Q> limit, Amount<Q> value, Amount<Q> standardUncertainty) {
        Objects.requireNonNull(limit, "limit");
        return new Conformance<>(Optional.empty(), Optional.of(limit), value, standardUncertainty);
    }

    /**
     * The probability of lying at or above a limit.
     *
     * @param limit a, the least that is allowed
     * @param value y, what was found
     * @param standardUncertainty u, above 0
     * @param <Q> what is measured
     * @return the probability
     * @throws IllegalArgumentException if the uncertainty is not above 0, or a temperature in °C or °F
     */
    public static <Q extends Quantity<Q>> Conformance<Q> atLeast(
            Amount<Q> limit, Amount<Q> value, Amount<Q> standardUncertainty) {
        Objects.requireNonNull(limit, "limit");
        return new Conformance<>(Optional.of(limit), Optional.empty(), value, standardUncertainty);
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
        if (!value.symbol().isEmpty()) {
            r.note(() -> Phrase.of("note.unit-of-value", value.symbol()));
        }
        V y = r.given(VALUE, value.exactValue(), Source.user());
        Ratio spread = standardUncertainty.canonical().dividedBy(value.unitSize());
        V u = r.given(UNCERTAINTY, spread, Source.user());
        V below = upper.map(b -> phi(r, end(r, UPPER, b), y, u)).orElseGet(() -> r.literal(1));
        V p = lower.map(a -> r.difference(below, phi(r, end(r, LOWER, a), y, u)))
                .orElse(below);
        return r.named(PROBABILITY, p);
    }

    private <V> V end(Reckoning<V> r, Symbol symbol, Amount<Q> end) {
        return r.given(symbol, end.inUnitOf(value).exactValue(), Source.user());
    }

    private static <V> V phi(Reckoning<V> r, V end, V y, V u) {
        return StandardNormal.probabilityBelow(r, r.difference(end, y), u);
    }

    @Override
    public String toString() {
        return "probability " + NumberText.percent(probability().canonical()) + " of lying in "
                + lower.map(end -> "[" + end.told()).orElse("(−∞") + ", "
                + upper.map(end -> end.told() + "]").orElse("∞)");
    }
}
