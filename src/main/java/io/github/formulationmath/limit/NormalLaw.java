package io.github.formulationmath.limit;

import io.github.formulationmath.working.Reckoning;
import java.util.List;

/** The normal law as a relation. */
final class NormalLaw {

    private NormalLaw() {}

    /** Φ(room / u): the probability that a quantity stays below an end that is this far above its most likely value. */
    static <V> V probabilityBelow(Reckoning<V> r, V room, V uncertainty) {
        return r.function(StandardNormal.DISTRIBUTION, List.of(r.quotient(room, uncertainty)));
    }
}
