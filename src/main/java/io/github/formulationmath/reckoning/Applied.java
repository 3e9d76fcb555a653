package io.github.formulationmath.reckoning;

import io.github.formulationmath.number.Ratio;
import java.util.List;

/**
 * An operation on terms, and its result.
 *
 * @param operation the operation
 * @param inputs the terms it works on
 * @param value the result
 */
public record Applied(Operation operation, List<Term> inputs, Ratio value) implements Term {

    /**
     * Copies the inputs.
     *
     * @param operation the operation
     * @param inputs the terms it works on
     * @param value the result
     */
    public Applied {
        inputs = List.copyOf(inputs);
    }

    static Applied of(Operation operation, List<Term> inputs) {
        return new Applied(
                operation,
                inputs,
                operation.apply(inputs.stream().map(Term::value).toList()));
    }
}
