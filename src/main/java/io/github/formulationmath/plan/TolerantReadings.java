package io.github.formulationmath.plan;

import io.github.formulationmath.number.Ratio;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/**
 * Of all whole readings that add up to N, those whose {@link LineDeviation deviations}, sorted from the greatest down, are
 * least in dictionary order, the earlier line taking the division among equals ({@link Closure#WITHIN_TOLERANCE}).
 *
 * <p>To compare sorted deviations from the greatest down is to compare sums of K^deviation for a very large K. Such a sum
 * is separable, and convex because each deviation is: so the readings that are best without regard to N, corrected one
 * division at a time where that costs least, are best for N. The cost of a step that leads from one deviation to a greater
 * one is led by the greater; among equals the one that leaves the greater deviation behind is cheaper; a step between
 * equal deviations, at a tie, costs nothing.
 */
final class TolerantReadings {

    private static final Comparator<Step> CHEAPEST = TolerantReadings::compare;

    private final List<LineDeviation> lines;

    TolerantReadings(List<LineDeviation> lines) {
        this.lines = lines;
    }

    /** One division more or less for a line, and what it does to its deviation. */
    private record Step(int line, LineDeviation.Size before, LineDeviation.Size after) {
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
    List<Ratio> closing(Ratio total) {
        List<Ratio> readings = new ArrayList<>(lines.size());
        Ratio left = total;
        for (LineDeviation line : lines) {
            Ratio best = line.nearest();
            readings.add(best);
            left = left.minus(best);
        }
        int way = left.signum();
        // At a tie of costs the earlier line gains, the later one loses.
        Comparator<Step> byLine = Comparator.comparingInt(Step::line);
        PriorityQueue<Step> queue = new PriorityQueue<>(CHEAPEST.thenComparing(way > 0 ? byLine : byLine.reversed()));
        for (int i = 0; way != 0 && i < lines.size(); i++) {
            offer(queue, readings, i, way);
        }
        for (Ratio rest = left.abs(); rest.signum() > 0; rest = rest.minus(Ratio.ONE)) {
            int i = queue.remove().line();
            readings.set(i, readings.get(i).plus(Ratio.of(way)));
            offer(queue, readings, i, way);
        }
        return List.copyOf(readings);
    }

    private void offer(PriorityQueue<Step> queue, List<Ratio> readings, int i, int way) {
        Ratio next = readings.get(i).plus(Ratio.of(way));
        if (next.signum() >= 0 && !lines.get(i).target().isZero()) {
            LineDeviation line = lines.get(i);
            queue.add(new Step(i, line.of(readings.get(i)), line.of(next)));
        }
    }
}
