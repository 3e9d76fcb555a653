package io.github.formulationmath.size;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Divisions;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.simulation.CoverageFactor;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.MinimumWeight;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Mass;

/** No line below a least mass that depends on nothing but the balance: {@code M = m_least / w}. */
sealed interface LeastLine extends OfWeighings.EachLine {

    /** What the criterion asks, in words. */
    Phrase name();

    /** The least mass. */
    <V> V least(Reckoning<V> r, Balance balance);

    @Override
    default Sizes on(Formula formula, Bench bench, List<FormulaLine> lines, Optional<WeighingMethod> own) {
        return Sizes.from(formula, bench, name(), lines, new Bound(this, bench.balance()));
    }

    /** The least batch for a line. */
    record Bound(LeastLine criterion, Balance balance) implements Sizes.LineBound {
        @Override
        public <V> V of(Reckoning<V> r, FormulaLine line) {
            return r.quotient(criterion.least(r, balance), r.known(line));
        }
    }

    /** No line below one division: {@code M = d / w}. */
    record OneDivision() implements LeastLine {

        @Override
        public Phrase name() {
            return Phrase.of("criterion.one-division");
        }

        @Override
        public <V> V least(Reckoning<V> r, Balance balance) {
            return Divisions.readability(r, balance);
        }

        @Override
        public String toString() {
            return "every line at least one division";
        }
    }

    /** No line below the least net mass of the balance: {@code M = m_least / w}. */
    record LeastNetMass(Amount<Mass> least) implements LeastLine {

        private static final Symbol LEAST_NET = Symbol.of("m", "least-net-mass", Kind.MASS);

        @Override
        public Phrase name() {
            return Phrase.of("criterion.least-net-mass", least.toString());
        }

        @Override
        public <V> V least(Reckoning<V> r, Balance balance) {
            return r.given(LEAST_NET, Subject.of("least", ""), least, Source.user());
        }

        @Override
        public String toString() {
            return "every line at least " + least;
        }
    }

    /** No line below the minimum weight that follows from the repeatability of whatever balance is asked about. */
    record RepeatabilityMinimum(Ratio tolerance, CoverageFactor factor) implements LeastLine {

        @Override
        public Phrase name() {
            return Phrase.of("criterion.minimum-weight", tolerance.times(100).toString());
        }

        @Override
        public <V> V least(Reckoning<V> r, Balance balance) {
            return r.known(MinimumWeight.byRepeatability(balance, tolerance, factor));
        }

        @Override
        public String toString() {
            return "every line at least the minimum weight at " + NumberText.percent(tolerance);
        }
    }
}
