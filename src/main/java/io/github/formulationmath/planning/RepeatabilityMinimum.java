package io.github.formulationmath.planning;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.CoverageFactor;
import io.github.formulationmath.weighing.MinimumWeight;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;

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
        return "every line at least the minimum weight at " + tolerance.times(100) + " %";
    }
}
