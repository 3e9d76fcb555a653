package io.github.formulationmath.mend;

import io.github.formulationmath.reckoning.Reckoning;

/** One condition {@code Σ a_j · u_j ≥ b} of a linear program. Its numbers are relations, so that a proof can show them. */
interface Constraint {

    /** The line, substance or condition it is about; empty if it is about the whole pot. */
    default String name() {
        return "";
    }

    /** The coefficient a_j of an unknown. */
    <V> V coefficient(Reckoning<V> r, int unknown);

    /** The right side b. */
    <V> V least(Reckoning<V> r);
}
