package io.github.formulationmath.size;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.List;
import java.util.Optional;

/** The worst error of an addition is at most τ·m: {@code M = E / (τ·w)}, or the same with too much and too little apart. */
record ErrorBound(Tolerances tolerances, WeighingMethod method, Ratio coverage) implements OfWeighings.EachLine {

    @Override
    public Sizes on(Formula formula, Bench bench, List<FormulaLine> lines, Optional<WeighingMethod> own) {
        tolerances.checkedFor(formula);
        Bound bound = new Bound(
                own.map(by -> new ErrorBound(tolerances, by, coverage)).orElse(this), formula, bench);
        return lines.stream()
                .filter(line -> !bound.hasRoom(line))
                .findFirst()
                .map(line -> Sizes.none(formula, bench, Phrase.of("obstacle.no-room-for-error", line.name())))
                .orElseGet(() -> Sizes.from(formula, bench, name(), lines, bound));
    }

    private Phrase name() {
        return coverage.isZero()
                ? Phrase.of("criterion.error-bound", tolerances.toString())
                : Phrase.of("criterion.error-bound-repeated", tolerances.toString(), coverage.toString());
    }

    /** The least batch for a line. */
    private record Bound(ErrorBound criterion, Formula formula, Bench bench) implements Sizes.LineBound {

        @Override
        public <V> V of(Reckoning<V> r, FormulaLine line) {
            V over = mass(r, line, true);
            return error(line).isEven() ? over : r.maximum(List.of(over, mass(r, line, false)));
        }

        private AdditionBound error(FormulaLine line) {
            return AdditionBound.of(line, formula, bench, criterion.method, criterion.coverage);
        }

        private <V> V mass(Reckoning<V> r, FormulaLine line, boolean over) {
            V constant = error(line).constant(r, over);
            return r.quotient(constant, r.product(room(r, line, over), r.known(line)));
        }

        /** What the tolerance leaves, per gram, after what is in proportion: (1 + τ) − β, or β − (1 − τ). */
        private <V> V room(Reckoning<V> r, FormulaLine line, boolean over) {
            AdditionBound error = error(line);
            V tau = criterion.tolerances.value(r, line);
            if (error.isEven()) {
                return tau;
            }
            return over
                    ? r.difference(r.sum(r.literal(1), tau), error.factor(r, true))
                    : r.difference(error.factor(r, false), r.difference(r.literal(1), tau));
        }

        private boolean hasRoom(FormulaLine line) {
            return room(Reckoning.plain(), line, true).signum() > 0
                    && room(Reckoning.plain(), line, false).signum() > 0;
        }
    }

    @Override
    public String toString() {
        return "worst error of every addition within " + tolerances
                + (coverage.isZero() ? "" : ", " + coverage + " times the repeatability taken in");
    }
}
