package io.github.formulationmath.plan;

import io.github.formulationmath.number.Ratio;

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
record LineDeviation(Ratio target, Ratio weight, Ratio tolerance, Ratio error, Ratio lower, Ratio upper) {

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
    static LineDeviation of(Ratio weight, Ratio total, Ratio tolerance, Ratio error, int lines) {
        Ratio others = error.times(lines - 2L);
        Ratio lower = total.minus(others);
        Ratio upper = total.plus(others);
        boolean counts = lower.signum() > 0 && upper.signum() > 0;
        return new LineDeviation(
                weight.times(total),
                weight,
                tolerance,
                counts ? error : Ratio.ZERO,
                counts ? lower : total,
                counts ? upper : total);
    }

    /** The deviation at a reading. */
    Size of(Ratio reading) {
        if (target.isZero()) {
            return new Size(false, Ratio.ZERO);
        }
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
