package io.github.formulationmath.reckoning;

import io.github.formulationmath.number.Ratio;
import java.util.List;

/**
 * What is done to numbers in one operation of a relation. The same object computes the value when the relation runs and
 * again when a working is checked.
 */
public sealed interface Operation permits Arithmetic, RoundingOperation, RootOperation, FunctionOperation {

    /**
     * Computes the value.
     *
     * @param inputs the numbers the operation works on, in order
     * @return the exact result, or the result under the rounding that the operation states
     * @throws ArithmeticException if there is no such number (division by 0, root of a negative number)
     */
    Ratio apply(List<Ratio> inputs);
}
