package io.github.formulationmath.plan;

import io.github.formulationmath.batch.BatchLine;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Line;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import io.github.formulationmath.weighing.WeighingStation;
import java.io.Serial;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * One line as it is weighed: the exact mass and what the display must read for it, {@code r = n · d}.
 *
 * <p>Example: 12.34 g on a display of 0.1 g is 123.4 divisions; the display must read 12.3 g, which is 0.04 g or 0.32 %
 * too little.
 *
 * <p>Immutable and thread-safe.
 */
public final class PlannedLine implements Line, Explained, Serializable {

    @Serial
    private static final long serialVersionUID = 2L;

    private static final Symbol READING = Symbol.of("r", "reading", Kind.MASS);
    private static final Symbol ERROR = Symbol.of("e", "rounding-error", Kind.MASS);
    private static final Symbol RELATIVE_ERROR = Symbol.of("ε", "relative-rounding-error", Kind.SHARE);
    private static final Symbol CUMULATIVE = Symbol.of("R", "cumulative-reading", Kind.MASS);

    private final WeighingPlan plan;
    private final BatchLine target;
    private final Ratio divisions;
    /** The first line that is weighed on the same tare, should the balance not be tared again. */
    private final int since;

    private final Ratio divisionsSince;

    PlannedLine(WeighingPlan plan, BatchLine target, Ratio divisions, int since, Ratio divisionsBefore) {
        this.plan = plan;
        this.target = target;
        this.divisions = divisions;
        this.since = since;
        this.divisionsSince = divisionsBefore.plus(divisions);
    }

    @Override
    public FormulaLine line() {
        return target.line();
    }

    /**
     * The line of the batch, with its exact mass.
     *
     * @return the line
     */
    public BatchLine target() {
        return target;
    }

    /**
     * Where the line is weighed: on the balance under the vessel of the batch, or in a boat on another.
     *
     * @return the place that the plan gives it; that of the bench, if the plan says nothing else
     */
    public WeighingStation station() {
        return plan.station(index());
    }

    /**
     * The balance on which the line is weighed.
     *
     * @return that of its {@link #station()}
     */
    public Balance balance() {
        return plan.balance(index());
    }

    /**
     * Whether the line is weighed into the vessel of the batch on the balance of the bench.
     *
     * @return true if so; false for a line from a boat or on another balance
     */
    public boolean isOnBench() {
        return plan.isOnBench(index());
    }

    /**
     * How the line is weighed, when those on the balance of the bench are weighed by a method.
     *
     * @param onBench the method for what is weighed on the balance of the bench
     * @return that method, or that of the line's own place
     */
    public WeighingMethod method(WeighingMethod onBench) {
        Objects.requireNonNull(onBench, "onBench");
        return isOnBench() ? onBench : station().method();
    }

    /**
     * How many steps of the display the reading is.
     *
     * @return a whole number, at least 0
     */
    public Ratio divisions() {
        return divisions;
    }

    /**
     * What the display must read after this line, tared before it.
     *
     * @return the reading in the unit of the balance; 0 if the line is too small for the display to show
     */
    public Amount<Mass> reading() {
        return times(divisions)
                .withWorking(line -> Phrase.of("question.reading", line.name()), this, PlannedLine::reading);
    }

    /** As {@link #reading()}. */
    @Override
    public Origin origin() {
        return reading().origin();
    }

    private <V> V reading(Reckoning<V> r) {
        V shown = plan.rule().one(r, index());
        return r.named(READING, this, r.product(shown, plan.rule().readability(r, index())));
    }

    private Amount<Mass> times(Ratio many) {
        return balance().readability().times(many);
    }

    /**
     * By how much the reading differs from the exact mass.
     *
     * @return reading minus exact mass in the unit of the balance, exact; negative if the line comes out short
     */
    public Amount<Mass> roundingError() {
        return Amount.grams(error(Reckoning.plain()))
                .inUnitOf(balance().readability())
                .withWorking(
                        line -> Phrase.of("question.rounding-error", line.name()), this, PlannedLine::roundingError);
    }

    private <V> V roundingError(Reckoning<V> r) {
        return r.named(ERROR, this, error(r));
    }

    private <V> V error(Reckoning<V> r) {
        return r.difference(r.known(reading()), r.known(target));
    }

    /**
     * The size of the rounding error against the exact mass.
     *
     * @return |reading − exact| / exact, at least 0, in percent
     */
    public Amount<Dimensionless> relativeRoundingError() {
        return Amount.percent(relativeError(Reckoning.plain()).times(100))
                .withWorking(
                        line -> Phrase.of("question.relative-rounding-error", line.name()),
                        this,
                        PlannedLine::relativeError);
    }

    private <V> V relativeError(Reckoning<V> r) {
        return r.named(RELATIVE_ERROR, this, r.quotient(r.absolute(error(r)), r.known(target)));
    }

    /**
     * What the display must read after this line if it is tared only once, before the first line. Where lines come from
     * boats or other balances in between, it is tared again after each of them.
     *
     * @return the sum of the readings on one tare up to this line, in the unit of the balance
     */
    public Amount<Mass> cumulativeReading() {
        return times(divisionsSince)
                .withWorking(
                        line -> Phrase.of("question.cumulative-reading", line.name()), this, PlannedLine::cumulative);
    }

    private <V> V cumulative(Reckoning<V> r) {
        List<V> readings = new ArrayList<>();
        for (PlannedLine line : plan.lines().subList(since, index() + 1)) {
            readings.add(r.known(line.reading()));
        }
        return r.named(CUMULATIVE, this, r.sum(readings));
    }

    /**
     * Whether the line is less than the balance is meant to weigh.
     *
     * @return true if the exact mass is below the minimum load
     */
    public boolean isBelowMinimumLoad() {
        return target.mass().compareTo(balance().minimumLoad()) < 0;
    }

    /**
     * Whether the line reads 0 only because of how the total is closed: rounded by itself it would show something.
     *
     * @return true if the closure, not the balance, took its last division
     */
    public boolean isDroppedByClosure() {
        return divisions.isZero() && !nearest().isZero();
    }

    /**
     * What the display would read for this line rounded by itself, whatever the total does.
     *
     * @return the reading nearest to the exact mass, half to even, in the unit of the balance
     */
    public Amount<Mass> nearestReading() {
        return times(nearest());
    }

    private Ratio nearest() {
        return balance().divisions(target.mass()).rounded(Rounding.toDecimalPlaces(0));
    }

    int since() {
        return since;
    }

    Ratio divisionsSince() {
        return divisionsSince;
    }

    /** Equal if plan and line are. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof PlannedLine that && target.equals(that.target) && plan.equals(that.plan);
    }

    @Override
    public int hashCode() {
        return Objects.hash(target, divisions);
    }

    @Override
    public String toString() {
        return name() + ": " + BalanceUnit.reading(reading(), balance().readability())
                + (isOnBench() ? "" : " (" + station() + ")");
    }
}
