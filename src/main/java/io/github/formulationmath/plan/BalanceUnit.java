package io.github.formulationmath.plan;

import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.weighing.Balance;
import javax.measure.quantity.Mass;

/** Figures as their reader sees them: masses in the unit of the display. */
public final class BalanceUnit {

    private BalanceUnit() {}

    /**
     * A mass in the unit of a display.
     *
     * @param balance whose display
     * @param grams the mass in grams
     * @return the exact mass in the unit of the readability
     */
    public static Amount<Mass> amount(Balance balance, Ratio grams) {
        Amount<Mass> division = balance.readability();
        return division.times(grams.dividedBy(division.canonical()));
    }

    /**
     * The exact mass, with fewer digits beside it where they are many: {@code 100/21 g ≈ 4.76190 g}.
     *
     * @param mass the mass
     * @return its text
     */
    public static String text(Amount<Mass> mass) {
        return NumberText.exact(mass.exactValue(), mass.symbol());
    }
}
