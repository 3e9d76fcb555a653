package io.github.formulationmath.limit;

import io.github.formulationmath.working.Reckoning;

/** What is known of a share: its most likely value, the ends between which it is sure to lie, and its variance. */
interface Evidence {

    <V> V value(Reckoning<V> r);

    <V> V lowest(Reckoning<V> r);

    <V> V highest(Reckoning<V> r);

    <V> V variance(Reckoning<V> r);
}
