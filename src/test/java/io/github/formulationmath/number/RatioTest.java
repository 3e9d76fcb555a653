package io.github.formulationmath.number;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.support.NullTester;
import io.github.formulationmath.support.ValueContract;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class RatioTest implements ValueContract<Ratio> {

    private static final BigInteger HUGE = BigInteger.ONE.shiftLeft(100);

    @Override
    public List<Ratio> different() {
        return List.of(
                Ratio.ZERO,
                Ratio.ONE,
                Ratio.of(-1),
                Ratio.of(1, 2),
                Ratio.of(1, 3),
                Ratio.of(Long.MAX_VALUE),
                Ratio.of(Long.MIN_VALUE),
                Ratio.of(HUGE),
                Ratio.of(BigInteger.ONE, HUGE));
    }

    @Override
    public List<Ratio> same() {
        return List.of(
                Ratio.parse("-0.00"),
                Ratio.of(7, 7),
                Ratio.of(3, -3),
                Ratio.from(0.5),
                Ratio.of(HUGE).dividedBy(Ratio.of(HUGE.multiply(BigInteger.valueOf(3)))),
                Ratio.of(BigInteger.ONE.shiftLeft(63)).minus(Ratio.ONE),
                Ratio.of(Long.MAX_VALUE).plus(Ratio.ONE).unaryMinus(),
                Ratio.of(1L << 50).times(1L << 50),
                Ratio.ONE.dividedBy(1L << 50).dividedBy(1L << 50));
    }

    @Test
    void the_example_of_the_class_holds() {
        Ratio amount = Ratio.parse("1").dividedBy(3).times(400);
        assertThat(amount).hasToString("400/3");
        assertThat(amount.rounded(Rounding.toDecimalPlaces(2))).hasToString("133.33");
    }

    @ParameterizedTest
    @CsvSource({
        "12.5, 25, 2",
        "12.50, 25, 2",
        "+12.5, 25, 2",
        "-.5, -1, 2",
        "1e-3, 1, 1000",
        "1E3, 1000, 1",
        "2.5e+1, 25, 1",
        "3/4, 3, 4",
        "1 3/4, 7, 4",
        "-1 3/4, -7, 4",
        "' 12 ', 12, 1",
        "007, 7, 1",
        "0/5, 0, 1",
    })
    void numbers_are_read_as_written(String text, long numerator, long denominator) {
        assertThat(Ratio.parse(text)).isEqualTo(Ratio.of(numerator, denominator));
    }

    @ParameterizedTest
    @CsvSource({
        "'', not a number",
        "' ', not a number",
        "1.2.3, not a number",
        "'12,5', no comma",
        "'1,000.5', no grouping",
        "12., not a number",
        "1 2, not a number",
        "1.5/2, not a number",
        "--1, not a number",
        "1e, not a number",
        "1e1.5, not a number",
        "NaN, not a number",
        "Infinity, not a number",
        "0x10, not a number",
        "12.5g, not a number",
        "',5', no comma",
        "١٢, not a number",
        "1/0, below the line is 0",
        "1e1001, power of ten",
        "1e-99999999999999999999, power of ten",
    })
    void everything_else_is_refused_with_the_reason(String text, String reason) {
        assertThatThrownBy(() -> Ratio.parse(text))
                .isInstanceOf(NumberTextException.class)
                .hasMessageContaining(reason)
                .hasMessageContaining("\"" + text + "\"")
                .satisfies(e -> assertThat(((NumberTextException) e).text()).isEqualTo(text))
                .satisfies(e -> assertThat(((NumberTextException) e).reason().toString())
                        .contains(reason));
    }

    @Test
    void the_longest_number_and_the_largest_power_of_ten_are_still_read() {
        assertThat(Ratio.parse("9".repeat(1000)).plus(Ratio.ONE)).isEqualTo(Ratio.parse("1e1000"));
        assertThat(Ratio.parse("1e-1000").reciprocal()).isEqualTo(Ratio.parse("1e1000"));
        assertThatThrownBy(() -> Ratio.parse("9".repeat(1001)))
                .isInstanceOf(NumberTextException.class)
                .hasMessageContaining("longer than 1000");
    }

    @Test
    void a_message_quotes_up_to_60_characters() {
        assertThat(new NumberTextException("x".repeat(60), Sentence.of("k", "no")))
                .hasMessage("\"" + "x".repeat(60) + "\": no");
        assertThat(new NumberTextException("x".repeat(61), Sentence.of("k", "no")))
                .hasMessage("\"" + "x".repeat(57) + "...\" (61 characters): no");
    }

    @Test
    void numerator_and_denominator_come_out_as_longs_if_they_fit() {
        assertThat(Ratio.of(-3, 4).longNumerator()).isEqualTo(-3);
        assertThat(Ratio.of(-3, 4).longDenominator()).isEqualTo(4);
        Ratio large = Ratio.of(HUGE, BigInteger.valueOf(3));
        assertThat(large.longDenominator()).isEqualTo(3);
        assertThatThrownBy(large::longNumerator).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(large.reciprocal()::longDenominator).isInstanceOf(ArithmeticException.class);
        assertThat(large.reciprocal().longNumerator()).isEqualTo(3);
    }

    @Test
    void a_text_of_a_million_characters_is_refused_at_once_and_quoted_short() {
        for (String unit : List.of("9", "1 ", "1/", " ", "1e")) {
            String text = unit.repeat(1_000_000);
            assertThatThrownBy(() -> Ratio.parse(text))
                    .isInstanceOf(NumberTextException.class)
                    .satisfies(e -> assertThat(e.getMessage().length()).isLessThan(200));
        }
    }

    @Test
    void a_decimal_with_a_hostile_exponent_is_refused_before_it_fills_the_memory() {
        assertThatThrownBy(() -> Ratio.of(new BigDecimal("1e1000000000")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("times 10^1000000000");
        assertThatThrownBy(() -> Ratio.of(BigDecimal.valueOf(1, Integer.MAX_VALUE)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("times 10^-2147483647");
        assertThatThrownBy(() -> Ratio.of(BigDecimal.valueOf(1, Integer.MIN_VALUE)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(Ratio.of(new BigDecimal("1e1000")).reciprocal()).isEqualTo(Ratio.of(new BigDecimal("1e-1000")));
    }

    @Test
    void floating_point_comes_in_as_the_shortest_decimal_that_identifies_it() {
        assertThat(Ratio.from(0.1)).isEqualTo(Ratio.of(1, 10));
        assertThat(Ratio.from(0.1f)).isEqualTo(Ratio.of(1, 10));
        assertThat(Ratio.from(0.1234567f)).isEqualTo(Ratio.parse("0.1234567"));
        assertThat(Ratio.from(-0.0)).isEqualTo(Ratio.ZERO);
        assertThat(Ratio.from(1e23)).isEqualTo(Ratio.parse("1e23"));
        assertThat(Ratio.from(Double.MIN_VALUE)).isEqualTo(Ratio.parse("4.9e-324"));
        assertThat(Ratio.from(Double.MAX_VALUE)).isEqualTo(Ratio.parse("1.7976931348623157e308"));
        // Written 2.0E-3 since Java 19 and by every release; 2^-44 was written with a digit too many before
        // (JDK-4511638).
        assertThat(Ratio.from(0x1p-44)).isEqualTo(Ratio.parse("5.684341886080802e-14"));
        assertThatThrownBy(() -> Ratio.from(Double.NaN)).hasMessageContaining("NaN");
        assertThatThrownBy(() -> Ratio.from(Float.NEGATIVE_INFINITY)).hasMessageContaining("-Infinity");
    }

    /**
     * Near 2^50 doubles lie a quarter apart, so that both 0.7 and 0.8 identify 0.75 and are as near to it: {@link
     * Double#toString(double)} asks for the even last digit. Floats near 2^21 are alike.
     */
    @Test
    void of_two_decimals_as_near_the_one_with_the_even_last_digit_comes_in() {
        assertThat(Ratio.from(1125899906842624.25)).isEqualTo(Ratio.parse("1125899906842624.2"));
        assertThat(Ratio.from(1125899906842624.75)).isEqualTo(Ratio.parse("1125899906842624.8"));
        assertThat(Ratio.from(-1125899906842624.75)).isEqualTo(Ratio.parse("-1125899906842624.8"));
        assertThat(Ratio.from(2097152.25f)).isEqualTo(Ratio.parse("2097152.2"));
        assertThat(Ratio.from(2097152.75f)).isEqualTo(Ratio.parse("2097152.8"));
        assertThat(Ratio.from(-2097152.75f)).isEqualTo(Ratio.parse("-2097152.8"));
    }

    /** Between 2^53 and 2^54 doubles lie 2 apart. */
    @Test
    void a_tie_goes_to_the_even_double_and_the_least_beyond_it_to_the_next() {
        Ratio tie = Ratio.of((1L << 53) + 1);
        Ratio little = Ratio.of(1, 1L << 20);
        assertThat(tie.doubleValue()).isEqualTo(0x1p53);
        assertThat(tie.plus(little).doubleValue()).isEqualTo(0x1p53 + 2);
        assertThat(tie.minus(little).doubleValue()).isEqualTo(0x1p53);
        assertThat(tie.plus(little).unaryMinus().doubleValue()).isEqualTo(-0x1p53 - 2);
    }

    /** (2^53 + 1)/7 is …284.714, and doubles lie a quarter apart there; 1/(2^53 + 1) lies nearest to the double below 2^-53. */
    @Test
    void a_numerator_or_denominator_that_is_no_double_is_not_rounded_before_dividing() {
        long beyond = (1L << 53) + 1;
        assertThat(Ratio.of(beyond, 7).doubleValue()).isEqualTo(1286742750677284.75);
        assertThat(Ratio.of(1, beyond).doubleValue()).isEqualTo(Math.nextDown(0x1p-53));
    }

    @Test
    void a_fraction_too_large_for_64_bits_minus_itself_is_0() {
        Ratio small = Ratio.of(BigInteger.TWO, BigInteger.valueOf(3).pow(60));
        assertThat(small.minus(small)).isEqualTo(Ratio.ZERO);
        assertThat(small.plus(small.unaryMinus())).isEqualTo(Ratio.ZERO);
        BigInteger longer = BigInteger.valueOf(3).pow(100);
        assertThat(Ratio.of(BigInteger.ONE, longer).plus(Ratio.of(BigInteger.ONE, longer)))
                .isEqualTo(Ratio.of(BigInteger.TWO, longer));
    }

    @Test
    void small_fractions_have_hash_codes_of_their_own() {
        Set<Ratio> fractions = new HashSet<>();
        for (int d = 1; d <= 31; d++) {
            for (int n = 0; n <= 100; n++) {
                fractions.add(Ratio.of(n, d));
            }
        }
        assertThat(fractions.stream().map(Ratio::hashCode)).doesNotHaveDuplicates();
    }

    @Test
    void dividing_by_zero_says_what_was_divided() {
        assertThatThrownBy(() -> Ratio.of(5, 0))
                .isInstanceOf(ArithmeticException.class)
                .hasMessageContaining("5/0");
        assertThatThrownBy(() -> Ratio.of(HUGE, BigInteger.ZERO)).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> Ratio.of(5, 2).dividedBy(Ratio.ZERO)).hasMessageContaining("2.5 cannot be divided");
        assertThatThrownBy(() -> Ratio.of(5).dividedBy(0)).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(Ratio.ZERO::reciprocal).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> Ratio.of(5).div(Ratio.ZERO)).isInstanceOf(ArithmeticException.class);
    }

    @ParameterizedTest
    @EnumSource(value = RoundingMode.class, mode = EnumSource.Mode.EXCLUDE, names = "UNNECESSARY")
    void whole_numbers_agree_with_the_jdk_in_every_mode(RoundingMode mode) {
        for (long n = -20; n <= 20; n++) {
            BigDecimal expected = BigDecimal.valueOf(n).divide(BigDecimal.valueOf(4), 0, mode);
            assertThat(Ratio.of(n, 4).toWhole(mode)).isEqualTo(Ratio.of(expected));
            BigInteger big = HUGE.multiply(BigInteger.valueOf(n));
            // The same position between two whole numbers, too large for 64 bits.
            Ratio large = Ratio.of(big.add(BigInteger.valueOf(n)), BigInteger.valueOf(4));
            assertThat(large.toWhole(mode))
                    .isEqualTo(Ratio.of(
                            new BigDecimal(big.add(BigInteger.valueOf(n))).divide(BigDecimal.valueOf(4), 0, mode)));
        }
    }

    @Test
    void unnecessary_rounding_that_is_necessary_is_refused() {
        assertThat(Ratio.of(4).toWhole(RoundingMode.UNNECESSARY)).isEqualTo(Ratio.of(4));
        assertThat(Ratio.of(HUGE).toWhole(RoundingMode.UNNECESSARY)).isEqualTo(Ratio.of(HUGE));
        assertThatThrownBy(() -> Ratio.of(9, 2).toWhole(RoundingMode.UNNECESSARY))
                .isInstanceOf(ArithmeticException.class)
                .hasMessageContaining("4 and 5");
        assertThatThrownBy(
                        () -> Ratio.of(HUGE.add(BigInteger.ONE), BigInteger.TWO).toWhole(RoundingMode.UNNECESSARY))
                .isInstanceOf(ArithmeticException.class)
                .hasMessageContaining("/2 lies between");
    }

    @Test
    void what_changes_nothing_makes_no_new_number() {
        Ratio half = Ratio.of(1, 2);
        assertThat(half.abs()).isSameAs(half);
        assertThat(Ratio.ZERO.abs()).isSameAs(Ratio.ZERO);
        assertThat(half.times(Ratio.ONE)).isSameAs(half);
        assertThat(Ratio.ONE.times(half)).isSameAs(half);
        assertThat(half.plus(Ratio.ZERO)).isSameAs(half);
        assertThat(Ratio.ZERO.plus(half)).isSameAs(half);
    }

    @Test
    void small_questions_have_plain_answers() {
        Ratio x = Ratio.of(-7, 2);
        assertThat(x.floor()).isEqualTo(Ratio.of(-4));
        assertThat(x.ceil()).isEqualTo(Ratio.of(-3));
        assertThat(x.abs()).isEqualTo(Ratio.of(7, 2));
        assertThat(x.abs().abs()).isEqualTo(Ratio.of(7, 2));
        assertThat(x.min(Ratio.ONE)).isEqualTo(x);
        assertThat(x.max(Ratio.ONE)).isEqualTo(Ratio.ONE);
        assertThat(Ratio.ONE.min(x)).isEqualTo(x);
        assertThat(x.min(Ratio.of(7, -2))).isSameAs(x);
        assertThat(x.max(Ratio.of(7, -2))).isSameAs(x);
        assertThat(x.div(Ratio.of(7))).isEqualTo(Ratio.of(-1, 2));
        assertThat(x.doubleValue()).isEqualTo(-3.5);
        assertThat(x.isInteger()).isFalse();
        assertThat(Ratio.of(HUGE).isInteger()).isTrue();
        assertThat(x.isDecimal()).isTrue();
        assertThat(Ratio.of(1, 3).isDecimal()).isFalse();
        assertThat(Ratio.of(12).toLongExact()).isEqualTo(12);
        assertThatThrownBy(x::toLongExact).hasMessageContaining("-3.5 is not a whole number");
        assertThatThrownBy(Ratio.of(HUGE)::toLongExact).hasMessageContaining("64 bits");
        assertThatThrownBy(Ratio.of(1, 3)::toBigDecimal).hasMessageContaining("1/3 has no finite decimal form");
    }

    @Test
    void null_is_refused_by_name() throws IllegalAccessException {
        NullTester tester = new NullTester(Map.of(
                Ratio.class,
                Ratio.ONE,
                long.class,
                1L,
                double.class,
                1.0,
                float.class,
                1.0f,
                String.class,
                "1",
                BigInteger.class,
                BigInteger.ONE,
                BigDecimal.class,
                BigDecimal.ONE,
                RoundingMode.class,
                RoundingMode.HALF_EVEN,
                Rounding.class,
                Rounding.none()));
        assertThat(tester.test(Ratio.class, Ratio.ONE)).isGreaterThan(15);
    }

    /** Against the multiples of the first, counted up in whole numbers until one is a multiple of the second. */
    @Test
    void the_least_common_multiple_is_the_first_that_both_divide() {
        for (int code = 0; code < 12 * 12 * 12 * 12; code++) {
            long a = 1 + code % 12;
            long b = 1 + code / 12 % 12;
            long c = 1 + code / 144 % 12;
            long d = 1 + code / 1728;
            long k = 1;
            while (k * a * d % (b * c) != 0) {
                k++;
            }
            assertThat(Ratio.of(a, b).leastCommonMultiple(Ratio.of(c, d))).isEqualTo(Ratio.of(k * a, b));
        }
        assertThatThrownBy(() -> Ratio.ONE.leastCommonMultiple(Ratio.ZERO))
                .isInstanceOf(ArithmeticException.class)
                .hasMessageContaining("both must be above 0");
    }
}
