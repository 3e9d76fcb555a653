package io.github.formulationmath.number;

import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Objects;

/**
 * Square roots, correctly rounded to a stated number of significant digits (ties cannot occur unless the root is exact).
 *
 * <p>Example: the root of 1/12 to six digits is 0.288675.
 */
public final class Roots {

    private Roots() {}

    /**
     * The square root of a number, rounded half even to significant digits.
     *
     * @param value the number, not below 0
     * @param digits significant digits of the result, from 1 to {@value Rounding#MAX_DIGITS}
     * @return the root, exact if it has no more digits than asked for
     * @throws ArithmeticException if the value is negative
     * @throws IllegalArgumentException if digits is out of range
     */
    public static Ratio sqrt(Ratio value, int digits) {
        Rounding rounding = Rounding.toSignificantDigits(digits);
        if (Objects.requireNonNull(value, "value").signum() < 0) {
            throw new ArithmeticException("the square root of " + Excerpt.of(value) + " is not a real number");
        }
        if (value.isZero()) {
            return value;
        }
        // Scaled by 100^k the whole root has two digits more than asked for; a lost rest is kept as a sticky half unit.
        int k = Math.max(0, digits + 2 - Math.floorDiv(Magnitude.of(value), 2));
        BigInteger scale = BigInteger.TEN.pow(k);
        Ratio scaled = value.times(Ratio.of(scale.multiply(scale)));
        BigInteger whole = scaled.toWhole(RoundingMode.FLOOR).numerator().sqrt();
        boolean exact = Ratio.of(whole.multiply(whole)).equals(scaled);
        Ratio root = Ratio.of(whole.shiftLeft(1).add(exact ? BigInteger.ZERO : BigInteger.ONE), scale.shiftLeft(1));
        return rounding.apply(root);
    }
}
