package io.github.formulationmath.planning;

import io.github.formulationmath.number.Ratio;
import java.math.BigInteger;
import java.util.Comparator;

/**
 * The band of one line: at size u a whole number n passes if {@code (1 − τ)·w·u ≤ n ≤ (1 + τ)·w·u}.
 *
 * <p>The two slopes stand over one denominator, {@code (1 − τ)·w = low/den} and {@code (1 + τ)·w = up/den}, in 64 bits
 * where they fit.
 */
final class Band {

    /** By the upper slope: the line with the widest windows first. */
    static final Comparator<Band> BY_SLOPE = Band::compareSlopes;

    final int line;
    final Ratio weight;
    final Ratio tolerance;
    final boolean fitsLongs;
    final long low;
    final long up;
    final long den;

    private Band(int line, Ratio weight, Ratio tolerance, boolean fitsLongs, long low, long up, long den) {
        this.line = line;
        this.weight = weight;
        this.tolerance = tolerance;
        this.fitsLongs = fitsLongs;
        this.low = low;
        this.up = up;
        this.den = den;
    }

    /** With w = a/b and τ = p/q the slopes are a·(q ∓ p) over b·q. */
    static Band of(int line, Ratio weight, Ratio tolerance) {
        if (!weight.fitsLongs() || !tolerance.fitsLongs()) {
            return new Band(line, weight, tolerance, false, 0, 0, 0);
        }
        long a = weight.numerator().longValue();
        long b = weight.denominator().longValue();
        long p = tolerance.numerator().longValue();
        long q = tolerance.denominator().longValue();
        try {
            long low = Math.multiplyExact(a, q - p);
            long up = Math.multiplyExact(a, Math.addExact(q, p));
            return new Band(line, weight, tolerance, true, low, up, Math.multiplyExact(b, q));
        } catch (ArithmeticException e) {
            return new Band(line, weight, tolerance, false, 0, 0, 0);
        }
    }

    Ratio lowSlope() {
        return weight.times(Ratio.ONE.minus(tolerance));
    }

    Ratio upSlope() {
        return weight.times(Ratio.ONE.plus(tolerance));
    }

    BigInteger bigLow() {
        return weight.numerator().multiply(tolerance.denominator().subtract(tolerance.numerator()));
    }

    BigInteger bigUp() {
        return weight.numerator().multiply(tolerance.denominator().add(tolerance.numerator()));
    }

    BigInteger bigDen() {
        return weight.denominator().multiply(tolerance.denominator());
    }

    /** From which size on every size passes: its windows n and n + 1 touch from n ≥ (1 − τ)/(2τ) on. */
    Ratio rayStart() {
        Ratio n = Ratio.ONE.minus(tolerance).dividedBy(tolerance.times(2)).ceil();
        return n.max(Ratio.ONE).dividedBy(upSlope());
    }

    /** Where the windows around a passing size start: its own window, or the ray if the size lies on it. */
    Ratio startAround(Ratio passing) {
        boolean onRay = !tolerance.isZero() && passing.compareTo(rayStart()) >= 0;
        return onRay ? rayStart() : least(passing).dividedBy(upSlope());
    }

    /** The largest whole number that is not above the band. */
    Ratio most(Ratio size) {
        return upSlope().times(size).floor();
    }

    /** The smallest whole number that is not below the band. */
    Ratio least(Ratio size) {
        return lowSlope().times(size).ceil();
    }

    private static int compareSlopes(Band one, Band other) {
        if (!one.fitsLongs || !other.fitsLongs) {
            return one.upSlope().compareTo(other.upSlope());
        }
        int high = Long.compare(Math.multiplyHigh(one.up, other.den), Math.multiplyHigh(other.up, one.den));
        return high != 0 ? high : Long.compareUnsigned(one.up * other.den, other.up * one.den);
    }
}
