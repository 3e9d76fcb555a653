package io.github.formulationmath.number;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.math.RoundingMode;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/** The laws of a field with an order, of texts that read back, and of a rounding that never strays. */
class RatioPropertiesTest {

    @Provide
    Arbitrary<Ratio> ratios() {
        Arbitrary<BigInteger> tops =
                Arbitraries.bigIntegers().between(BigInteger.TWO.pow(70).negate(), BigInteger.TWO.pow(70));
        Arbitrary<BigInteger> bottoms = Arbitraries.bigIntegers().between(BigInteger.ONE, BigInteger.TWO.pow(66));
        return Arbitraries.oneOf(
                Combinators.combine(tops, bottoms).as(Ratio::of),
                Combinators.combine(Arbitraries.longs(), Arbitraries.longs().filter(d -> d != 0))
                        .as(Ratio::of));
    }

    @Property
    void sums_and_products_follow_the_laws(
            @ForAll("ratios") Ratio a, @ForAll("ratios") Ratio b, @ForAll("ratios") Ratio c) {
        assertThat(a.plus(b)).isEqualTo(b.plus(a));
        assertThat(a.times(b)).isEqualTo(b.times(a));
        assertThat(a.plus(b).plus(c)).isEqualTo(a.plus(b.plus(c)));
        assertThat(a.times(b).times(c)).isEqualTo(a.times(b.times(c)));
        assertThat(a.times(b.plus(c))).isEqualTo(a.times(b).plus(a.times(c)));
        assertThat(a.minus(b).plus(b)).isEqualTo(a);
        if (!b.isZero()) {
            assertThat(a.dividedBy(b).times(b)).isEqualTo(a);
        }
    }

    @Property
    void the_order_is_kept_by_adding_and_turned_by_negating(
            @ForAll("ratios") Ratio a, @ForAll("ratios") Ratio b, @ForAll("ratios") Ratio c) {
        assertThat(a.plus(c).compareTo(b.plus(c))).isEqualTo(a.compareTo(b));
        assertThat(b.unaryMinus().compareTo(a.unaryMinus())).isEqualTo(a.compareTo(b));
        assertThat(a.compareTo(b) == 0).isEqualTo(a.equals(b));
    }

    @Property
    void the_text_reads_back(@ForAll("ratios") Ratio a) {
        assertThat(Ratio.parse(a.toString())).isEqualTo(a);
    }

    @Property
    void a_rounded_number_is_on_the_grid_and_at_most_half_a_step_away(
            @ForAll("ratios") Ratio a, @ForAll("ratios") Ratio b) {
        Ratio step = b.isZero() ? Ratio.ONE : b.abs();
        Ratio rounded = Rounding.toMultipleOf(step).apply(a);
        assertThat(rounded.dividedBy(step).isInteger()).isTrue();
        assertThat(rounded.minus(a).abs()).isLessThanOrEqualTo(step.dividedBy(2));
        assertThat(Rounding.toMultipleOf(step).apply(rounded)).isEqualTo(rounded);
        assertThat(Rounding.toMultipleOf(step).with(RoundingMode.FLOOR).apply(a))
                .isLessThanOrEqualTo(a);
        assertThat(Rounding.toMultipleOf(step).with(RoundingMode.CEILING).apply(a))
                .isGreaterThanOrEqualTo(a);
    }

    @Property
    void a_printed_number_reads_back_as_the_rounded_one(
            @ForAll("ratios") Ratio a, @ForAll @IntRange(max = 40) int places) {
        Rounding rounding = Rounding.toDecimalPlaces(places);
        assertThat(Ratio.parse(rounding.format(a))).isEqualTo(rounding.apply(a));
    }

    @Property
    void a_double_comes_back_as_itself(@ForAll double value) {
        assertThat(Ratio.from(value).doubleValue()).isEqualTo(value == 0 ? 0.0 : value);
        float single = (float) value;
        if (Float.isFinite(single)) {
            assertThat((float) Ratio.from(single).doubleValue()).isEqualTo(single == 0 ? 0.0f : single);
        }
    }

    @Property
    void the_root_squared_is_near_the_number(
            @ForAll("ratios") Ratio a, @ForAll @IntRange(min = 1, max = 60) int digits) {
        Ratio root = a.abs().sqrt(digits);
        Ratio halfStep = Rounding.toSignificantDigits(digits).stepFor(root).dividedBy(2);
        assertThat(root.plus(halfStep).times(root.plus(halfStep))).isGreaterThanOrEqualTo(a.abs());
        Ratio below = root.minus(halfStep).max(Ratio.ZERO);
        assertThat(below.times(below)).isLessThanOrEqualTo(a.abs());
    }
}
