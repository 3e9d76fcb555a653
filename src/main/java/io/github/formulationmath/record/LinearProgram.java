package io.github.formulationmath.record;

import io.github.formulationmath.number.Ratio;
import java.io.Serializable;
import java.util.Arrays;
import java.util.List;

/**
 * Smallest {@code c · x} over {@code x ≥ 0} with {@code a_k · x ≥ b_k} for every row, where all costs c are at least 0.
 * Solved in exact arithmetic, whatever the scale of the coefficients.
 */
record LinearProgram(List<Ratio> costs, List<Row> rows) implements Serializable {

    /** One condition {@code a · x ≥ b}. */
    record Row(List<Ratio> coefficients, Ratio least) implements Serializable {

        Row {
            coefficients = List.copyOf(coefficients);
        }

        Ratio at(List<Ratio> x) {
            return dot(coefficients, x);
        }
    }

    LinearProgram {
        costs = List.copyOf(costs);
        rows = List.copyOf(rows);
        for (Ratio cost : costs) {
            if (cost.signum() < 0) {
                throw new IllegalArgumentException("a cost is " + cost + ": it must be at least 0");
            }
        }
        for (Row row : rows) {
            if (row.coefficients().size() != costs.size()) {
                throw new IllegalArgumentException("a row has "
                        + row.coefficients().size() + " coefficients, there are " + costs.size() + " unknowns");
            }
        }
    }

    /** The answer, proved: see {@link LinearAnswer#requireProof}. */
    LinearAnswer solve() {
        LinearAnswer answer = new DualSimplex(this).solve();
        answer.requireProof(this);
        return answer;
    }

    /** What the rows come to when each is multiplied by its multiplier and all are added: one number per unknown. */
    List<Ratio> combined(List<Ratio> multipliers) {
        Ratio[] sums = new Ratio[costs.size()];
        Arrays.fill(sums, Ratio.ZERO);
        for (int k = 0; k < rows.size(); k++) {
            if (!multipliers.get(k).isZero()) {
                add(sums, rows.get(k).coefficients(), multipliers.get(k));
            }
        }
        return List.of(sums);
    }

    private static void add(Ratio[] sums, List<Ratio> coefficients, Ratio factor) {
        for (int j = 0; j < sums.length; j++) {
            sums[j] = sums[j].plus(coefficients.get(j).times(factor));
        }
    }

    Ratio combinedLeast(List<Ratio> multipliers) {
        return dot(multipliers, rows.stream().map(Row::least).toList());
    }

    static Ratio dot(List<Ratio> a, List<Ratio> b) {
        Ratio sum = Ratio.ZERO;
        for (int i = 0; i < a.size(); i++) {
            if (!a.get(i).isZero() && !b.get(i).isZero()) {
                sum = sum.plus(a.get(i).times(b.get(i)));
            }
        }
        return sum;
    }
}
