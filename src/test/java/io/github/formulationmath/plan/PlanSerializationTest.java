package io.github.formulationmath.plan;

import static io.github.formulationmath.support.ValueContract.copy;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.examples.BatchSheetExample;
import io.github.formulationmath.formula.Formula;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Values survive being written and read. */
class PlanSerializationTest {

    @Test
    void formula_batch_and_plan_come_back_equal() throws IOException, ClassNotFoundException {
        Formula formula = BatchSheetExample.handCream();
        assertThat(copy(formula)).isEqualTo(formula);
        WeighingPlan plan = BatchSheetExample.plan();
        WeighingPlan back = copy(plan);
        assertThat(back).isEqualTo(plan).hasSameHashCodeAs(plan);
        assertThat(back.batch()).isEqualTo(plan.batch());
        assertThat(back.lines()).isEqualTo(plan.lines());
        assertThat(back.batch().lines()).isEqualTo(plan.batch().lines());
        assertThat(back).isNotEqualTo(WeighingPlan.of(plan.batch(), plan.bench().balance()));
        assertThat(back.lines().get(0)).isNotEqualTo(plan.lines().get(1));
        back.lines().forEach(line -> line.working().check());
        double[] divisions = new double[9];
        BulkPlanner planner = copy(BulkPlanner.of(List.of(formula)));
        assertThat(planner.plan(0, plan.bench().balance().divisions(plan.batch().mass()), divisions))
                .isEqualTo(WeighingPlan.of(plan.batch(), plan.bench().balance()).lines().stream()
                        .mapToLong(line -> line.divisions().longNumerator())
                        .sum());
    }
}
