package io.github.formulationmath.record;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.working.Reckoning;
import java.io.Serializable;
import java.util.List;

/** Additions, one number of grams for each line, and what comes of them. */
sealed interface AdditionPlan extends Serializable permits CorrectionPlan, RestoringPlan {

    Correction.Outcome outcome();

    List<Ratio> additions();

    List<Obstacle> obstacles();

    List<ExceededCap> exceededCaps();

    /** The mass of all additions in grams. */
    Ratio total();

    /** The relation that leads to the total. */
    <V> V deriveTotal(Reckoning<V> r);
}
