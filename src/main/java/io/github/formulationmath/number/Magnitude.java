package io.github.formulationmath.number;

import java.math.BigDecimal;
import java.math.BigInteger;

/** The power of ten at which a number's first significant digit stands. */
final class Magnitude {

    private Magnitude() {}

    /** The largest e with 10^e ≤ |value|, value not 0. */
    static int of(Ratio value) {
        BigInteger n = value.numerator().abs();
        BigInteger d = value.denominator();
        int e = digits(n) - digits(d);
        return isAtLeast(n, d, e) ? e : e - 1;
    }

    /** A decimal counts its digits without writing them. */
    private static int digits(BigInteger whole) {
        return new BigDecimal(whole).precision();
    }

    private static boolean isAtLeast(BigInteger n, BigInteger d, int e) {
        return e >= 0
                ? n.compareTo(d.multiply(BigInteger.TEN.pow(e))) >= 0
                : n.multiply(BigInteger.TEN.pow(-e)).compareTo(d) >= 0;
    }
}
