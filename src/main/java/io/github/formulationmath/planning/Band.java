package io.github.formulationmath.planning;

import io.github.formulationmath.number.Ratio;

/**
 * The band of one line: at size u a whole number n passes if {@code low·u ≤ n ≤ up·u}, with {@code low = (1 − τ)·w} and
 * {@code up = (1 + τ)·w}.
 */
record Band(int line, Ratio weight, Ratio tolerance, Ratio low, Ratio up) {

    static Band of(int line, Ratio weight, Ratio tolerance) {
        return new Band(
                line,
                weight,
                tolerance,
                weight.times(Ratio.ONE.minus(tolerance)),
                weight.times(Ratio.ONE.plus(tolerance)));
    }

    /** From which size on every size passes: its windows n and n + 1 touch from n ≥ (1 − τ)/(2τ) on. */
    Ratio rayStart() {
        Ratio n = Ratio.ONE.minus(tolerance).dividedBy(tolerance.times(2)).ceil();
        return n.max(Ratio.ONE).dividedBy(up);
    }

    /** Where the windows around a passing size start: its own window, or the ray if the size lies on it. */
    Ratio startAround(Ratio passing) {
        boolean onRay = !tolerance.isZero() && passing.compareTo(rayStart()) >= 0;
        return onRay ? rayStart() : reached(passing);
    }

    /** The first size at which the band reaches the smallest whole number that is not below it; no more if it passes. */
    Ratio reached(Ratio size) {
        return low.times(size).ceil().dividedBy(up);
    }

    /** The largest whole number that is not above the band. */
    Ratio most(Ratio size) {
        return up.times(size).floor();
    }

    /** The last size at which the largest whole number that is not above the band is still in it; no less if it passes. */
    Ratio left(Ratio size) {
        return most(size).dividedBy(low);
    }
}
