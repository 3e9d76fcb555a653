package io.github.formulationmath.planning;

import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.weighing.Balance;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Mass;

/** Figures as their reader sees them: masses in the unit of the display, parts of a line in percent. */
final class BalanceUnit {

    private BalanceUnit() {}

    static Amount<Mass> amount(Balance balance, Ratio grams) {
        Amount<Mass> division = balance.readability();
        return division.times(grams.dividedBy(division.canonical()));
    }

    static Amount<Dimensionless> percent(Ratio part) {
        return Amount.percent(part.times(100));
    }

    /** The exact mass, with fewer digits beside it where they are many: {@code 100/21 g ≈ 4.76190 g}. */
    static String text(Amount<Mass> mass) {
        return NumberText.exact(mass.exactValue(), mass.symbol());
    }
}
