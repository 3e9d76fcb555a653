package io.github.formulationmath.number;

import java.io.Serializable;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;

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
            coefficients = List.copyOf(Objects.requireNonNull(coefficients, "coefficients"));
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
        rows = List.copyOf(Objects.requireNonNull(rows, "rows"));
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
    public Answer solve() {
        Answer answer = new DualSimplex(this).solve();
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

    /**
     * The answer to a linear program, together with the multipliers that prove it.
     *
     * <p>Duality (A. Schrijver, Theory of Linear and Integer Programming, 1986, ch. 7; from memory): if x keeps all rows, and
     * multipliers λ ≥ 0 combine the rows to {@code λA ≤ c} with {@code λb = c·x}, nothing smaller than c·x exists, for every x'
     * that keeps the rows has {@code c·x' ≥ λAx' ≥ λb}. If they combine to {@code λA ≤ 0} with {@code λb > 0}, no x keeps all
     * rows (Farkas).
     */
    public sealed interface Answer extends Serializable {

        /**
         * The multipliers that prove the answer.
         *
         * @return one per row, at least 0
         */
        List<Ratio> multipliers();

        /**
         * The rows that bind: those whose multiplier is not 0.
         *
         * @return their places, from 0
         */
        default List<Integer> binding() {
            return IntStream.range(0, multipliers().size())
                    .filter(k -> !multipliers().get(k).isZero())
                    .boxed()
                    .toList();
        }

        /**
         * Checks the proof; a failure is a mistake of the solver and never of the caller.
         *
         * @param program the program that this is the answer to
         * @throws IllegalStateException if the multipliers prove nothing
         */
        void requireProof(LinearProgram program);

        /**
         * The unknowns at which the cost is smallest.
         *
         * @param values one number per unknown, at least 0
         * @param multipliers one per row, at least 0
         * @param cost the smallest cost
         */
        record Optimal(List<Ratio> values, List<Ratio> multipliers, Ratio cost) implements Answer {

            /**
             * Copies the lists.
             *
             * @param values one number per unknown, at least 0
             * @param multipliers one per row, at least 0
             * @param cost the smallest cost
             */
            public Optimal {
                values = List.copyOf(Objects.requireNonNull(values, "values"));
                multipliers = List.copyOf(Objects.requireNonNull(multipliers, "multipliers"));
                Objects.requireNonNull(cost, "cost");
            }

            @Override
            public void requireProof(LinearProgram program) {
                require(isNonNegative(values), "an unknown is negative");
                for (LinearProgram.Row row : program.rows()) {
                    require(row.isKeptBy(values), "a row is not kept");
                }
                require(LinearProgram.dot(program.costs(), values).equals(cost), "the cost is another");
                require(isNonNegative(multipliers), "a multiplier is negative");
                List<Ratio> combined = program.combined(multipliers);
                for (int j = 0; j < combined.size(); j++) {
                    require(combined.get(j).compareTo(program.costs().get(j)) <= 0, "the multipliers pass a cost");
                }
                require(program.combinedLeast(multipliers).equals(cost), "the multipliers do not reach the cost");
            }
        }

        /**
         * No unknowns keep all rows.
         *
         * @param multipliers one per row, at least 0
         */
        record Infeasible(List<Ratio> multipliers) implements Answer {

            /**
             * Copies the list.
             *
             * @param multipliers one per row, at least 0
             */
            public Infeasible {
                multipliers = List.copyOf(Objects.requireNonNull(multipliers, "multipliers"));
            }

            @Override
            public void requireProof(LinearProgram program) {
                require(isNonNegative(multipliers), "a multiplier is negative");
                for (Ratio coefficient : program.combined(multipliers)) {
                    require(coefficient.signum() <= 0, "the combined row can be kept");
                }
                require(program.combinedLeast(multipliers).signum() > 0, "the combined row asks for nothing");
            }
        }

        private static boolean isNonNegative(List<Ratio> numbers) {
            return numbers.stream().allMatch(number -> number.signum() >= 0);
        }

        private static void require(boolean condition, String otherwise) {
            if (!condition) {
                throw new IllegalStateException("the linear program was solved wrongly: " + otherwise);
            }
        }
    }
}
