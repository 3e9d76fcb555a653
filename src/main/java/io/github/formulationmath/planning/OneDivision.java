package io.github.formulationmath.planning;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import java.io.Serial;
import org.jspecify.annotations.Nullable;

/** M = d / w. */
final class OneDivision extends LineBoundCriterion {

    @Serial
    private static final long serialVersionUID = 1L;

    @Override
    Phrase name() {
        return Phrase.of("criterion.one-division");
    }

    @Override
    <V> V bound(Reckoning<V> r, Formula formula, Balance balance, FormulaLine line) {
        return r.quotient(BatchSymbols.readability(r, balance), r.known(line));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof OneDivision;
    }

    @Override
    public int hashCode() {
        return OneDivision.class.getName().hashCode();
    }

    @Override
    public String toString() {
        return "every line at least one division";
    }
}
