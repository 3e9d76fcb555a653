package io.github.formulationmath.pot;

import static io.github.formulationmath.support.ManyLines.cumulative;
import static io.github.formulationmath.support.ManyLines.plan;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.PlannedLine;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.support.CpuTime;
import io.github.formulationmath.weighing.WeighingMethod;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.junit.jupiter.api.Test;

/** Sizes that would take hours if a step were taken for every pair of lines: there is an answer at all. */
class ManyReadingsTest {

    private static final int MANY = 20_000;
    private static final Tolerances TOLERANCES = Tolerances.of("1 %");

    private static <T> T inTime(Callable<T> work) {
        return CpuTime.assertWithin(Duration.ofMinutes(5), work::call);
    }

    @Test
    void a_run_of_lines_not_written_down_is_shared_out() {
        MadeBatch made = inTime(() -> {
            MadeBatch found = MadeBatch.of(cumulative(plan(MANY), MANY));
            found.check(TOLERANCES);
            return found;
        });
        MadeLine first = made.lines().get(0);
        assertThat(first.isAssumed()).isTrue();
        assertThat(first.mass().canonical())
                .isEqualTo(made.mass().canonical().times(first.line().fraction()));
    }

    @Test
    void lines_that_nobody_wrote_down_have_room() {
        WeighingPlan plan = plan(MANY);
        List<Reading> readings = new ArrayList<>();
        for (PlannedLine line : plan.lines()) {
            FormulaLine own = line.target().line();
            readings.add(readings.isEmpty() ? Reading.of(own, line.reading()) : Reading.notWrittenDown(own));
        }
        MadeBatch made = inTime(() -> MadeBatch.of(Readings.of(plan, WeighingMethod.TARE_EACH, readings)));
        assertThat(made.lines().get(MANY - 1).massBounds().least().canonical()).isEqualTo(Ratio.ZERO);
    }

    @Test
    void as_many_additions_as_lines() {
        WeighingPlan plan = plan(MANY);
        MadeBatch first = MadeBatch.of(cumulative(plan, 1));
        List<LineAddition> additions = plan.batch().formula().lines().stream()
                .map(line -> LineAddition.of(line, Amount.mass("0.1 g")))
                .toList();
        MadeBatch second = inTime(() -> first.plus(additions));
        assertThat(second.mass().canonical()).isEqualTo(first.mass().canonical().plus(Ratio.of(MANY, 10)));
    }
}
