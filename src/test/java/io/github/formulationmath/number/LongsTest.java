package io.github.formulationmath.number;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The 64-bit steps at the edge of 64 bits, held to {@link BigInteger}. */
class LongsTest {

    private static final long MAX = Long.MAX_VALUE;
    private static final long[] EDGES = {
        0,
        1,
        -1,
        2,
        -2,
        3,
        MAX,
        -MAX,
        MAX / 2,
        MAX / 2 + 1,
        -(MAX / 2) - 1,
        1L << 31,
        1L << 32,
        -(1L << 32),
        3_037_000_499L
    };

    @Test
    void a_product_fits_exactly_when_it_is_a_long_above_the_smallest() {
        for (long a : EDGES) {
            for (long b : EDGES) {
                BigInteger product = BigInteger.valueOf(a).multiply(BigInteger.valueOf(b));
                assertThat(Longs.productFits(a, b))
                        .as("%d · %d", a, b)
                        .isEqualTo(product.abs().compareTo(BigInteger.valueOf(MAX)) <= 0);
            }
        }
    }

    @Test
    void sums_at_the_edge_of_64_bits_are_exact() {
        for (long a : EDGES) {
            for (long b : EDGES) {
                BigInteger sum = BigInteger.valueOf(a).add(BigInteger.valueOf(b));
                assertThat(Ratio.of(a).plus(Ratio.of(b))).as("%d + %d", a, b).isEqualTo(Ratio.of(sum));
            }
        }
    }

    @Test
    void whole_numbers_up_to_2_to_the_53_are_doubles() {
        assertThat(Longs.isExactDouble(1L << 53)).isTrue();
        assertThat(Longs.isExactDouble(-(1L << 53))).isTrue();
        assertThat(Longs.isExactDouble((1L << 53) + 1)).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"7, 2, FLOOR, 3", "-7, 2, FLOOR, -4", "7, 2, HALF_EVEN, 4", "5, 2, HALF_EVEN, 2", "-7, 2, DOWN, -3"})
    void quotients_are_whole_under_a_mode(long n, long d, RoundingMode mode, long expected) {
        assertThat(Longs.divide(n, d, mode)).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({"0, 0, 1", "0, 12, 12", "12, 0, 12", "-12, 18, 6", "1, 12, 1", "7, 13, 1"})
    void the_greatest_common_divisor_is_at_least_1(long a, long b, long expected) {
        assertThat(Longs.gcd(a, b)).isEqualTo(expected);
    }

    @Test
    void the_greatest_common_divisor_is_that_of_the_class_library_near_and_far() {
        long[] numbers = {2, 3, 8, 12, 1023, 1024, 1025, 3 << 20, 12 << 20, 999_999_937L, 998_244_353L * 6, MAX, MAX - 1
        };
        for (long a : numbers) {
            for (long b : numbers) {
                BigInteger expected = BigInteger.valueOf(a).gcd(BigInteger.valueOf(b));
                assertThat(BigInteger.valueOf(Longs.gcd(a, -b)))
                        .as("%d, %d", a, b)
                        .isEqualTo(expected);
            }
        }
    }
}
