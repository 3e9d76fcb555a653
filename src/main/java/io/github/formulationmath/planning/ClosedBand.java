package io.github.formulationmath.planning;

import io.github.formulationmath.number.Ratio;
import java.math.BigInteger;

/**
 * The readings of one line that keep it within tolerance when N divisions are made: from {@code ⌈w(1 − τ)(N + (k − 2)e) +
 * e⌉} to {@code ⌊w(1 + τ)(N − (k − 2)e) − e⌋}, for k lines and a reading error of ±e divisions.
 *
 * <p>Why: with true amounts n_j + δ_j, |δ_j| ≤ e, the share {@code (n_i + δ_i) / (N + Σδ)} rises with δ_i and falls with
 * every other δ_j. It is largest at δ_i = e and all others −e, {@code (n_i + e) / (N − (k − 2)e)}, and smallest the other
 * way round, {@code (n_i − e) / (N + (k − 2)e)}. The two must not leave {@code [w(1 − τ), w(1 + τ)]}.
 *
 * <p>Both ends are linear in N: {@code (low·N + lowAdd) / den} and {@code (up·N + upAdd) / den}, in whole numbers, in 64
 * bits where they fit.
 */
final class ClosedBand {

    final int line;
    final boolean fitsLongs;
    final Ratio lowSlope;
    final Ratio lowShift;
    final Ratio upSlope;
    final Ratio upShift;

    private final BigInteger bigLow;
    private final BigInteger bigLowAdd;
    private final BigInteger bigUp;
    private final BigInteger bigUpAdd;
    private final BigInteger bigDen;
    private final long low;
    private final long lowAdd;
    private final long up;
    private final long upAdd;
    private final long den;

    ClosedBand(int line, Ratio weight, Ratio tolerance, Ratio error, int lines) {
        Ratio others = error.times(lines - 2L);
        this.line = line;
        this.lowSlope = weight.times(Ratio.ONE.minus(tolerance));
        this.upSlope = weight.times(Ratio.ONE.plus(tolerance));
        this.lowShift = lowSlope.times(others).plus(error);
        this.upShift = upSlope.times(others).plus(error).unaryMinus();
        this.bigDen = lcm(
                lcm(lowSlope.denominator(), upSlope.denominator()), lcm(lowShift.denominator(), upShift.denominator()));
        Ratio scale = Ratio.of(bigDen);
        this.bigLow = lowSlope.times(scale).numerator();
        this.bigLowAdd = lowShift.times(scale).numerator();
        this.bigUp = upSlope.times(scale).numerator();
        this.bigUpAdd = upShift.times(scale).numerator();
        this.fitsLongs = bigDen.bitLength() < Long.SIZE
                && bigUp.bitLength() < Long.SIZE
                && bigLowAdd.bitLength() < Long.SIZE
                && bigUpAdd.bitLength() < Long.SIZE;
        this.low = bigLow.longValue();
        this.lowAdd = bigLowAdd.longValue();
        this.up = bigUp.longValue();
        this.upAdd = bigUpAdd.longValue();
        this.den = bigDen.longValue();
    }

    private static BigInteger lcm(BigInteger a, BigInteger b) {
        return a.equals(b) ? a : a.divide(a.gcd(b)).multiply(b);
    }

    /** Whether no N at all lets the line pass: it must be exact, and its reading is not. */
    boolean isHopeless() {
        return lowSlope.equals(upSlope) && lowShift.compareTo(upShift) > 0;
    }

    long least(long total) {
        return ceil(Math.addExact(Math.multiplyExact(low, total), lowAdd), den);
    }

    long most(long total) {
        return Math.floorDiv(Math.addExact(Math.multiplyExact(up, total), upAdd), den);
    }

    /** The smallest N whose largest reading reaches n. */
    long reaches(long n) {
        return ceil(Math.subtractExact(Math.multiplyExact(n, den), upAdd), up);
    }

    /** The largest N whose smallest reading is still no more than n. */
    long stillAllows(long n) {
        return Math.floorDiv(Math.subtractExact(Math.multiplyExact(n, den), lowAdd), low);
    }

    BigInteger least(BigInteger total) {
        return ceil(bigLow.multiply(total).add(bigLowAdd), bigDen);
    }

    BigInteger most(BigInteger total) {
        return floor(bigUp.multiply(total).add(bigUpAdd), bigDen);
    }

    BigInteger reaches(BigInteger n) {
        return ceil(n.multiply(bigDen).subtract(bigUpAdd), bigUp);
    }

    BigInteger stillAllows(BigInteger n) {
        return floor(n.multiply(bigDen).subtract(bigLowAdd), bigLow);
    }

    /** From which N on the band is at least one division wide, so that it always holds a whole number. */
    Ratio alwaysFrom() {
        return Ratio.ONE.minus(upShift.minus(lowShift)).dividedBy(upSlope.minus(lowSlope));
    }

    private static long ceil(long a, long positive) {
        return -Math.floorDiv(Math.negateExact(a), positive);
    }

    private static BigInteger ceil(BigInteger a, BigInteger positive) {
        return floor(a.negate(), positive).negate();
    }

    private static BigInteger floor(BigInteger a, BigInteger positive) {
        BigInteger[] parts = a.divideAndRemainder(positive);
        return parts[1].signum() < 0 ? parts[0].subtract(BigInteger.ONE) : parts[0];
    }
}
