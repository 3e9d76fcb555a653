package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Ratio;
import java.util.List;

/** What the variables of a box contribute to the sum of all masses: for each its sensitivity, and the extremes. */
final class TotalRange {

    private final Ratio[] sensitivities;
    private final Ratio least;
    private final Ratio most;

    TotalRange(MassBox box) {
        List<BoxVariable> variables = box.variables();
        this.sensitivities =
                variables.stream().map(v -> v.sensitivity(Weights.TOTAL)).toArray(Ratio[]::new);
        Ratio low = box.fixed(Weights.TOTAL);
        Ratio high = low;
        for (int i = 0; i < sensitivities.length; i++) {
            low = low.plus(contribution(variables.get(i), i, false));
            high = high.plus(contribution(variables.get(i), i, true));
        }
        this.least = low;
        this.most = high;
    }

    /** The most or the least that a variable can add to the total. */
    Ratio contribution(BoxVariable variable, int index, boolean largest) {
        return sensitivities[index].times(variable.end(isHigh(index, largest)));
    }

    /** Which end of a variable gives the largest or the least total. */
    boolean isHigh(int index, boolean largest) {
        return sensitivities[index].signum() > 0 == largest;
    }

    Ratio sensitivity(int index) {
        return sensitivities[index];
    }

    Ratio least() {
        return least;
    }

    Ratio most() {
        return most;
    }
}
