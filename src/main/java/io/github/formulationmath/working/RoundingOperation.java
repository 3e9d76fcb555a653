package io.github.formulationmath.working;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import java.math.RoundingMode;
import java.util.List;

/**
 * Rounding as an operation of its own, so that a reader sees where the digits went.
 *
 * @param rounding the grid and the mode
 */
public record RoundingOperation(Rounding rounding) implements Operation {

    /** Whether a number lies exactly half way between two steps, and the even one is taken. */
    boolean breaksTie(Ratio value) {
        Ratio step = rounding.stepFor(value);
        if (rounding.mode() != RoundingMode.HALF_EVEN || step.isZero()) {
            return false;
        }
        Ratio steps = value.dividedBy(step);
        return !steps.isInteger() && steps.times(2).isInteger();
    }

    @Override
    public Ratio apply(List<Ratio> inputs) {
        return rounding.apply(inputs.get(0));
    }
}
