package io.github.formulationmath.number;

import java.io.Serializable;
import java.math.BigDecimal;
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

    /** The sum a/b + c/d of fractions in lowest terms: what cancels divides the common part of the denominators. */
    static Ratio add(BigInteger a, BigInteger b, BigInteger c, BigInteger d) {
        BigInteger common = b.gcd(d);
        BigInteger rest = b.divide(common);
        BigInteger sum = a.multiply(d.divide(common)).add(c.multiply(rest));
        BigInteger cancels = sum.gcd(common);
        return Ratio.ofBig(sum.divide(cancels), rest.multiply(d.divide(cancels)));
    }

    /** The product a/b · c/d of fractions in lowest terms: only a with d and c with b can cancel. */
    static Ratio multiply(BigInteger a, BigInteger b, BigInteger c, BigInteger d) {
        BigInteger first = a.gcd(d);
        BigInteger second = c.gcd(b);
        return Ratio.ofBig(
                a.divide(first).multiply(c.divide(second)), b.divide(second).multiply(d.divide(first)));
    }

    /** The quotient as a whole number under a rounding mode. */
    BigInteger toWhole(RoundingMode mode) {
        if (mode == RoundingMode.UNNECESSARY && !den.equals(BigInteger.ONE)) {
            throw new ArithmeticException(
                    "rounding is necessary: " + Excerpt.of(num + "/" + den) + " lies between two whole numbers");
        }
        return new BigDecimal(num).divide(new BigDecimal(den), 0, mode).toBigIntegerExact();
    }
}
