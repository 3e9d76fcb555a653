package io.github.formulationmath.solution;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.PowerOfTen;
import io.github.formulationmath.number.Ratio;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * A number that is certain to lie between two decimals of forty digits. Each step rounds the lower end down and the upper one up, so
 * that chains of them stay certain without growing.
 */
record Enclosure(BigDecimal low, BigDecimal high) {

    private static final int DIGITS = 40;
    private static final MathContext DOWN = new MathContext(DIGITS, RoundingMode.FLOOR);
    private static final MathContext UP = new MathContext(DIGITS, RoundingMode.CEILING);

    static final Enclosure ZERO = new Enclosure(BigDecimal.ZERO, BigDecimal.ZERO);
    static final Enclosure ONE = new Enclosure(BigDecimal.ONE, BigDecimal.ONE);

    static Enclosure of(Ratio value) {
        return of(value, value);
    }

    static Enclosure of(long value) {
        return new Enclosure(BigDecimal.valueOf(value), BigDecimal.valueOf(value));
    }

    static Enclosure tenTo(Ratio exponent) {
        Bounds power = PowerOfTen.of(exponent);
        return of(power.lower().orElseThrow(), power.upper().orElseThrow());
    }

    private static Enclosure of(Ratio low, Ratio high) {
        return new Enclosure(
                new BigDecimal(low.numerator()).divide(new BigDecimal(low.denominator()), DOWN),
                new BigDecimal(high.numerator()).divide(new BigDecimal(high.denominator()), UP));
    }

    Enclosure plus(Enclosure other) {
        return new Enclosure(low.add(other.low, DOWN), high.add(other.high, UP));
    }

    Enclosure minus(Enclosure other) {
        return new Enclosure(low.subtract(other.high, DOWN), high.subtract(other.low, UP));
    }

    /** Times something that is not negative. */
    Enclosure times(Enclosure factor) {
        return new Enclosure(
                low.multiply(low.signum() < 0 ? factor.high : factor.low, DOWN),
                high.multiply(high.signum() < 0 ? factor.low : factor.high, UP));
    }

    /** Divided by something above zero. */
    Enclosure dividedBy(Enclosure divisor) {
        return new Enclosure(
                low.divide(low.signum() < 0 ? divisor.low : divisor.high, DOWN),
                high.divide(high.signum() < 0 ? divisor.high : divisor.low, UP));
    }

    Enclosure negated() {
        return new Enclosure(high.negate(), low.negate());
    }

    Enclosure min(Enclosure other) {
        return new Enclosure(low.min(other.low), high.min(other.high));
    }

    Enclosure max(Enclosure other) {
        return new Enclosure(low.max(other.low), high.max(other.high));
    }

    boolean isPositive() {
        return low.signum() > 0;
    }

    boolean isNegative() {
        return high.signum() < 0;
    }

    boolean isZero() {
        return low.signum() == 0 && high.signum() == 0;
    }

    Ratio least() {
        return Ratio.of(low);
    }

    Ratio greatest() {
        return Ratio.of(high);
    }
}
