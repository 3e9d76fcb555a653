package io.github.formulationmath.weighing;

import io.github.formulationmath.working.Reckoning;

/** A relation that can be run in any reckoning; a reference to a generic method is one. */
interface Relation {

    <V> V in(Reckoning<V> reckoning);
}
