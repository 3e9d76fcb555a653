package io.github.formulationmath.size;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Divisions;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.size.Criterion.KeptSum;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/**
 * A weighted sum stays at or above 0 whatever the additions do. The made masses lie between {@code β⁻·w_j·M − E⁻} and {@code
 * β⁺·w_j·M + E⁺}, and Σ a·m is least with every line that helps at its lower and every other at its upper end. So {@code M·G ≥
 * H} with {@code G = Σ a_j·β_j·w_j} and {@code H = Σ |a_j|·E_j}. The scale of the balance multiplies the whole sum, and cancels.
 *
 * @param sum the sum
 * @param method how it is weighed
 * @param coverage k, by which repeatability is taken in; 0 for a balance that has none
 */
record SumKept(KeptSum sum, WeighingMethod method, Ratio coverage) implements Criterion {

    private static final Symbol ERRORS = Symbol.of("H", "errors-against-sum", Kind.MASS);
    private static final Symbol ROOM = Symbol.of("G", "room-of-sum", Kind.NUMBER);

    @Override
    public Sizes on(Formula formula, Bench bench) {
        Objects.requireNonNull(formula, "formula");
        Objects.requireNonNull(bench, "bench");
        Bound bound = new Bound(this, formula, bench);
        if (coverage.isZero() && !bench.balance().errors().repeatability().isZero()) {
            return Sizes.none(formula, bench, Phrase.of("obstacle.repeatability-has-no-bound"));
        }
        return bound.room(Reckoning.plain()).signum() > 0
                ? Sizes.from(formula, bench, sum.asked(), List.of(bound.worst()), bound)
                : Sizes.none(formula, bench, sum.obstacle());
    }

    /** The least batch, told of the line whose error counts most. */
    private record Bound(SumKept criterion, Formula formula, Bench bench) implements Sizes.LineBound {

        @Override
        public <V> V of(Reckoning<V> r, FormulaLine worst) {
            V errors = r.named(ERRORS, errors(r));
            V bound = r.quotient(errors, r.named(ROOM, room(r)));
            // Where so much stays in the boat that errors only help, any batch passes that the display can show.
            return r.number(errors).signum() > 0
                    ? bound
                    : r.maximum(List.of(bound, Divisions.readability(r, bench.balance())));
        }

        private <V> V room(Reckoning<V> r) {
            List<V> parts = new ArrayList<>();
            parts.add(r.literal(0));
            for (FormulaLine line : formula.lines()) {
                V own = criterion.sum.coefficient(r, line);
                if (!r.number(own).isZero()) {
                    V proportion = error(line).factor(r, r.number(own).signum() < 0);
                    parts.add(r.product(r.product(own, proportion), r.known(line)));
                }
            }
            return r.sum(parts);
        }

        private <V> V errors(Reckoning<V> r) {
            List<V> parts = new ArrayList<>();
            for (FormulaLine line : formula.lines()) {
                if (!coefficient(line).isZero()) {
                    parts.add(error(r, line));
                }
            }
            return r.sum(parts);
        }

        private <V> V error(Reckoning<V> r, FormulaLine line) {
            V own = criterion.sum.coefficient(r, line);
            return r.product(
                    r.absolute(own), error(line).constant(r, r.number(own).signum() < 0));
        }

        private FormulaLine worst() {
            return formula.lines().stream()
                    .filter(line -> !coefficient(line).isZero())
                    .max(Comparator.comparing(line -> error(Reckoning.plain(), line)))
                    .orElseThrow();
        }

        private Ratio coefficient(FormulaLine line) {
            return criterion.sum.coefficient(Reckoning.plain(), line);
        }

        private AdditionBound error(FormulaLine line) {
            return AdditionBound.of(line, formula, bench, criterion.method, criterion.coverage);
        }
    }
}
