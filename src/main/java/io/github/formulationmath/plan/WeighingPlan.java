package io.github.formulationmath.plan;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchLine;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.Lines;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.weighing.Balance;
import java.io.Serial;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * A batch as it is weighed on a bench: for every line what the display must read, and how the rounded lines add up.
 *
 * <p>Example: {@code WeighingPlan.of(batch, Bench.of(Balance.of("0.1 g", "2 kg"))).line("Glycerin").reading()}.
 *
 * <p>Immutable and thread-safe.
 */
public final class WeighingPlan implements Lines<PlannedLine>, Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private static final Symbol TOTAL = Symbol.of("R", "readings-total", Kind.MASS);
    private static final Symbol DIFFERENCE = Symbol.of("D", "total-difference", Kind.MASS);

    private final Batch batch;
    private final Bench bench;
    private final Divisions rule;
    private final List<PlannedLine> lines;

    private WeighingPlan(Batch batch, Bench bench) {
        this.batch = batch;
        this.bench = bench;
        this.rule = new Divisions(batch, bench);
        List<Ratio> divisions = rule.all(Reckoning.plain());
        List<PlannedLine> all = new ArrayList<>(divisions.size());
        Ratio soFar = Ratio.ZERO;
        List<BatchLine> targets = batch.lines();
        for (int i = 0; i < divisions.size(); i++) {
            PlannedLine line = new PlannedLine(this, targets.get(i), divisions.get(i), soFar);
            soFar = line.divisionsSoFar();
            all.add(line);
        }
        this.lines = List.copyOf(all);
    }

    /**
     * Plans the weighing of a batch.
     *
     * @param batch the batch
     * @param bench where and how it is weighed
     * @return the plan
     * @throws OverloadException if vessel and batch are more than the balance carries, as exact masses or as the
     *     readings add up; it says by how much and which batch would fit
     * @throws OverfillException if vessel volume and product density are known and the batch does not fit
     * @throws IllegalArgumentException if the q.s. line is to take the rest and there is none, or nothing is left for it
     */
    public static WeighingPlan of(Batch batch, Bench bench) {
        Objects.requireNonNull(batch, "batch");
        Objects.requireNonNull(bench, "bench");
        WeighingPlan plan = new WeighingPlan(batch, bench);
        new BenchLimits(batch, plan.total().canonical(), bench).require();
        return plan;
    }

    /**
     * Plans the weighing of a batch on a balance, without a vessel and each line rounded by itself.
     *
     * @param batch the batch
     * @param balance the balance
     * @return the plan
     * @throws OverloadException as {@link #of(Batch, Bench)}
     */
    public static WeighingPlan of(Batch batch, Balance balance) {
        return of(batch, Bench.of(balance));
    }

    /**
     * The batch.
     *
     * @return the batch
     */
    public Batch batch() {
        return batch;
    }

    /**
     * The bench.
     *
     * @return where and how the batch is weighed
     */
    public Bench bench() {
        return bench;
    }

    @Override
    public Formula formula() {
        return batch.formula();
    }

    @Override
    public List<PlannedLine> lines() {
        return lines;
    }

    /**
     * What all readings add up to.
     *
     * @return the total in the unit of the balance
     */
    public Amount<Mass> total() {
        return bench.balance()
                .readability()
                .times(lines.get(lines.size() - 1).divisionsSoFar())
                .withWorking(plan -> Phrase.of("question.readings-total"), this, WeighingPlan::total);
    }

    private <V> V total(Reckoning<V> r) {
        List<V> readings = new ArrayList<>(lines.size());
        for (PlannedLine line : lines) {
            readings.add(r.known(line.reading()));
        }
        return r.named(TOTAL, r.sum(readings));
    }

    /**
     * By how much the readings together differ from the batch.
     *
     * @return total minus batch mass in the unit of the balance, exact
     */
    public Amount<Mass> difference() {
        return total().minus(batch.mass())
                .withWorking(plan -> Phrase.of("question.total-difference"), this, WeighingPlan::difference);
    }

    private <V> V difference(Reckoning<V> r) {
        return r.named(DIFFERENCE, r.difference(r.known(total()), r.known(batch)));
    }

    /**
     * Whether the readings add up to the batch exactly.
     *
     * @return true if the difference is 0
     */
    public boolean closes() {
        return difference().isZero();
    }

    /**
     * What could have forbidden the batch but was not considered, because a figure is missing; see {@link
     * Bench#notConsidered()}.
     *
     * @return an unmodifiable list, empty if everything given was considered
     */
    public List<Phrase> notConsidered() {
        return bench.notConsidered();
    }

    Divisions rule() {
        return rule;
    }

    /** Equal if batch and bench are. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof WeighingPlan that && batch.equals(that.batch) && bench.equals(that.bench);
    }

    @Override
    public int hashCode() {
        return Objects.hash(batch, bench);
    }

    @Override
    public String toString() {
        return batch + " on " + bench + ": " + lines + bench.unconsideredText();
    }
}
