package io.github.formulationmath.reckoning;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import java.util.List;

/**
 * Rounding as an operation of its own, so that a reader sees where the digits went.
 *
 * @param rounding the grid and the mode
 */
public record RoundingOperation(Rounding rounding) implements Operation {

    @Override
    public Ratio apply(List<Ratio> inputs) {
        return rounding.apply(inputs.get(0));
    }
}
