package io.github.formulationmath.plan;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Entry;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Step;
import io.github.formulationmath.reckoning.Working;
import io.github.formulationmath.support.RandomFormulas;
import io.github.formulationmath.weighing.Balance;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What a closed total says of the division that was given away last. */
class ClosedTotalsTest {

    private static final Balance TENTH = Balance.of("0.1 g", "2 kg");

    private static Map<String, Ratio> steps(Explained explained) {
        return steps(explained.working());
    }

    private static Map<String, Ratio> steps(Working working) {
        return working.steps().stream().collect(Collectors.toMap(Step::label, Step::value, (first, second) -> first));
    }

    private static List<Entry.Decision> decisions(Explained explained) {
        return decisions(explained.working());
    }

    private static List<Entry.Decision> decisions(Working working) {
        return working.entries().stream()
                .filter(Entry.Decision.class::isInstance)
                .map(Entry.Decision.class::cast)
                .toList();
    }

    private static List<String> notes(Working working) {
        return working.entries().stream()
                .filter(Entry.Note.class::isInstance)
                .map(note -> ((Entry.Note) note).phrase().key())
                .toList();
    }

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
