package io.github.formulationmath.size;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;

/**
 * Something that has to hold of the masses m_j that are weighed: {@code Σ a_j·m_j ≥ 0}. Being linear and homogeneous it is about what
 * a batch is made of, and {@link Criterion#sumKept} finds the size from which on no error of the balance breaks it.
 *
 * <p>Example: an acid has to be neutralised, 1 g of it by 0.4 g of a base: a = 1 for the base, −0.4 for the acid, 0 for the rest.
 *
 * <p>Implementations are immutable, with {@code equals} and {@code hashCode} by value, best as records.
 */
public interface KeptSum {

    /**
     * What is asked.
     *
     * @return it in words, a phrase of the wording
     */
    Phrase asked();

    /**
     * Why no batch keeps it, however large, where the exact targets leave it no room.
     *
     * @return the reason, and what would change it
     */
    Phrase obstacle();

    /**
     * What each gram of a line counts for.
     *
     * @param <V> what a value is
     * @param r the arithmetic to use
     * @param line the line
     * @return a_j, the same number whenever it is asked for; negative if the line makes it worse
     * @throws IllegalArgumentException if the line is of another formula than the sum is about
     */
    <V> V coefficient(Reckoning<V> r, FormulaLine line);
}
