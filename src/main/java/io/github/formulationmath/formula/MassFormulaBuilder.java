package io.github.formulationmath.formula;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import java.util.Objects;
import javax.measure.quantity.Mass;

/**
 * A formula being written in masses, as a batch once made is noted down. Started by {@link Formula#inMasses}. The shares
 * are masses divided by their sum, or by the mass to make if there is a q.s. line.
 */
public final class MassFormulaBuilder extends FormulaBuilder<MassFormulaBuilder> {

    MassFormulaBuilder(String name) {
        super(name);
    }

    /**
     * Adds a line.
     *
     * @param ingredient the ingredient, not yet in this phase
     * @param mass its mass, above 0
     * @return this
     * @throws IllegalArgumentException if the mass is not above 0 or the ingredient stands in this phase already
     */
    public MassFormulaBuilder line(Ingredient ingredient, Amount<Mass> mass) {
        Objects.requireNonNull(mass, "mass");
        requirePositive(ingredient, mass.signum(), mass);
        add(ingredient, new LineAmount.Weight(mass));
        return this;
    }

    /**
     * Adds a line for a single substance by name.
     *
     * @param ingredientName the name of the ingredient and its substance
     * @param mass its mass as text, for example {@code "12.5 g"}
     * @return this
     * @throws IllegalArgumentException as {@link #line(Ingredient, Amount)}, or if the text is no mass
     */
    public MassFormulaBuilder line(String ingredientName, String mass) {
        Ingredient ingredient = Ingredient.of(ingredientName);
        return line(ingredient, read(ingredient, mass, Amount::mass));
    }

    /**
     * Ends the formula; the masses are shares of their sum.
     *
     * @return the formula
     * @throws IllegalArgumentException if there is a q.s. line: say with {@link #buildToMake} what it fills up to
     */
    @Override
    public Formula build() {
        if (hasQuantitySufficient()) {
            throw new IllegalArgumentException(
                    "a q.s. line among masses needs the mass to make: call buildToMake(mass) instead of build()");
        }
        return build(WholeRule.MASSES, Ratio.ONE);
    }

    /**
     * Ends a formula whose q.s. line fills up to a stated mass.
     *
     * @param whole the mass to make, above what the other lines add up to
     * @return the formula
     * @throws FormulaTotalException if nothing is left for the q.s. line
     * @throws IllegalArgumentException if there is no q.s. line
     */
    public Formula buildToMake(Amount<Mass> whole) {
        Objects.requireNonNull(whole, "whole");
        if (!hasQuantitySufficient()) {
            throw new IllegalArgumentException(
                    "no line is q.s., so nothing can fill up to " + Excerpt.of(whole) + ": call build()");
        }
        if (whole.signum() <= 0) {
            throw new IllegalArgumentException("whole is " + Excerpt.of(whole) + ": it must be above 0");
        }
        return build(WholeRule.MASSES_TO_MAKE, whole.in(FormulationUnits.GRAM));
    }

    @Override
    MassFormulaBuilder self() {
        return this;
    }
}
