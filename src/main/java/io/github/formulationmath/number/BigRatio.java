package io.github.formulationmath.number;

import java.io.Serializable;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;

/** Numerator and denominator of a ratio that does not fit 64 bits, in lowest terms, denominator positive. */
record BigRatio(BigInteger num, BigInteger den) implements Serializable {

    /** The sum a/b + c/d. */
    static Ratio add(BigInteger a, BigInteger b, BigInteger c, BigInteger d) {
        return Ratio.of(a.multiply(d).add(c.multiply(b)), b.multiply(d));
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
