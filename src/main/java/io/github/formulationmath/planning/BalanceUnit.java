package io.github.formulationmath.planning;

import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.weighing.Balance;
import javax.measure.quantity.Mass;

/** Masses as their reader sees them: in the unit of the display. */
final class BalanceUnit {

    private BalanceUnit() {}

    static Amount<Mass> amount(Balance balance, Ratio grams) {
        return Amount.grams(grams).to(balance.readability().getUnit());
    }

    /** The exact mass, with fewer digits beside it where they are many: {@code 100/21 g ≈ 4.76190 g}. */
    static String text(Amount<Mass> mass) {
        return NumberText.exact(mass.exactValue(), FormulationUnits.symbolOf(mass.getUnit()));
    }
}
