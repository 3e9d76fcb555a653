package io.github.formulationmath.planning;

import io.github.formulationmath.number.Ratio;
import java.math.BigInteger;

/**
 * A search for a passing size, standing at {@code num/den}; moves up by the jumps that {@link Bands} describes, on 64-bit
 * numbers while they fit and on unbounded ones from then on. Used by one thread, for one search.
 */
final class SizeCursor {

    private boolean small;
    private long num;
    private long den;
    private BigInteger bigNum;
    private BigInteger bigDen;
    private int line = Landing.NO_LINE;

    SizeCursor(Ratio at) {
        this.small = at.fitsLongs();
        this.bigNum = at.numerator();
        this.bigDen = at.denominator();
        this.num = bigNum.longValue();
        this.den = bigDen.longValue();
    }

    Ratio at() {
        return small ? Ratio.of(num, den) : Ratio.of(bigNum, bigDen);
    }

    Landing landing() {
        return new Landing(at(), line);
    }

    boolean isSmall() {
        return small;
    }

    /** Stays if the line passes here; else goes to the next size at which it can, and says so. */
    boolean jumpsFor(Band band) {
        if (small && band.fitsLongs) {
            try {
                return jumpsInLongs(band);
            } catch (ArithmeticException e) {
                grow();
            }
        } else if (small) {
            grow();
        }
        return jumpsInBigNumbers(band);
    }

    private void grow() {
        small = false;
        bigNum = BigInteger.valueOf(num);
        bigDen = BigInteger.valueOf(den);
    }

    private boolean jumpsInLongs(Band band) {
        long lower = Math.multiplyExact(band.low, num);
        long unit = Math.multiplyExact(band.den, den);
        long floor = lower / unit;
        long least = floor * unit == lower ? floor : floor + 1;
        if (Math.multiplyExact(least, unit) <= Math.multiplyExact(band.up, num)) {
            return false;
        }
        num = Math.multiplyExact(least, band.den);
        den = band.up;
        line = band.line;
        return true;
    }

    private boolean jumpsInBigNumbers(Band band) {
        BigInteger unit = band.bigDen().multiply(bigDen);
        BigInteger[] parts = band.bigLow().multiply(bigNum).divideAndRemainder(unit);
        BigInteger least = parts[1].signum() == 0 ? parts[0] : parts[0].add(BigInteger.ONE);
        if (least.multiply(unit).compareTo(band.bigUp().multiply(bigNum)) <= 0) {
            return false;
        }
        bigNum = least.multiply(band.bigDen());
        bigDen = band.bigUp();
        line = band.line;
        return true;
    }
}
