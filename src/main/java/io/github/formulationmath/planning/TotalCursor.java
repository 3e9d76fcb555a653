package io.github.formulationmath.planning;

import io.github.formulationmath.number.Ratio;
import java.math.BigInteger;
import java.util.List;

/**
 * A search for a feasible total N, by the jumps that {@link ClosedSearch} describes: on 64-bit numbers while they fit, on
 * unbounded ones from then on. Used by one thread, for one search.
 */
final class TotalCursor {

    private final List<ClosedBand> bands;
    private final boolean upwards;
    private boolean small;
    private long total;
    private BigInteger bigTotal;
    private int line = Landing.NO_LINE;
    private int checks;

    TotalCursor(List<ClosedBand> bands, Ratio whole, boolean upwards) {
        this.bands = bands;
        this.upwards = upwards;
        this.bigTotal = whole.numerator();
        this.small = whole.fitsLongs() && bands.stream().allMatch(band -> band.fitsLongs);
        this.total = bigTotal.longValue();
    }

    Ratio at() {
        return small ? Ratio.of(total) : Ratio.of(bigTotal);
    }

    Landing landing() {
        return new Landing(at(), line);
    }

    boolean isSmall() {
        return small;
    }

    /** How many lines the last move looked at. */
    int checks() {
        return checks;
    }

    /** Goes on from the total to the nearest multiple of a period that does not lie before it. */
    void alignTo(Ratio period) {
        if (!period.equals(Ratio.ONE)) {
            Ratio multiples = at().dividedBy(period);
            set((upwards ? multiples.ceil() : multiples.floor()).times(period).numerator());
        }
    }

    /** Stays if the total is feasible; else moves to the next that can be, and says so. */
    boolean moves() {
        if (small) {
            try {
                return movesInLongs();
            } catch (ArithmeticException e) {
                small = false;
                bigTotal = BigInteger.valueOf(total);
            }
        }
        return movesInBigNumbers();
    }

    private boolean movesInLongs() {
        long least = 0;
        long most = 0;
        checks = 0;
        for (ClosedBand band : bands) {
            long low = band.least(total);
            long high = band.most(total);
            checks++;
            if (low > high) {
                return go(upwards ? band.reaches(low) : band.stillAllows(high), band.line);
            }
            least = Math.addExact(least, low);
            most = Math.addExact(most, high);
        }
        if (least > total) {
            return go(upwards ? least : total - 1, Landing.TOTAL);
        }
        return most < total && go(upwards ? Math.incrementExact(total) : most, Landing.TOTAL);
    }

    private boolean go(long to, int pushing) {
        total = to;
        line = pushing;
        return true;
    }

    private boolean movesInBigNumbers() {
        BigInteger least = BigInteger.ZERO;
        BigInteger most = BigInteger.ZERO;
        checks = 0;
        for (ClosedBand band : bands) {
            BigInteger low = band.least(bigTotal);
            BigInteger high = band.most(bigTotal);
            checks++;
            if (low.compareTo(high) > 0) {
                return go(upwards ? band.reaches(low) : band.stillAllows(high), band.line);
            }
            least = least.add(low);
            most = most.add(high);
        }
        if (least.compareTo(bigTotal) > 0) {
            return go(upwards ? least : bigTotal.subtract(BigInteger.ONE), Landing.TOTAL);
        }
        return most.compareTo(bigTotal) < 0 && go(upwards ? bigTotal.add(BigInteger.ONE) : most, Landing.TOTAL);
    }

    private boolean go(BigInteger to, int pushing) {
        bigTotal = to;
        line = pushing;
        return true;
    }

    private void set(BigInteger whole) {
        bigTotal = whole;
        if (small && whole.bitLength() < Long.SIZE) {
            total = whole.longValue();
        } else {
            small = false;
        }
    }
}
