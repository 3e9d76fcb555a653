package io.github.formulationmath.planning;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.scaling.Batch;
import io.github.formulationmath.scaling.BatchSize;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.working.Explained;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import java.io.Serial;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Mass;

/**
 * The smallest batch that meets a criterion; every smaller one fails. Its working shows that it passes, line by line, and
 * what stands against less.
 *
 * <p>Immutable and thread-safe.
 */
public final class FoundBatch extends SizeAnswer implements MinimumBatch, Explained {

    @Serial
    private static final long serialVersionUID = 1L;

    private final Landing found;

    FoundBatch(Formula formula, Balance balance, BatchCriterion criterion, Landing found) {
        super(formula, balance, criterion);
        this.found = found;
    }

    /**
     * The smallest batch.
     *
     * @return its mass in the unit of the balance, exact; always present
     */
    @Override
    public Optional<Amount<Mass>> mass() {
        return Optional.of(smallest());
    }

    /**
     * The smallest batch.
     *
     * @return its mass in the unit of the balance, exact
     */
    public Amount<Mass> smallest() {
        return BalanceUnit.amount(balance(), found.at());
    }

    /**
     * The smallest batch as a batch.
     *
     * @return the formula at this size
     */
    public Batch batch() {
        return Batch.of(formula(), BatchSize.ofMass(smallest()));
    }

    /**
     * The line that forbids less.
     *
     * @return the line; empty if all lines together do
     */
    public Optional<FormulaLine> bindingLine() {
        return found.line() >= 0 ? Optional.of(formula().lines().get(found.line())) : Optional.empty();
    }

    /**
     * The plan that shows it: the batch on the balance under the closure that the criterion speaks of, {@link
     * Bench#closingFor}.
     *
     * @return the plan
     * @throws OverloadException if the batch is more than the balance carries; {@link BatchWindow} looks for one that is not
     */
    public WeighingPlan plan() {
        return WeighingPlan.of(batch(), Bench.of(balance()).closingFor(criterion()));
    }

    /**
     * Readings that meet the criterion {@link BatchCriterion#madeWithin(Tolerances)}: whole divisions that add up to the
     * batch, by {@link Bench#closingWithin(Tolerances)}.
     *
     * @return a reading for each line of the formula, in the unit of the balance; empty under other criteria
     */
    public List<Amount<Mass>> readings() {
        if (!(criterion() instanceof MadeWithin made)) {
            return List.of();
        }
        return made.of(formula(), balance()).readings(found.at()).stream()
                .map(n -> balance().readability().times(n))
                .toList();
    }

    @Override
    public Phrase question() {
        return Phrase.of("question.smallest-batch", formula().name());
    }

    @Override
    public Ratio result() {
        return found.at();
    }

    @Override
    public <V> V derive(Reckoning<V> r) {
        return requirement().derive(r, found);
    }

    @Override
    public String toString() {
        return describe("at least " + BalanceUnit.text(smallest()));
    }
}
