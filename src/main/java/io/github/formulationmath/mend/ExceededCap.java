package io.github.formulationmath.mend;

import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.quantity.MassFraction;

/**
 * A cap that no additions bring back to where it belongs.
 *
 * <p>Example: 24 g of glycerin in 104 g, and nothing but 1 g of water to add: 24/105 is the least that the glycerin can be
 * brought to, where 21 % is its cap.
 *
 * <p>Immutable and thread-safe.
 *
 * @param substance what the cap is of
 * @param cap the most that it should make up of everything in the pot
 * @param least the least share that it can be brought to, no cap being exceeded by a larger part of itself than has to be
 */
public record ExceededCap(Substance substance, MassFraction cap, MassFraction least) {

    @Override
    public String toString() {
        return substance.name() + " at least "
                + NumberText.greatestPercent(least.fraction(), part -> part.compareTo(cap.fraction()) > 0)
                + ", its cap is "
                + NumberText.percent(cap.fraction());
    }
}
