package io.github.formulationmath.weighing;

import static io.github.formulationmath.support.WorkingAssertions.assertSelfChecking;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.support.Made;
import io.github.formulationmath.support.WorkingAssertions;
import java.util.List;
import java.util.Map;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;

/**
 * Where sums of masses lie, by hand. On a display of 0.1 g each tare and each reading hides 0.05 g: tared each, a mass is off by up
 * to 0.1 g, whatever the others are; weighed one upon the other, the reading between two masses is in both, the other way round.
 */
class SumsOfMassesTest {

    private static final MadeMasses TARED = tared("10", "20", "30");

    private static final MadeMasses ADDED_UP = addedUp("10", "20", "30");

    private static MadeMasses tared(String... grams) {
        return MadeMassesTest.masses(MadeMassesTest.TENTH, WeighingMethod.TARE_EACH, grams);
    }

    private static MadeMasses addedUp(String... grams) {
        return MadeMassesTest.masses(MadeMassesTest.TENTH, WeighingMethod.CUMULATIVE, grams);
    }

    private static Bounds bounds(String lower, String upper) {
        return Bounds.closed(Ratio.parse(lower), Ratio.parse(upper));
    }

    private static void lies(MadeMasses made, Map<Integer, Ratio> weights, String least, String most) {
        assertThat(Made.bounds(made.sum(weights))).isEqualTo(bounds(least, most));
        assertThat(made.leastSum(weights)).isEqualTo(made.sum(weights).least());
        assertThat(made.greatestSum(weights)).isEqualTo(made.sum(weights).greatest());
    }

    private static void workingsLeadThere(Interval<Amount<Mass>> sum) {
        assertSelfChecking(sum.least());
        assertSelfChecking(sum.greatest());
    }

    /** 5 ± 0.05 less 30 ± 0.1. */
    @Test
    void independent_masses_stand_each_at_the_end_that_its_weight_asks_for() {
        Map<Integer, Ratio> weights = Map.of(0, Ratio.of(1, 2), 2, Ratio.of(-1));
        lies(TARED, weights, "-25.15", "-24.85");
        workingsLeadThere(TARED.sum(weights));
    }

    /** Of the first two only the tare and the second reading remain; of their difference the reading between counts twice. */
    @Test
    void the_reading_between_two_masses_leaves_their_sum_and_counts_twice_in_their_difference() {
        Map<Integer, Ratio> sum = Map.of(0, Ratio.ONE, 1, Ratio.ONE);
        Map<Integer, Ratio> difference = Map.of(0, Ratio.ONE, 1, Ratio.of(-1));
        lies(ADDED_UP, sum, "29.9", "30.1");
        lies(ADDED_UP, difference, "-10.2", "-9.8");
        lies(ADDED_UP, Map.of(0, Ratio.ONE, 2, Ratio.ONE), "39.8", "40.2");
        lies(TARED, sum, "29.8", "30.2");
        workingsLeadThere(ADDED_UP.sum(sum));
        workingsLeadThere(ADDED_UP.sum(difference));
    }

    /** The first is weighed apart, on its own tare: 10 ± 0.1, then twice 20 + 30 with ± 0.05 at either end. */
    @Test
    void masses_that_share_errors_and_masses_that_do_not_stand_in_one_sum() {
        List<Addition> additions = TARED.additions().stream()
                .map(AdditionError::addition)
                .map(each -> each.subject().name().equals("L1") ? each : each.by(WeighingMethod.CUMULATIVE))
                .toList();
        MadeMasses mixed = MadeMasses.of(additions);
        Map<Integer, Ratio> weights = Map.of(0, Ratio.ONE, 1, Ratio.of(2), 2, Ratio.of(2));
        lies(mixed, weights, "109.7", "110.3");
        workingsLeadThere(mixed.sum(weights));
        assertThat(mixed.shareErrors()).isTrue();
        assertThat(ADDED_UP.shareErrors()).isTrue();
        assertThat(TARED.shareErrors()).isFalse();
    }

    /** A display of 0.1 g may show 0.1 g of next to nothing; 0.05 g may be nothing, but not less. */
    @Test
    void a_mass_in_a_sum_is_not_negative() {
        lies(tared("0.05", "10"), Map.of(0, Ratio.ONE), "0", "0.15");
    }

    @Test
    void either_end_asks_its_own_question_and_has_its_own_symbol() {
        Interval<Amount<Mass>> sum = TARED.sum(Map.of(0, Ratio.ONE));
        assertThat(sum.least().origin().question())
                .hasToString("What is the least that the weighted sum of the masses can be?");
        assertThat(sum.greatest().origin().question())
                .hasToString("What is the most that the weighted sum of the masses can be?");
        assertThat(WorkingAssertions.values(sum.least().working()))
                .containsEntry("S_lo", "9.9")
                .containsEntry("lo_L1", "9.9");
        assertThat(WorkingAssertions.values(sum.greatest().working()))
                .containsEntry("S_hi", "10.1")
                .containsEntry("hi_L1", "10.1");
    }

    @Test
    void a_sum_is_told_in_the_unit_of_the_first_reading() {
        Amount<Mass> one = Amount.mass("1 oz");
        MadeMasses ounces = MadeMasses.of(List.of(Addition.of("Oil", one, one, Balance.of("0.1 oz", "5 lb"))));
        assertThat(ounces.sum(Map.of(0, Ratio.of(3))).least()).hasToString("2.7 oz");
        assertThat(ounces.sum(Map.of(0, Ratio.of(3))).greatest()).hasToString("3.3 oz");
    }

    @Test
    void a_sum_of_nothing_is_nothing_and_a_line_that_is_not_there_is_refused() {
        lies(TARED, Map.of(), "0", "0");
        for (Map<Integer, Ratio> bad : List.of(Map.of(3, Ratio.ONE), Map.of(-1, Ratio.ONE))) {
            assertThatThrownBy(() -> TARED.sum(bad)).isInstanceOf(IndexOutOfBoundsException.class);
            assertThatThrownBy(() -> TARED.leastSum(bad)).isInstanceOf(IndexOutOfBoundsException.class);
            assertThatThrownBy(() -> TARED.greatestSum(bad)).isInstanceOf(IndexOutOfBoundsException.class);
        }
    }

    /** What the corner of one sum makes of another: 9.9 where the first is least, and most of the second, which is free. */
    @Test
    void another_sum_at_the_corner_of_the_first() {
        SumExtreme least = new SumExtreme(TARED, Weights.line(0), false);
        SumExtreme most = new SumExtreme(TARED, Weights.line(0), true);
        assertThat(least.at(Weights.line(0))).isEqualTo(least.value()).isEqualTo(Ratio.parse("9.9"));
        assertThat(most.at(Weights.line(0))).isEqualTo(most.value()).isEqualTo(Ratio.parse("10.1"));
        assertThat(least.at(Weights.line(1))).isEqualTo(Ratio.parse("20.1"));
        // Little of the first in a shared reading is much of the second, whose own reading is free.
        SumExtreme lower = new SumExtreme(ADDED_UP, Weights.line(0), false);
        assertThat(lower.at(Weights.line(1))).isEqualTo(Ratio.parse("20.1"));
        SumExtreme upper = new SumExtreme(ADDED_UP, Weights.line(0), true);
        assertThat(upper.at(Weights.line(1))).isEqualTo(Ratio.parse("20"));
    }

    @Test
    void sums_share_something_if_one_reading_is_in_both() {
        SumExtreme first = new SumExtreme(ADDED_UP, Weights.line(0), true);
        assertThat(first.sharesNothingWith(first)).isFalse();
        assertThat(first.sharesNothingWith(new SumExtreme(ADDED_UP, Weights.line(1), false)))
                .isFalse();
        assertThat(first.sharesNothingWith(new SumExtreme(ADDED_UP, Weights.line(2), false)))
                .isTrue();
        SumExtreme alone = new SumExtreme(TARED, Weights.line(0), true);
        assertThat(alone.sharesNothingWith(new SumExtreme(TARED, Weights.line(1), true)))
                .isTrue();
        assertThat(alone.sharesNothingWith(new SumExtreme(TARED, Weights.TOTAL, true)))
                .isFalse();
    }
}
