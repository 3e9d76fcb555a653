package io.github.formulationmath.size;

import static io.github.formulationmath.support.WorkingParts.decisions;
import static io.github.formulationmath.support.WorkingParts.notes;
import static io.github.formulationmath.support.WorkingParts.steps;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Entry;
import io.github.formulationmath.reckoning.Entry.Comparison;
import io.github.formulationmath.reckoning.Working;
import io.github.formulationmath.support.Formulas;
import io.github.formulationmath.support.RandomFormulas;
import io.github.formulationmath.weighing.Balance;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the workings of batch sizes show: that the size passes, why less fails, and nothing that is not so. */
class CertificateTest {

    private static final Balance TENTH = Balance.of("0.1 g", "2 kg");
    private static final Balance GRAM = Balance.of("1 g", "1000 kg");
    private static final Amount<javax.measure.quantity.Mass> NONE = Amount.mass("0 g");

    private static MinimumBatch.Found found(Formula formula, Balance balance, Criterion criterion) {
        return (MinimumBatch.Found) MinimumBatch.of(formula, balance, criterion);
    }

    /** 1 : 2 : 0.2 within 5 %: of 15 divisions the first line would take 4.69, between 4.45 and 4.92. */
    @Test
    void one_division_less_fails_by_a_line_without_a_whole_number() {
        MinimumBatch.Found found = found(
                Formula.inParts("third")
                        .line("a", "1")
                        .line("b", "2")
                        .line("c", "0.2")
                        .build(),
                TENTH,
                Criterion.madeWithin(Tolerances.of("5 %")));
        assertThat(notes(found.working())).containsExactly("note.smaller-totals-excluded");
        assertThat(steps(found))
                .containsEntry("N", Ratio.of(16))
                .containsEntry("N_less", Ratio.of(15))
                .containsEntry("a_1", Ratio.of(5))
                .containsEntry("b_1", Ratio.of(4))
                .containsEntry("l_3", Ratio.ONE)
                .containsEntry("u_3", Ratio.ONE)
                .doesNotContainKeys("a_2", "b_2", "e");
        assertThat(decisions(found)).hasSize(7).allMatch(Entry.Decision::holds);
    }

    /** With ± half a division on each reading the ends move by e and, for the other lines, by (k − 2)·e of the whole. */
    @Test
    void an_error_of_reading_narrows_both_ends() {
        MinimumBatch.Found found = found(
                Formula.inParts("third")
                        .line("a", "1")
                        .line("b", "2")
                        .line("c", "0.2")
                        .build(),
                TENTH,
                Criterion.madeWithin(Tolerances.of("10 %").withLine("a", "20 %"), Amount.mass("0.05 g")));
        // a: 0.3125 · 0.8 · 96.5 + 0.5 = 24.625 and 0.3125 · 1.2 · 95.5 − 0.5 = 35.3125
        assertThat(steps(found))
                .containsEntry("N", Ratio.of(96))
                .containsEntry("e", Ratio.of(1, 2))
                .containsEntry("l_1", Ratio.of(25))
                .containsEntry("u_1", Ratio.of(35))
                .containsEntry("a_3", Ratio.of(6))
                .containsEntry("b_3", Ratio.of(5));
    }

    @Test
    void of_one_division_there_is_none_less() {
        Formula alone = Formulas.only("alone", "Oil");
        MinimumBatch.Found found = found(alone, TENTH, Criterion.madeWithin(Tolerances.of("5 %")));
        assertThat(found.smallest().canonical()).isEqualTo(Ratio.parse("0.1"));
        assertThat(notes(found.working())).isEmpty();
        assertThat(steps(found)).doesNotContainKey("N_less");
    }

    /** Whatever binds, a line or the sum of the least or of the largest readings, all that is shown holds. */
    @Test
    void everything_that_is_compared_holds() {
        RandomFormulas random = new RandomFormulas(91);
        for (int run = 0; run < 60; run++) {
            long[] parts = random.parts(20);
            Tolerances tolerances = Tolerances.of(MassFraction.of(Ratio.of(8 + random.below(25), 100)));
            Amount<javax.measure.quantity.Mass> error = run % 3 == 0 ? Amount.mass("0.5 g") : NONE;
            MinimumBatch.Found found =
                    found(RandomFormulas.formula(parts), GRAM, Criterion.madeWithin(tolerances, error));
            List<Entry.Decision> decisions = decisions(found);
            assertThat(decisions).allMatch(Entry.Decision::holds);
            assertThat(decisions)
                    .hasSize(2 * parts.length + (found.smallest().canonical().equals(Ratio.ONE) ? 0 : 1));
        }
    }

    /** 3 : 8 : 11 : 8 within 20 %: of 9 divisions the largest readings are 1.08, 2.88, 3.96 and 2.88, rounded down 8 in all. */
    @Test
    void one_division_less_fails_by_the_sum_of_the_largest_readings() {
        MinimumBatch.Found found =
                found(RandomFormulas.formula(3, 8, 11, 8), GRAM, Criterion.madeWithin(Tolerances.of("20 %")));
        assertThat(steps(found))
                .containsEntry("N_less", Ratio.of(9))
                .containsEntry("b_1", Ratio.of(1))
                .containsEntry("b_2", Ratio.of(2))
                .containsEntry("b_3", Ratio.of(3))
                .containsEntry("b_4", Ratio.of(2))
                .doesNotContainKey("a_1");
        Entry.Decision last = decisions(found).get(8);
        assertThat(last.left().value()).isEqualTo(Ratio.of(8));
        assertThat(last.comparison()).isEqualTo(Comparison.LESS);
    }

    /** 2 : 1 : 2 within 28 %: of 4 divisions the least readings are 1.152, 0.576 and 1.152, rounded up 5 in all. */
    @Test
    void one_division_less_fails_by_the_sum_of_the_least_readings() {
        MinimumBatch.Found found =
                found(RandomFormulas.formula(2, 1, 2), GRAM, Criterion.madeWithin(Tolerances.of("28 %")));
        assertThat(steps(found))
                .containsEntry("N_less", Ratio.of(4))
                .containsEntry("a_1", Ratio.of(2))
                .containsEntry("a_2", Ratio.of(1))
                .containsEntry("a_3", Ratio.of(2))
                .doesNotContainKey("b_1");
        Entry.Decision last = decisions(found).get(6);
        assertThat(last.left().value()).isEqualTo(Ratio.of(5));
        assertThat(last.comparison()).isEqualTo(Comparison.GREATER);
    }

    @Test
    void jumps_are_numbered_and_each_is_called_for() {
        MinimumBatch.Found found =
                found(RandomFormulas.formula(3, 5, 11), TENTH, Criterion.roundingWithin(Tolerances.of("5 %")));
        assertThat(notes(found.working())).containsExactly("note.jumps-skip-nothing");
        assertThat(steps(found)).containsKeys("S_0", "S_1").doesNotContainKey("S_-1");
        assertThat(decisions(found)).allMatch(Entry.Decision::holds);
        RandomFormulas random = new RandomFormulas(92);
        for (int run = 0; run < 20; run++) {
            Formula formula = RandomFormulas.formula(random.parts(30));
            MinimumBatch.Found each = found(formula, GRAM, Criterion.roundingWithin(Tolerances.of("6 %")));
            assertThat(decisions(each)).allMatch(Entry.Decision::holds);
            long jumps = each.working().steps().stream()
                    .filter(step -> step.label().startsWith("S_"))
                    .count();
            assertThat(notes(each.working()).contains("note.jumps-not-shown") ? jumps == 0 : jumps <= 40)
                    .isTrue();
        }
    }

    @Test
    void exact_readings_have_no_common_divisor_and_an_edge_is_a_multiple() {
        MinimumBatch.Found found = found(RandomFormulas.formula(1, 96), GRAM, Criterion.exactReadings());
        assertThat(notes(found.working())).containsExactly("note.no-common-divisor");
        BatchWindow window = BatchWindow.of(
                RandomFormulas.formula(1, 96),
                Bench.of(Balance.of("1 g", "300 g")),
                BatchConstraints.of(Criterion.exactReadings()));
        BatchWindow.End largest = ((BatchWindow.Feasible) window).upperEnd();
        assertThat(largest.mass().canonical()).isEqualTo(Ratio.of(291));
        assertThat(largest.origin().derive(io.github.formulationmath.reckoning.Reckoning.plain()))
                .isEqualTo(Ratio.of(291));
        assertThat(largest.boundBy().key()).isEqualTo("criterion.exact-readings");
        assertThat(steps(largest)).containsEntry("L", Ratio.of(97));
    }

    /** 1.7 g within 5 %: up to 1.785 g; 1 g shows 2, 0.5 g 3, 0.2 g 8 or 9: only 0.1 g is near enough. */
    @Test
    void a_step_of_the_series_must_itself_pass() {
        Formula alone = Formulas.only("alone", "Oil");
        CoarsestStep coarsest = coarsest(Batch.of(alone, BatchSize.ofMass("1.7 g")));
        assertThat(coarsest.exactStep()).contains(Amount.mass("1.785 g"));
        assertThat(coarsest.step()).contains(Amount.mass("0.1 g"));
        Formula two = RandomFormulas.formula(1, 2);
        Working both = coarsest(Batch.of(two, BatchSize.ofMass("3 g")))
                .exactStep()
                .orElseThrow()
                .working();
        assertThat(decisions(both)).hasSize(2).allMatch(Entry.Decision::holds);
        assertThat(steps(both)).containsKeys("x_1", "x_2", "l_1", "u_2");
    }

    private static CoarsestStep coarsest(Batch batch) {
        return CoarsestStep.of(batch, TENTH, Criterion.roundingWithin(Tolerances.of("5 %")));
    }
}
