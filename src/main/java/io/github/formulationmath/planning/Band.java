package io.github.formulationmath.planning;

import io.github.formulationmath.number.Ratio;
import java.math.BigInteger;

/**
 * The band of one line: at size u a whole number n passes if {@code (1 − τ)·w·u ≤ n ≤ (1 + τ)·w·u}.
 *
 * <p>The two slopes over one denominator, {@code (1 − τ)·w = low/den} and {@code (1 + τ)·w = up/den}, in 64 bits too
 * where they fit.
 */
final class Band {

    final int line;
    final Ratio tolerance;
    final Ratio lowSlope;
    final Ratio upSlope;
    final BigInteger bigLow;
    final BigInteger bigUp;
    final BigInteger bigDen;
    final boolean fitsLongs;
    final long low;
    final long up;
    final long den;

    Band(int line, Ratio weight, Ratio tolerance) {
        this.line = line;
        this.tolerance = tolerance;
        this.lowSlope = weight.times(Ratio.ONE.minus(tolerance));
        this.upSlope = weight.times(Ratio.ONE.plus(tolerance));
        BigInteger a = lowSlope.denominator();
        BigInteger b = upSlope.denominator();
        this.bigDen = a.equals(b) ? a : a.divide(a.gcd(b)).multiply(b);
        this.bigLow = lowSlope.numerator().multiply(bigDen.divide(a));
        this.bigUp = upSlope.numerator().multiply(bigDen.divide(b));
        // up is the larger of the two numerators.
        this.fitsLongs = bigDen.bitLength() < Long.SIZE && bigUp.bitLength() < Long.SIZE;
        this.low = bigLow.longValue();
        this.up = bigUp.longValue();
        this.den = bigDen.longValue();
    }

    /** From which size on every size passes: its windows n and n + 1 touch from n ≥ (1 − τ)/(2τ) on. */
    Ratio rayStart() {
        Ratio n = Ratio.ONE.minus(tolerance).dividedBy(tolerance.times(2)).ceil();
        return n.max(Ratio.ONE).dividedBy(upSlope);
    }

    /** The largest whole number that is not above the band. */
    Ratio most(Ratio size) {
        return upSlope.times(size).floor();
    }

    /** The smallest whole number that is not below the band. */
    Ratio least(Ratio size) {
        return lowSlope.times(size).ceil();
    }
}
