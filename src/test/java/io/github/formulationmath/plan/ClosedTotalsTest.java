package io.github.formulationmath.plan;

import static io.github.formulationmath.support.WorkingParts.decisions;
import static io.github.formulationmath.support.WorkingParts.notes;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Entry;
import io.github.formulationmath.support.RandomFormulas;
import io.github.formulationmath.weighing.Balance;
import org.junit.jupiter.api.Test;

/** What a closed total says of the division that was given away last. */
class ClosedTotalsTest {

    private static final Balance TENTH = Balance.of("0.1 g", "2 kg");

    @Test
    void a_closed_total_says_which_remainder_was_last_to_get_a_division() {
        Formula three = RandomFormulas.formula(1, 1, 1);
        WeighingPlan rounded = closed(three, "10 g");
        assertThat(rounded.lines().stream().map(line -> line.reading().toString()))
                .containsExactly("3.4 g", "3.3 g", "3.3 g");
        PlannedLine first = rounded.lines().get(0);
        assertThat(notes(first.working())).containsExactly("note.largest-remainder");
        assertThat(decisions(first)).hasSize(1).allMatch(Entry.Decision::holds);
        assertThat(decisions(closed(three, "9 g").lines().get(0))).isEmpty();
    }

    private static WeighingPlan closed(Formula formula, String size) {
        return WeighingPlan.of(
                Batch.of(formula, BatchSize.ofMass(size)), Bench.of(TENTH).closing(Closure.CLOSED));
    }

    /** 10 g on 0.1 g: 99.8 % shows 10.0 g, so that nothing is left for 0.2 %; 20.8 and 79.2 divisions leave a share. */
    @Test
    void the_line_that_takes_the_rest_may_get_nothing() {
        Formula trace = Formula.inPercent("trace")
                .line("Oil", "99.8 %")
                .quantitySufficient("Aqua")
                .build();
        WeighingPlan plan = WeighingPlan.of(
                Batch.of(trace, BatchSize.ofMass("10 g")), Bench.of(TENTH).closing(Closure.QS_TAKES_REST));
        assertThat(plan.line("Aqua").reading()).isEqualTo(Amount.mass("0 g"));
        assertThat(plan.closes()).isTrue();
    }
}
