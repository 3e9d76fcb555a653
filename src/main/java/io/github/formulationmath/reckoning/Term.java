package io.github.formulationmath.reckoning;

import io.github.formulationmath.number.Ratio;

/** A value in a working that knows how it was made: a literal, an operation on other terms, or a named step. */
public sealed interface Term permits Literal, Applied, Step {

    /**
     * The number.
     *
     * @return the exact value in the canonical unit
     */
    Ratio value();
}
