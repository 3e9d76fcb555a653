package io.github.formulationmath.size;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.support.Formulas;
import io.github.formulationmath.weighing.Balance;
import org.junit.jupiter.api.Test;

/** One line alone on a display of 1 g, so that its windows are known by hand: n/(1 + τ) to n/(1 − τ). */
class SizesRangeTest {

    private static final Formula ALONE = Formulas.only("alone", "Oil");

    private static Sizes within(Ratio tolerance) {
        return Criterion.roundingWithin(Tolerances.of(MassFraction.of(tolerance)))
                .on(ALONE, Bench.of(Balance.of("1 g", "10 kg")));
    }

    private static Amount<javax.measure.quantity.Mass> grams(long numerator, long denominator) {
        return Amount.grams(Ratio.of(numerator, denominator));
    }

    /** Within 25 %: 0.8 to 4/3 g, then all from 1.6 g on. */
    @Test
    void both_ends_of_a_window_pass_and_the_middle_of_a_gap_goes_down() {
        Sizes sizes = within(Ratio.of(1, 4));
        assertThat(sizes.contains(grams(4, 5))).isTrue();
        assertThat(sizes.contains(grams(4, 3))).isTrue();
        assertThat(sizes.contains(grams(8, 5))).isTrue();
        assertThat(sizes.contains(grams(3, 2))).isFalse();
        assertThat(sizes.nearest(grams(22, 15))).contains(grams(4, 3));
        assertThat(sizes.nearest(grams(3, 2))).contains(grams(8, 5));
        assertThat(Listed.all(sizes))
                .containsExactly(Bounds.closed(Ratio.of(4, 5), Ratio.of(4, 3)), Bounds.atLeast(Ratio.of(8, 5)));
    }

    @Test
    void a_range_keeps_what_lies_in_it_to_its_very_ends() {
        Sizes sizes = within(Ratio.of(1, 4));
        assertThat(Listed.parts(sizes, Ratio.ZERO, Ratio.ONE))
                .containsExactly(Bounds.closed(Ratio.of(4, 5), Ratio.ONE));
        assertThat(Listed.parts(sizes, Ratio.of(-5), Ratio.ONE))
                .containsExactly(Bounds.closed(Ratio.of(4, 5), Ratio.ONE));
        assertThat(Listed.parts(sizes, Ratio.of(3, 2), Ratio.of(8, 5))).containsExactly(Bounds.point(Ratio.of(8, 5)));
        assertThat(Listed.parts(sizes, Ratio.of(7, 5), Ratio.of(3, 2))).isEmpty();
    }

    /** With nothing off at all every whole gram passes, and no other size. */
    @Test
    void a_part_of_an_endless_set_is_found_without_walking_to_it() {
        Sizes exact = within(Ratio.ZERO);
        assertThat(Listed.parts(exact, Ratio.of(1), Ratio.of(3)))
                .containsExactly(Bounds.point(Ratio.of(1)), Bounds.point(Ratio.of(2)), Bounds.point(Ratio.of(3)));
        Ratio far = Ratio.of(1_000_000_000_000L);
        assertThat(Listed.parts(exact, far.minus(Ratio.of(1, 2)), far)).containsExactly(Bounds.point(far));
        assertThat(exact.allFrom()).isEmpty();
        assertThat(exact.islands().limit(20_000)).hasSize(20_000);
    }

    /** The windows of n and n + 1 touch from n = (1 − τ)/(2τ) on: from 10 000 on for τ = 1/20 001. */
    @Test
    void ten_thousand_intervals_are_listed_and_one_more_is_not() {
        assertThat(Listed.parts(within(Ratio.of(1, 20_001)), Ratio.ZERO, Ratio.of(20_000)))
                .hasSize(Sizes.MOST_ISLANDS);
        assertThatThrownBy(() -> Listed.parts(within(Ratio.of(1, 20_003)), Ratio.ZERO, Ratio.of(20_000)))
                .isInstanceOfSatisfying(
                        SearchLimitException.class, e -> assertThat(e.limit()).isEqualTo(10_000));
        assertThat(SearchEffort.ofChecks(1).limit()).isEqualTo(1);
    }
}
