package io.github.formulationmath.size;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.weighing.Balance;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * The coarsest display, of those that are built, on which given batches meet a criterion: the largest step of the series
 * 1-2-5 at which every one of them passes. Each step is tried exactly, from the mass of the smallest batch down to six
 * decades below that of the smallest line. The other figures of the balance, its errors and minimum load, stay as they are.
 *
 * <p>A coarser step between two members of the series may pass too, and under criteria that leave gaps a finer one may fail:
 * ask {@link #serves}. Where the rounding of each line is all that is asked ({@link Criterion#roundingWithin}), the
 * exact step is known as well, with its proof: {@link #exactStep()}.
 *
 * <p>Example: 60 g with a smallest line of 2 %, 1.2 g: every line is at least one division up to d = 1 g. With a worst error
 * of 1.5 d for each addition and a tolerance of 5 %, 0.06 g, the coarsest is d = 0.02 g, for 0.05 g would need 0.075 g.
 * Rounding alone, within 5 %, allows d = 1.26 g, which shows the smallest line as one division, 5 % too much.
 *
 * <p>Immutable and thread-safe.
 */
public final class CoarsestStep {

    private final List<Batch> batches;
    private final Balance balance;
    private final Criterion criterion;
    private final @Nullable CoarsestReadability exact;
    private final @Nullable Amount<Mass> step;

    private CoarsestStep(List<Batch> batches, Balance balance, Criterion criterion, SearchEffort effort) {
        this.batches = batches;
        this.balance = balance;
        this.criterion = criterion;
        this.exact = criterion instanceof RoundingWithin rounding
                ? CoarsestReadability.of(batches, rounding.tolerances(), effort, balance.readability())
                : null;
        Amount<Mass> readability = balance.readability();
        this.step = steps().stream()
                .map(size -> readability.times(size.dividedBy(readability.exactValue())))
                .filter(each -> passes(each))
                .findFirst()
                .orElse(null);
    }

    /**
     * Looks for the step for one batch.
     *
     * @param batch the batch
     * @param balance the balance whose display is asked about; its own step does not matter, its other figures are kept
     * @param criterion what makes a batch large enough
     * @return the answer
     * @throws IllegalArgumentException if the criterion names a line or phase that the formula does not have
     * @throws SearchLimitException if a search reaches its limit
     */
    public static CoarsestStep of(Batch batch, Balance balance, Criterion criterion) {
        return of(List.of(Objects.requireNonNull(batch, "batch")), balance, criterion, SearchEffort.standard());
    }

    /**
     * Looks for one step for a repertoire.
     *
     * @param batches formulas at the sizes in which they are made, at least one
     * @param balance the balance whose display is asked about; its own step does not matter, its other figures are kept
     * @param criterion what makes each batch large enough
     * @param effort how much work each search may do
     * @return the answer
     * @throws IllegalArgumentException if there is no batch, or the criterion names a line or phase that a formula does not
     *     have
     * @throws SearchLimitException if a search reaches its limit
     */
    public static CoarsestStep of(List<Batch> batches, Balance balance, Criterion criterion, SearchEffort effort) {
        Objects.requireNonNull(balance, "balance");
        Objects.requireNonNull(criterion, "criterion");
        Objects.requireNonNull(effort, "effort");
        return new CoarsestStep(BatchConstraints.atLeastOne("batches", batches), balance, criterion, effort);
    }

    /** The members of the series, in the unit of the balance, that can be the answer: none coarser than the exact step, where that is known. */
    private List<Ratio> steps() {
        if (exact != null) {
            return StepSeries.between(exact.step().exactValue(), exact.step().exactValue());
        }
        Ratio most = batches.stream()
                .map(batch -> batch.mass().inUnitOf(balance.readability()).exactValue())
                .reduce(Ratio::min)
                .orElseThrow();
        Ratio least = batches.stream()
                .flatMap(batch -> batch.lines().stream())
                .map(line -> line.mass().inUnitOf(balance.readability()).exactValue())
                .reduce(Ratio::min)
                .orElseThrow();
        return StepSeries.between(most, least);
    }

    /**
     * The largest step of the series at which every batch passes.
     *
     * @return the step in the unit of the balance; empty if none does
     */
    public Optional<Amount<Mass>> step() {
        return Optional.ofNullable(step);
    }

    /**
     * The coarsest step of all, of the series or not. Its working shows that it serves, and the line at which every coarser
     * one fails.
     *
     * @return the step in the unit of the balance, exact; empty unless the criterion asks for the rounding of each line alone
     */
    public Optional<Amount<Mass>> exactStep() {
        return Optional.ofNullable(exact).map(CoarsestReadability::step);
    }

    /**
     * The line that forbids a display coarser than the exact step.
     *
     * @return the line of one of the batches; empty where the exact step is
     */
    public Optional<BatchLine> bindingLine() {
        return Optional.ofNullable(exact).map(CoarsestReadability::bindingLine);
    }

    /**
     * The step from which on every finer one rounds within tolerance.
     *
     * @return the step in the unit of the balance; empty if some tolerance is 0, and where the exact step is
     */
    public Optional<Amount<Mass>> everyFinerFrom() {
        return Optional.ofNullable(exact).flatMap(CoarsestReadability::everyFinerFrom);
    }

    /**
     * Whether every batch passes on a display of some step, of the series or not; a search has the standard effort.
     *
     * @param readability a step, above 0
     * @return true if every batch meets the criterion there
     * @throws IllegalArgumentException if the step is not above 0
     * @throws SearchLimitException if the search reaches its limit
     */
    public boolean serves(Amount<Mass> readability) {
        return passes(Amount.requirePositive("readability", readability));
    }

    /**
     * Whether every batch passes on a display of some step given as text.
     *
     * @param readability a step, above 0, for example {@code "0.1 g"}
     * @return true if every batch meets the criterion there
     * @throws IllegalArgumentException if the text is no mass or not above 0
     * @throws SearchLimitException if the search reaches its limit
     */
    public boolean serves(String readability) {
        return serves(Amount.mass(readability));
    }

    private boolean passes(Amount<Mass> readability) {
        if (exact != null) {
            return exact.serves(readability);
        }
        // The criteria do not ask for the capacity; that of a balance is never below one step.
        Amount<Mass> capacity = balance.capacity().compareTo(readability) < 0 ? readability : balance.capacity();
        Balance other =
                Balance.of(readability, capacity).withErrors(balance.errors()).withMinimumLoad(balance.minimumLoad());
        return batches.stream()
                .allMatch(
                        batch -> criterion.on(batch.formula(), Bench.of(other)).contains(batch.mass()));
    }

    @Override
    public String toString() {
        String answer = step == null
                ? "no step of the series 1-2-5 serves"
                : "d = " + step + " is the coarsest of the series 1-2-5";
        String all = batches.size() == 1 ? batches.get(0).toString() : batches.toString();
        return all + ": " + answer + " (" + criterion + ")" + (exact == null ? "" : "; " + exact);
    }

    /** The steps that displays have: 1, 2 or 5 times a power of ten (OIML R 76-1, 3.4.1; from memory). */
    static final class StepSeries {

        private static final int[] MANTISSAS = {5, 2, 1};
        private static final Ratio LAST = Ratio.of(1, 1_000_000);
        private static final Ratio TENTH = Ratio.of(1, 10);
        private static final Ratio TEN = Ratio.of(10);

        private StepSeries() {}

        /** The steps below a step, from coarse to fine, over six decades, in the unit of the step. */
        static List<Amount<Mass>> finerThan(Amount<Mass> step) {
            return descending(step.exactValue(), step.exactValue(), false).stream()
                    .map(value -> step.times(value.dividedBy(step.exactValue())))
                    .toList();
        }

        /** The steps that are at most a number, from coarse to fine, down to six decades below another that is no more. */
        static List<Ratio> between(Ratio most, Ratio least) {
            return descending(most, least, true);
        }

        private static List<Ratio> descending(Ratio top, Ratio bottom, boolean included) {
            Ratio decade = powerOfTenAtMost(top);
            Ratio last = powerOfTenAtMost(bottom).times(LAST);
            List<Ratio> steps = new ArrayList<>();
            while (decade.compareTo(last) >= 0) {
                for (int mantissa : MANTISSAS) {
                    Ratio step = decade.times(mantissa);
                    int order = step.compareTo(top);
                    if (order < 0 || included && order == 0) {
                        steps.add(step);
                    }
                }
                decade = decade.times(TENTH);
            }
            return steps;
        }

        private static Ratio powerOfTenAtMost(Ratio value) {
            Ratio power = Ratio.ONE;
            while (power.compareTo(value) > 0) {
                power = power.times(TENTH);
            }
            while (power.times(TEN).compareTo(value) <= 0) {
                power = power.times(TEN);
            }
            return power;
        }
    }
}
