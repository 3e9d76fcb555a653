package io.github.formulationmath.planning;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.number.Ratio;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A band that says it fits 64 bits gives there what unbounded numbers give, up to the very edge of a long. */
class ClosedBandTest {

    private static final BigInteger EDGE = BigInteger.TWO.pow(63);
    private static final Ratio THIRD = Ratio.of(1, 3);
    private static final Ratio HALF = Ratio.of(1, 2);

    private static void agree(ClosedBand band) {
        if (band.fitsLongs) {
            assertThat(BigInteger.valueOf(band.least(1L))).isEqualTo(band.least(BigInteger.ONE));
            assertThat(BigInteger.valueOf(band.most(1L))).isEqualTo(band.most(BigInteger.ONE));
        }
    }

    /** The slopes 2^k/p and 2^(k+1)/p, from w = 3·2^(k-1)/p within a third: p or 2^(k+1) is a number of 62 to 65 bits. */
    @Test
    void near_the_edge_of_a_long_both_kinds_of_numbers_agree() {
        List<BigInteger> denominators = new ArrayList<>(List.of(
                BigInteger.valueOf(9_000_000_000_000_000_001L),
                BigInteger.valueOf(4_611_686_018_427_387_905L),
                EDGE.add(BigInteger.TEN)));
        for (int bits = 60; bits <= 66; bits++) {
            denominators.add(BigInteger.TWO.pow(bits));
        }
        int fit = 0;
        for (BigInteger p : denominators) {
            for (int k = 1; k <= 63; k++) {
                Ratio weight = Ratio.of(BigInteger.TWO.pow(k).multiply(BigInteger.valueOf(3)), p.shiftLeft(1));
                ClosedBand band = new ClosedBand(0, weight, THIRD, Ratio.ZERO, 2);
                agree(band);
                fit += band.fitsLongs ? 1 : 0;
            }
        }
        assertThat(fit).isPositive().isLessThan(63 * denominators.size());
    }

    /** Errors of up to 2^64 divisions: the shifts of the ends pass the edge one after the other. */
    @Test
    void large_errors_of_reading_are_no_exception() {
        int fit = 0;
        for (int lines = 1; lines <= 4; lines++) {
            for (long tenths = 1; tenths <= 20; tenths++) {
                Ratio error = Ratio.of(EDGE).times(Ratio.of(tenths, 10)).floor();
                ClosedBand wide =
                        new ClosedBand(0, HALF, HALF, error.dividedBy(4).floor(), lines);
                ClosedBand none =
                        new ClosedBand(0, HALF, Ratio.ZERO, error.dividedBy(2).floor(), lines);
                agree(wide);
                agree(none);
                fit += (wide.fitsLongs ? 1 : 0) + (none.fitsLongs ? 1 : 0);
            }
        }
        assertThat(fit).isBetween(40, 120);
    }

    /** A quarter to three quarters of N: 2 divisions are reached at N = 3 (2.25) and still allowed at N = 8. */
    @Test
    void the_totals_at_which_a_reading_is_reached_and_left() {
        ClosedBand band = new ClosedBand(0, HALF, HALF, Ratio.ZERO, 2);
        assertThat(band.fitsLongs).isTrue();
        assertThat(band.reaches(2L)).isEqualTo(3);
        assertThat(band.stillAllows(2L)).isEqualTo(8);
        assertThat(band.reaches(BigInteger.TWO)).isEqualTo(BigInteger.valueOf(3));
        assertThat(band.stillAllows(BigInteger.TWO)).isEqualTo(BigInteger.valueOf(8));
        assertThat(band.alwaysFrom()).isEqualTo(Ratio.of(2));
    }
}
