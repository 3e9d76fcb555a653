package io.github.formulationmath.planning;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.working.Phrase;
import java.io.Serial;
import java.util.Optional;
import javax.measure.quantity.Mass;

/**
 * No batch of whatever size meets the criterion, and why.
 *
 * <p>Immutable and thread-safe.
 */
public final class ImpossibleBatch extends SizeAnswer implements MinimumBatch {

    @Serial
    private static final long serialVersionUID = 1L;

    ImpossibleBatch(Formula formula, Balance balance, BatchCriterion criterion) {
        super(formula, balance, criterion);
    }

    /**
     * None.
     *
     * @return empty
     */
    @Override
    public Optional<Amount<Mass>> mass() {
        return Optional.empty();
    }

    /**
     * Why no size passes, and what would change that.
     *
     * @return the reason in words
     */
    public Phrase reason() {
        return requirement().obstacle().orElseThrow();
    }

    @Override
    public String toString() {
        return describe("no batch");
    }
}
