package io.github.formulationmath.working;

import io.github.formulationmath.number.Ratio;

/**
 * A wrong answer that somebody who makes a classic mistake comes to.
 *
 * @param mistake the mistake
 * @param value the wrong value, in the canonical unit
 */
public record Distractor(Mistake mistake, Ratio value) {}
