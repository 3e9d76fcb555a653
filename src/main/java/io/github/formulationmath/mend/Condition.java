package io.github.formulationmath.mend;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Reckoning;
import java.io.Serializable;
import javax.measure.quantity.Mass;

/**
 * Something that has to hold of what is in the pot, besides tolerances and caps: {@code Σ a_j·m_j ≥ b} over the masses m_j of
 * the lines. It is linear, so that the smallest additions that keep it can be worked out, and but for a {@linkplain #reserve()
 * reserve} b homogeneous, so that it is about what the pot is made of and not about how much there is of it. Whoever has such a condition implements this and hands it to
 * {@link CorrectionRules#keeping}; it then counts in the smallest additions, in their proof, and in whole steps of a display.
 *
 * <p>Example: an acid has to be neutralised, 1 g of it by 0.4 g of a base. With a = 1 for the base, a = −0.4 for the acid and 0
 * for all other lines, the sum is the base in excess, and the condition says that none is wanting.
 *
 * <p>Implementations are immutable, with {@code equals} and {@code hashCode} by value, best as records.
 */
public interface Condition extends Serializable {

    /**
     * What the condition is about.
     *
     * @return its name, as it stands in proofs and in an {@link Obstacle}
     */
    String name();

    /**
     * What each gram of a line counts for, as a relation, so that a proof can show where the number comes from.
     *
     * @param <V> what a value is
     * @param r the arithmetic to use
     * @param line the line, one of the formula that is mended
     * @return a_j, the same number whenever it is asked for; negative if the line makes it worse
     */
    <V> V coefficient(Reckoning<V> r, FormulaLine line);

    /**
     * How far above 0 the sum has to be, for what the balance may hide: the masses of the pot are those displayed, and the true ones
     * may make the sum so much less.
     *
     * @return b, at least 0 g; 0 g unless it is said otherwise
     */
    default Amount<Mass> reserve() {
        return Amount.grams(Ratio.ZERO);
    }
}
