package io.github.formulationmath.plan;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Entry.Comparison;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Symbol;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;

/**
 * Of all whole readings that add up to N, those whose {@link Deviation deviations}, sorted from the greatest down, are
 * least in dictionary order, the earlier line taking the division among equals ({@link Closure#WITHIN_TOLERANCE}).
 *
 * <p>To compare sorted deviations from the greatest down is to compare sums of K^deviation for a very large K. Such a sum
 * is separable, and convex because each deviation is: so the readings that are best without regard to N, corrected one
 * division at a time where that costs least, are best for N. The cost of a step that leads from one deviation to a greater
 * one is led by the greater; among equals the one that leaves the greater deviation behind is cheaper; a step between
 * equal deviations, at a tie, costs nothing.
 */
record TolerantReadings(Formula formula, Bench bench) {

    private static final Comparator<Step> CHEAPEST = TolerantReadings::compare;

    private static final Symbol SHOWN = Symbol.of("n", "shown-divisions", Kind.NUMBER);
    private static final Symbol SHARE = Symbol.of("x", "divisions-of-whole", Kind.NUMBER);
    private static final Symbol DEVIATION = Symbol.of("ζ", "relative-deviation", Kind.SHARE);
    private static final Symbol MOVED = Symbol.of("γ", "deviation-if-moved", Kind.SHARE);

    /**
     * The readings, and what speaks for them. Against tolerances: that each lies between the ends its tolerance sets, if they do.
     * Without: that the greatest deviation cannot be less. To lessen it its line would have to give a division to some other
     * line (or take one from it): either it would itself be off by no less then, or any other line would.
     */
    <V> List<V> derive(Reckoning<V> r, V total) {
        List<Ratio> readings = closing(r.number(total));
        List<V> shown = new ArrayList<>(readings.size());
        for (int i = 0; i < readings.size(); i++) {
            shown.add(r.named(SHOWN, formula.lines().get(i), r.literal(readings.get(i))));
        }
        r.note(() -> Phrase.of("note.within-tolerance"));
        r.holds(r.sum(shown), Comparison.EQUAL, total);
        if (r.number(total).isZero()) {
            return shown;
        }
        if (bench.closingTolerances().isPresent()) {
            enclose(r, total, readings, shown);
        } else {
            least(r, total, readings, shown);
        }
        return shown;
    }

    private <V> void enclose(Reckoning<V> r, V total, List<Ratio> readings, List<V> shown) {
        Ratio error = bench.balance().divisions(bench.closingReadingError());
        ReadingEnds ends = new ReadingEnds(formula, bench.closingTolerances().orElseThrow(), error);
        if (ends.hold(readings, r.number(total))) {
            ends.enclose(r, shown, total);
        }
    }

    private <V> void least(Reckoning<V> r, V total, List<Ratio> readings, List<V> shown) {
        List<V> targets = new ArrayList<>();
        List<V> deviations = new ArrayList<>();
        int worst = 0;
        for (int i = 0; i < shown.size(); i++) {
            FormulaLine line = formula.lines().get(i);
            V target = r.named(SHARE, line, r.product(r.known(line), total));
            targets.add(target);
            deviations.add(r.named(DEVIATION, line, deviation(r, shown.get(i), target)));
            worst = r.number(deviations.get(i)).compareTo(r.number(deviations.get(worst))) > 0 ? i : worst;
        }
        // The worst line has too much if it could give one away, too little if it could take one.
        int way = readings.get(worst).compareTo(r.number(targets.get(worst))) > 0 ? 1 : -1;
        V own = deviation(r, r.sum(shown.get(worst), r.literal(-way)), targets.get(worst));
        if (r.number(own).compareTo(r.number(deviations.get(worst))) >= 0) {
            r.holds(r.named(MOVED, formula.lines().get(worst), own), Comparison.AT_LEAST, deviations.get(worst));
            return;
        }
        for (int i = 0; i < shown.size(); i++) {
            if (i != worst && readings.get(i).plus(Ratio.of(way)).signum() >= 0) {
                V moved = deviation(r, r.sum(shown.get(i), r.literal(way)), targets.get(i));
                r.holds(r.named(MOVED, formula.lines().get(i), moved), Comparison.AT_LEAST, deviations.get(worst));
            }
        }
    }

    private static <V> V deviation(Reckoning<V> r, V reading, V target) {
        return r.quotient(r.absolute(r.difference(reading, target)), target);
    }

    private List<Deviation> deviations(Ratio total) {
        Optional<Tolerances> given = bench.closingTolerances();
        given.ifPresent(some -> some.checkedFor(formula));
        Ratio error = bench.balance().divisions(bench.closingReadingError());
        int count = formula.lines().size();
        List<Deviation> all = new ArrayList<>(count);
        for (FormulaLine line : formula.lines()) {
            Ratio tolerance = given.map(some -> some.fraction(line)).orElse(Ratio.ONE);
            all.add(Deviation.of(line.fraction(), total, tolerance, error, count));
        }
        return all;
    }

    /**
     * How far a reading n takes a line from its share when N divisions are made: |n − x|/x with x = w·N; with an error of up
     * to e divisions in each of k lines, the worst that {@code (n + δ)/(N + Σδ)} can do, as in {@link ReadingEnds}. Divided by
     * the tolerance of the line where lines have tolerances of their own. Convex in n.
     *
     * @param target x, in divisions
     * @param weight w
     * @param tolerance what the deviation is divided by; with 0, any deviation outweighs those of all lines that have some
     * @param error e, in divisions
     * @param lower N − (k − 2)·e, above 0
     * @param upper N + (k − 2)·e, above 0
     */
    private record Deviation(Ratio target, Ratio weight, Ratio tolerance, Ratio error, Ratio lower, Ratio upper) {

        /**
         * A deviation as it is compared.
         *
         * @param forbidden whether a line that must be exact is not
         * @param value the deviation
         */
        record Size(boolean forbidden, Ratio value) implements Comparable<Size> {
            @Override
            public int compareTo(Size other) {
                int rank = Boolean.compare(forbidden, other.forbidden);
                return rank != 0 ? rank : value.compareTo(other.value);
            }
        }

        /** The errors count only while they leave N a meaning; without any, the deviation is that of the reading. */
        static Deviation of(Ratio weight, Ratio total, Ratio tolerance, Ratio error, int lines) {
            Ratio others = error.times(lines - 2L);
            Ratio lower = total.minus(others);
            Ratio upper = total.plus(others);
            boolean counts = lower.signum() > 0 && upper.signum() > 0;
            return new Deviation(
                    weight.times(total),
                    weight,
                    tolerance,
                    counts ? error : Ratio.ZERO,
                    counts ? lower : total,
                    counts ? upper : total);
        }

        /** The deviation at a reading of a line that has a target. */
        Size of(Ratio reading) {
            Ratio over = reading.plus(error).dividedBy(weight.times(lower)).minus(Ratio.ONE);
            Ratio under = Ratio.ONE.minus(reading.minus(error).dividedBy(weight.times(upper)));
            Ratio worst = over.max(under);
            return tolerance.isZero() ? new Size(!worst.isZero(), worst) : new Size(false, worst.dividedBy(tolerance));
        }

        /** The reading of least deviation; of two, the smaller. */
        Ratio nearest() {
            if (target.isZero()) {
                return Ratio.ZERO;
            }
            // Where the two linear parts cross: (n + e)/(w·lower) + (n − e)/(w·upper) = 2.
            Ratio sum = lower.plus(upper);
            Ratio crossing = weight.times(2)
                    .times(lower)
                    .times(upper)
                    .minus(error.times(upper.minus(lower)))
                    .dividedBy(sum);
            Ratio floor = crossing.floor().max(Ratio.ZERO);
            Ratio next = floor.plus(Ratio.ONE);
            return of(next).compareTo(of(floor)) < 0 ? next : floor;
        }
    }

    /** One division more or less for a line, and what it does to its deviation. */
    private record Step(int line, Deviation.Size before, Deviation.Size after) {
        boolean isFree() {
            return before.equals(after);
        }
    }

    private static int compare(Step one, Step other) {
        if (one.isFree() || other.isFree()) {
            return Boolean.compare(other.isFree(), one.isFree());
        }
        int order = one.after().compareTo(other.after());
        return order != 0 ? order : other.before().compareTo(one.before());
    }

    /** The readings, in the order of the lines. */
    private List<Ratio> closing(Ratio total) {
        List<Deviation> lines = deviations(total);
        List<Ratio> readings = new ArrayList<>(lines.size());
        Ratio left = total;
        for (Deviation line : lines) {
            Ratio best = line.nearest();
            readings.add(best);
            left = left.minus(best);
        }
        int way = left.signum();
        // At a tie of costs the earlier line gains, the later one loses.
        Comparator<Step> byLine = Comparator.comparingInt(Step::line);
        PriorityQueue<Step> queue = new PriorityQueue<>(CHEAPEST.thenComparing(way > 0 ? byLine : byLine.reversed()));
        for (int i = 0; way != 0 && i < lines.size(); i++) {
            offer(queue, lines, readings, i, way);
        }
        for (Ratio rest = left.abs(); rest.signum() > 0; rest = rest.minus(Ratio.ONE)) {
            int i = queue.remove().line();
            readings.set(i, readings.get(i).plus(Ratio.of(way)));
            offer(queue, lines, readings, i, way);
        }
        return List.copyOf(readings);
    }

    private static void offer(PriorityQueue<Step> queue, List<Deviation> lines, List<Ratio> readings, int i, int way) {
        Ratio next = readings.get(i).plus(Ratio.of(way));
        if (next.signum() >= 0 && !lines.get(i).target().isZero()) {
            Deviation line = lines.get(i);
            queue.add(new Step(i, line.of(readings.get(i)), line.of(next)));
        }
    }
}
