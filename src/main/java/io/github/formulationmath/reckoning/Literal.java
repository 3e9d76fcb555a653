package io.github.formulationmath.reckoning;

import io.github.formulationmath.number.Ratio;

/**
 * A number that belongs to the relation itself.
 *
 * @param value the number
 */
public record Literal(Ratio value) implements Term {}
