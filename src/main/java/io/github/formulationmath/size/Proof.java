package io.github.formulationmath.size;

import io.github.formulationmath.reckoning.Reckoning;

/** The relations that lead to a size, and show that it passes and what binds it. Equal ones prove the same sizes. */
interface Proof {

    /** The relation that leads to the smallest size. */
    <V> V smallest(Reckoning<V> r, Landing smallest);

    /**
     * The relation that leads to a size at which a search came to rest: the line or total that stopped it there, from
     * below or from above, and that what is asked is met there.
     */
    default <V> V edge(Reckoning<V> r, Landing at, boolean fromBelow) {
        return smallest(r, at);
    }
}
