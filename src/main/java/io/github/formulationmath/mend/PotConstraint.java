package io.github.formulationmath.mend;

import java.util.List;

/**
 * A condition on the additions {@code x_j} to a pot of mass Z, written so that it stays true when pot and additions are
 * made larger together: {@code Σ a_j · x_j − b ≥ 0}, where {@code −b} is what the pot itself brings. So the same condition
 * serves for masses added to this pot and for shares of a pot to come ({@link ShareConstraint}).
 */
interface PotConstraint extends Constraint {

    /** The lines, from 0, whose additions have coefficients of their own; those of all other lines are the same. */
    List<Integer> own();

    /** What the condition is about, should it stand in the way. */
    Obstacle.Kind kind();
}
