package io.github.formulationmath.planning;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/**
 * Chooses readings between given ends that add up to a total: each as near its target as the ends allow, then single
 * divisions more (or fewer) for the lines that are relatively furthest short (or over), of equal ones the earlier.
 */
final class ClosedReadings {

    private ClosedReadings() {}

    static List<Ratio> nearest(List<Ratio> weights, List<Ratio> least, List<Ratio> most, Ratio total) {
        List<Ratio> readings = new ArrayList<>(weights.size());
        Ratio sum = Ratio.ZERO;
        for (int i = 0; i < weights.size(); i++) {
            Ratio target = weights.get(i).times(total).rounded(Rounding.toDecimalPlaces(0));
            Ratio reading = target.max(least.get(i)).min(most.get(i));
            readings.add(reading);
            sum = sum.plus(reading);
        }
        int step = total.compareTo(sum);
        if (step != 0) {
            spread(
                    new Spread(weights, total, step, step > 0 ? most : least),
                    readings,
                    total.minus(sum).abs());
        }
        return List.copyOf(readings);
    }

    /** Which way single divisions go, and where each line must stop. */
    private record Spread(List<Ratio> weights, Ratio total, int step, List<Ratio> stops) {

        /** How far, against its target, a line still lacks what the step would give it. */
        Ratio need(int line, Ratio reading) {
            Ratio target = weights.get(line).times(total);
            return target.minus(reading).times(step).dividedBy(target);
        }
    }

    private record Candidate(int line, Ratio need) {}

    private static void spread(Spread spread, List<Ratio> readings, Ratio divisions) {
        PriorityQueue<Candidate> queue = new PriorityQueue<>(
                Comparator.comparing(Candidate::need, Comparator.reverseOrder()).thenComparing(Candidate::line));
        for (int i = 0; i < readings.size(); i++) {
            offer(queue, spread, i, readings.get(i));
        }
        for (Ratio left = divisions; left.signum() > 0; left = left.minus(Ratio.ONE)) {
            Candidate next = queue.remove();
            readings.set(next.line(), readings.get(next.line()).plus(Ratio.of(spread.step())));
            offer(queue, spread, next.line(), readings.get(next.line()));
        }
    }

    private static void offer(PriorityQueue<Candidate> queue, Spread spread, int line, Ratio reading) {
        if (!reading.equals(spread.stops().get(line))) {
            queue.add(new Candidate(line, spread.need(line, reading)));
        }
    }
}
