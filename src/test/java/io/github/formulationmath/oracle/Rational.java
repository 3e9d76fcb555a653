package io.github.formulationmath.oracle;

import java.math.BigInteger;

/**
 * An independent reckoner: a plain fraction of two big whole numbers, reduced by nothing but the greatest common divisor.
 * It shares no code with the library, is slow, and is meant to be checked by reading it.
 */
public record Rational(BigInteger top, BigInteger bottom) {

    public Rational {
        if (bottom.signum() == 0) {
            throw new ArithmeticException("bottom is 0");
        }
        BigInteger g = top.gcd(bottom);
        if (bottom.signum() < 0) {
            g = g.negate();
        }
        top = top.divide(g);
        bottom = bottom.divide(g);
    }

    public static Rational of(long top, long bottom) {
        return new Rational(BigInteger.valueOf(top), BigInteger.valueOf(bottom));
    }

    public static Rational whole(BigInteger value) {
        return new Rational(value, BigInteger.ONE);
    }

    public Rational add(Rational other) {
        return new Rational(top.multiply(other.bottom).add(other.top.multiply(bottom)), bottom.multiply(other.bottom));
    }

    public Rational subtract(Rational other) {
        return new Rational(
                top.multiply(other.bottom).subtract(other.top.multiply(bottom)), bottom.multiply(other.bottom));
    }

    public Rational multiply(Rational other) {
        return new Rational(top.multiply(other.top), bottom.multiply(other.bottom));
    }

    public Rational divide(Rational other) {
        return new Rational(top.multiply(other.bottom), bottom.multiply(other.top));
    }

    public int compare(Rational other) {
        return top.multiply(other.bottom).subtract(other.top.multiply(bottom)).signum();
    }

    /** The largest whole number that is not above this one. */
    public BigInteger floor() {
        BigInteger[] parts = top.divideAndRemainder(bottom);
        return parts[1].signum() < 0 ? parts[0].subtract(BigInteger.ONE) : parts[0];
    }

    /** The nearest whole number; of two at the same distance, the even one. */
    public BigInteger halfEven() {
        BigInteger floor = floor();
        // Twice the part above the floor, compared with 1.
        int half = subtract(whole(floor)).multiply(of(2, 1)).compare(of(1, 1));
        boolean up = half > 0 || half == 0 && floor.testBit(0);
        return up ? floor.add(BigInteger.ONE) : floor;
    }

    /** The nearest multiple of a step; of two at the same distance, the one with the even number of steps. */
    public Rational toGrid(Rational step) {
        return whole(divide(step).halfEven()).multiply(step);
    }
}
