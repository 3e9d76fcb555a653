package io.github.formulationmath.number;

import java.math.BigInteger;
import java.math.RoundingMode;

/**
 * The arithmetic of two ratios a/b and c/d that both fit 64 bits, in lowest terms with positive denominators. It stays in
 * 64 bits as long as every product does, and goes on in {@link BigInteger} otherwise.
 */
final class SmallRatios {

    private SmallRatios() {}

    /** The sum; common factors are taken out before multiplying (D. E. Knuth, TAOCP 2, 4.5.1; from memory). */
    static Ratio add(long a, long b, long c, long d) {
        long g = b == d ? b : Longs.gcd(b, d);
        long left = b / g;
        long right = d / g;
        if (Longs.productFits(a, right) && Longs.productFits(c, left)) {
            long x = a * right;
            long y = c * left;
            long sum = x + y;
            if (((x ^ sum) & (y ^ sum)) >= 0 && sum != Long.MIN_VALUE) {
                long common = g == 1 ? 1 : Longs.gcd(sum, g);
                if (Longs.productFits(left, d / common)) {
                    return Ratio.ofLowestTerms(sum / common, left * (d / common));
                }
            }
        }
        return BigRatio.add(BigInteger.valueOf(a), BigInteger.valueOf(b), BigInteger.valueOf(c), BigInteger.valueOf(d));
    }

    /** The product; common factors are taken out before multiplying. */
    static Ratio multiply(long a, long b, long c, long d) {
        long g = Longs.gcd(a, d);
        long h = Longs.gcd(c, b);
        long top = a / g;
        long topToo = c / h;
        long bottom = b / h;
        long bottomToo = d / g;
        if (Longs.productFits(top, topToo) && Longs.productFits(bottom, bottomToo)) {
            return Ratio.ofLowestTerms(top * topToo, bottom * bottomToo);
        }
        return Ratio.ofBig(
                BigInteger.valueOf(top).multiply(BigInteger.valueOf(topToo)),
                BigInteger.valueOf(bottom).multiply(BigInteger.valueOf(bottomToo)));
    }

    /** The multiple of c/d nearest to a/b under a mode, c above 0. */
    static Ratio toMultipleOf(long a, long b, long c, long d, RoundingMode mode) {
        if (Longs.productFits(a, d) && Longs.productFits(b, c)) {
            long steps = Longs.divide(a * d, b * c, mode);
            if (Longs.productFits(steps, c)) {
                return Ratio.of(steps * c, d);
            }
        }
        return multiply(a, b, d, c).toWhole(mode).times(Ratio.ofLowestTerms(c, d));
    }
}
