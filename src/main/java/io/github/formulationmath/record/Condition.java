package io.github.formulationmath.record;

import io.github.formulationmath.working.Reckoning;
import java.io.Serializable;

/** One condition {@code Σ a_j · u_j ≥ b} of a correction. Its numbers are relations, so that a proof can show them. */
interface Condition extends Serializable {

    /** The line or substance it is about; empty if it is about the whole pot. */
    default String name() {
        return "";
    }

    /** The coefficient a_j of an unknown. */
    <V> V coefficient(Reckoning<V> r, int unknown);

    /** The right side b. */
    <V> V least(Reckoning<V> r);
}
