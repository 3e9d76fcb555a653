package io.github.formulationmath.formula;

import java.util.List;

/**
 * What has one line for each line of a formula, in its order: the formula itself, a batch, a plan, a pot.
 *
 * <p>Example: {@code plan.line("Glycerin").reading()}, {@code made.line("oil", "Glyceryl Stearate SE").mass()}.
 *
 * @param <L> what stands on a line
 */
public interface Lines<L extends Line> {

    /**
     * The formula that the lines are of.
     *
     * @return the formula
     */
    Formula formula();

    /**
     * The lines in the order of the formula, through all phases.
     *
     * @return an unmodifiable list, one for each line of the formula
     */
    List<L> lines();

    /**
     * The line of an ingredient.
     *
     * @param ingredientName the name of the ingredient, in any spelling that {@link SubstanceName} forgives
     * @return its line
     * @throws IllegalArgumentException if no line has it, or several phases do; ask for {@link #line(String, String)} then
     */
    default L line(String ingredientName) {
        return lines().get(formula().indexOf(ingredientName));
    }

    /**
     * The line of an ingredient in a phase.
     *
     * @param phaseName the name of the phase, in any spelling that {@link SubstanceName} forgives
     * @param ingredientName the name of the ingredient, likewise
     * @return its line
     * @throws IllegalArgumentException if there is no such line
     */
    default L line(String phaseName, String ingredientName) {
        return lines().get(formula().indexOf(phaseName, ingredientName));
    }

    /**
     * What stands on a line of the formula.
     *
     * @param line the line
     * @return its line here
     * @throws IllegalArgumentException if it is a line of another formula
     */
    default L line(FormulaLine line) {
        return lines().get(formula().indexOf(line));
    }
}
