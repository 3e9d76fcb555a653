package io.github.formulationmath.formula;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.working.Source;
import io.github.formulationmath.working.Subject;
import java.io.Serializable;

/** A line before its share is known. */
record DraftLine(int position, String phase, Ingredient ingredient, LineAmount amount)
        implements Subject, Serializable {

    boolean isQuantitySufficient() {
        return amount instanceof LineAmount.QuantitySufficient;
    }

    /** The written number in the canonical unit: a fraction, parts, or grams; 0 for q.s. */
    Ratio number() {
        if (amount instanceof LineAmount.Share share) {
            return share.fraction().fraction();
        }
        if (amount instanceof LineAmount.Parts parts) {
            return parts.parts();
        }
        return amount instanceof LineAmount.Weight weight ? weight.mass().in(FormulationUnits.GRAM) : Ratio.ZERO;
    }

    Source source() {
        return Source.written(amount.toString());
    }

    @Override
    public String subscript() {
        return Integer.toString(position);
    }

    @Override
    public String name() {
        return ingredient.name();
    }

    @Override
    public String toString() {
        return position + ". " + ingredient + " " + amount;
    }
}
