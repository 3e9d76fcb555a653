package io.github.formulationmath.reckoning;

import io.github.formulationmath.number.Ratio;
import java.util.List;
import java.util.Objects;

/** A value in a working that knows how it was made: a literal, an operation on other terms, or a named step. */
public sealed interface Term permits Term.Literal, Term.Applied, Step {

    /**
     * The number.
     *
     * @return the exact value in the canonical unit
     */
    Ratio value();

    /**
     * A number that belongs to the relation itself.
     *
     * @param value the number
     */
    record Literal(Ratio value) implements Term {

        /**
         * Nothing may be missing.
         *
         * @param value the number
         */
        public Literal {
            Objects.requireNonNull(value, "value");
        }
    }

    /**
     * An operation on terms, and its result.
     *
     * @param operation the operation
     * @param inputs the terms it works on
     * @param value the result
     */
    record Applied(Operation operation, List<Term> inputs, Ratio value) implements Term {

        /**
         * Copies the inputs.
         *
         * @param operation the operation
         * @param inputs the terms it works on
         * @param value the result
         */
        public Applied {
            Objects.requireNonNull(operation, "operation");
            inputs = List.copyOf(Objects.requireNonNull(inputs, "inputs"));
            Objects.requireNonNull(value, "value");
        }

        static Applied of(Operation operation, List<Term> inputs) {
            return new Applied(
                    operation,
                    inputs,
                    operation.apply(inputs.stream().map(Term::value).toList()));
        }
    }
}
