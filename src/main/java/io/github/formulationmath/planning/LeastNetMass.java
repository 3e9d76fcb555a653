package io.github.formulationmath.planning;

import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Source;
import io.github.formulationmath.working.Subject;
import io.github.formulationmath.working.Symbol;
import javax.measure.quantity.Mass;

/** No line below the least net mass of the balance: {@code M = m_least / w}. */
record LeastNetMass(Amount<Mass> least) implements LeastLine {

    private static final Symbol LEAST_NET = Symbol.of("m", "least-net-mass", Kind.MASS);

    @Override
    public Phrase name() {
        return Phrase.of("criterion.least-net-mass", least.toString());
    }

    @Override
    public <V> V least(Reckoning<V> r, Balance balance) {
        return r.given(LEAST_NET, Subject.of("least", ""), least.canonical(), Source.user());
    }

    @Override
    public String toString() {
        return "every line at least " + least;
    }
}
