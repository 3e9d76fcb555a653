package io.github.formulationmath.number;

import static org.assertj.core.api.Assertions.assertThat;

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
}
