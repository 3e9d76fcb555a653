package io.github.formulationmath.planning;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.working.Phrase;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Mass;

/**
 * The answer to "what is the smallest batch of this formula on this balance?" under one {@link BatchCriterion}: found,
 * impossible at any size, or not decided within the work allowed.
 *
 * <p>What can be made at the other end, and whether the two ends meet, is the business of another result.
 *
 * <p>Example: {@code MinimumBatch.of(formula, Balance.of("0.1 g", "2 kg"), BatchCriterion.oneDivision()).mass()} is 20 g
 * for a smallest line of 0.5 %.
 */
public sealed interface MinimumBatch extends Serializable permits FoundBatch, ImpossibleBatch, UndecidedBatch {

    /**
     * Looks for the smallest batch with the standard {@link SearchEffort}.
     *
     * @param formula the formula
     * @param balance the balance
     * @param criterion what makes a batch large enough
     * @return the answer
     * @throws IllegalArgumentException if the criterion names a line or phase that the formula does not have
     */
    static MinimumBatch of(Formula formula, Balance balance, BatchCriterion criterion) {
        return of(formula, balance, criterion, SearchEffort.standard());
    }

    /**
     * Looks for the smallest batch.
     *
     * @param formula the formula
     * @param balance the balance
     * @param criterion what makes a batch large enough
     * @param effort how much work may be done
     * @return the answer
     * @throws IllegalArgumentException if the criterion names a line or phase that the formula does not have
     * @throws java.util.concurrent.CancellationException if the thread is interrupted while it searches
     */
    static MinimumBatch of(Formula formula, Balance balance, BatchCriterion criterion, SearchEffort effort) {
        Objects.requireNonNull(formula, "formula");
        Objects.requireNonNull(balance, "balance");
        Objects.requireNonNull(effort, "effort");
        Requirement requirement = Objects.requireNonNull(criterion, "criterion").of(formula, balance);
        Optional<Phrase> obstacle = requirement.obstacle();
        if (obstacle.isPresent()) {
            return new ImpossibleBatch(formula, balance, criterion);
        }
        try {
            return new FoundBatch(formula, balance, criterion, requirement.smallest(new SearchMeter(effort)));
        } catch (SearchLimitException e) {
            return new UndecidedBatch(formula, balance, criterion, e.reached());
        }
    }

    /**
     * The formula.
     *
     * @return what is to be made
     */
    Formula formula();

    /**
     * The balance.
     *
     * @return what it is weighed on
     */
    Balance balance();

    /**
     * The criterion.
     *
     * @return what makes a batch large enough
     */
    BatchCriterion criterion();

    /**
     * The smallest batch, if it was found.
     *
     * @return its mass in the unit of the balance
     */
    Optional<Amount<Mass>> mass();
}
