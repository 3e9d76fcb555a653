package io.github.formulationmath.falsefine;

/**
 * How many cases are tried: a number for the plain build, times the system property {@code formulationmath.cases} where
 * that is set (the Maven profile {@code long}).
 */
final class Cases {

    static final String PROPERTY = "formulationmath.cases";

    private Cases() {}

    static int of(int plain) {
        return Math.multiplyExact(plain, Math.max(1, Integer.getInteger(PROPERTY, 1)));
    }

    /** A number for the plain build, and another, whatever the factor, where the property asks for more. */
    static int of(int plain, int many) {
        return Integer.getInteger(PROPERTY, 1) > 1 ? many : plain;
    }
}
