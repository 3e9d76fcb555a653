package io.github.formulationmath.planning;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.weighing.Balance;
import javax.measure.quantity.Mass;

/** Masses as their reader sees them: in the unit of the display. */
final class BalanceUnit {

    private BalanceUnit() {}

    static Amount<Mass> amount(Balance balance, Ratio grams) {
        return Amount.grams(grams).to(balance.readability().getUnit());
    }
}
