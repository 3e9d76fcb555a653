package io.github.formulationmath.formula;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.MassFraction;
import java.util.Objects;

/** A formula being written in percent by weight, with or without a q.s. line. Started by {@link Formula#inPercent}. */
public final class PercentFormulaBuilder extends FormulaBuilder<PercentFormulaBuilder> {

    PercentFormulaBuilder(String name) {
        super(name);
    }

    /**
     * Adds a line.
     *
     * @param ingredient the ingredient, not yet in this phase
     * @param share its mass fraction, above 0
     * @return this
     * @throws IllegalArgumentException if the share is 0 or the ingredient stands in this phase already
     */
    public PercentFormulaBuilder line(Ingredient ingredient, MassFraction share) {
        Objects.requireNonNull(share, "share");
        requirePositive(ingredient, share.fraction().signum(), share);
        add(ingredient, new LineAmount.Share(share));
        return this;
    }

    /**
     * Adds a line with its share as text.
     *
     * @param ingredient the ingredient, not yet in this phase
     * @param percent its mass fraction, for example {@code "2.50 %"}
     * @return this
     * @throws IllegalArgumentException as {@link #line(Ingredient, MassFraction)}, or if the text is no mass fraction
     */
    public PercentFormulaBuilder line(Ingredient ingredient, String percent) {
        return line(ingredient, read(ingredient, percent, MassFraction::parse));
    }

    /**
     * Adds a line for a single substance by name.
     *
     * @param ingredientName the name of the ingredient and its substance
     * @param percent its mass fraction, for example {@code "2.50 %"}
     * @return this
     * @throws IllegalArgumentException as {@link #line(Ingredient, MassFraction)}, or if the text is no mass fraction
     */
    public PercentFormulaBuilder line(String ingredientName, String percent) {
        return line(Ingredient.of(ingredientName), percent);
    }

    /**
     * Ends the formula; its lines must add up to exactly 100 %, or leave something for the q.s. line.
     *
     * @return the formula
     * @throws FormulaTotalException if they do not; the message gives the sum and the difference
     * @throws IllegalArgumentException if a phase is empty
     */
    @Override
    public Formula build() {
        return build(WholeRule.HUNDRED_PERCENT, Ratio.ONE);
    }

    /**
     * Ends the formula and divides every line by the sum of all, so that they make up 100 % whatever they add up to.
     *
     * @return the formula
     * @throws IllegalArgumentException if a phase is empty, or if there is a q.s. line, which leaves nothing to normalise
     */
    public Formula buildNormalised() {
        if (hasQuantitySufficient()) {
            throw new IllegalArgumentException(
                    "a formula with a q.s. line makes up 100 % by itself: call build(), or give the line a share");
        }
        return build(WholeRule.NORMALISED, Ratio.ONE);
    }

    @Override
    PercentFormulaBuilder self() {
        return this;
    }
}
