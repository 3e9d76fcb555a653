package io.github.formulationmath.plan;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchLine;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Apportionment;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.reckoning.Entry.Comparison;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.weighing.Balance;
import java.io.Serializable;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * How many whole divisions of the display each line of a batch takes: {@code x = m/d}, rounded half to even, under one of
 * the closures. This is the relation behind every display target.
 *
 * @param batch
 *            what is to be made
 * @param bench
 *            what it is weighed with
 */
public record Divisions(Batch batch, Bench bench) implements Serializable {

    /**
     * The step of a display, d.
     */
    public static final Symbol READABILITY = Symbol.of("d", "readability", Kind.MASS);

    private static final Symbol TARGET = Symbol.of("x", "target-divisions", Kind.NUMBER);
    private static final Symbol FLOOR = Symbol.of("f", "floor-divisions", Kind.NUMBER);
    private static final Symbol REMAINDER = Symbol.of("y", "remainder", Kind.NUMBER);
    private static final Symbol SHOWN = Symbol.of("n", "shown-divisions", Kind.NUMBER);
    private static final Symbol TOTAL = Symbol.of("N", "total-divisions", Kind.NUMBER);
    private static final Symbol LEFT = Symbol.of("L", "left-divisions", Kind.NUMBER);

    private static final Rounding NEAREST = Rounding.toDecimalPlaces(0);
    private static final Rounding DOWN = NEAREST.with(RoundingMode.FLOOR);

    /**
     * The readings of a batch in divisions, whatever the bench carries.
     *
     * @param batch the batch
     * @param bench where it is weighed, and under which closure
     * @return whole numbers of divisions, in the order of the formula
     */
    public static List<Ratio> of(Batch batch, Bench bench) {
        return new Divisions(batch, bench).all(Reckoning.plain());
    }

    /**
     * The step d of a display, in grams.
     *
     * @param r the arithmetic to use
     * @param balance whose display
     * @param <V> what a value is
     * @return d as a given value
     */
    public static <V> V readability(Reckoning<V> r, Balance balance) {
        return r.given(READABILITY, balance.readability().canonical(), Source.user());
    }

    <V> V readability(Reckoning<V> r) {
        return readability(r, bench.balance());
    }

    /**
     * The divisions of all lines, in the order of the formula.
     *
     * @param r the arithmetic to use
     * @param <V> what a value is
     * @return whole numbers of divisions
     */
    public <V> List<V> all(Reckoning<V> r) {
        return switch (bench.closure()) {
            case INDEPENDENT -> independent(r);
            case CLOSED -> closed(r);
            case WITHIN_TOLERANCE -> new TolerantCertificate(batch.formula(), bench).derive(r, total(r));
            case QS_TAKES_REST -> restToQuantitySufficient(r);
        };
    }

    /** The divisions of one line, working out the other lines only if they matter. */
    <V> V one(Reckoning<V> r, int index) {
        return bench.closure() == Closure.INDEPENDENT ? rounded(r, batch.lines().get(index)) : all(r).get(index);
    }

    private <V> List<V> independent(Reckoning<V> r) {
        List<V> shown = new ArrayList<>(batch.lines().size());
        for (BatchLine line : batch.lines()) {
            shown.add(rounded(r, line));
        }
        return shown;
    }

    private <V> V target(Reckoning<V> r, BatchLine line) {
        return r.named(TARGET, line, r.quotient(r.known(line), readability(r)));
    }

    private <V> V rounded(Reckoning<V> r, BatchLine line) {
        return r.named(SHOWN, line, r.rounded(target(r, line), NEAREST));
    }

    private <V> V total(Reckoning<V> r) {
        return r.named(TOTAL, r.rounded(r.quotient(r.known(batch), readability(r)), NEAREST));
    }

    private <V> List<V> closed(Reckoning<V> r) {
        List<V> floors = new ArrayList<>();
        List<V> remainders = new ArrayList<>();
        for (BatchLine line : batch.lines()) {
            V target = target(r, line);
            V floor = r.named(FLOOR, line, r.rounded(target, DOWN));
            floors.add(floor);
            remainders.add(r.named(REMAINDER, line, r.difference(target, floor)));
        }
        V left = r.named(LEFT, r.difference(total(r), r.sum(floors)));
        r.note(() -> Phrase.of("note.largest-remainder"));
        return shareOut(r, floors, remainders, (int) r.number(left).toLongExact());
    }

    /** One division more for the lines with the largest remainders. */
    private <V> List<V> shareOut(Reckoning<V> r, List<V> floors, List<V> remainders, int left) {
        List<Integer> order =
                Apportionment.byRemainder(remainders.stream().map(r::number).toList());
        if (left > 0 && left < order.size()) {
            r.holds(remainders.get(order.get(left - 1)), Comparison.AT_LEAST, remainders.get(order.get(left)));
        }
        List<V> shown = new ArrayList<>(floors);
        for (int place = 0; place < order.size(); place++) {
            int i = order.get(place);
            V divisions = place < left ? r.sum(floors.get(i), r.literal(1)) : floors.get(i);
            shown.set(i, r.named(SHOWN, batch.lines().get(i), divisions));
        }
        return shown;
    }

    private <V> List<V> restToQuantitySufficient(Reckoning<V> r) {
        int taker = restTaker(batch.formula()).index();
        List<V> shown = new ArrayList<>();
        List<V> others = new ArrayList<>();
        for (BatchLine line : batch.lines()) {
            V divisions = line.line().isQuantitySufficient() ? r.literal(0) : rounded(r, line);
            shown.add(divisions);
            if (!line.line().isQuantitySufficient()) {
                others.add(divisions);
            }
        }
        V rest = others.isEmpty() ? total(r) : r.difference(total(r), r.sum(others));
        requireSomething(r.number(rest), taker);
        shown.set(taker, r.named(SHOWN, batch.lines().get(taker), rest));
        return shown;
    }

    /**
     * The line that takes the rest.
     *
     * @param formula the formula
     * @return its q.s. line
     * @throws IllegalArgumentException if it has none
     */
    public static FormulaLine restTaker(Formula formula) {
        return formula.quantitySufficientLine()
                .orElseThrow(() -> new IllegalArgumentException(
                        "no line of \"" + Excerpt.of(formula.name()) + "\" is q.s.: close the total another way"));
    }

    private void requireSomething(Ratio rest, int taker) {
        if (rest.signum() < 0) {
            throw new IllegalArgumentException("the other lines, rounded to "
                    + Excerpt.of(bench.balance().readability())
                    + ", already pass the batch of " + Excerpt.of(batch.mass()) + ", which leaves " + Excerpt.of(rest)
                    + " divisions for "
                    + Excerpt.of(batch.lines().get(taker).name())
                    + ": make a larger batch or close the total another way");
        }
    }
}
