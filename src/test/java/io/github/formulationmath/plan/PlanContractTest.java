package io.github.formulationmath.plan;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.support.ValueContract;
import io.github.formulationmath.weighing.Balance;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Equality and text of a plan and of its lines. */
class PlanContractTest {
    private static final Balance TENTH = Balance.of("0.1 g", "2 kg");

    @Nested
    class PlanContract implements ValueContract<WeighingPlan> {
        private final Formula balm = Formula.inPercent("balm")
                .quantitySufficient("Oil")
                .line("Wax", "20 %")
                .build();

        private WeighingPlan plan(String size, Closure closure) {
            return WeighingPlan.of(
                    Batch.of(balm, BatchSize.ofMass(size)), Bench.of(TENTH).closing(closure));
        }

        @Override
        public List<WeighingPlan> different() {
            return List.of(
                    plan("100 g", Closure.INDEPENDENT),
                    plan("100 g", Closure.CLOSED),
                    plan("101 g", Closure.CLOSED),
                    plan("102.5 g", Closure.QS_TAKES_REST));
        }

        @Override
        public List<WeighingPlan> same() {
            return different();
        }

        @Test
        void a_plan_and_its_lines_say_what_they_read() {
            PlannedLine wax = plan("102.5 g", Closure.CLOSED).line("Wax");
            assertThat(wax).hasToString("Wax: 20.5 g");
            assertThat(different().get(3).toString()).contains("[Oil: 82.0 g, Wax: 20.5 g]");
        }
    }

    @Nested
    class PlannedLineContract implements ValueContract<PlannedLine> {
        @Override
        public List<PlannedLine> different() {
            Formula three = Formula.inPercent("three")
                    .line("a", "10 %")
                    .line("b", "30 %")
                    .line("c", "60 %")
                    .build();
            return WeighingPlan.of(Batch.of(three, BatchSize.ofMass("100 g")), TENTH)
                    .lines();
        }

        @Override
        public List<PlannedLine> same() {
            return different();
        }
    }
}
