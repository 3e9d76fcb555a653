package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.working.Explained;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Symbol;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What all the shares of one whole need: worked out once, derived again when a working asks for it. */
final class Whole {

    private static final Symbol TOTAL = Symbol.of("S", "made-total", Kind.MASS);
    private static final Symbol VARIANCE = Symbol.of("vS", "total-variance", Kind.MASS_SQUARED);

    private final MassRelations relations;
    private final List<AdditionError> errors;
    private final MassBox box;
    private final TotalRange range;
    private final List<Explained> estimates;
    private final List<Explained> lowest;
    private final List<Explained> highest;
    private final Derived total;
    private final Derived variance;
    private final Map<ErrorSource, Ratio> variances;

    Whole(MassRelations relations, List<AdditionError> errors) {
        this.relations = relations;
        this.errors = errors;
        this.estimates = errors.stream().map(AdditionError::estimate).toList();
        this.lowest = errors.stream().map(AdditionError::lowest).toList();
        this.highest = errors.stream().map(AdditionError::highest).toList();
        this.box = new MassBox(relations, this);
        this.range = new TotalRange(box);
        this.total = Derived.of(Phrase.of("question.made-total"), this::total);
        this.variances = Map.copyOf(relations.errors().bySource(Weights.TOTAL, Weights.TOTAL));
        this.variance = Derived.of(Phrase.of("question.total-variance"), this::variance);
    }

    MassRelations relations() {
        return relations;
    }

    List<AdditionError> errors() {
        return errors;
    }

    MassBox box() {
        return box;
    }

    TotalRange range() {
        return range;
    }

    Derived total() {
        return total;
    }

    Derived variance() {
        return variance;
    }

    /** The variance of the total, source by source. */
    Map<ErrorSource, Ratio> variances() {
        return variances;
    }

    Explained estimate(int line) {
        return estimates.get(line);
    }

    Explained extreme(int line, boolean high) {
        return high ? highest.get(line) : lowest.get(line);
    }

    /** Σ weight · mass, lines of weight 0 left out. */
    <V> V weighted(Reckoning<V> r, Weights weights, MassOf<V> masses) {
        if (weights instanceof Weights.OneLine one) {
            return masses.of(one.line());
        }
        List<V> parts = new ArrayList<>();
        weights.forEach(
                errors.size(),
                (i, weight) -> parts.add(
                        weights instanceof Weights.Total
                                ? masses.of(i)
                                : r.product(relations.strength(r, weights, i), masses.of(i))));
        return Sums.of(r, parts);
    }

    /** The estimate of a weighted sum of the masses. */
    Ratio estimated(Weights weights) {
        return weighted(Reckoning.plain(), weights, i -> estimate(i).result());
    }

    /** The mass of a line as a value. */
    interface MassOf<V> {
        V of(int line);
    }

    private <V> V total(Reckoning<V> r) {
        return r.named(TOTAL, weighted(r, Weights.TOTAL, i -> r.known(estimate(i))));
    }

    private <V> V variance(Reckoning<V> r) {
        return r.named(VARIANCE, relations.covariance(r, Weights.TOTAL, Weights.TOTAL));
    }

    /** The least or the largest strength: no share can leave the interval between them. */
    Ratio hull(Weights weights, boolean largest) {
        List<Ratio> strengths = new ArrayList<>();
        weights.forEach(errors.size(), (i, weight) -> strengths.add(weight));
        if (strengths.size() < errors.size()) {
            strengths.add(Ratio.ZERO);
        }
        return strengths.stream().reduce(largest ? Ratio::max : Ratio::min).orElseThrow();
    }
}
