package io.github.formulationmath.plan;

import static io.github.formulationmath.support.WorkingParts.decisions;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Entry;
import io.github.formulationmath.reckoning.Step;
import io.github.formulationmath.support.Formulas;
import io.github.formulationmath.support.RandomFormulas;
import io.github.formulationmath.support.WorkingAssertions;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Vessel;
import io.github.formulationmath.weighing.WeighingStation;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a total that is closed within tolerance shows for its readings, and what the errors of readings change in it. */
class WithinToleranceTest {

    private static final Bench GRAMS = Bench.of(Balance.of("1 g", "100 kg"));
    private static final Bench LEAST = GRAMS.closing(Closure.WITHIN_TOLERANCE);

    private static WeighingPlan plan(Bench bench, String size, long... parts) {
        return WeighingPlan.of(Batch.of(RandomFormulas.formula(parts), BatchSize.ofMass(size)), bench);
    }

    private static List<Long> divisions(WeighingPlan plan) {
        return plan.lines().stream().map(line -> line.divisions().toLongExact()).toList();
    }

    /** Each comparison as label, sign and number. */
    private static List<String> shown(WeighingPlan plan) {
        return decisions(plan.lines().get(0)).stream()
                .map(each -> (each.left() instanceof Step step ? step.label() : "") + " "
                        + each.comparison().sign() + " " + each.right().value())
                .toList();
    }

    /** Of 10 divisions three equal lines take 4, 3 and 3. The first could give one away, but to a line then as far off. */
    @Test
    void a_line_with_too_much_cannot_give_a_division_away() {
        WeighingPlan plan = plan(LEAST, "10 g", 1, 1, 1);
        assertThat(divisions(plan)).containsExactly(4L, 3L, 3L);
        assertThat(shown(plan)).containsExactly(" = 10", "γ_2 ≥ 0.2", "γ_3 ≥ 0.2");
        assertThat(decisions(plan.lines().get(0))).allMatch(Entry.Decision::holds);
    }

    /** Of 11 they take 4, 4 and 3: the third is 2/3 of 11/3 short, and whoever gave it one would be as short. */
    @Test
    void a_line_with_too_little_cannot_be_given_a_division() {
        WeighingPlan plan = plan(LEAST, "11 g", 1, 1, 1);
        assertThat(divisions(plan)).containsExactly(4L, 4L, 3L);
        assertThat(shown(plan)).containsExactly(" = 11", "γ_1 ≥ 2/11", "γ_2 ≥ 2/11");
        assertThat(decisions(plan.lines().get(0))).allMatch(Entry.Decision::holds);
    }

    /**
     * x = 3.13, 2.47 and 3.4. The second line, 7/37 short at 2 divisions, would be 8/37 over at 3; that the third could well
     * spare a division says nothing against it.
     */
    @Test
    void a_line_that_would_be_off_by_more_on_the_other_side_stays() {
        WeighingPlan plan = plan(LEAST, "9 g", 47, 37, 51);
        assertThat(shown(plan)).containsExactly(" = 9", "γ_2 ≥ 7/37");
        assertThat(decisions(plan.lines().get(0))).allMatch(Entry.Decision::holds);
    }

    /** No sentence of a working may be untrue, whichever line is worst and whatever a move of it would do. */
    @Test
    void what_speaks_for_the_readings_always_holds() {
        RandomFormulas random = new RandomFormulas(1104);
        for (int run = 0; run < 60; run++) {
            WeighingPlan plan = plan(LEAST, 1 + random.below(16) + " g", random.parts(run % 2 == 0 ? 4 : 30));
            assertThat(decisions(plan.lines().get(0)))
                    .as("%s", plan)
                    .hasSizeGreaterThan(1)
                    .allMatch(Entry.Decision::holds);
        }
    }

    @Test
    void a_batch_of_no_division_has_nothing_to_show() {
        WeighingPlan plan = plan(LEAST, "0.4 g", 1, 2);
        assertThat(divisions(plan)).containsExactly(0L, 0L);
        assertThat(shown(plan)).containsExactly(" = 0");
    }

    @Test
    void readings_within_all_tolerances_are_shown_between_their_ends() {
        WeighingPlan plan = plan(GRAMS.closingWithin(Tolerances.of("10 %")), "100 g", 8, 2);
        assertThat(shown(plan)).containsExactly(" = 100", "l_1 ≤ 80", "n_1 ≤ 88", "l_2 ≤ 20", "n_2 ≤ 22");
        assertThat(decisions(plan.lines().get(0))).allMatch(Entry.Decision::holds);
        WorkingAssertions.assertSelfChecking(plan.lines().get(0));
    }

    @Test
    void where_no_readings_keep_all_tolerances_no_ends_are_shown() {
        WeighingPlan plan = plan(GRAMS.closingWithin(Tolerances.of("1 %")), "10 g", 1, 1, 1);
        assertThat(divisions(plan)).containsExactly(4L, 3L, 3L);
        assertThat(shown(plan)).containsExactly(" = 10");
    }

    /**
     * Half a division, 1 and 1.5 are wanted. With e = 1/4 the first may be 1.25 of 2.75, 173 % too much, if it reads 1, and
     * −0.25 of 3.25, 146 % too little, if it reads 0; without errors both are 100 % off, and 1 leaves the others nearer.
     */
    @Test
    void errors_of_the_readings_weigh_on_the_smallest_line() {
        Tolerances half = Tolerances.of("50 %");
        assertThat(divisions(plan(GRAMS.closingWithin(half), "3 g", 1, 2, 3))).containsExactly(1L, 1L, 1L);
        assertThat(divisions(plan(GRAMS.closingWithin(half, Amount.mass("0.25 g")), "3 g", 1, 2, 3)))
                .containsExactly(0L, 1L, 2L);
    }

    /** (k − 2)·e is all that is made, or more. */
    @Test
    void errors_that_leave_nothing_of_the_batch_do_not_count() {
        Tolerances half = Tolerances.of("50 %");
        List<Long> without = divisions(plan(GRAMS.closingWithin(half), "2 g", 4, 3, 2, 1));
        for (String error : List.of("1 g", "1.5 g", "100 g")) {
            Bench bench = GRAMS.closingWithin(half, Amount.mass(error));
            assertThat(divisions(plan(bench, "2 g", 4, 3, 2, 1))).as(error).isEqualTo(without);
            assertThat(divisions(plan(bench, "1 g", 1))).as(error).containsExactly(1L);
        }
    }

    @Test
    void displays_of_different_steps_cannot_be_closed_within_tolerance() {
        WeighingStation fine =
                WeighingStation.fromBoat(Balance.of("0.01 g", "200 g").named("pocket"), Vessel.of("boat", "2 g"));
        Batch batch = Batch.of(Formulas.oilAndWax("balm"), BatchSize.ofMass("50 g"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> WeighingPlan.of(batch, LEAST, List.of(LEAST.station(), fine)))
                .withMessageContaining("the steps of the displays differ (1 g and 0.01 g)")
                .withMessageContaining("close the total by CLOSED, or weigh all lines in one step");
        WeighingStation same =
                WeighingStation.fromBoat(Balance.of("1 g", "200 g").named("pocket"), Vessel.of("boat", "2 g"));
        assertThat(WeighingPlan.of(batch, LEAST, Collections.nCopies(2, same))
                        .total()
                        .canonical())
                .isEqualTo(Ratio.of(50));
    }
}
