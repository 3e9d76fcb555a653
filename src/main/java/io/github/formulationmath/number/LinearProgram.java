package io.github.formulationmath.number;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/**
 * Smallest {@code c · x} over {@code x ≥ 0} with {@code a_k · x ≥ b_k} for every row, where all costs c are at least 0.
 * Solved in exact arithmetic, whatever the scale of the coefficients.
 *
 * <p>Example: smallest 2x + 3y with x + y ≥ 4 and x + 3y ≥ 6 is 9, at (3, 1).
 *
 * <p>Immutable and thread-safe.
 *
 * @param costs one number per unknown, each at least 0
 * @param rows the conditions
 */
public record LinearProgram(List<Ratio> costs, List<Row> rows) {

    /**
     * One condition {@code a · x ≥ b}.
     *
     * @param coefficients a, one number per unknown
     * @param least b
     */
    public record Row(List<Ratio> coefficients, Ratio least) {

        /**
         * Copies the coefficients.
         *
         * @param coefficients a, one number per unknown
         * @param least b
         */
        public Row {
            coefficients = List.copyOf(coefficients);
            Objects.requireNonNull(least, "least");
        }

        /**
         * Whether these unknowns keep the condition.
         *
         * @param x one number per unknown
         * @return true if {@code a · x ≥ b}
         */
        public boolean isKeptBy(List<Ratio> x) {
            return dot(coefficients, x).compareTo(least) >= 0;
        }
    }

    /**
     * Checks that costs are at least 0 and rows have one coefficient per unknown.
     *
     * @param costs one number per unknown, each at least 0
     * @param rows the conditions
     * @throws IllegalArgumentException if a cost is below 0 or a row has another length
     */
    public LinearProgram {
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

    /**
     * The answer. Its proof is checked before it is given.
     *
     * @return the unknowns at which the cost is smallest, or that no unknowns keep all rows
     */
    public LinearAnswer solve() {
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
