package io.github.formulationmath.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Interval;
import java.util.HashMap;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Quotients of sums of masses on a display of 0.1 g: by hand, and against every corner in whole hundredths of a gram. */
class QuotientsOfMassesTest {

    private static final Ratio ONE = Ratio.ONE;

    private static MadeMasses made(WeighingMethod method, String... grams) {
        return MadeMassesTest.masses(MadeMassesTest.TENTH, method, grams);
    }

    private static Interval<Ratio> quotient(String least, String by, String most, String its) {
        return Interval.of(
                Ratio.parse(least).dividedBy(Ratio.parse(by)), Ratio.parse(most).dividedBy(Ratio.parse(its)));
    }

    /** 10 ± 0.1 by 20 ± 0.1. */
    @Test
    void of_masses_with_nothing_in_common_the_ends_are_divided() {
        MadeMasses made = made(WeighingMethod.TARE_EACH, "10", "20");
        assertThat(made.quotient(Map.of(0, ONE), Map.of(1, ONE))).isEqualTo(quotient("9.9", "20.1", "10.1", "19.9"));
    }

    /** −10 ± 0.1 by 20 ± 0.1: furthest below 0 where the divisor is least. */
    @Test
    void a_negative_dividend_is_least_where_the_divisor_is_least() {
        MadeMasses made = made(WeighingMethod.TARE_EACH, "10", "20");
        assertThat(made.quotient(Map.of(0, ONE.unaryMinus()), Map.of(1, ONE)))
                .isEqualTo(quotient("-10.1", "19.9", "-9.9", "20.1"));
    }

    /** 10 − 10 ± 0.2 by 20 ± 0.1. */
    @Test
    void a_dividend_of_either_sign_is_furthest_off_where_the_divisor_is_least() {
        MadeMasses made = made(WeighingMethod.TARE_EACH, "10", "10", "20");
        assertThat(made.quotient(Map.of(0, ONE, 1, ONE.unaryMinus()), Map.of(2, ONE)))
                .isEqualTo(quotient("-0.2", "19.9", "0.2", "19.9"));
    }

    /** Something is not more than all of itself, nor less; dividing end by end would say 9.9/10.1 to 10.1/9.9. */
    @Test
    void a_mass_by_itself_is_one() {
        for (WeighingMethod method : WeighingMethod.values()) {
            assertThat(made(method, "10", "20").quotient(Map.of(0, ONE), Map.of(0, ONE)))
                    .isEqualTo(Interval.of(ONE, ONE));
        }
    }

    /** (m + 3 n)/(m + n) rises with n and falls with m: (9.9 + 90.3)/40 at most, (10.1 + 89.7)/40 at least. */
    @Test
    void masses_in_dividend_and_divisor_go_where_their_quotient_is_extreme() {
        MadeMasses made = made(WeighingMethod.TARE_EACH, "10", "30");
        assertThat(made.quotient(Map.of(0, ONE, 1, Ratio.of(3)), Map.of(0, ONE, 1, ONE)))
                .isEqualTo(quotient("99.8", "40", "100.2", "40"));
    }

    /** The reading between the two is gone from their sum: 10 + 0.05 + 0.05 of 30 + 0.05 − 0.05. */
    @Test
    void a_reading_in_common_cancels_from_the_divisor() {
        MadeMasses made = made(WeighingMethod.CUMULATIVE, "10", "20");
        assertThat(made.quotient(Map.of(0, ONE), Map.of(0, ONE, 1, ONE)))
                .isEqualTo(quotient("9.9", "30", "10.1", "30"))
                .isEqualTo(Interval.of(
                        made.madeShare(0).bounds().least().canonical(),
                        made.madeShare(0).bounds().greatest().canonical()));
    }

    @Test
    void a_divisor_that_may_be_0_is_refused_and_one_just_above_is_not() {
        for (WeighingMethod method : new WeighingMethod[] {WeighingMethod.TARE_EACH, WeighingMethod.CUMULATIVE}) {
            MadeMasses none = made(method, "10", "0.1");
            assertThatThrownBy(() -> none.quotient(Map.of(0, ONE), Map.of(1, ONE)))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("the sum to divide by may be 0 g")
                    .hasMessageContaining("above 0 whatever the masses are");
        }
        MadeMasses hardlyAny = made(WeighingMethod.TARE_EACH, "10", "0.101");
        assertThat(hardlyAny.quotient(Map.of(0, ONE), Map.of(1, ONE)))
                .isEqualTo(quotient("9.9", "0.201", "10.1", "0.001"));
        assertThatThrownBy(() -> hardlyAny.quotient(Map.of(0, ONE), Map.of(1, ONE.unaryMinus())))
                .hasMessageContaining("may be -0.201 g");
    }

    @Test
    void a_line_that_is_not_there_is_refused_above_and_below() {
        MadeMasses made = made(WeighingMethod.TARE_EACH, "10", "20");
        assertThatThrownBy(() -> made.quotient(Map.of(2, ONE), Map.of(0, ONE)))
                .isInstanceOf(IndexOutOfBoundsException.class);
        assertThatThrownBy(() -> made.quotient(Map.of(0, ONE), Map.of(2, ONE)))
                .isInstanceOf(IndexOutOfBoundsException.class);
    }

    /** All 2^4 corners of tare and three readings, each off by 5 hundredths of a gram, in whole numbers. */
    @Test
    void no_corner_of_a_cumulative_weighing_is_beyond_and_both_ends_are_corners() {
        SplittableRandom random = new SplittableRandom(1967);
        for (int round = 0; round < 40; round++) {
            long[] readings = new long[3];
            long[] upper = new long[3];
            long[] lower = new long[3];
            for (int i = 0; i < 3; i++) {
                readings[i] = 100 + 10 * random.nextInt(50);
                upper[i] = random.nextInt(7) - 3;
                lower[i] = 1 + random.nextInt(3);
            }
            Interval<Ratio> expected = overAllCorners(readings, upper, lower);
            MadeMasses made = made(WeighingMethod.CUMULATIVE, hundredths(readings));
            assertThat(made.quotient(weights(upper), weights(lower))).isEqualTo(expected);
        }
    }

    private static Interval<Ratio> overAllCorners(long[] readings, long[] upper, long[] lower) {
        long leastOver = 0;
        long leastUnder = 0;
        long mostOver = 0;
        long mostUnder = 0;
        for (int corner = 0; corner < 16; corner++) {
            long over = 0;
            long under = 0;
            for (int i = 0; i < 3; i++) {
                long mass = readings[i] + hidden(corner, i + 1) - hidden(corner, i);
                over += upper[i] * mass;
                under += lower[i] * mass;
            }
            if (corner == 0 || over * leastUnder < leastOver * under) {
                leastOver = over;
                leastUnder = under;
            }
            if (corner == 0 || over * mostUnder > mostOver * under) {
                mostOver = over;
                mostUnder = under;
            }
        }
        return Interval.of(Ratio.of(leastOver, leastUnder), Ratio.of(mostOver, mostUnder));
    }

    private static long hidden(int corner, int indication) {
        return (corner >> indication & 1) == 0 ? -5 : 5;
    }

    private static String[] hundredths(long[] readings) {
        String[] grams = new String[readings.length];
        for (int i = 0; i < grams.length; i++) {
            grams[i] = readings[i] / 100 + "." + readings[i] / 10 % 10;
        }
        return grams;
    }

    private static Map<Integer, Ratio> weights(long[] all) {
        Map<Integer, Ratio> weights = new HashMap<>();
        for (int i = 0; i < all.length; i++) {
            weights.put(i, Ratio.of(all[i]));
        }
        return weights;
    }
}
