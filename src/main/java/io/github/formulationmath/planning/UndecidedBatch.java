package io.github.formulationmath.planning;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.weighing.Balance;
import java.io.Serial;
import java.util.Optional;
import javax.measure.quantity.Mass;

/**
 * The search reached its limit before it found the smallest batch. It says what was shown: every batch below one mass
 * fails; and, where there is such a mass, every batch from another on passes.
 *
 * <p>Immutable and thread-safe.
 */
public final class UndecidedBatch extends SizeAnswer implements MinimumBatch {

    @Serial
    private static final long serialVersionUID = 1L;

    private final Ratio reached;

    UndecidedBatch(Formula formula, Balance balance, BatchCriterion criterion, Ratio reached) {
        super(formula, balance, criterion);
        this.reached = reached;
    }

    /**
     * Not known.
     *
     * @return empty
     */
    @Override
    public Optional<Amount<Mass>> mass() {
        return Optional.empty();
    }

    /**
     * The mass below which every batch fails.
     *
     * @return how far the search came, in the unit of the balance
     */
    public Amount<Mass> allFailBelow() {
        return balance().readability().times(reached);
    }

    /**
     * A mass from which on every batch passes; under {@link BatchCriterion#madeWithin(Tolerances)}, every whole number of
     * divisions.
     *
     * @return the mass in the unit of the balance; empty if there is none, some line having to be exact
     */
    public Optional<Amount<Mass>> allPassFrom() {
        return requirement().passesFrom().map(grams -> BalanceUnit.amount(balance(), grams));
    }

    @Override
    public String toString() {
        return describe("not decided; above " + allFailBelow());
    }
}
