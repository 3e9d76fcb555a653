package io.github.formulationmath.size;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Closure;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.support.WorkingAssertions;
import io.github.formulationmath.weighing.Balance;
import org.junit.jupiter.api.Test;

/**
 * Three lines of 33.2 % and a q.s. line of 0.4 % on a display of 1 g, by hand. At 4 g each reads 1 g and 1 g is left; at 5 g
 * (1.66 g each) the three read 6 g, one too many; at 6 g they read 6 g, and nothing is left, which may be. From half of four
 * divisions of the q.s. line on, 2 g / 0.4 % = 500 g, something is always left.
 */
class RestLeftTest {

    private static final Formula TONER = Formula.inPercent("toner")
            .line("a", "33.2 %")
            .line("b", "33.2 %")
            .line("c", "33.2 %")
            .quantitySufficient("Aqua")
            .build();

    private static final Balance GRAM = Balance.of("1 g", "2 kg");

    private static final Part REST = RestLeft.part(TONER, GRAM);

    private static SearchMeter meter() {
        return new SearchMeter(SearchEffort.ofChecks(100));
    }

    @Test
    void a_size_that_leaves_nothing_is_passed_over_in_whole_divisions() {
        SizeSearch search = REST.search();
        assertThat(search.passes(Ratio.of(4))).isTrue();
        assertThat(search.passes(Ratio.of(5))).isFalse();
        assertThat(search.passes(Ratio.of(6))).isTrue();
        SearchMeter up = meter();
        assertThat(search.atLeast(Ratio.of(5), up)).isEqualTo(Landing.by(3, Ratio.of(6)));
        assertThat(up.checks()).as("one size failed").isEqualTo(1);
        SearchMeter down = meter();
        assertThat(search.atMost(Ratio.parse("5.2"), down)).contains(Landing.by(3, Ratio.of(4)));
        assertThat(down.checks()).as("5.2 g and 5 g failed").isEqualTo(2);
    }

    @Test
    void from_some_divisions_of_the_line_on_a_rest_is_always_left() {
        SizeSearch search = REST.search();
        assertThat(search.allFrom()).contains(Ratio.of(500));
        assertThat(search.startAround(Ratio.of(700))).isEqualTo(Ratio.of(500));
        assertThat(search.startAround(Ratio.of(6))).isEqualTo(Ratio.of(6));
        assertThat(REST.proof().smallest(Reckoning.plain(), Landing.resting(Ratio.of(6))))
                .isEqualTo(Ratio.of(6));
    }

    /** 5 g are wished for, and every line is to be 0.01 g at least, which 2.5 g meet: the rest binds, at 6 g. */
    @Test
    void a_window_may_begin_where_a_rest_is_left() {
        BatchConstraints asked = BatchConstraints.of(Criterion.leastNetMass(Amount.mass("0.01 g")))
                .withLeastSize("5 g");
        BatchWindow.Feasible window =
                (BatchWindow.Feasible) BatchWindow.of(TONER, Bench.of(GRAM).closing(Closure.QS_TAKES_REST), asked);
        assertThat(window.lowerEnd()).hasToString("6 g (the other lines, rounded, leave something for the q.s. line)");
        assertThat(window.lowerEnd().bindingLine()).contains(TONER.line("Aqua"));
        assertThat(window.everySizeFrom()).isEqualTo(Amount.mass("500 g"));
        assertThat(window.sizes().allFrom()).contains(Amount.mass("500 g"));
        WorkingAssertions.assertSelfChecking(window.lowerEnd());
    }
}
