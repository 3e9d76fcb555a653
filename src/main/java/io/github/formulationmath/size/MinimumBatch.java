package io.github.formulationmath.size;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.BalanceUnit;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Closure;
import io.github.formulationmath.plan.Divisions;
import io.github.formulationmath.plan.OverloadException;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.weighing.Balance;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * The answer to "what is the smallest batch of this formula on this balance?" under one {@link Criterion}: found, impossible
 * at any size, or not decided within the work allowed.
 *
 * <p>What can be made at the other end, and whether the two ends meet, is the business of {@link BatchWindow}.
 *
 * <p>Example: {@code MinimumBatch.of(formula, Balance.of("0.1 g", "2 kg"), Criterion.oneDivision())}: 20 g for a smallest
 * line of 0.5 %.
 *
 * <p>Immutable and thread-safe.
 */
public abstract sealed class MinimumBatch {

    private final Formula formula;
    private final Balance balance;
    private final Criterion criterion;
    private final Sizes sizes;

    private MinimumBatch(Formula formula, Balance balance, Criterion criterion, Sizes sizes) {
        this.formula = formula;
        this.balance = balance;
        this.criterion = criterion;
        this.sizes = sizes;
    }

    /**
     * Looks for the smallest batch with the standard {@link SearchEffort}.
     *
     * @param formula the formula
     * @param balance the balance
     * @param criterion what makes a batch large enough
     * @return the answer
     * @throws IllegalArgumentException if the criterion names a line or phase that the formula does not have
     */
    public static MinimumBatch of(Formula formula, Balance balance, Criterion criterion) {
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
    public static MinimumBatch of(Formula formula, Balance balance, Criterion criterion, SearchEffort effort) {
        Objects.requireNonNull(formula, "formula");
        Objects.requireNonNull(balance, "balance");
        Objects.requireNonNull(effort, "effort");
        Sizes sizes = Objects.requireNonNull(criterion, "criterion").on(formula, Bench.of(balance));
        try {
            return sizes.smallest(new SearchMeter(effort))
                    .<MinimumBatch>map(rest -> new Found(formula, balance, criterion, sizes, rest))
                    .orElseGet(() -> new Impossible(formula, balance, criterion, sizes));
        } catch (SearchLimitException e) {
            return new Undecided(formula, balance, criterion, sizes, e.reached());
        }
    }

    /**
     * The formula.
     *
     * @return what is to be made
     */
    public Formula formula() {
        return formula;
    }

    /**
     * The balance.
     *
     * @return what it is weighed on
     */
    public Balance balance() {
        return balance;
    }

    /**
     * The criterion.
     *
     * @return what makes a batch large enough
     */
    public Criterion criterion() {
        return criterion;
    }

    /**
     * All sizes that meet the criterion.
     *
     * @return the sizes on the balance, without a vessel
     */
    public Sizes sizes() {
        return sizes;
    }

    /**
     * The smallest batch, if it was found.
     *
     * @return its mass in the unit of the balance
     */
    public Optional<Amount<Mass>> mass() {
        return Optional.empty();
    }

    abstract String finding();

    /** Equal if the same was asked and the same found. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof MinimumBatch that
                && formula.equals(that.formula)
                && balance.equals(that.balance)
                && criterion.equals(that.criterion)
                && finding().equals(that.finding());
    }

    @Override
    public int hashCode() {
        return Objects.hash(formula, balance, criterion);
    }

    @Override
    public String toString() {
        return formula.name() + ": " + finding() + " (" + criterion + ")";
    }

    /**
     * The smallest batch that meets a criterion; every smaller one fails. Its working shows that it passes, line by line, and
     * what stands against less.
     */
    public static final class Found extends MinimumBatch implements Explained {

        private final Sizes.Rest found;

        private Found(Formula formula, Balance balance, Criterion criterion, Sizes sizes, Sizes.Rest found) {
            super(formula, balance, criterion, sizes);
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
            return sizes().mass(found.at())
                    .withWorking(
                            batch -> Phrase.of(
                                    "question.smallest-batch", batch.formula().name()),
                            this,
                            Found::smallest);
        }

        private <V> V smallest(Reckoning<V> r) {
            return sizes().proveSmallest(r, found);
        }

        /** As {@link #smallest()}. */
        @Override
        public Origin origin() {
            return smallest().origin();
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
            return found.line(formula());
        }

        /**
         * The plan that shows it: the batch on the balance under the closure that the criterion speaks of, {@link
         * Criterion#showing}.
         *
         * @return the plan
         * @throws OverloadException if the batch is more than the balance carries; {@link BatchWindow} looks for one that is
         *     not
         */
        public WeighingPlan plan() {
            Bench bench = Bench.of(balance());
            return WeighingPlan.of(batch(), criterion().showing(bench).orElse(bench));
        }

        /**
         * The readings of {@link #plan()} where they are what the criterion is about, {@link
         * Criterion#madeWithin(Tolerances)}, whatever the balance carries: whole divisions that add up to the batch.
         *
         * @return a reading for each line of the formula, in the unit of the balance; empty under other criteria
         */
        public List<Amount<Mass>> readings() {
            return criterion()
                    .showing(Bench.of(balance()))
                    .filter(bench -> bench.closure() == Closure.WITHIN_TOLERANCE)
                    .map(bench -> Divisions.of(batch(), bench))
                    .orElse(List.of())
                    .stream()
                    .map(n -> balance().readability().times(n))
                    .toList();
        }

        @Override
        String finding() {
            return "at least " + BalanceUnit.least(smallest(), sizes()::contains);
        }
    }

    /** No batch of whatever size meets the criterion, and why. */
    public static final class Impossible extends MinimumBatch {

        private Impossible(Formula formula, Balance balance, Criterion criterion, Sizes sizes) {
            super(formula, balance, criterion, sizes);
        }

        /**
         * Why no size passes, and what would change that.
         *
         * @return the reason in words
         */
        public Phrase reason() {
            return sizes().obstacle().orElseThrow();
        }

        @Override
        String finding() {
            return "no batch";
        }
    }

    /**
     * The search reached its limit before it found the smallest batch. It says what was shown: every batch below one mass
     * fails; and, where there is such a mass, every batch from another on passes.
     */
    public static final class Undecided extends MinimumBatch {

        private final Ratio reached;

        private Undecided(Formula formula, Balance balance, Criterion criterion, Sizes sizes, Ratio reached) {
            super(formula, balance, criterion, sizes);
            this.reached = reached;
        }

        /**
         * The mass below which every batch fails.
         *
         * @return how far the search came, in the unit of the balance
         */
        public Amount<Mass> allFailBelow() {
            return sizes().mass(reached);
        }

        /**
         * A mass from which on every batch passes; under {@link Criterion#madeWithin(Tolerances)}, every whole number of
         * divisions.
         *
         * @return the mass in the unit of the balance; empty if there is none, some line having to be exact
         */
        public Optional<Amount<Mass>> allPassFrom() {
            return sizes().allFrom();
        }

        @Override
        String finding() {
            return "not decided; every batch below " + BalanceUnit.greatest(allFailBelow(), size -> true) + " fails";
        }
    }
}
