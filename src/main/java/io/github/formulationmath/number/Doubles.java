package io.github.formulationmath.number;

import java.math.BigDecimal;
import java.math.BigInteger;

/** From exact numbers to the nearest {@code double}. */
final class Doubles {

    private static final int BITS = 62;

    private Doubles() {}

    /** The double nearest to n/d, ties to even, d above 0. */
    static double nearest(BigInteger n, BigInteger d) {
        if (n.signum() == 0) {
            return 0;
        }
        // 61 or 62 significant bits and a sticky last bit are more than a double keeps, so one final rounding is right.
        int shift = BITS - 1 - (n.bitLength() - d.bitLength());
        BigInteger top = shift > 0 ? n.abs().shiftLeft(shift) : n.abs();
        BigInteger bottom = shift < 0 ? d.shiftLeft(-shift) : d;
        BigInteger[] parts = top.divideAndRemainder(bottom);
        long sticky = parts[0].longValueExact() | (parts[1].signum() == 0 ? 0 : 1);
        double magnitude = scaled(sticky, shift);
        return n.signum() < 0 ? -magnitude : magnitude;
    }

    /** value / 2^shift, rounded once. */
    private static double scaled(long value, int shift) {
        if (shift <= Double.MAX_EXPONENT) {
            // At least 2^(60 - 1023): far above the subnormal numbers, so scaling is exact or overflows to infinity.
            return Math.scalb((double) value, -Math.max(shift, -2 * Double.MAX_EXPONENT));
        }
        if (shift > 1200) {
            return 0;
        }
        // Near the subnormal numbers the decimal text is exact, and reading it rounds once.
        return Double.parseDouble(new BigDecimal(value)
                .divide(new BigDecimal(BigInteger.ONE.shiftLeft(shift)))
                .toString());
    }
}
