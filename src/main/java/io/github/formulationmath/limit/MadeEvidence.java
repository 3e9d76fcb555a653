package io.github.formulationmath.limit;

import io.github.formulationmath.weighing.MadeShare;
import io.github.formulationmath.working.Reckoning;

/** A share that was weighed or is to be weighed. */
record MadeEvidence(MadeShare share) implements Evidence {

    @Override
    public <V> V value(Reckoning<V> r) {
        return r.known(share);
    }

    @Override
    public <V> V lowest(Reckoning<V> r) {
        return r.known(share.bounds().least());
    }

    @Override
    public <V> V highest(Reckoning<V> r) {
        return r.known(share.bounds().greatest());
    }

    @Override
    public <V> V variance(Reckoning<V> r) {
        return r.known(share.variance());
    }
}
