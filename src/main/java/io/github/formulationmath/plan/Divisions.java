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
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingStation;
import java.io.Serializable;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * How many whole divisions of its display each line of a batch takes: {@code x = m/d}, rounded half to even, under one of
 * the closures. This is the relation behind every display target.
 *
 * <p>On displays of different steps a closed total is closed from the coarsest step to the finest: the lines of one step
 * take what they should weigh and what coarser ones left, by largest remainders, but no line moves by a whole division of
 * its own display. What then is left is the difference of the plan.
 *
 * @param batch
 *            what is to be made
 * @param bench
 *            where it is made, and under which closure
 * @param stations
 *            where each line is weighed, in the order of the formula; empty if all are on the balance of the bench
 */
public record Divisions(Batch batch, Bench bench, List<WeighingStation> stations) implements Serializable {

    /**
     * The step of a display, d.
     */
    public static final Symbol READABILITY = Symbol.of("d", "readability", Kind.MASS);

    private static final Symbol TARGET = Symbol.of("x", "target-divisions", Kind.NUMBER);
    private static final Symbol FLOOR = Symbol.of("f", "floor-divisions", Kind.NUMBER);
    private static final Symbol REMAINDER = Symbol.of("y", "remainder", Kind.NUMBER);
    private static final Symbol SHOWN = Symbol.of("n", "shown-divisions", Kind.NUMBER);
    private static final Symbol TOTAL = Symbol.of("N", "total-divisions", Kind.NUMBER);
    private static final Symbol TOTAL_OF_STEP = Symbol.of("N", "divisions-of-one-step", Kind.NUMBER);
    private static final Symbol LEFT = Symbol.of("L", "left-divisions", Kind.NUMBER);
    private static final Symbol ASKED = Symbol.of("q", "mass-of-one-step", Kind.MASS);
    private static final Symbol LEFT_MASS = Symbol.of("o", "mass-left-over", Kind.MASS);

    private static final Rounding NEAREST = Rounding.toDecimalPlaces(0);
    private static final Rounding DOWN = NEAREST.with(RoundingMode.FLOOR);

    /**
     * Nothing may be missing.
     *
     * @param batch what is to be made
     * @param bench where it is made, and under which closure
     * @param stations where each line is weighed, in the order of the formula; empty if all are on the balance of the bench
     */
    public Divisions {
        Objects.requireNonNull(batch, "batch");
        Objects.requireNonNull(bench, "bench");
        stations = List.copyOf(Objects.requireNonNull(stations, "stations"));
    }

    /**
     * Every line on the balance of the bench.
     *
     * @param batch what is to be made
     * @param bench where it is made, and under which closure
     */
    public Divisions(Batch batch, Bench bench) {
        this(batch, bench, List.of());
    }

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
        return r.displayStep(READABILITY, Subject.none(), balance.readability(), Source.user());
    }

    /** The step of the display on which a line is weighed; one d for all while there is one balance. */
    <V> V readability(Reckoning<V> r, int line) {
        Balance balance = balance(line);
        if (stations.isEmpty()) {
            return readability(r, balance);
        }
        String name = balance.name();
        return r.displayStep(READABILITY, Subject.of(name, name), balance.readability(), Source.user());
    }

    Balance balance(int line) {
        return stations.isEmpty() ? bench.balance() : stations.get(line).balance();
    }

    private Ratio step(int line) {
        return balance(line).readability().canonical();
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
            case WITHIN_TOLERANCE -> withinTolerance(r);
            case QS_TAKES_REST -> restToQuantitySufficient(r);
        };
    }

    private <V> List<V> withinTolerance(Reckoning<V> r) {
        for (WeighingStation station : stations) {
            if (station.balance().readability().compareTo(bench.balance().readability()) != 0) {
                throw new IllegalArgumentException(
                        "closure is " + bench.closure() + ", and the steps of the displays differ ("
                                + Excerpt.of(bench.balance().readability()) + " and "
                                + Excerpt.of(station.balance().readability())
                                + "): close the total by " + Closure.CLOSED + ", or weigh all lines in one step");
            }
        }
        return new TolerantReadings(batch.formula(), bench).derive(r, total(r, 0));
    }

    /** The divisions of one line, working out the other lines only if they matter. */
    <V> V one(Reckoning<V> r, int index) {
        return bench.closure() == Closure.INDEPENDENT ? rounded(r, index) : all(r).get(index);
    }

    private <V> List<V> independent(Reckoning<V> r) {
        List<V> shown = new ArrayList<>(batch.lines().size());
        for (int i = 0; i < batch.lines().size(); i++) {
            shown.add(rounded(r, i));
        }
        return shown;
    }

    private <V> V target(Reckoning<V> r, int i) {
        BatchLine line = batch.lines().get(i);
        return r.named(TARGET, line, r.quotient(r.known(line), readability(r, i)));
    }

    private <V> V rounded(Reckoning<V> r, int i) {
        return r.named(SHOWN, batch.lines().get(i), r.rounded(target(r, i), NEAREST));
    }

    /** The whole batch in divisions of the display of a line. */
    private <V> V total(Reckoning<V> r, int i) {
        return r.named(TOTAL, r.rounded(r.quotient(r.known(batch), readability(r, i)), NEAREST));
    }

    private <V> List<V> closed(Reckoning<V> r) {
        Map<Ratio, List<Integer>> byStep = new TreeMap<>(Comparator.reverseOrder());
        for (int i = 0; i < batch.lines().size(); i++) {
            byStep.computeIfAbsent(step(i), step -> new ArrayList<>()).add(i);
        }
        Map<Integer, V> shown = new HashMap<>();
        if (byStep.size() == 1) {
            shareOut(r, Subject.none(), total(r, 0), byStep.values().iterator().next(), shown);
            return inOrder(shown);
        }
        r.note(() -> Phrase.of("note.coarsest-first"));
        @Nullable V left = null;
        for (List<Integer> lines : byStep.values()) {
            left = closeOneStep(r, lines, left, shown);
        }
        return inOrder(shown);
    }

    private <V> List<V> inOrder(Map<Integer, V> shown) {
        List<V> all = new ArrayList<>(shown.size());
        for (int i = 0; i < batch.lines().size(); i++) {
            all.add(Objects.requireNonNull(shown.get(i)));
        }
        return all;
    }

    /** The lines of one step take what they should and what coarser ones left; what they leave in turn is given back. */
    private <V> V closeOneStep(Reckoning<V> r, List<Integer> lines, @Nullable V before, Map<Integer, V> shown) {
        int first = lines.get(0);
        String step = balance(first).readability().toString();
        Subject subject = Subject.of(step, step);
        List<V> masses = new ArrayList<>();
        lines.forEach(i -> masses.add(r.known(batch.lines().get(i))));
        if (before != null) {
            masses.add(before);
        }
        V asked = r.named(ASKED, subject, r.sum(masses));
        V total = r.named(TOTAL_OF_STEP, subject, r.rounded(r.quotient(asked, readability(r, first)), NEAREST));
        shareOut(r, subject, total, lines, shown);
        List<V> read = new ArrayList<>();
        lines.forEach(i -> read.add(r.product(Objects.requireNonNull(shown.get(i)), readability(r, i))));
        return r.named(LEFT_MASS, subject, r.difference(asked, r.sum(read)));
    }

    /** One division more for the lines with the largest remainders, of those that have any. */
    private <V> void shareOut(Reckoning<V> r, Subject subject, V total, List<Integer> lines, Map<Integer, V> shown) {
        List<V> floors = new ArrayList<>();
        List<V> remainders = new ArrayList<>();
        for (int i : lines) {
            V target = target(r, i);
            V floor = r.named(FLOOR, batch.lines().get(i), r.rounded(target, DOWN));
            floors.add(floor);
            remainders.add(r.named(REMAINDER, batch.lines().get(i), r.difference(target, floor)));
        }
        V left = r.named(LEFT, subject, r.difference(total, r.sum(floors)));
        r.note(() -> Phrase.of("note.largest-remainder"));
        List<Ratio> plain = remainders.stream().map(r::number).toList();
        Ratio most = Ratio.of(plain.stream().filter(each -> !each.isZero()).count());
        int many = (int) r.number(left).max(Ratio.ZERO).min(most).toLongExact();
        List<Integer> order = Apportionment.byRemainder(plain);
        if (many > 0 && many < order.size()) {
            r.holds(remainders.get(order.get(many - 1)), Comparison.AT_LEAST, remainders.get(order.get(many)));
        }
        for (int place = 0; place < order.size(); place++) {
            int at = order.get(place);
            V divisions = place < many ? r.sum(floors.get(at), r.literal(1)) : floors.get(at);
            int line = lines.get(at);
            shown.put(line, r.named(SHOWN, batch.lines().get(line), divisions));
        }
    }

    private <V> List<V> restToQuantitySufficient(Reckoning<V> r) {
        int taker = restTaker(batch.formula()).index();
        List<V> shown = new ArrayList<>();
        List<V> others = new ArrayList<>();
        boolean sameSteps = stations.stream()
                .allMatch(each -> each.balance().readability().canonical().equals(step(taker)));
        for (int i = 0; i < batch.lines().size(); i++) {
            V divisions = i == taker ? r.literal(0) : rounded(r, i);
            shown.add(divisions);
            if (i != taker) {
                others.add(sameSteps ? divisions : r.product(divisions, readability(r, i)));
            }
        }
        V rest;
        if (others.isEmpty()) {
            rest = total(r, taker);
        } else if (sameSteps) {
            rest = r.difference(total(r, taker), r.sum(others));
        } else {
            // Rounded once: a batch rounded to this display first could be off by a whole step of it.
            V grams = r.difference(r.known(batch), r.sum(others));
            rest = r.rounded(r.quotient(grams, readability(r, taker)), NEAREST);
        }
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
