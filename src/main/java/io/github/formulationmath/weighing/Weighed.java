package io.github.formulationmath.weighing;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Subject;

/**
 * What was weighed, or is going to be: masses together with the formula whose lines they are. A check or a label takes
 * this and never a formula beside masses, so that the masses of one formula cannot stand in for those of another.
 *
 * <p>A plan with its method, an assignment to balances and what readings put into a pot are weighed; take one of those.
 * Whoever implements it: there is one addition for each line, in the order of the formula, and the {@link
 * Addition#subject()} of each is that {@code FormulaLine} itself, as {@link
 * Addition#of(Subject, Amount, Amount, Balance)} makes it. Whatever else comes in is refused by those who take it.
 *
 * <p>Example: {@code checker.check(ExpectedProduct.of(plan, WeighingMethod.TARE_EACH))}.
 */
public interface Weighed {

    /**
     * The formula that the masses are of.
     *
     * @return the formula
     */
    Formula formula();

    /**
     * One mass for each line of the formula.
     *
     * @return the masses in the order of the formula
     */
    MadeMasses masses();
}
