package io.github.formulationmath.planning;

import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;

/** No line below one division: {@code M = d / w}. */
record OneDivision() implements LeastLine {

    @Override
    public Phrase name() {
        return Phrase.of("criterion.one-division");
    }

    @Override
    public <V> V least(Reckoning<V> r, Balance balance) {
        return BatchSymbols.readability(r, balance);
    }

    @Override
    public String toString() {
        return "every line at least one division";
    }
}
