package io.github.formulationmath.size;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.number.Ratio;
import java.math.BigInteger;
import java.math.RoundingMode;
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

    /** So little that it fits no 64 bits, and that no whole number below a thousand notices it but at its very edge. */
    private static final Ratio HAIR = Ratio.parse("0.0000000000000000000000000000000000000001");

    private static Band.End end(Ratio slope) {
        return Band.End.of(Ratio.ONE, slope);
    }

    /** 3 · (1 ± a hair): a hair above 3 reaches 3, a hair below it does not; both lie between 2 and 4. */
    @Test
    void a_hair_decides_whether_an_end_reaches_a_whole_number() {
        Band.End above = end(Ratio.ONE.plus(HAIR));
        Band.End below = end(Ratio.ONE.minus(HAIR));
        Ratio three = Ratio.of(3);
        assertThat(above.fitsLongs()).isFalse();
        for (int again = 0; again < 2; again++) {
            assertThat(above.isAtLeast(three, three)).isTrue();
            assertThat(above.isAtLeast(Ratio.of(4), three)).isFalse();
            assertThat(below.isAtLeast(three, three)).isFalse();
            assertThat(below.isAtLeast(Ratio.of(2), three)).isTrue();
            assertThat(above.slope()).isEqualTo(Ratio.ONE.plus(HAIR));
        }
    }

    /** Three quarters of 2^70 and of 2^63 − 1: 3 · 2^68 to the last, and ⌊3 · (2^63 − 1) / 4⌋ = 3 · 2^61 − 1. */
    @Test
    void sizes_and_readings_beyond_a_long_are_no_exception() {
        Band.End end = end(Ratio.of(3, 4));
        assertThat(end.fitsLongs()).isTrue();
        Ratio three = Ratio.of(3);
        Ratio huge = Ratio.of(BigInteger.TWO.pow(70));
        Ratio reading = three.times(Ratio.of(BigInteger.TWO.pow(68)));
        assertThat(end.isAtLeast(reading, huge)).isTrue();
        assertThat(end.isAtLeast(reading.plus(Ratio.ONE), huge)).isFalse();
        assertThat(end.isAtLeast(reading, Ratio.of(Long.MAX_VALUE))).isFalse();
        assertThat(end.at(huge, RoundingMode.FLOOR)).isEqualTo(reading);
        Ratio most = three.times(Ratio.of(BigInteger.TWO.pow(61))).minus(Ratio.ONE);
        assertThat(end.isAtLeast(most, Ratio.of(Long.MAX_VALUE))).isTrue();
        assertThat(end.isAtLeast(most.plus(Ratio.ONE), Ratio.of(Long.MAX_VALUE)))
                .isFalse();
        assertThat(end.meets(reading, RoundingMode.CEILING)).isEqualTo(huge);
    }

    @Test
    void slopes_are_compared_whatever_they_fit_in() {
        Ratio half = Ratio.of(1, 2);
        Band.End narrow = end(half);
        Band.End above = end(half.plus(HAIR));
        Band.End below = end(half.minus(HAIR));
        assertThat(narrow.compareSlope(above)).isNegative();
        assertThat(above.compareSlope(narrow)).isPositive();
        assertThat(narrow.compareSlope(below)).isPositive();
        assertThat(below.compareSlope(narrow)).isNegative();
        assertThat(below.compareSlope(above)).isNegative();
        assertThat(above.compareSlope(end(half.plus(HAIR)))).isZero();
        assertThat(narrow.compareSlope(end(Ratio.of(2, 4)))).isZero();
    }

    @Test
    void a_tolerance_of_a_hair_is_one() {
        Ratio weight = Ratio.of(1, 4);
        assertThat(Band.closed(0, weight, HAIR, Ratio.ZERO, 2).isExact()).isFalse();
        assertThat(Band.closed(0, weight, HAIR, HALF, 2).isHopeless()).isFalse();
        assertThat(Band.closed(0, weight, Ratio.ZERO, HALF, 2).isHopeless()).isTrue();
        assertThat(Band.closed(0, weight, Ratio.ZERO, Ratio.ZERO, 2).isHopeless())
                .isFalse();
    }
}
