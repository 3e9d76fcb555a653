package io.github.formulationmath.number;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * A row {@code a · x ≥ b} for a known total X of the unknowns: with α the coefficient that most of them have, it says
 * {@code Σ (a_j − α)·x_j ≥ b − α·X}, in which few unknowns are left.
 */
record StepRow(Ratio common, List<Ratio> extra, Ratio least, List<Integer> bestFirst) {

    static StepRow of(LinearProgram.Row row) {
        Ratio common = mostCommon(row.coefficients());
        List<Ratio> extra =
                row.coefficients().stream().map(a -> a.minus(common)).toList();
        List<Integer> bestFirst = IntStream.range(0, extra.size())
                .boxed()
                .sorted(Comparator.comparing(extra::get).reversed())
                .toList();
        return new StepRow(common, extra, row.least(), bestFirst);
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
