package io.github.formulationmath.number;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.function.Predicate;

/** From exact numbers to the nearest {@code double}, and back from the decimal that a {@code double} is written as. */
final class Doubles {

    private static final int BITS = 62;

    /** As the JDK does, two digits are used where one would do, so that the nearer decimal is found. */
    private static final int FEWEST_DIGITS = 2;

    private Doubles() {}

    /** The double nearest to n/d, ties to even, d above 0. */
    static double nearest(BigInteger n, BigInteger d) {
        if (n.signum() == 0) {
            return 0;
        }
        // 61 or 62 significant bits and a sticky last bit are more than a double keeps, so one final rounding is right.
        int shift = BITS - 1 - (n.bitLength() - d.bitLength());
        BigInteger top = n.abs().shiftLeft(Math.max(shift, 0));
        BigInteger bottom = d.shiftLeft(Math.max(-shift, 0));
        BigInteger[] parts = top.divideAndRemainder(bottom);
        long sticky = parts[0].longValueExact() | (parts[1].signum() == 0 ? 0 : 1);
        return n.signum() * scaled(sticky, shift);
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

    /**
     * The shortest decimal that identifies a number; of several, the one nearest to it, and of two as near the
     * one with an even last digit. This is what {@link
     * Double#toString(double)} specifies since Java 19. Before, the JDK sometimes wrote a digit too many, which would make
     * results depend on its release.
     */
    static BigDecimal shortest(double value) {
        return shortest(new BigDecimal(value), text -> Double.parseDouble(text) == value);
    }

    /** The same for a {@code float}, which fewer digits identify. */
    static BigDecimal shortest(float value) {
        return shortest(new BigDecimal(value), text -> Float.parseFloat(text) == value);
    }

    private static BigDecimal shortest(BigDecimal exact, Predicate<String> identifies) {
        for (int digits = FEWEST_DIGITS; digits < exact.precision(); digits++) {
            BigDecimal nearer = exact.round(new MathContext(digits, RoundingMode.HALF_EVEN));
            boolean isBeyond = nearer.abs().compareTo(exact.abs()) > 0;
            BigDecimal farther = exact.round(new MathContext(digits, isBeyond ? RoundingMode.DOWN : RoundingMode.UP));
            if (identifies.test(nearer.toString())) {
                return nearer;
            }
            if (identifies.test(farther.toString())) {
                return farther;
            }
        }
        return exact;
    }
}
