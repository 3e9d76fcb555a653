package io.github.formulationmath.number;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.support.NullTester;
import io.github.formulationmath.support.ValueContract;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RoundingTest implements ValueContract<Rounding> {

    @Override
    public List<Rounding> different() {
        return List.of(
                Rounding.none(),
                Rounding.toMultipleOf(Ratio.of(1, 5)),
                Rounding.toDecimalPlaces(2),
                Rounding.toDecimalPlaces(3),
                Rounding.toSignificantDigits(2),
                Rounding.toSignificantDigits(2).with(RoundingMode.UP));
    }

    @Override
    public List<Rounding> same() {
        return List.of(
                Rounding.none().with(RoundingMode.UP),
                Rounding.toMultipleOf(Ratio.parse("0.2")),
                Rounding.toDecimalPlaces(2).with(RoundingMode.HALF_EVEN),
                Rounding.toDecimalPlaces(3).with(RoundingMode.UP).with(RoundingMode.HALF_EVEN),
                Rounding.toSignificantDigits(2),
                Rounding.toSignificantDigits(2).with(RoundingMode.UP));
    }

    @Test
    void the_example_of_the_class_holds() {
        assertThat(Rounding.toMultipleOf(Ratio.parse("0.2")).format(Ratio.parse("12.3")))
                .isEqualTo("12.4");
        assertThat(Rounding.toMultipleOf(Ratio.parse("0.2")).format(Ratio.parse("12.5")))
                .isEqualTo("12.4");
    }

    @ParameterizedTest
    @CsvSource({
        "12.5, 2, 12.50",
        "400/3, 2, 133.33",
        "-0.005, 2, 0.00",
        "0.015, 2, 0.02",
        "0, 3, 0.000",
        "7, 0, 7",
        "1e-30, 30, 0.000000000000000000000000000001",
    })
    void decimal_places_are_kept_as_asked_for(String value, int places, String text) {
        assertThat(Rounding.toDecimalPlaces(places).format(Ratio.parse(value))).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({
        "9.99, 2, 10",
        "9.94, 2, 9.9",
        "0.0012345, 3, 0.00123",
        "123456, 2, 120000",
        "-99.5, 2, -100",
        "2/3, 4, 0.6667",
        "0, 5, 0",
    })
    void significant_digits_follow_the_size(String value, int digits, String text) {
        assertThat(Rounding.toSignificantDigits(digits).format(Ratio.parse(value)))
                .isEqualTo(text);
    }

    @Test
    void significant_digits_agree_with_the_jdk_in_every_mode() {
        Hard hard = new Hard(3);
        for (int i = 0; i < 3_000; i++) {
            RoundingMode mode = RoundingMode.values()[hard.below(7)];
            int digits = 1 + hard.below(20);
            BigDecimal value = BigDecimal.valueOf(hard.number(), hard.below(25));
            assertThat(Rounding.toSignificantDigits(digits).with(mode).apply(Ratio.of(value)))
                    .isEqualTo(Ratio.of(value.round(new MathContext(digits, mode))));
        }
    }

    @Test
    void a_grid_without_finite_decimals_prints_fractions() {
        Rounding thirds = Rounding.toMultipleOf(Ratio.of(1, 3));
        assertThat(thirds.format(Ratio.parse("0.7"))).isEqualTo("2/3");
        assertThat(Rounding.toMultipleOf(Ratio.of(20)).format(Ratio.of(133))).isEqualTo("140");
        assertThat(Rounding.none().format(Ratio.of(1, 3))).isEqualTo("1/3");
        assertThat(Rounding.toMultipleOf(Ratio.parse("0.25")).format(Ratio.ONE)).isEqualTo("1.00");
    }

    @Test
    void numbers_too_large_for_64_bits_round_alike() {
        Ratio step = Ratio.of(1, Long.MAX_VALUE);
        Ratio value = step.times(Ratio.of(Long.MAX_VALUE).times(4).plus(Ratio.of(1, 2)));
        assertThat(Rounding.toMultipleOf(step).apply(value)).isEqualTo(Ratio.of(4));
    }

    @Test
    void refusing_to_lose_digits_names_number_and_grid() {
        Rounding strict = Rounding.toDecimalPlaces(1).with(RoundingMode.UNNECESSARY);
        assertThat(strict.apply(Ratio.parse("2.5"))).isEqualTo(Ratio.parse("2.5"));
        assertThatThrownBy(() -> strict.apply(Ratio.parse("2.55")))
                .isInstanceOf(ArithmeticException.class)
                .hasMessageContaining("2.55 is no multiple of 0.1");
        assertThat(Rounding.none().apply(Ratio.of(1, 3))).isEqualTo(Ratio.of(1, 3));
        assertThat(strict.mode()).isEqualTo(RoundingMode.UNNECESSARY);
    }

    @Test
    void the_widest_grids_are_still_served() {
        assertThat(Rounding.toDecimalPlaces(0).format(Ratio.of(5, 2))).isEqualTo("2");
        assertThat(Rounding.toDecimalPlaces(1000).apply(Ratio.parse("1e-1000"))).isEqualTo(Ratio.parse("1e-1000"));
        assertThat(Rounding.toSignificantDigits(1).apply(Ratio.of(19))).isEqualTo(Ratio.of(20));
        assertThat(Rounding.toSignificantDigits(1000).apply(Ratio.of(19))).isEqualTo(Ratio.of(19));
    }

    @Test
    void nonsense_is_refused() {
        assertThatThrownBy(() -> Rounding.toDecimalPlaces(-1)).hasMessageContaining("places is -1");
        assertThatThrownBy(() -> Rounding.toDecimalPlaces(1001)).hasMessageContaining("1000");
        assertThatThrownBy(() -> Rounding.toSignificantDigits(0)).hasMessageContaining("digits is 0");
        assertThatThrownBy(() -> Rounding.toMultipleOf(Ratio.ZERO)).hasMessageContaining("step is 0");
        assertThatThrownBy(() -> Rounding.toMultipleOf(Ratio.of(-1))).hasMessageContaining("above 0");
    }

    @Test
    void null_is_refused_by_name() throws IllegalAccessException {
        NullTester tester = new NullTester(Map.of(Ratio.class, Ratio.ONE, RoundingMode.class, RoundingMode.UP));
        assertThat(tester.test(Rounding.class, Rounding.toDecimalPlaces(1))).isGreaterThan(3);
    }
}
