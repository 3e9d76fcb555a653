package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.weighing.ErrorTerm.Load;
import java.util.List;

/**
 * A number that may lie anywhere between two ends, independently of the others: the whole mass of a line that shares no
 * error with other lines, or one bounded error.
 *
 * @param lower the lower end
 * @param upper the upper end
 * @param loads how it enters the masses
 */
record BoxVariable(Ratio lower, Ratio upper, List<Load> loads) {

    /** How a weighted sum of the masses changes with this variable. */
    Ratio sensitivity(Weights weights) {
        Ratio sum = Ratio.ZERO;
        for (Load load : loads) {
            sum = sum.plus(weights.of(load.line()).times(load.factor()));
        }
        return sum;
    }

    Ratio end(boolean high) {
        return high ? upper : lower;
    }
}
