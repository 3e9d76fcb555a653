package io.github.formulationmath.record;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.working.Reckoning;
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

    /** A condition of the contents, which can be eased if it cannot be kept; the bench gives nothing. */
    interface OfContents extends PotConstraint {

        /** What one unit of slack is worth, for each gram in the new pot: the share asked for of a line, the cap of a substance. */
        <V> V slack(Reckoning<V> r);
    }

    /** A condition that is eased as little as can be, before anything is asked of the lines. */
    interface Yielding extends OfContents {

        /** Those that are yielded first are kept first. */
        int rank();

        /** The same with so many units of slack. */
        Yielding eased(Ratio slack);
    }
}
