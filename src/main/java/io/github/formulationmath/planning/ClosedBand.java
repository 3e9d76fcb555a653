package io.github.formulationmath.planning;

import io.github.formulationmath.number.Ratio;

/**
 * The readings of one line that keep it within tolerance when N divisions are made: from {@code ⌈w(1 − τ)(N + (k − 2)e) +
 * e⌉} to {@code ⌊w(1 + τ)(N − (k − 2)e) − e⌋}, for k lines and a reading error of ±e divisions. Both ends are linear in N.
 *
 * <p>Why: with true amounts n_j + δ_j, |δ_j| ≤ e, the share {@code (n_i + δ_i) / (N + Σδ)} rises with δ_i and falls with
 * every other δ_j. It is largest at δ_i = e and all others −e, {@code (n_i + e) / (N − (k − 2)e)}, and smallest the other
 * way round, {@code (n_i − e) / (N + (k − 2)e)}. The two must not leave {@code [w(1 − τ), w(1 + τ)]}.
 */
record ClosedBand(int line, Ratio low, Ratio lowShift, Ratio up, Ratio upShift) {

    static ClosedBand of(int line, Ratio weight, Ratio tolerance, Ratio error, int lines) {
        Ratio others = error.times(lines - 2L);
        Ratio low = weight.times(Ratio.ONE.minus(tolerance));
        Ratio up = weight.times(Ratio.ONE.plus(tolerance));
        return new ClosedBand(
                line,
                low,
                low.times(others).plus(error),
                up,
                up.times(others).plus(error).unaryMinus());
    }

    boolean fitsLongs() {
        return low.fitsLongs() && lowShift.fitsLongs() && up.fitsLongs() && upShift.fitsLongs();
    }

    boolean isExact() {
        return low.equals(up);
    }

    /** Whether no N at all lets the line pass: it must be exact, and its reading is not. */
    boolean isHopeless() {
        return isExact() && lowShift.compareTo(upShift) > 0;
    }

    Ratio least(Ratio total) {
        return low.times(total).plus(lowShift).ceil();
    }

    Ratio most(Ratio total) {
        return up.times(total).plus(upShift).floor();
    }

    /** The smallest N whose largest reading reaches n. */
    Ratio reaches(Ratio n) {
        return n.minus(upShift).dividedBy(up).ceil();
    }

    /** The largest N whose smallest reading is still no more than n. */
    Ratio stillAllows(Ratio n) {
        return n.minus(lowShift).dividedBy(low).floor();
    }

    /** From which N on the band is at least one division wide, so that it always holds a whole number. */
    Ratio alwaysFrom() {
        return Ratio.ONE.minus(upShift.minus(lowShift)).dividedBy(up.minus(low));
    }
}
