package io.github.formulationmath.number;

import java.math.BigInteger;

/**
 * A whole number above 0 of at most two words, to be worked on in place: the greatest common divisor of two such numbers by
 * halving and subtracting, without a number made on the way. Source: Knuth, The Art of Computer Programming, volume 2, section
 * 4.5.2, algorithm B (from memory).
 */
final class TwoWords {

    /** The longest numbers that are taken: what stands in the high word is never below 0. */
    static final int MOST_BITS = 2 * Long.SIZE - 2;

    private long high;
    private long low;

    private TwoWords(BigInteger value) {
        this.high = value.shiftRight(Long.SIZE).longValue();
        this.low = value.longValue();
    }

    /** The greatest common divisor of two numbers above 0 of at most {@link #MOST_BITS} binary digits. */
    static BigInteger gcd(BigInteger first, BigInteger second) {
        TwoWords a = new TwoWords(first);
        TwoWords b = new TwoWords(second);
        int twos = Math.min(a.stripTwos(), b.stripTwos());
        while (!a.fitsLong() || !b.fitsLong()) {
            if (a.isLess(b)) {
                b.subtract(a);
                b.stripTwos();
            } else if (a.high != b.high || a.low != b.low) {
                a.subtract(b);
                a.stripTwos();
            } else {
                return a.value().shiftLeft(twos);
            }
        }
        return BigInteger.valueOf(Longs.gcd(a.low, b.low)).shiftLeft(twos);
    }

    private boolean fitsLong() {
        return high == 0 && low >= 0;
    }

    private boolean isLess(TwoWords other) {
        return high < other.high || high == other.high && Long.compareUnsigned(low, other.low) < 0;
    }

    private void subtract(TwoWords smaller) {
        high -= smaller.high + (Long.compareUnsigned(low, smaller.low) < 0 ? 1 : 0);
        low -= smaller.low;
    }

    /** Divides it by 2 as often as possible, and tells how often; it is not 0. */
    private int stripTwos() {
        if (low == 0) {
            int twos = Long.numberOfTrailingZeros(high);
            low = high >>> twos;
            high = 0;
            return Long.SIZE + twos;
        }
        int twos = Long.numberOfTrailingZeros(low);
        if (twos > 0) {
            low = low >>> twos | high << Long.SIZE - twos;
            high >>>= twos;
        }
        return twos;
    }

    private BigInteger value() {
        BigInteger lower = BigInteger.valueOf(low >>> 1).shiftLeft(1).or(BigInteger.valueOf(low & 1));
        return BigInteger.valueOf(high).shiftLeft(Long.SIZE).or(lower);
    }
}
