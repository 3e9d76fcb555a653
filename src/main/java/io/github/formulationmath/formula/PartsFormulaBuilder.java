package io.github.formulationmath.formula;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import java.util.Objects;

/**
 * A formula being written in parts by weight. Started by {@link Formula#inParts}. Parts are shares of their own sum,
 * exactly: 1 : 1 : 1 is three times 1/3.
 */
public final class PartsFormulaBuilder extends FormulaBuilder<PartsFormulaBuilder> {

    PartsFormulaBuilder(String name) {
        super(name);
    }

    /**
     * Adds a line.
     *
     * @param ingredient the ingredient, not yet in this phase
     * @param parts the number of parts, above 0
     * @return this
     * @throws IllegalArgumentException if the parts are not above 0 or the ingredient stands in this phase already
     */
    public PartsFormulaBuilder line(Ingredient ingredient, Ratio parts) {
        Objects.requireNonNull(parts, "parts");
        requirePositive(ingredient, parts.signum(), parts + " parts");
        add(ingredient, new LineAmount.Parts(parts));
        return this;
    }

    /**
     * Adds a line for a single substance by name.
     *
     * @param ingredientName the name of the ingredient and its substance
     * @param parts the number of parts as text, for example {@code "3"} or {@code "1/2"}
     * @return this
     * @throws IllegalArgumentException as {@link #line(Ingredient, Ratio)}, or if the text is no number
     */
    public PartsFormulaBuilder line(String ingredientName, String parts) {
        Ingredient ingredient = Ingredient.of(ingredientName);
        return line(ingredient, read(ingredient, parts, Ratio::parse));
    }

    /**
     * Not for parts: what is left of a sum that is not known?
     *
     * @param ingredient the ingredient
     * @return nothing
     * @throws IllegalArgumentException always
     */
    @Override
    public PartsFormulaBuilder quantitySufficient(Ingredient ingredient) {
        throw new IllegalArgumentException(Excerpt.of(Objects.requireNonNull(ingredient, "ingredient"))
                + " cannot be q.s. in a formula in parts: parts have no whole to fill up to; give it its own parts");
    }

    @Override
    public Formula build() {
        return build(WholeRule.PARTS, Ratio.ONE);
    }

    @Override
    PartsFormulaBuilder self() {
        return this;
    }
}
