package io.github.formulationmath.size;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.support.Formulas;
import io.github.formulationmath.support.RandomFormulas;
import io.github.formulationmath.weighing.Balance;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;

/** Sizes of which several things are asked at once: who is named, what it costs, and what of it is told. */
class SizesTogetherTest {

    private static final Formula BALM = Formulas.balm("balm");
    private static final Bench TENTH = Bench.of(Balance.of("0.1 g", "2 kg"));
    private static final Sizes ONE_DIVISION = Criterion.oneDivision().on(BALM, TENTH);

    private static SearchMeter meter() {
        return new SearchMeter(SearchEffort.standard());
    }

    private static List<Interval<Amount<Mass>>> firstIslands(Sizes sizes) {
        return sizes.islands().limit(3).toList();
    }

    private static List<Interval<Amount<Mass>>> points(String... masses) {
        return Arrays.stream(masses)
                .map(Amount::mass)
                .map(mass -> Interval.of(mass, mass))
                .toList();
    }

    @Test
    void what_is_asked_twice_is_asked_once() {
        Sizes twice = ONE_DIVISION.and(Criterion.oneDivision().on(BALM, TENTH));
        assertThat(twice.asked()).isEqualTo(ONE_DIVISION.asked()).hasSize(1);
        assertThat(twice.formula()).isEqualTo(BALM);
        assertThat(ONE_DIVISION.and(Criterion.exactReadings().on(BALM, TENTH)).asked())
                .extracting(Phrase::key)
                .containsExactly("criterion.one-division", "criterion.exact-readings");
    }

    @Test
    void the_obstacle_of_either_is_that_of_both() {
        Phrase reason = Phrase.of("obstacle.no-room-for-error", "Oil");
        Sizes none = Sizes.none(BALM, TENTH, reason);
        for (Sizes both : List.of(ONE_DIVISION.and(none), none.and(ONE_DIVISION))) {
            assertThat(both.obstacle()).contains(reason);
            assertThat(both.smallest()).isEmpty();
            assertThat(both.contains("100 g")).isFalse();
        }
    }

    @Test
    void a_size_asked_for_tells_what_pushed_it_up_or_that_it_was_given() {
        Amount<Mass> pushed = ONE_DIVISION.atLeast(Amount.mass("5 g")).orElseThrow();
        assertThat(pushed).isEqualTo(Amount.mass("20 g"));
        assertThat(pushed.origin().question()).isEqualTo(Phrase.of("question.next-size", "balm"));
        assertThat(pushed.working().answer().value()).isEqualTo(Ratio.of(20));
        pushed.working().check();
        Amount<Mass> given = ONE_DIVISION.atLeast(Amount.mass("25 g")).orElseThrow();
        assertThat(given).isEqualTo(Amount.mass("25 g"));
        assertThat(given.origin().question()).isEqualTo(Phrase.of("question.given-value"));
        assertThat(given.working().answer().value()).isEqualTo(Ratio.of(25));
    }

    /** One division allows 20 g, the step of 7 g goes on to 21 g, and the first has to be asked again: three looks. */
    @Test
    void going_round_costs_where_there_is_more_than_one_to_go_round() {
        SearchMeter two = meter();
        assertThat(ONE_DIVISION
                        .inStepsOf(Amount.mass("7 g"))
                        .smallest(two, Optional.empty())
                        .orElseThrow()
                        .at())
                .isEqualTo(Ratio.of(21));
        assertThat(two.checks()).isEqualTo(3);
        SearchMeter one = meter();
        ONE_DIVISION.atLeast(Ratio.of(5), one, Optional.empty());
        assertThat(one.checks()).isZero();
    }

    /** Multiples of 97 g (a line exact in 97 parts) and of 101 g meet at 9797 g: the wish is named, in whichever order. */
    @Test
    void at_a_common_multiple_the_step_is_named_and_not_the_lines() {
        Formula parts = RandomFormulas.formula(1, 96);
        Bench gram = Bench.of(Balance.of("1 g", "20 kg"));
        Sizes lines = Criterion.roundingWithin(Tolerances.of("0 %")).on(parts, gram);
        Sizes step = Sizes.of(parts, gram, Wish.inStepsOf(Amount.mass("101 g")));
        for (Sizes both : List.of(lines.and(step), step.and(lines))) {
            Sizes.Rest rest = both.smallest(meter()).orElseThrow();
            assertThat(rest.at()).isEqualTo(Ratio.of(9797));
            assertThat(rest.by().orElseThrow().name().key()).isEqualTo("criterion.in-steps");
        }
    }

    /** The same where the readings are to add up: without the common multiple a hundred steps would be tried. */
    @Test
    void exact_readings_that_add_up_meet_a_step_at_once() {
        Formula parts = RandomFormulas.formula(1, 96);
        BatchWindow window = BatchWindow.of(
                parts,
                Bench.of(Balance.of("1 g", "9797 g")),
                BatchConstraints.of(Criterion.madeWithin(Tolerances.of("0 %"))).inStepsOf("101 g"),
                SearchEffort.ofChecks(50));
        assertThat(window.smallest().orElseThrow().mass()).isEqualTo(Amount.mass("9797 g"));
    }

    /** 0.5 % is one division of 0.1 g at every 20 g; 1 to 2 is 0.1 to 0.2 g, and 5 % allows nothing else before 0.9 g. */
    @Test
    void sizes_that_stand_apart_are_islands_of_one_size_each() {
        assertThat(firstIslands(Criterion.exactReadings().on(BALM, TENTH))).isEqualTo(points("20 g", "40 g", "60 g"));
        Sizes made = Criterion.madeWithin(Tolerances.of("5 %")).on(RandomFormulas.formula(1, 2), TENTH);
        assertThat(firstIslands(made)).isEqualTo(points("0.3 g", "0.6 g", "0.9 g"));
        assertThat(Listed.parts(made, Ratio.parse("0.31"), Ratio.parse("0.6")))
                .containsExactly(Bounds.point(Ratio.parse("0.6")));
    }

    @Test
    void ten_thousand_steps_of_a_range_are_tried_and_one_more_is_refused() {
        assertThat(ONE_DIVISION.within("20 g", "10019 g", "1 g")).hasSize(10_000);
        assertThatThrownBy(() -> ONE_DIVISION.within("20 g", "10020 g", "1 g"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("step is 1 g")
                .hasMessageContaining("take a larger step or a smaller range");
    }

    @Test
    void a_window_of_multiples_does_not_hold_nothing() {
        BatchWindow window = BatchWindow.of(BALM, TENTH, Criterion.exactReadings());
        assertThat(window.contains("0 g")).isFalse();
        assertThat(window.contains("-20 g")).isFalse();
        assertThat(window.contains("20 g")).isTrue();
    }

    @Test
    void a_meter_is_used_up_to_its_limit_and_not_beyond() {
        SearchMeter meter = new SearchMeter(SearchEffort.ofChecks(5_000));
        meter.count(5_000, Ratio.ONE, Ratio.ONE, true);
        assertThat(meter.checks()).isEqualTo(5_000);
        assertThatThrownBy(() -> meter.count(Ratio.ONE)).isInstanceOfSatisfying(SearchLimitException.class, e -> {
            assertThat(e.limit()).isEqualTo(5_000);
            assertThat(e.said().getMessage()).isEqualTo(e.getMessage()).contains("after 5000 checks");
        });
    }
}
