package io.github.formulationmath.number;

import java.math.BigInteger;
import java.math.RoundingMode;

/** The steps of exact arithmetic on whole numbers of any size. */
final class WholeNumbers {

    private static final BigInteger FIVE = BigInteger.valueOf(5);

    private WholeNumbers() {}

    /**
     * Whether a quotient that lies strictly between a floor and the next whole number goes up.
     *
     * @param half how the part above the floor compares with one half
     * @param floor the floor (its last bit decides ties to even)
     * @param negative whether the quotient is below 0
     */
    static boolean roundsUp(int half, long floor, boolean negative, RoundingMode mode) {
        return switch (mode) {
            case UP -> !negative;
            case DOWN -> negative;
            case CEILING -> true;
            case FLOOR -> false;
            case HALF_UP -> half > 0 || half == 0 && !negative;
            case HALF_DOWN -> half > 0 || half == 0 && negative;
            case HALF_EVEN -> half > 0 || half == 0 && (floor & 1) != 0;
            case UNNECESSARY ->
                throw new ArithmeticException(
                        "rounding is necessary: the number lies between " + floor + " and " + (floor + 1));
        };
    }

    /** How many decimals 1/d needs, or -1 if it never ends. */
    static int decimalPlaces(BigInteger d) {
        int twos = d.getLowestSetBit();
        BigInteger rest = d.shiftRight(twos);
        int fives = 0;
        while (!rest.equals(BigInteger.ONE)) {
            BigInteger[] parts = rest.divideAndRemainder(FIVE);
            if (parts[1].signum() != 0) {
                return -1;
            }
            rest = parts[0];
            fives++;
        }
        return Math.max(twos, fives);
    }

    /** The power of ten at which the first significant digit stands: the largest e with 10^e ≤ |value|, value not 0. */
    static int magnitude(Ratio value) {
        BigInteger n = value.numerator().abs();
        BigInteger d = value.denominator();
        int e = n.toString().length() - d.toString().length();
        return isAtLeast(n, d, e) ? e : e - 1;
    }

    private static boolean isAtLeast(BigInteger n, BigInteger d, int e) {
        return e >= 0
                ? n.compareTo(d.multiply(BigInteger.TEN.pow(e))) >= 0
                : n.multiply(BigInteger.TEN.pow(-e)).compareTo(d) >= 0;
    }
}
