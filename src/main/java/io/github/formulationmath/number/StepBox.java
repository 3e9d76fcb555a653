package io.github.formulationmath.number;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** The least and the most of every unknown in whole steps, and the rows that are no such bounds, for one total. */
record StepBox(List<Ratio> steps, Ratio total, List<Ratio> least, List<Ratio> most, List<Row> rows) {

    /**
     * A row {@code a · x ≥ b} for a known total X of the unknowns: with α the coefficient that most of them have, it says
     * {@code Σ (a_j − α)·x_j ≥ b − α·X}, in which few unknowns are left.
     */
    record Row(Ratio common, List<Ratio> extra, Ratio least, List<Integer> bestFirst) {

        static Row of(LinearProgram.Row row) {
            Ratio common = mostCommon(row.coefficients());
            List<Ratio> extra =
                    row.coefficients().stream().map(a -> a.minus(common)).toList();
            List<Integer> bestFirst = IntStream.range(0, extra.size())
                    .boxed()
                    .sorted(Comparator.comparing(extra::get).reversed())
                    .toList();
            return new Row(common, extra, row.least(), bestFirst);
        }

        private static Ratio mostCommon(List<Ratio> numbers) {
            Map<Ratio, Integer> counts = new HashMap<>();
            numbers.forEach(number -> counts.merge(number, 1, Integer::sum));
            int most = Collections.max(counts.values());
            // Of equally common ones the first in the row: the same on every machine.
            return numbers.stream()
                    .filter(number -> Integer.valueOf(most).equals(counts.get(number)))
                    .findFirst()
                    .orElseThrow();
        }

        /** The unknowns that are left in the row. */
        List<Integer> unknowns() {
            List<Integer> left = new ArrayList<>();
            for (int j = 0; j < extra.size(); j++) {
                if (!extra.get(j).isZero()) {
                    left.add(j);
                }
            }
            return left;
        }

        /** What the unknowns left in the row have to reach. */
        Ratio wanted(Ratio total) {
            return least.minus(common.times(total));
        }
    }

    /** Empty if no choice can have this total. */
    static Optional<StepBox> of(List<Row> rows, List<Ratio> steps, Ratio total) {
        Ratio[] least = new Ratio[steps.size()];
        Ratio[] most = new Ratio[steps.size()];
        Arrays.fill(least, Ratio.ZERO);
        Arrays.setAll(most, j -> total.toMultipleOf(steps.get(j), RoundingMode.FLOOR));
        for (Row row : rows) {
            List<Integer> unknowns = row.unknowns();
            if (unknowns.isEmpty() && row.wanted(total).signum() > 0) {
                return Optional.empty();
            }
            if (unknowns.size() == 1) {
                bound(row, unknowns.get(0), steps, total, least, most);
            }
        }
        StepBox box = new StepBox(
                steps,
                total,
                List.of(least),
                List.of(most),
                rows.stream().filter(row -> row.unknowns().size() > 1).toList());
        return box.isPossible() ? Optional.of(box) : Optional.empty();
    }

    private static void bound(Row row, int j, List<Ratio> steps, Ratio total, Ratio[] least, Ratio[] most) {
        Ratio factor = row.extra().get(j);
        Ratio at = row.wanted(total).dividedBy(factor);
        if (factor.signum() > 0) {
            least[j] = least[j].max(at.toMultipleOf(steps.get(j), RoundingMode.CEILING));
        } else {
            most[j] = most[j].min(at.toMultipleOf(steps.get(j), RoundingMode.FLOOR));
        }
    }

    private boolean isPossible() {
        for (int j = 0; j < least.size(); j++) {
            if (least(j).compareTo(most(j)) > 0) {
                return false;
            }
        }
        return sum(least).compareTo(total) <= 0 && total.compareTo(sum(most)) <= 0;
    }

    private static Ratio sum(List<Ratio> values) {
        return values.stream().reduce(Ratio.ZERO, Ratio::plus);
    }

    Ratio least(int j) {
        return least.get(j);
    }

    Ratio most(int j) {
        return most.get(j);
    }

    /** How much more than its least an unknown can have. */
    Ratio room(int j) {
        return most(j).minus(least(j));
    }

    /** Whether values with this total keep the rows that are no bounds. */
    boolean isKeptBy(List<Ratio> values) {
        return rows.stream()
                .allMatch(row -> LinearProgram.dot(row.extra(), values).compareTo(row.wanted(total)) >= 0);
    }
}
