package io.github.formulationmath.number;

import java.math.BigInteger;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Smallest {@code Σ x_j} over multiples {@code x_j = n_j · d_j ≥ 0} of given steps that keep the rows of a linear program.
 *
 * <p>The totals are tried upwards, from the smallest total that the linear program allows to the largest. Once the total is
 * fixed, a row in which all unknowns but one stand with the same coefficient is a bound of that one; what is left is a
 * search between bounds ({@link StepSearch}), which leaves out only what no choice of the rest can mend. So the first total
 * with an answer is the smallest one, and no answer means that there is none, unless the search was broken off.
 *
 * <p>Example: smallest x + y with 3x + 2y ≥ 7 in steps of 1 is 3, at (1, 2) or (2, 1); the linear program alone says 7/3.
 *
 * <p>Immutable and thread-safe.
 *
 * @param rows the conditions
 * @param steps one step per unknown, each above 0
 */
public record StepProgram(List<LinearProgram.Row> rows, List<Ratio> steps) {

    /** Totals tried before the search is broken off; the same on every machine. */
    private static final int TOTALS = 10_000;

    /** Choices tried before the search is broken off, over all totals; the same on every machine. */
    private static final int CHOICES = 1_000_000;

    /**
     * The answer.
     *
     * @param values the unknowns, if any were found
     * @param isCertain whether values are the smallest there are, and none means that there are none
     */
    public record Answer(Optional<List<Ratio>> values, boolean isCertain) {

        /**
         * Nothing may be missing.
         *
         * @param values the unknowns, if any were found
         * @param isCertain whether values are the smallest there are, and none means that there are none
         */
        public Answer {
            Objects.requireNonNull(values, "values");
        }
    }

    /**
     * Checks the steps.
     *
     * @param rows the conditions
     * @param steps one step per unknown, each above 0
     * @throws IllegalArgumentException if a step is not above 0
     */
    public StepProgram {
        rows = List.copyOf(Objects.requireNonNull(rows, "rows"));
        steps = List.copyOf(Objects.requireNonNull(steps, "steps"));
        for (Ratio step : steps) {
            if (step.signum() <= 0) {
                throw new IllegalArgumentException("a step is " + step + ": it must be above 0");
            }
        }
    }

    /**
     * The smallest multiples of the steps that keep all rows.
     *
     * @param upTo no total above this is tried
     * @return the answer
     */
    public Answer solve(Ratio upTo) {
        Objects.requireNonNull(upTo, "upTo");
        LinearProgram.Answer least = new LinearProgram(Collections.nCopies(steps.size(), Ratio.ONE), rows).solve();
        if (!(least instanceof LinearProgram.Answer.Optimal optimal)) {
            return new Answer(Optional.empty(), true);
        }
        return search(optimal.cost(), largest(optimal.cost(), upTo));
    }

    private Answer search(Ratio from, Ratio to) {
        Ratio grid = grid();
        StepSearch search = new StepSearch(this, CHOICES);
        Ratio total = grid.times(from.dividedBy(grid).ceil());
        for (int tried = 0; total.compareTo(to) <= 0; tried++) {
            if (tried == TOTALS || search.isExhausted()) {
                return new Answer(Optional.empty(), false);
            }
            Optional<List<Ratio>> found = search.withTotal(total);
            if (found.isPresent()) {
                return new Answer(found, !search.leftOpen());
            }
            total = total.plus(grid);
        }
        return new Answer(Optional.empty(), !search.leftOpen());
    }

    /** The largest total that the rows allow: what is least missing of a total that is large enough. */
    private Ratio largest(Ratio least, Ratio upTo) {
        int count = steps.size();
        if (upTo.compareTo(least) < 0) {
            return upTo;
        }
        List<Ratio> costs = with(Collections.nCopies(count, Ratio.ZERO), Ratio.ONE);
        List<LinearProgram.Row> all = rows.stream()
                .map(row -> new LinearProgram.Row(with(row.coefficients(), Ratio.ZERO), row.least()))
                .toList();
        all = with(all, new LinearProgram.Row(Collections.nCopies(count + 1, Ratio.ONE), upTo));
        LinearProgram.Answer.Optimal missing = (LinearProgram.Answer.Optimal) new LinearProgram(costs, all).solve();
        return upTo.minus(missing.cost());
    }

    private static <T> List<T> with(List<T> list, T last) {
        return Stream.concat(list.stream(), Stream.of(last)).toList();
    }

    /** What every total of multiples is a multiple of. */
    private Ratio grid() {
        return steps.stream().reduce(StepProgram::grid).orElseThrow();
    }

    /** The greatest common divisor of two steps. */
    static Ratio grid(Ratio one, Ratio other) {
        BigInteger a = one.numerator().multiply(other.denominator());
        BigInteger b = other.numerator().multiply(one.denominator());
        return Ratio.of(a.gcd(b), one.denominator().multiply(other.denominator()));
    }
}
