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
        long left = Longs.over(b, g);
        long right = Longs.over(d, g);
        if (Longs.productFits(a, right) && Longs.productFits(c, left)) {
            long x = a * right;
            long y = c * left;
            long sum = x + y;
            if (((x ^ sum) & (y ^ sum)) >= 0 && sum != Long.MIN_VALUE) {
                long common = g == 1 ? 1 : Longs.gcd(sum, g);
                long rest = Longs.over(d, common);
                if (Longs.productFits(left, rest)) {
                    return Ratio.ofLowestTerms(Longs.over(sum, common), left * rest);
                }
            }
        }
        return BigRatio.add(BigInteger.valueOf(a), BigInteger.valueOf(b), BigInteger.valueOf(c), BigInteger.valueOf(d));
    }

    /** The product; common factors are taken out before multiplying. */
    static Ratio multiply(long a, long b, long c, long d) {
        long g = Longs.gcd(a, d);
        long h = Longs.gcd(c, b);
        long top = Longs.over(a, g);
        long topToo = Longs.over(c, h);
        long bottom = Longs.over(b, h);
        long bottomToo = Longs.over(d, g);
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
                return d == 1 ? Ratio.ofLowestTerms(steps * c, 1) : Ratio.of(steps * c, d);
            }
        }
        return multiply(a, b, d, c).toWhole(mode).times(Ratio.ofLowestTerms(c, d));
    }
}
