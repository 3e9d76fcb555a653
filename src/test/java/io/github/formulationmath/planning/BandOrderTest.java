package io.github.formulationmath.planning;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.number.Ratio;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Bands are put in order by their upper slope, (1 + τ)·w, exactly, however near two of them are. */
class BandOrderTest {

    private static List<Band> bands() {
        List<Ratio> weights = new ArrayList<>();
        for (long den : new long[] {3, 1_000_003, 3_000_000_019L, 4_611_686_018_427_387_847L}) {
            weights.add(Ratio.of(1, den));
            weights.add(Ratio.of(den - 1, den).max(Ratio.ONE));
            weights.add(Ratio.of(2 * (den / 3) + 1, den));
            weights.add(Ratio.of(2 * (den / 3) + 2, den));
        }
        weights.add(Ratio.of(BigInteger.ONE, BigInteger.TEN.pow(30)));
        weights.add(Ratio.of(BigInteger.TEN.pow(30).add(BigInteger.ONE), BigInteger.TEN.pow(30)));
        List<Band> bands = new ArrayList<>();
        for (Ratio tolerance : List.of(
                Ratio.ZERO,
                Ratio.of(1, 20),
                Ratio.of(1, 1_000_000_007),
                Ratio.of(BigInteger.ONE, BigInteger.TEN.pow(25)))) {
            weights.forEach(weight -> bands.add(Band.of(bands.size(), weight, tolerance)));
        }
        return bands;
    }

    @Test
    void the_order_is_that_of_the_slopes() {
        List<Band> bands = bands();
        assertThat(bands.stream().filter(band -> band.fitsLongs).count()).isBetween(10L, bands.size() - 10L);
        for (Band one : bands) {
            for (Band other : bands) {
                assertThat(Integer.signum(Band.BY_SLOPE.compare(one, other)))
                        .isEqualTo(one.upSlope().compareTo(other.upSlope()));
            }
        }
    }

    @Test
    void slopes_in_64_bits_are_the_slopes() {
        for (Band band : bands()) {
            assertThat(band.line).isNotNegative();
            if (band.fitsLongs) {
                assertThat(Ratio.of(band.low, band.den)).isEqualTo(band.lowSlope());
                assertThat(Ratio.of(band.up, band.den)).isEqualTo(band.upSlope());
            }
            assertThat(Ratio.of(band.bigLow(), band.bigDen())).isEqualTo(band.lowSlope());
            assertThat(Ratio.of(band.bigUp(), band.bigDen())).isEqualTo(band.upSlope());
        }
    }
}
