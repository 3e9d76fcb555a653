package io.github.formulationmath.number;

import java.io.Serializable;
import java.math.BigInteger;

/** Numerator and denominator of a ratio that does not fit 64 bits, in lowest terms, denominator positive. */
record BigRatio(BigInteger num, BigInteger den) implements Serializable {

    /** The sum a/b + c/d. */
    static Ratio add(BigInteger a, BigInteger b, BigInteger c, BigInteger d) {
        return Ratio.of(a.multiply(d).add(c.multiply(b)), b.multiply(d));
    }
}
