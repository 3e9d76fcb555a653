package io.github.formulationmath.reckoning;

/**
 * A comparison that decided something.
 *
 * @param left the term on the left
 * @param comparison the relation
 * @param right the term on the right
 * @param holds whether it holds
 */
public record Decision(Term left, Comparison comparison, Term right, boolean holds) implements Entry {}
