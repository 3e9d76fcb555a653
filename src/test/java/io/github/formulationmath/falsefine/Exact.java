package io.github.formulationmath.falsefine;

import java.math.BigInteger;

/** A fraction of whole numbers, only to compare: everything is decided by multiplying crosswise. */
record Exact(BigInteger top, BigInteger bottom) implements Comparable<Exact> {

    static final Exact ZERO = of(0);

    Exact {
        if (bottom.signum() <= 0) {
            throw new ArithmeticException("the bottom is " + bottom);
        }
    }

    static Exact of(long top, long bottom) {
        return new Exact(BigInteger.valueOf(top), BigInteger.valueOf(bottom));
    }

    static Exact of(long whole) {
        return of(whole, 1);
    }

    /** What the library answered, read from its text: {@code -7}, {@code 0.25} or {@code 198/83}. */
    static Exact read(Object answer) {
        String text = answer.toString();
        int slash = text.indexOf('/');
        if (slash >= 0) {
            return new Exact(new BigInteger(text.substring(0, slash)), new BigInteger(text.substring(slash + 1)));
        }
        int point = text.indexOf('.');
        int places = point < 0 ? 0 : text.length() - point - 1;
        return new Exact(new BigInteger(text.replace(".", "")), BigInteger.TEN.pow(places));
    }

    Exact plus(Exact other) {
        return new Exact(top.multiply(other.bottom).add(other.top.multiply(bottom)), bottom.multiply(other.bottom));
    }

    Exact minus(Exact other) {
        return plus(other.times(Exact.of(-1)));
    }

    Exact times(Exact other) {
        return new Exact(top.multiply(other.top), bottom.multiply(other.bottom));
    }

    Exact times(long whole) {
        return new Exact(top.multiply(BigInteger.valueOf(whole)), bottom);
    }

    /** Divided by something above 0. */
    Exact over(Exact other) {
        return new Exact(top.multiply(other.bottom), bottom.multiply(other.top));
    }

    Exact abs() {
        return new Exact(top.abs(), bottom);
    }

    Exact max(Exact other) {
        return compareTo(other) >= 0 ? this : other;
    }

    boolean isAbove(Exact other) {
        return compareTo(other) > 0;
    }

    boolean isBelow(Exact other) {
        return compareTo(other) < 0;
    }

    boolean isWhole() {
        return top.mod(bottom).signum() == 0;
    }

    BigInteger floor() {
        BigInteger[] parts = top.divideAndRemainder(bottom);
        return parts[1].signum() < 0 ? parts[0].subtract(BigInteger.ONE) : parts[0];
    }

    /** The whole numbers that are nearest: one, or two at a tie. */
    boolean isNearest(BigInteger whole) {
        BigInteger off = whole.multiply(bottom).subtract(top).abs();
        return off.shiftLeft(1).compareTo(bottom) <= 0;
    }

    /** The nearest whole number, at a tie the higher. */
    BigInteger nearest() {
        return plus(of(1, 2)).floor();
    }

    @Override
    public int compareTo(Exact other) {
        return top.multiply(other.bottom).compareTo(other.top.multiply(bottom));
    }

    /** As a text that every reader of the library takes. */
    @Override
    public String toString() {
        BigInteger common = top.gcd(bottom);
        BigInteger less = bottom.divide(common);
        return less.equals(BigInteger.ONE) ? top.divide(common).toString() : top.divide(common) + "/" + less;
    }
}
