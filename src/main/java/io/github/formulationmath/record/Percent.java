package io.github.formulationmath.record;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import javax.measure.quantity.Dimensionless;

/** Signed relative figures, which no share can be. */
final class Percent {

    private static final Ratio HUNDRED = Ratio.of(100);

    private Percent() {}

    /** A fraction of one in percent. */
    static Amount<Dimensionless> of(Ratio fraction) {
        return Amount.of(fraction.times(HUNDRED), FormulationUnits.PERCENT);
    }
}
