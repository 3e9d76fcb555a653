package io.github.formulationmath.formula;

import io.github.formulationmath.reckoning.Subject;

/**
 * A line of a formula, or what became of it: its mass in a batch, its reading in a plan, what is in the pot of it. Whatever
 * stands on a line is found again by {@link #index()} in every list that has one entry a line, and printed below a symbol by
 * the number of the line.
 */
public interface Line extends Subject {

    /**
     * The line of the formula.
     *
     * @return the line as written and resolved
     */
    FormulaLine line();

    /**
     * The place of the line in the formula, for lists.
     *
     * @return the place counted from 0 through all phases; {@link FormulaLine#position()} counts from 1, for people
     */
    default int index() {
        return line().index();
    }

    @Override
    default String subscript() {
        return line().subscript();
    }

    @Override
    default String name() {
        return line().name();
    }
}
