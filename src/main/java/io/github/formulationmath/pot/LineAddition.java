package io.github.formulationmath.pot;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.PlannedLine;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Mass;

/**
 * Something to add to the pot.
 *
 * <p>Example: {@code LineAddition.of(formula.line("Aqua"), Amount.mass("4.2 g"))}.
 *
 * <p>Immutable and thread-safe.
 *
 * @param line the line whose ingredient is added
 * @param mass how much of it, at least 0
 * @param balance the balance, if it is another than that on which its line was planned
 */
public record LineAddition(FormulaLine line, Amount<Mass> mass, Optional<Balance> balance) {

    /**
     * Checks the mass.
     *
     * @param line the line whose ingredient is added
     * @param mass how much of it, at least 0
     * @param balance the balance, if it is another than that on which its line was planned
     * @throws IllegalArgumentException if the mass is negative
     */
    public LineAddition {
        Objects.requireNonNull(line, "line");
        if (Objects.requireNonNull(mass, "mass").signum() < 0) {
            throw new IllegalArgumentException("mass is " + Excerpt.of(mass) + " of " + Excerpt.of(line.name())
                    + ": what is in the pot cannot be taken out again");
        }
        Objects.requireNonNull(balance, "balance");
    }

    /**
     * An addition on the balance on which its line was planned.
     *
     * @param line the line whose ingredient is added
     * @param mass how much of it, at least 0
     * @return the addition
     * @throws IllegalArgumentException if the mass is negative
     */
    public static LineAddition of(FormulaLine line, Amount<Mass> mass) {
        return new LineAddition(line, mass, Optional.empty());
    }

    /**
     * The same addition, weighed on another balance than its line was planned on.
     *
     * @param other the balance
     * @return the addition on that balance
     */
    public LineAddition on(Balance other) {
        return new LineAddition(line, mass, Optional.of(Objects.requireNonNull(other, "other")));
    }

    /**
     * An addition on the balance of a line in the pot, which is only said if it is another than the line was planned on.
     *
     * @param line the line in the pot
     * @param mass how much is added
     * @return the addition
     */
    public static LineAddition of(MadeLine line, Amount<Mass> mass) {
        LineAddition addition = of(line.line(), mass);
        return line.isAsPlanned() ? addition : addition.on(line.balance());
    }

    /** The balance it is weighed on: its own, or that of its line in a plan. */
    Balance balanceIn(WeighingPlan plan) {
        return balance.orElse(plan.line(line).balance());
    }

    /** How it is weighed: from a boat, if its line is on this balance, else into the tared vessel. */
    WeighingMethod methodIn(WeighingPlan plan) {
        PlannedLine planned = plan.line(line);
        return balanceIn(plan).equals(planned.balance())
                ? planned.method(WeighingMethod.TARE_EACH)
                : WeighingMethod.TARE_EACH;
    }

    Ratio grams() {
        return mass.canonical();
    }

    @Override
    public String toString() {
        return mass.told() + " " + line.name();
    }
}
