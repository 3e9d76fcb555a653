package io.github.formulationmath.oracle;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;

/** An exact fraction in lowest terms, as at school. */
record Fraction(BigInteger top, BigInteger bottom) implements Comparable<Fraction> {

    static final Fraction ZERO = whole(0);

    Fraction {
        if (bottom.signum() == 0) {
            throw new ArithmeticException("division by 0");
        }
        BigInteger common = top.gcd(bottom).multiply(BigInteger.valueOf(bottom.signum()));
        top = top.divide(common);
        bottom = bottom.divide(common);
    }

    static Fraction whole(long value) {
        return new Fraction(BigInteger.valueOf(value), BigInteger.ONE);
    }

    /** Reads 12, 12.5 or 400/3, with a minus if need be. */
    static Fraction read(String text) {
        String plain = text.replace('−', '-');
        int line = plain.indexOf('/');
        if (line >= 0) {
            return read(plain.substring(0, line)).over(read(plain.substring(line + 1)));
        }
        return of(new BigDecimal(plain));
    }

    static Fraction of(BigDecimal value) {
        return value.scale() <= 0
                ? new Fraction(value.toBigIntegerExact(), BigInteger.ONE)
                : new Fraction(value.unscaledValue(), BigInteger.TEN.pow(value.scale()));
    }

    Fraction plus(Fraction o) {
        return new Fraction(top.multiply(o.bottom).add(o.top.multiply(bottom)), bottom.multiply(o.bottom));
    }

    Fraction minus(Fraction o) {
        return plus(o.negated());
    }

    Fraction negated() {
        return new Fraction(top.negate(), bottom);
    }

    Fraction times(Fraction o) {
        return new Fraction(top.multiply(o.top), bottom.multiply(o.bottom));
    }

    Fraction over(Fraction o) {
        return new Fraction(top.multiply(o.bottom), bottom.multiply(o.top));
    }

    Fraction size() {
        return top.signum() < 0 ? negated() : this;
    }

    Fraction power(int exponent) {
        return exponent >= 0
                ? new Fraction(top.pow(exponent), bottom.pow(exponent))
                : new Fraction(bottom.pow(-exponent), top.pow(-exponent));
    }

    /** The nearest whole number below, and what is left decides. */
    Fraction toWhole(RoundingMode mode) {
        BigInteger[] parts = top.divideAndRemainder(bottom);
        BigInteger floor = parts[1].signum() < 0 ? parts[0].subtract(BigInteger.ONE) : parts[0];
        Fraction below = new Fraction(floor, BigInteger.ONE);
        Fraction left = minus(below);
        if (left.equals(ZERO)) {
            return below;
        }
        Fraction above = below.plus(whole(1));
        boolean negative = top.signum() < 0;
        int half = left.compareTo(new Fraction(BigInteger.ONE, BigInteger.TWO));
        return switch (mode) {
            case FLOOR -> below;
            case CEILING -> above;
            case DOWN -> negative ? above : below;
            case UP -> negative ? below : above;
            case HALF_UP -> half < 0 || half == 0 && negative ? below : above;
            case HALF_DOWN -> half < 0 || half == 0 && !negative ? below : above;
            case HALF_EVEN -> half < 0 || half == 0 && !floor.testBit(0) ? below : above;
            case UNNECESSARY -> throw new ArithmeticException(this + " would lose digits");
        };
    }

    /** The square root to 17 significant digits. */
    Fraction root() {
        MathContext wide = new MathContext(120);
        BigDecimal root =
                new BigDecimal(top).divide(new BigDecimal(bottom), wide).sqrt(new MathContext(60));
        return of(root.round(new MathContext(17, RoundingMode.HALF_EVEN)));
    }

    double toDouble() {
        return new BigDecimal(top)
                .divide(new BigDecimal(bottom), MathContext.DECIMAL64)
                .doubleValue();
    }

    @Override
    public int compareTo(Fraction o) {
        return top.multiply(o.bottom).compareTo(o.top.multiply(bottom));
    }

    @Override
    public String toString() {
        return bottom.equals(BigInteger.ONE) ? top.toString() : top + "/" + bottom;
    }
}
