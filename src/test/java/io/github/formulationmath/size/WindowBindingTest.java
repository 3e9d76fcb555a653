package io.github.formulationmath.size;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Step;
import io.github.formulationmath.support.RandomFormulas;
import io.github.formulationmath.support.WorkingAssertions;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Vessel;
import java.util.List;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;

/** What binds a window at its two ends, what would open it, and what its search costs. */
class WindowBindingTest {

    /** The smallest line stands first. */
    private static final Formula DYE = Formula.inPercent("dye bath")
            .line("Dye", "0.5 %")
            .line("Wax", "20 %")
            .line("Oil", "79.5 %")
            .build();

    private static final BatchConstraints ONE_DIVISION = BatchConstraints.of(Criterion.oneDivision());

    private static Amount<Mass> mass(String text) {
        return Amount.mass(text);
    }

    private static Bench bench(String readability, String capacity) {
        return Bench.of(Balance.of(readability, capacity));
    }

    private static BatchWindow.Feasible feasible(Formula formula, Bench bench, BatchConstraints constraints) {
        return (BatchWindow.Feasible) BatchWindow.of(formula, bench, constraints);
    }

    private static BatchWindow.Empty empty(Bench bench, BatchConstraints constraints) {
        return (BatchWindow.Empty) BatchWindow.of(DYE, bench, constraints);
    }

    private static String meaningOfTheAnswer(BatchWindow.End end) {
        return ((Step) end.working().answer()).symbol().meaningKey();
    }

    @Test
    void each_end_says_what_it_is_and_what_binds_it() {
        BatchWindow.Feasible window = feasible(DYE, bench("0.1 g", "2 kg"), ONE_DIVISION);
        assertThat(window.lowerEnd().boundBy().key()).isEqualTo("criterion.one-division");
        assertThat(window.lowerEnd().bindingLine()).contains(DYE.line("Dye"));
        assertThat(window.lowerEnd().origin().question().key()).isEqualTo("question.smallest-batch");
        assertThat(window.upperEnd().origin().question().key()).isEqualTo("question.largest-batch");
        assertThat(meaningOfTheAnswer(window.lowerEnd())).isEqualTo("smallest-of-window");
        assertThat(meaningOfTheAnswer(window.upperEnd())).isEqualTo("largest-of-window");
        assertThat(window.lowerEnd()).hasToString("20 g (every line at least one division)");
        MinimumBatch.Found least =
                (MinimumBatch.Found) MinimumBatch.of(DYE, Balance.of("0.1 g", "2 kg"), Criterion.oneDivision());
        assertThat(least.bindingLine()).contains(DYE.line("Dye"));
    }

    @Test
    void both_ends_belong_to_the_window_and_of_two_as_near_the_smaller_is_named() {
        BatchWindow.Feasible window = feasible(DYE, bench("0.1 g", "1990 g"), ONE_DIVISION.inStepsOf("50 g"));
        assertThat(window.contains(mass("50 g"))).isTrue();
        assertThat(window.contains(mass("1950 g"))).isTrue();
        assertThat(window.contains(mass("2000 g"))).isFalse();
        assertThat(window.nearest(mass("225 g"))).contains(mass("200 g"));
        assertThat(window.nearest(mass("226 g"))).contains(mass("250 g"));
    }

    /** One division asks for 20 g, the wish is 20 g; the balance carries 2000 g, 400 g of wax are a fifth of 2000 g. */
    @Test
    void of_two_that_bind_at_the_same_size_the_first_is_named() {
        BatchWindow.Feasible window = feasible(
                DYE, bench("0.1 g", "2 kg"), ONE_DIVISION.withLeastSize("20 g").withStock("Wax", "400 g"));
        assertThat(window.lowerEnd().boundBy().key()).isEqualTo("criterion.one-division");
        assertThat(window.upperEnd().mass()).isEqualTo(mass("2000 g"));
        assertThat(window.upperEnd().boundBy().key()).isEqualTo("ceiling.capacity");
        Formula twins = Formula.inPercent("twins")
                .quantitySufficient("Aqua")
                .line("First", "1 %")
                .line("Second", "1 %")
                .build();
        assertThat(feasible(twins, bench("0.1 g", "2 kg"), ONE_DIVISION)
                        .lowerEnd()
                        .bindingLine())
                .contains(twins.line("First"));
    }

    /** 0.5 % on 1 g needs 200 g; 5 g of wax make 25 g: eight times more wax, a dye diluted 1 in 8, or a display of 0.1 g. */
    @Test
    void only_what_is_too_low_need_be_raised() {
        BatchWindow.Empty none = empty(bench("1 g", "200 g"), ONE_DIVISION.withStock("Wax", "5 g"));
        assertThat(none.openings())
                .containsExactly(
                        new WindowOpening.MoreStock("Wax", mass("40 g")),
                        new WindowOpening.FinerBalance(mass("0.1 g")),
                        new WindowOpening.PreDilute(
                                List.of(new WindowOpening.Dilution(DYE.line("Dye"), Ratio.of(8))), DYE.line("Oil")));
        assertThat(empty(bench("1 g", "199 g"), ONE_DIVISION.withStock("Wax", "5 g"))
                        .openings())
                .contains(new WindowOpening.Together(List.of(
                        new WindowOpening.HigherCapacity(mass("200 g")),
                        new WindowOpening.MoreStock("Wax", mass("40 g")))));
    }

    @Test
    void a_vessel_that_uses_up_the_capacity_is_not_helped_by_a_dilution() {
        Bench full = bench("1 g", "500 g").with(Vessel.of("crock", "500 g"));
        BatchWindow.Empty none = empty(full, ONE_DIVISION);
        assertThat(none.largestAllowed().mass()).isEqualTo(mass("0 g"));
        assertThat(none.openings())
                .containsExactly(
                        new WindowOpening.HigherCapacity(mass("700 g")),
                        new WindowOpening.LighterVessel(mass("300 g")));
    }

    /** Multiples of 97 g that are multiples of 101 g: 9797 g alone up to 14.7 kg. */
    @Test
    void requirements_that_seldom_meet_do_so_at_a_common_multiple() {
        Formula parts = RandomFormulas.formula(1, 96);
        BatchConstraints both = BatchConstraints.of(Criterion.exactReadings()).inStepsOf("101 g");
        Bench large = bench("1 g", "14700 g");
        BatchWindow.Feasible window = feasible(parts, large, both);
        assertThat(window.lowerEnd().mass()).isEqualTo(mass("9797 g"));
        assertThat(window.upperEnd().mass()).isEqualTo(mass("9797 g"));
        // The sizes they share are the multiples of a common one: there is nothing to search.
        for (String capacity : new String[] {"14700 g", "9797 g"}) {
            assertThat(BatchWindow.of(parts, bench("1 g", capacity), both, SearchEffort.ofChecks(100)))
                    .isInstanceOf(BatchWindow.Feasible.class);
        }
        assertThat(BatchWindow.of(parts, bench("1 g", "9796 g"), both, SearchEffort.ofChecks(1_000)))
                .isInstanceOf(BatchWindow.Empty.class);
    }

    /** 1 to 2 within 5 %, off by half a division each: found and bound by the whole as made. */
    @Test
    void a_batch_as_made_may_bind_both_ends() {
        Formula third = RandomFormulas.formula(1, 2);
        BatchConstraints made = BatchConstraints.of(Criterion.madeWithin(Tolerances.of("5 %"), mass("0.05 g")));
        BatchWindow.Feasible window = feasible(third, bench("0.1 g", "10.05 g"), made);
        assertThat(window.lowerEnd().boundBy().key()).isEqualTo("criterion.made-within-error");
        assertThat(window.upperEnd().mass().exactValue().times(10).isInteger()).isTrue();
        WorkingAssertions.assertSelfChecking(window.lowerEnd());
        WorkingAssertions.assertSelfChecking(window.upperEnd());
        BatchWindow.Feasible plain = feasible(
                third, bench("0.1 g", "0.5 g"), BatchConstraints.of(Criterion.madeWithin(Tolerances.of("5 %"))));
        assertThat(plain.lowerEnd().boundBy().key()).isEqualTo("criterion.made-within");
        assertThat(plain.upperEnd().mass()).isEqualTo(mass("0.3 g"));
    }
}
