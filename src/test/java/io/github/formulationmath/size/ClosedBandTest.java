package io.github.formulationmath.size;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.number.Ratio;
import java.math.BigInteger;
import org.junit.jupiter.api.Test;

/** The readings between which a line is within tolerance, by hand and beyond the edge of a long. */
class ClosedBandTest {

    private static final Ratio THIRD = Ratio.of(1, 3);
    private static final Ratio HALF = Ratio.of(1, 2);

    /** The slopes 2^k/p and 2^(k+1)/p, from w = 3·2^(k-1)/p within a third: p or 2^(k+1) is a number of 60 to 66 bits. */
    @Test
    void near_the_edge_of_a_long_the_ends_are_those_of_whole_numbers() {
        int fit = 0;
        for (int bits = 60; bits <= 66; bits++) {
            BigInteger p = BigInteger.TWO.pow(bits).add(BigInteger.ONE);
            for (int k = 1; k <= 63; k++) {
                Ratio weight = Ratio.of(BigInteger.TWO.pow(k).multiply(BigInteger.valueOf(3)), p.shiftLeft(1));
                Band band = Band.closed(0, weight, THIRD, Ratio.ZERO, 2);
                BigInteger total = BigInteger.valueOf(1_000_003);
                BigInteger[] low = total.shiftLeft(k).divideAndRemainder(p);
                assertThat(band.least(Ratio.of(total)))
                        .isEqualTo(Ratio.of(low[0].add(BigInteger.valueOf(low[1].signum()))));
                assertThat(band.most(Ratio.of(total)))
                        .isEqualTo(Ratio.of(total.shiftLeft(k + 1).divide(p)));
                fit += band.fitsLongs() ? 1 : 0;
            }
        }
        assertThat(fit).isPositive().isLessThan(63 * 7);
    }

    /** Errors of up to 2^64 divisions: half of all within a half, from N/4 + e and 3N/4 − e, whatever the size of e. */
    @Test
    void large_errors_of_reading_are_no_exception() {
        for (long tenths = 1; tenths <= 20; tenths++) {
            Ratio error =
                    Ratio.of(BigInteger.TWO.pow(63)).times(Ratio.of(tenths, 10)).floor();
            Band band = Band.closed(0, HALF, HALF, error, 2);
            assertThat(band.least(Ratio.of(4))).isEqualTo(error.plus(Ratio.ONE));
            assertThat(band.most(Ratio.of(4))).isEqualTo(Ratio.of(3).minus(error));
        }
    }

    /** A quarter to three quarters of N: 2 divisions are reached at N = 3 (2.25) and still allowed at N = 8. */
    @Test
    void the_totals_at_which_a_reading_is_reached_and_left() {
        Band band = Band.closed(0, HALF, HALF, Ratio.ZERO, 2);
        assertThat(band.fitsLongs()).isTrue();
        assertThat(band.reaches(Ratio.of(2))).isEqualTo(Ratio.of(3));
        assertThat(band.stillAllows(Ratio.of(2))).isEqualTo(Ratio.of(8));
        assertThat(band.alwaysFrom()).isEqualTo(Ratio.of(2));
    }
}
