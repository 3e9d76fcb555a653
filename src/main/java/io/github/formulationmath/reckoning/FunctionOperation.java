package io.github.formulationmath.reckoning;

import io.github.formulationmath.number.Ratio;
import java.util.List;

/**
 * A statistical function as an operation; its result is a {@code double}, kept by its decimal digits.
 *
 * @param function the function
 */
public record FunctionOperation(StatisticalFunction function) implements Operation {

    @Override
    public Ratio apply(List<Ratio> inputs) {
        return Ratio.from(function.applyAsDouble(
                inputs.stream().mapToDouble(Ratio::doubleValue).toArray()));
    }
}
