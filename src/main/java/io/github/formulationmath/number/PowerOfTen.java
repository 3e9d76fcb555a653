package io.github.formulationmath.number;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Objects;

/**
 * Bounds for ten to any exact power. A power of ten is irrational unless its exponent is whole, so that only an interval can be
 * exact: it is certain to hold the power, and its ends differ by less than one part in 10³⁰.
 *
 * <p>10^x = 10^⌊x⌋ · exp((x − ⌊x⌋) · ln 10). The exponential is the sum of its series at an argument halved until it is small,
 * squared back; every step is rounded down for the lower end and up for the upper one, where a bound of the rest of the series is
 * added. ln 10 = 3 ln 2 + ln(5/4), each 2 artanh, likewise.
 */
public final class PowerOfTen {

    private static final int DIGITS = 45;
    private static final int HALVINGS = 8;
    private static final int TERMS = 24;
    private static final int LARGEST = RatioText.MAX_EXPONENT;

    private static final MathContext DOWN = new MathContext(DIGITS, RoundingMode.FLOOR);
    private static final MathContext UP = new MathContext(DIGITS, RoundingMode.CEILING);

    private static final BigDecimal TINY = BigDecimal.ONE.movePointLeft(DIGITS);
    private static final BigDecimal LN10_DOWN = lnTen(DOWN);
    private static final BigDecimal LN10_UP = lnTen(UP);

    private PowerOfTen() {}

    /**
     * Ten to a power.
     *
     * @param exponent the power, at most {@value RatioText#MAX_EXPONENT} in size
     * @return an interval that holds it; a point if the exponent is whole
     * @throws IllegalArgumentException if the exponent is larger
     */
    public static Bounds of(Ratio exponent) {
        if (Objects.requireNonNull(exponent, "exponent").abs().compareTo(Ratio.of(LARGEST)) > 0) {
            throw new IllegalArgumentException(
                    "exponent is " + Excerpt.of(exponent) + ": it must lie between -" + LARGEST + " and " + LARGEST);
        }
        BigInteger whole = exponent.floor().numerator();
        Ratio rest = exponent.minus(Ratio.of(whole));
        Ratio scale = Ratio.of(BigDecimal.ONE.scaleByPowerOfTen(whole.intValueExact()));
        if (rest.isZero()) {
            return Bounds.point(scale);
        }
        return Bounds.closed(
                scale.times(Ratio.of(exp(argument(rest, LN10_DOWN, DOWN), DOWN))),
                scale.times(Ratio.of(exp(argument(rest, LN10_UP, UP), UP))));
    }

    private static BigDecimal argument(Ratio rest, BigDecimal lnTen, MathContext context) {
        return new BigDecimal(rest.numerator())
                .divide(new BigDecimal(rest.denominator()), context)
                .multiply(lnTen, context);
    }

    /** The exponential of a number from 0 to 2.4, rounded throughout in one direction. */
    private static BigDecimal exp(BigDecimal x, MathContext context) {
        BigDecimal small = x.divide(BigDecimal.valueOf(1L << HALVINGS), context);
        BigDecimal term = BigDecimal.ONE;
        BigDecimal sum = BigDecimal.ONE;
        for (int k = 1; k <= TERMS; k++) {
            term = term.multiply(small, context).divide(BigDecimal.valueOf(k), context);
            sum = sum.add(term, context);
        }
        if (context.getRoundingMode() == RoundingMode.CEILING) {
            // small < 0.01, so that all further terms together are less than the last one; it is far below 10^-45.
            sum = sum.add(term.max(TINY), context);
        }
        for (int k = 0; k < HALVINGS; k++) {
            sum = sum.multiply(sum, context);
        }
        return sum;
    }

    private static BigDecimal lnTen(MathContext context) {
        // artanh(1/3) = ln(2)/2 and artanh(1/9) = ln(5/4)/2.
        return artanh(3, context)
                .multiply(BigDecimal.valueOf(6), context)
                .add(artanh(9, context).multiply(BigDecimal.valueOf(2), context), context);
    }

    /** The inverse hyperbolic tangent of 1/n, n at least 3: Σ n^-(2k+1)/(2k+1). */
    private static BigDecimal artanh(int n, MathContext context) {
        BigDecimal square = BigDecimal.valueOf((long) n * n);
        BigDecimal power = BigDecimal.ONE.divide(BigDecimal.valueOf(n), context);
        BigDecimal sum = power;
        for (int k = 1; power.compareTo(TINY) > 0; k++) {
            power = power.divide(square, context);
            sum = sum.add(power.divide(BigDecimal.valueOf(2L * k + 1), context), context);
        }
        // What is left out is less than the last power, for its terms fall by a factor of 9 and more.
        return context.getRoundingMode() == RoundingMode.CEILING ? sum.add(power, context) : sum;
    }
}
