package io.github.formulationmath.number;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import org.junit.jupiter.api.Test;

/** Numbers in few digits, and never on the wrong side of what they are compared with. */
class NumberTextTest {

    private static Ratio n(String text) {
        return Ratio.parse(text);
    }

    @Test
    void a_least_number_is_the_next_above_and_a_greatest_the_next_below() {
        assertThat(NumberText.least(n("125/42"), "oz", any -> true)).isEqualTo("2.977 oz");
        assertThat(NumberText.greatest(n("125/42"), "oz", any -> true)).isEqualTo("2.976 oz");
        assertThat(NumberText.least(n("-125/42"), "oz", any -> true)).isEqualTo("−2.976 oz");
        assertThat(NumberText.leastPercent(n("1/3"), any -> true)).isEqualTo("33.34 %");
        assertThat(NumberText.greatestPercent(n("1/3"), any -> true)).isEqualTo("33.33 %");
    }

    @Test
    void a_short_decimal_stays_as_it_is() {
        assertThat(NumberText.least(n("20.25"), "g", any -> false)).isEqualTo("20.25 g");
        assertThat(NumberText.least(Ratio.ZERO, "g", any -> false)).isEqualTo("0 g");
    }

    @Test
    void more_digits_are_taken_until_one_passes() {
        Ratio top = n("2.97620");
        assertThat(NumberText.least(n("125/42"), "oz", shown -> shown.compareTo(top) <= 0))
                .isEqualTo("2.9762 oz");
        assertThat(NumberText.leastPercent(n("1/3"), shown -> shown.compareTo(n("0.33334")) <= 0))
                .isEqualTo("33.334 %");
        assertThat(NumberText.greatestPercent(n("1/3"), shown -> shown.compareTo(n("0.33333")) >= 0))
                .isEqualTo("33.333 %");
    }

    @Test
    void twelve_digits_are_the_most() {
        Ratio third = n("1/3");
        assertThat(NumberText.least(third, "g", shown -> shown.compareTo(n("0.333333333334")) <= 0))
                .isEqualTo("0.333333333334 g");
        assertThat(NumberText.least(third, "g", shown -> shown.compareTo(n("0.3333333333334")) <= 0))
                .isEqualTo("1/3 g ≈ 0.333333 g");
    }

    @Test
    void where_none_passes_the_exact_number_is_told() {
        assertThat(NumberText.least(n("1000/333"), "g", any -> false)).isEqualTo("1000/333 g ≈ 3.00300 g");
    }

    @Test
    void a_share_is_told_on_the_side_of_the_limit_where_it_lies() {
        Ratio limit = n("0.01");
        assertThat(NumberText.percentBeside(n("0.0100000000004"), limit)).isEqualTo("≈ 1.00000000004 %");
        assertThat(NumberText.percentBeside(n("0.0099999999996"), limit)).isEqualTo("≈ 0.99999999996 %");
        assertThat(NumberText.percentBeside(limit, limit)).isEqualTo("1 %");
        assertThat(NumberText.percentBeside(n("1/300"), limit)).isEqualTo("≈ 0.333333 %");
    }

    @Test
    void beside_a_limit_a_thousand_digits_are_told_and_after_that_the_exact_share() {
        Ratio limit = n("0.01");
        Ratio inThousand = limit.plus(Ratio.of(BigInteger.ONE, BigInteger.TEN.pow(1001)));
        assertThat(NumberText.percentBeside(inThousand, limit)).isEqualTo("≈ 1." + "0".repeat(998) + "1 %");
        Ratio inMore = limit.plus(Ratio.of(BigInteger.ONE, BigInteger.TEN.pow(1002)));
        assertThat(NumberText.percentBeside(inMore, limit)).isEqualTo("1." + "0".repeat(999) + "1 % ≈ 1.00000 %");
    }

    @Test
    void ten_characters_are_told_exactly_and_eleven_with_six_digits() {
        assertThat(NumberText.isShort(n("1234.56789"))).isTrue();
        assertThat(NumberText.of(n("1234.56789"))).isEqualTo("1234.56789");
        assertThat(NumberText.isShort(n("1234.567891"))).isFalse();
        assertThat(NumberText.of(n("1234.567891"))).isEqualTo("≈ 1234.57");
        assertThat(NumberText.isShort(n("-1.2345678"))).isTrue();
        assertThat(NumberText.isShort(n("-1.23456789"))).isFalse();
        assertThat(NumberText.isShort(n("1/3"))).isFalse();
    }

    @Test
    void a_deviation_has_its_sign_and_none_has_none() {
        assertThat(NumberText.signed(n("1.025"), "g")).isEqualTo("+1.025 g");
        assertThat(NumberText.signed(n("-1.025"), "g")).isEqualTo("−1.025 g");
        assertThat(NumberText.signed(n("2/3"), "g")).isEqualTo("≈ +0.666667 g");
        assertThat(NumberText.signed(n("-2/3"), "g")).isEqualTo("≈ −0.666667 g");
        assertThat(NumberText.signed(Ratio.ZERO, "g")).isEqualTo("0 g");
        assertThat(NumberText.signed(Ratio.ONE, "")).isEqualTo("+1");
    }

    @Test
    void a_share_is_told_in_percent_exactly_rounded_and_with_its_ends() {
        assertThat(NumberText.percent(n("0.04"))).isEqualTo("4 %");
        assertThat(NumberText.percent(n("2/3"))).isEqualTo("≈ 66.6667 %");
        assertThat(NumberText.percentExactly(n("0.04"))).isEqualTo("4 %");
        assertThat(NumberText.percentExactly(n("2/3"))).isEqualTo("200/3 % ≈ 66.6667 %");
        assertThat(NumberText.percent(n("2/3"), Rounding.toDecimalPlaces(2))).isEqualTo("66.67 %");
        assertThat(NumberText.percentFromTo(n("0.012345"), n("0.012412"), Rounding.toDecimalPlaces(2)))
                .as("rounded outwards")
                .isEqualTo("1.23 – 1.25 %");
    }

    @Test
    void a_share_is_told_with_the_interval_it_surely_lies_in() {
        Ratio share = n("0.01008");
        assertThat(NumberText.percent(share, Bounds.closed(n("0.0099"), n("0.0103"))))
                .isEqualTo("1.008 % in [0.99, 1.03] %");
        assertThat(NumberText.percent(n("0.5"), Bounds.closed(n("1/3"), n("2/3"))))
                .as("rounded outwards")
                .isEqualTo("50 % in [33.3333, 66.6667] %");
        assertThat(NumberText.percent(share, Bounds.atLeast(n("0.0099")))).isEqualTo("1.008 %, at least 0.99 %");
        assertThat(NumberText.percent(share, Bounds.point(share))).isEqualTo("1.008 %");
    }
}
