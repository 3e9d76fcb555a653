package io.github.formulationmath.planning;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import java.util.Objects;

/** No line below a least mass that depends on nothing but the balance: {@code M = m_least / w}. */
sealed interface LeastLine extends OfWeighings permits OneDivision, LeastNetMass, RepeatabilityMinimum {

    /** What the criterion asks, in words. */
    Phrase name();

    /** The least mass. */
    <V> V least(Reckoning<V> r, Balance balance);

    @Override
    default Sizes on(Formula formula, Bench bench) {
        Objects.requireNonNull(formula, "formula");
        Objects.requireNonNull(bench, "bench");
        return Sizes.from(formula, bench, name(), formula.lines(), new Bound(this, bench.balance()));
    }

    /** The least batch for a line. */
    record Bound(LeastLine criterion, Balance balance) implements Sizes.LineBound {
        @Override
        public <V> V of(Reckoning<V> r, FormulaLine line) {
            return r.quotient(criterion.least(r, balance), r.known(line));
        }
    }
}
