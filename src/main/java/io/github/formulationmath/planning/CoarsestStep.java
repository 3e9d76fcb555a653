package io.github.formulationmath.planning;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.scaling.Batch;
import io.github.formulationmath.weighing.Balance;
import java.io.Serial;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * The coarsest display, of those that are built, on which a batch meets a criterion: the largest step of the series 1-2-5,
 * from the mass of the batch down over six decades, at which the size passes. Each step is tried exactly. The other figures
 * of the balance, its errors and minimum load, stay as they are.
 *
 * <p>The answer is over the series. A coarser step between two of its members may pass too, and under criteria that leave
 * gaps a finer one may fail: ask {@link #serves}. For rounding alone, {@link CoarsestReadability} gives the exact step.
 *
 * <p>Example: 60 g with a smallest line of 2 %, 1.2 g: every line is at least one division up to d = 1 g. With a worst error
 * of 1.5 d for each addition and a tolerance of 5 %, 0.06 g, the coarsest is d = 0.02 g, for 0.05 g would need 0.075 g.
 *
 * <p>Immutable and thread-safe.
 */
public final class CoarsestStep implements Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private final Batch batch;
    private final Balance balance;
    private final BatchCriterion criterion;
    private final @Nullable Amount<Mass> step;

    private CoarsestStep(Batch batch, Balance balance, BatchCriterion criterion) {
        this.batch = batch;
        this.balance = balance;
        this.criterion = criterion;
        this.step = StepSeries.atMost(batch.result()).stream()
                .map(Amount::grams)
                .filter(this::passes)
                .findFirst()
                .orElse(null);
    }

    /**
     * Looks for the step.
     *
     * @param batch the batch
     * @param balance the balance whose display is asked about; its own step does not matter, its other figures are kept
     * @param criterion what makes a batch large enough
     * @return the answer
     * @throws IllegalArgumentException if the criterion names a line or phase that the formula does not have
     * @throws SearchLimitException if a search reaches its limit
     */
    public static CoarsestStep of(Batch batch, Balance balance, BatchCriterion criterion) {
        return new CoarsestStep(
                Objects.requireNonNull(batch, "batch"),
                Objects.requireNonNull(balance, "balance"),
                Objects.requireNonNull(criterion, "criterion"));
    }

    /**
     * The largest step of the series at which the batch passes.
     *
     * @return the step in grams; empty if none does
     */
    public Optional<Amount<Mass>> step() {
        return Optional.ofNullable(step);
    }

    /**
     * Whether the batch passes on a display of some step, of the series or not.
     *
     * @param readability a step, above 0
     * @return true if the batch meets the criterion there
     * @throws IllegalArgumentException if the step is not above 0
     * @throws SearchLimitException if the search reaches its limit
     */
    public boolean serves(Amount<Mass> readability) {
        return passes(Arguments.positive("readability", readability));
    }

    private boolean passes(Amount<Mass> readability) {
        // The criteria do not ask for the capacity; that of a balance is never below one step.
        Amount<Mass> capacity = balance.capacity().compareTo(readability) < 0 ? readability : balance.capacity();
        Balance other =
                Balance.of(readability, capacity).withErrors(balance.errors()).withMinimumLoad(balance.minimumLoad());
        Requirement requirement = criterion.of(batch.formula(), other);
        Ratio grams = batch.mass().in(FormulationUnits.GRAM);
        return requirement.obstacle().isEmpty()
                && requirement
                        .atMost(grams, new SearchMeter(SearchEffort.standard()))
                        .map(landing -> landing.at().equals(grams))
                        .orElse(false);
    }

    @Override
    public String toString() {
        String answer = step == null
                ? "no step of the series 1-2-5 serves"
                : "d = " + step + " is the coarsest of the series 1-2-5";
        return batch + ": " + answer + " (" + criterion + ")";
    }
}
