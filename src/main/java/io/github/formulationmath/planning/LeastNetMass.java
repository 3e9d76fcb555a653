package io.github.formulationmath.planning;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Source;
import io.github.formulationmath.working.Subject;
import io.github.formulationmath.working.Symbol;
import java.io.Serial;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/** No line below the least net mass of the balance: {@code M = m_least / w}. */
final class LeastNetMass extends LineBoundCriterion {

    @Serial
    private static final long serialVersionUID = 1L;

    private static final Symbol LEAST_NET = Symbol.of("m", "least-net-mass", Kind.MASS);

    private final Amount<Mass> least;

    LeastNetMass(Amount<Mass> least) {
        this.least = least;
    }

    @Override
    Phrase name() {
        return Phrase.of("criterion.least-net-mass", least.toString());
    }

    @Override
    <V> V bound(Reckoning<V> r, Formula formula, Balance balance, FormulaLine line) {
        V net = r.given(LEAST_NET, Subject.of("least", ""), least.in(FormulationUnits.GRAM), Source.user());
        return r.quotient(net, r.known(line));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof LeastNetMass that && least.equals(that.least);
    }

    @Override
    public int hashCode() {
        return least.hashCode();
    }

    @Override
    public String toString() {
        return "every line at least " + least;
    }
}
