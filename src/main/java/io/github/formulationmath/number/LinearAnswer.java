package io.github.formulationmath.number;

import java.io.Serializable;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The answer to a linear program, together with the multipliers that prove it.
 *
 * <p>Duality (A. Schrijver, Theory of Linear and Integer Programming, 1986, ch. 7; from memory): if x keeps all rows, and
 * multipliers λ ≥ 0 combine the rows to {@code λA ≤ c} with {@code λb = c·x}, nothing smaller than c·x exists, for every x'
 * that keeps the rows has {@code c·x' ≥ λAx' ≥ λb}. If they combine to {@code λA ≤ 0} with {@code λb > 0}, no x keeps all
 * rows (Farkas).
 */
public sealed interface LinearAnswer extends Serializable {

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
    record Optimal(List<Ratio> values, List<Ratio> multipliers, Ratio cost) implements LinearAnswer {

        /**
         * Copies the lists.
         *
         * @param values one number per unknown, at least 0
         * @param multipliers one per row, at least 0
         * @param cost the smallest cost
         */
        public Optimal {
            values = List.copyOf(values);
            multipliers = List.copyOf(multipliers);
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
    record Infeasible(List<Ratio> multipliers) implements LinearAnswer {

        /**
         * Copies the list.
         *
         * @param multipliers one per row, at least 0
         */
        public Infeasible {
            multipliers = List.copyOf(multipliers);
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
