package io.github.formulationmath.plan;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Entry.Comparison;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * What a batch brings onto the pan by its targets and by the readings of its plan, whichever is more. Rounded lines may add
 * up to more than the batch, so a bench that carries the batch may not carry its readings. The load never falls as the
 * batch grows, for no rounding does.
 *
 * <p>The largest batch for which there is room is the room itself, if the readings of that batch fit, else the largest whole
 * number of divisions (or of the steps asked for) whose readings do. Sizes between that and the next may fit too; where
 * readings tie they may have no largest, so none is named.
 *
 * @param formula as it is weighed
 * @param benches the closures under which the batch is to be planned
 * @param step a step to which sizes are rounded
 */
public record PlannedLoad(
        Formula formula, List<Bench> benches, @Nullable Amount<Mass> step) {

    private static final Symbol STEP = Symbol.of("s", "size-step", Kind.MASS);
    private static final Subject HIGH = Subject.of("high", "");
    private static final Subject NEXT = Subject.of("next", "");
    private static final Symbol LOAD = Symbol.of("P", "planned-load", Kind.MASS);
    private static final Rounding NEAREST = Rounding.toDecimalPlaces(0);

    /**
     * Copies the list.
     *
     * @param formula as it is weighed
     * @param benches the closures under which the batch is to be planned
     * @param step a step to which sizes are rounded
     */
    public PlannedLoad {
        Objects.requireNonNull(formula, "formula");
        benches = List.copyOf(benches);
    }

    /**
     * The load of plans under one closure, for sizes of any mass.
     *
     * @param formula as it is weighed
     * @param bench where, and under which closure
     * @return the load
     */
    public static PlannedLoad of(Formula formula, Bench bench) {
        return new PlannedLoad(formula, List.of(bench), null);
    }

    /**
     * What a batch brings onto the pan.
     *
     * @param batch the mass of the batch
     * @return the load, in the unit of the display
     */
    public Amount<Mass> forBatch(Amount<Mass> batch) {
        Ratio grams = Objects.requireNonNull(batch, "batch").canonical();
        return Amount.grams(load(grams)).inUnitOf(bench().balance().readability());
    }

    private Ratio load(Ratio grams) {
        return load(Reckoning.plain(), grams);
    }

    <V> V derive(Reckoning<V> r, V grams, Subject subject) {
        return r.named(LOAD, subject, load(r, grams));
    }

    private <V> V load(Reckoning<V> r, V grams) {
        List<V> all = new ArrayList<>();
        all.add(grams);
        benches.forEach(bench -> all.add(total(r, grams, bench)));
        return r.maximum(all);
    }

    private <V> V total(Reckoning<V> r, V grams, Bench bench) {
        V d = Divisions.readability(r, bench.balance());
        if (bench.closure() != Closure.INDEPENDENT) {
            return r.product(r.rounded(r.quotient(grams, d), NEAREST), d);
        }
        List<V> divisions = new ArrayList<>(formula.lines().size());
        for (FormulaLine line : formula.lines()) {
            divisions.add(r.rounded(r.quotient(r.product(r.known(line), grams), d), NEAREST));
        }
        return r.product(r.sum(divisions), d);
    }

    /**
     * Whether what a batch brings onto the pan fits.
     *
     * @param room what may stand on the pan
     * @param batch the mass of the batch
     * @return true if it does
     */
    public boolean allows(Amount<Mass> room, Amount<Mass> batch) {
        Ratio most = Objects.requireNonNull(room, "room").canonical();
        return fits(most, Objects.requireNonNull(batch, "batch").canonical());
    }

    private boolean fits(Ratio room, Ratio grams) {
        return load(grams).compareTo(room) <= 0;
    }

    /**
     * The largest batch that fits.
     *
     * @param r the arithmetic to use
     * @param room what may stand on the pan
     * @param <V> what a value is
     * @return its mass
     */
    public <V> V most(Reckoning<V> r, V room) {
        Ratio most = r.number(room);
        if (fits(most, most)) {
            return room;
        }
        V unit = unit(r);
        Ratio count = mostMultiples(most, r.number(unit));
        V size = r.product(r.literal(count), unit);
        V next = r.product(r.literal(count.plus(Ratio.ONE)), unit);
        fits(r, size, room);
        r.holds(derive(r, next, NEXT), Comparison.GREATER, room);
        return size;
    }

    /**
     * Shows that a batch fits that {@link #most} does not name, lying between two whole numbers of divisions.
     *
     * @param r the arithmetic to use
     * @param room what may stand on the pan
     * @param batch the mass of the batch
     * @param <V> what a value is
     * @return its mass
     */
    public <V> V shown(Reckoning<V> r, V room, Amount<Mass> batch) {
        Ratio grams = Objects.requireNonNull(batch, "batch").canonical();
        if (most(Reckoning.plain(), r.number(room)).equals(grams)) {
            return most(r, room);
        }
        V size = r.literal(grams);
        fits(r, size, room);
        return size;
    }

    private <V> void fits(Reckoning<V> r, V size, V room) {
        r.holds(derive(r, size, HIGH), Comparison.AT_MOST, room);
    }

    private <V> V unit(Reckoning<V> r) {
        return step == null
                ? Divisions.readability(r, bench().balance())
                : r.given(STEP, step.canonical(), Source.user());
    }

    /** The largest batch that is a whole multiple of a unit and loads no more than there is room for; 0 if none. */
    private Ratio mostMultiples(Ratio room, Ratio unit) {
        BigInteger fits = BigInteger.ZERO;
        BigInteger high = room.dividedBy(unit).floor().numerator();
        Ratio span = bench().balance()
                .readability()
                .canonical()
                .times(formula.lines().size() + 1L);
        BigInteger low = room.minus(span).dividedBy(unit).floor().numerator();
        if (low.signum() > 0) {
            // A rounded line is at most half a division too much, so this one fits.
            fits = low;
        }
        while (fits.compareTo(high) < 0) {
            BigInteger middle = fits.add(high).add(BigInteger.ONE).shiftRight(1);
            if (fits(room, unit.times(Ratio.of(middle)))) {
                fits = middle;
            } else {
                high = middle.subtract(BigInteger.ONE);
            }
        }
        return Ratio.of(fits);
    }

    private Bench bench() {
        return benches.get(0);
    }
}
