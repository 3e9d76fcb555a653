package io.github.formulationmath.number;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Numbers read and print alike whatever the default locale is. Run once more by the build in German, Egyptian Arabic,
 * Hindi and Turkish.
 */
@Tag("locale")
class RatioLocaleTest {

    @Test
    void the_run_is_really_in_the_language_it_claims() {
        assertThat(Locale.getDefault().getLanguage()).isEqualTo(System.getProperty("user.language"));
    }

    @Test
    void a_decimal_point_is_a_point_everywhere() {
        assertThat(Ratio.parse("12.5")).isEqualTo(Ratio.of(25, 2));
        assertThat(Ratio.of(25, 2)).hasToString("12.5");
    }

    @Test
    void grouping_and_native_digits_do_not_appear() {
        Ratio big = Ratio.of(123_456_789_012L, 8);
        assertThat(Ratio.parse(big.toString())).isEqualTo(big);
        assertThat(Rounding.toDecimalPlaces(3).format(big)).isEqualTo("15432098626.500");
    }
}
