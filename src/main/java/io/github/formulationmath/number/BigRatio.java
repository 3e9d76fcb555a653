package io.github.formulationmath.number;

import java.io.Serializable;
import java.math.BigInteger;
import java.math.RoundingMode;

/**
 * Numerator and denominator of a ratio that does not fit 64 bits, in lowest terms, denominator positive.
 *
 * <p>Of operands in lowest terms only parts of their own can cancel, so that a large number beside a small one costs a
 * division by the small one, and not the greatest common divisor of two large ones. Source: Knuth, The Art of Computer
 * Programming, volume 2, section 4.5.1 (from memory).
 */
record BigRatio(BigInteger num, BigInteger den) implements Serializable {

    /** Longer numbers are not looked at as longs; one digit is left for the sign of the smallest long. */
    private static final int SMALL = Long.SIZE - 2;

    /** Half of a long, without a sign. */
    private static final int HALF = Integer.SIZE - 1;

    /** The sum a/b + c/d of fractions in lowest terms: what cancels divides the common part of the denominators. */
    static Ratio add(BigInteger a, BigInteger b, BigInteger c, BigInteger d) {
        BigInteger common = commonDivisor(b, d);
        BigInteger left = over(b, common);
        BigInteger right = over(d, common);
        BigInteger sum = times(a, right).add(times(c, left));
        BigInteger cancels = commonDivisor(sum, common);
        return Ratio.ofBig(over(sum, cancels), times(left, over(d, cancels)));
    }

    /** The product a/b · c/d of fractions in lowest terms: only a with d and c with b can cancel. */
    static Ratio multiply(BigInteger a, BigInteger b, BigInteger c, BigInteger d) {
        BigInteger first = commonDivisor(a, d);
        BigInteger second = commonDivisor(c, b);
        return Ratio.ofBig(times(over(a, first), over(c, second)), times(over(b, second), over(d, first)));
    }

    /** Greatest common divisor, the second number above 0. Of a large number and a small one a single division leaves two small ones. */
    private static BigInteger commonDivisor(BigInteger a, BigInteger b) {
        if (isOne(a) || isOne(b)) {
            return BigInteger.ONE;
        }
        boolean isSmall = a.bitLength() <= SMALL;
        if (isSmall && b.bitLength() <= SMALL) {
            return BigInteger.valueOf(Longs.gcd(a.longValue(), b.longValue()));
        }
        if (isSmall && a.signum() != 0) {
            return BigInteger.valueOf(Longs.gcd(rest(b, a), a.longValue()));
        }
        if (b.bitLength() <= SMALL) {
            return BigInteger.valueOf(Longs.gcd(rest(a, b), b.longValue()));
        }
        BigInteger size = a.abs();
        boolean isTwoWords = Math.max(size.bitLength(), b.bitLength()) <= TwoWords.MOST_BITS && size.signum() != 0;
        return isTwoWords ? TwoWords.gcd(size, b) : size.gcd(b);
    }

    /** The rest of a large number after division by a small one that is not 0, of whatever sign. */
    private static long rest(BigInteger large, BigInteger small) {
        long divisor = Math.abs(small.longValue());
        if (divisor >>> HALF != 0 || large.bitLength() > TwoWords.MOST_BITS) {
            return large.remainder(small).longValue();
        }
        // Half a word at a time: what is left stays below 31 bits, so that every dividend is a positive long.
        BigInteger size = large.abs();
        long low = size.longValue();
        long left = size.shiftRight(Long.SIZE).longValue() % divisor;
        left = (left << Integer.SIZE | low >>> Integer.SIZE) % divisor;
        return (left << Integer.SIZE | low & 0xFFFFFFFFL) % divisor;
    }

    private static boolean isOne(BigInteger a) {
        return a.equals(BigInteger.ONE);
    }

    /** a/g; most common divisors are 1. */
    private static BigInteger over(BigInteger a, BigInteger g) {
        return isOne(g) ? a : a.divide(g);
    }

    static BigInteger times(BigInteger a, BigInteger b) {
        if (isOne(a)) {
            return b;
        }
        return isOne(b) ? a : a.multiply(b);
    }

    /** The quotient as a whole number under a rounding mode. */
    BigInteger toWhole(RoundingMode mode) {
        if (mode == RoundingMode.UNNECESSARY && !isOne(den)) {
            throw new ArithmeticException(
                    "rounding is necessary: " + Excerpt.of(num + "/" + den) + " lies between two whole numbers");
        }
        return divide(num, den, mode);
    }

    /** The quotient n/d, d positive, as a whole number under a rounding mode. */
    static BigInteger divide(BigInteger n, BigInteger d, RoundingMode mode) {
        BigInteger[] parts = n.divideAndRemainder(d);
        BigInteger floor = parts[0];
        BigInteger rest = parts[1];
        if (rest.signum() == 0) {
            return floor;
        }
        if (rest.signum() < 0) {
            floor = floor.subtract(BigInteger.ONE);
            rest = rest.add(d);
        }
        int half = rest.shiftLeft(1).compareTo(d);
        return Rounding.roundsUp(half, floor.longValue(), n.signum() < 0, mode) ? floor.add(BigInteger.ONE) : floor;
    }
}
