package io.github.formulationmath.number;

import java.math.RoundingMode;

/** The 64-bit steps of exact arithmetic; {@link Long#MIN_VALUE} never comes in. */
final class Longs {

    private Longs() {}

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
        int shift = Long.numberOfTrailingZeros(x | y);
        x >>= Long.numberOfTrailingZeros(x);
        while (y != 0) {
            y >>= Long.numberOfTrailingZeros(y);
            long smaller = Math.min(x, y);
            y = Math.abs(x - y);
            x = smaller;
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
        return rest == 0 || !WholeNumbers.roundsUp(Long.compare(rest, d - rest), floor, n < 0, mode)
                ? floor
                : floor + 1;
    }
}
