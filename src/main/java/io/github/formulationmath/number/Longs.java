package io.github.formulationmath.number;

import java.math.BigInteger;
import java.math.RoundingMode;

/**
 * The arithmetic of ratios a/b and c/d that fit 64 bits, in lowest terms with positive denominators, and its steps. It stays
 * in 64 bits as long as every product does, and goes on in {@link BigInteger} otherwise. {@link Long#MIN_VALUE} never comes
 * in.
 */
final class Longs {

    /** By how many binary digits. */
    private static final int FAR = 10;

    private Longs() {}

    /** The sum; common factors are taken out before multiplying (D. E. Knuth, TAOCP 2, 4.5.1; from memory). */
    static Ratio add(long a, long b, long c, long d) {
        boolean isAlike = b == d;
        long g = isAlike ? b : gcd(b, d);
        long left = isAlike ? 1 : over(b, g);
        long right = isAlike ? 1 : over(d, g);
        if (isAlike || productFits(a, right) && productFits(c, left)) {
            long x = a * right;
            long y = c * left;
            long sum = x + y;
            if (((x ^ sum) & (y ^ sum)) >= 0 && sum != Long.MIN_VALUE) {
                long common = g == 1 ? 1 : gcd(sum, g);
                long rest = over(d, common);
                if (productFits(left, rest)) {
                    return Ratio.ofLowestTerms(over(sum, common), left * rest);
                }
            }
        }
        return BigRatio.add(BigInteger.valueOf(a), BigInteger.valueOf(b), BigInteger.valueOf(c), BigInteger.valueOf(d));
    }

    /** The product; common factors are taken out before multiplying. */
    static Ratio multiply(long a, long b, long c, long d) {
        long g = gcd(a, d);
        long h = gcd(c, b);
        long top = over(a, g);
        long topToo = over(c, h);
        long bottom = over(b, h);
        long bottomToo = over(d, g);
        if (productFits(top, topToo) && productFits(bottom, bottomToo)) {
            return Ratio.ofLowestTerms(top * topToo, bottom * bottomToo);
        }
        return Ratio.ofBig(
                BigInteger.valueOf(top).multiply(BigInteger.valueOf(topToo)),
                BigInteger.valueOf(bottom).multiply(BigInteger.valueOf(bottomToo)));
    }

    /** The multiple of c/d nearest to a/b under a mode, c above 0. */
    static Ratio toMultipleOf(long a, long b, long c, long d, RoundingMode mode) {
        if (productFits(a, d) && productFits(b, c)) {
            long steps = divide(a * d, b * c, mode);
            if (productFits(steps, c)) {
                return d == 1 ? Ratio.ofLowestTerms(steps * c, 1) : Ratio.of(steps * c, d);
            }
        }
        return multiply(a, b, d, c).toWhole(mode).times(Ratio.ofLowestTerms(c, d));
    }

    /** Greatest common divisor of the absolute values; of 0 and x it is x; at least 1. */
    static long gcd(long a, long b) {
        long x = Math.abs(a);
        long y = Math.abs(b);
        if (x == 1 || y == 1) {
            return 1;
        }
        if (x == 0 || y == 0) {
            return Math.max(x + y, 1);
        }
        // Where one is far longer, one division saves many halvings.
        if (x >>> FAR > y) {
            x %= y;
        } else if (y >>> FAR > x) {
            y %= x;
        }
        if (x == 0 || y == 0) {
            return x + y;
        }
        int shift = Long.numberOfTrailingZeros(x | y);
        x >>= Long.numberOfTrailingZeros(x);
        y >>= Long.numberOfTrailingZeros(y);
        // Both are odd. The twos are counted before the sign goes: the processor does both at once.
        long difference = x - y;
        while (difference != 0) {
            int twos = Long.numberOfTrailingZeros(difference);
            x = Math.min(x, y);
            y = Math.abs(difference) >> twos;
            difference = x - y;
        }
        return x << shift;
    }

    /** a/g; most common divisors are 1, and dividing is the slowest thing a processor does. */
    static long over(long a, long g) {
        return g == 1 ? a : a / g;
    }

    /** Whether the product of two longs is a long other than the smallest one. */
    static boolean productFits(long a, long b) {
        long low = a * b;
        return Math.multiplyHigh(a, b) == low >> (Long.SIZE - 1) && low != Long.MIN_VALUE;
    }

    /** Whether every whole number up to this size is a double. */
    static boolean isExactDouble(long a) {
        return Math.abs(a) <= 1L << 53;
    }

    /** Compares a·b with c·d exactly, through 128 bits. */
    static int compareProducts(long a, long b, long c, long d) {
        int high = Long.compare(Math.multiplyHigh(a, b), Math.multiplyHigh(c, d));
        return high != 0 ? high : Long.compareUnsigned(a * b, c * d);
    }

    /** The quotient n/d, d positive, as a whole number under a rounding mode. */
    static long divide(long n, long d, RoundingMode mode) {
        long floor = Math.floorDiv(n, d);
        long rest = n - floor * d;
        return rest == 0 || !Rounding.roundsUp(Long.compare(rest, d - rest), floor, n < 0, mode) ? floor : floor + 1;
    }
}
