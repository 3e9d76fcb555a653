package io.github.formulationmath.falsefine;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import javax.measure.quantity.Mass;

/** What the library answered, as fractions of whole numbers. */
final class Answers {

    private Answers() {}

    static Exact grams(Amount<Mass> mass) {
        return Exact.read(mass.in(FormulationUnits.GRAM));
    }

    static boolean isOutside(Exact truth, Ratio least, Ratio greatest) {
        return truth.isBelow(Exact.read(least)) || truth.isAbove(Exact.read(greatest));
    }

    static boolean isOutside(Exact truth, Bounds bounds) {
        return bounds.lower().map(low -> truth.isBelow(Exact.read(low))).orElse(false)
                || bounds.upper().map(high -> truth.isAbove(Exact.read(high))).orElse(false);
    }
}
