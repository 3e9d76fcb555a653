package io.github.formulationmath.limit;

import io.github.formulationmath.working.Reckoning;

/** A share as the formula is written: exact, without uncertainty. */
record WrittenEvidence(Tally tally, End end) implements Evidence {

    @Override
    public <V> V value(Reckoning<V> r) {
        return tally.share(r, end);
    }

    @Override
    public <V> V lowest(Reckoning<V> r) {
        return tally.share(r, end);
    }

    @Override
    public <V> V highest(Reckoning<V> r) {
        return tally.share(r, end);
    }

    @Override
    public <V> V variance(Reckoning<V> r) {
        return r.literal(0);
    }
}
