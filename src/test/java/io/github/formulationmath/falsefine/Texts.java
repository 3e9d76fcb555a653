package io.github.formulationmath.falsefine;

import java.math.BigInteger;

/** Whole numbers as the decimals that people write. */
final class Texts {

    private Texts() {}

    /** {@code 12345} with 3 places is {@code 12.345}. */
    static String decimal(long value, int places) {
        return decimal(BigInteger.valueOf(value), places);
    }

    static String decimal(BigInteger value, int places) {
        String digits = value.abs().toString();
        String padded = "0".repeat(Math.max(0, places + 1 - digits.length())) + digits;
        int point = padded.length() - places;
        return (value.signum() < 0 ? "-" : "")
                + padded.substring(0, point)
                + (places == 0 ? "" : "." + padded.substring(point));
    }

    /** A whole number of parts of a hundred, with so many places: {@code 12345} with 3 is {@code 12.345 %}. */
    static String percent(long value, int places) {
        return decimal(value, places) + " %";
    }

    static String grams(long value, int places) {
        return decimal(value, places) + " g";
    }
}
