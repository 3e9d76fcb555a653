package io.github.formulationmath.number;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;

/** The steps of exact arithmetic on whole numbers of any size. */
final class WholeNumbers {

    private static final BigInteger FIVE = BigInteger.valueOf(5);

    private WholeNumbers() {}

    /** The quotient as a whole number under a rounding mode. */
    static BigInteger divide(BigRatio ratio, RoundingMode mode) {
        if (mode == RoundingMode.UNNECESSARY && !ratio.den().equals(BigInteger.ONE)) {
            throw new ArithmeticException("rounding is necessary: " + Excerpt.of(ratio.num() + "/" + ratio.den())
                    + " lies between two whole numbers");
        }
        return new BigDecimal(ratio.num())
                .divide(new BigDecimal(ratio.den()), 0, mode)
                .toBigIntegerExact();
    }

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
}
