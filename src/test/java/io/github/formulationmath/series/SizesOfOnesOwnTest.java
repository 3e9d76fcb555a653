package io.github.formulationmath.series;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Sizes that somebody sets make a plan. */
final class SizesOfOnesOwnTest {

    private static Formula version(String name, String glycerin, String perfume) {
        return Formula.inPercent(name)
                .phase("water")
                .quantitySufficient("Aqua")
                .line("Glycerin", glycerin)
                .phase("oil")
                .line("Oil", "12 %")
                .line("Emulsifier", "5 %")
                .phase("cool-down")
                .line("Parfum", perfume)
                .build();
    }

    private static final List<Formula> VERSIONS = List.of(
            version("Plain", "3 %", "0.5 %"), version("Richer", "5 %", "0.5 %"), version("Scent", "3 %", "1 %"));

    private static final Bench BENCH = Bench.of(Balance.of("0.1 g", "500 g"));

    @Test
    void sizes_of_ones_own_make_a_plan() {
        List<WeighingPlan> own = VERSIONS.stream()
                .map(version -> WeighingPlan.of(Batch.of(version, BatchSize.ofMass("50 g")), BENCH))
                .toList();
        SeriesPlan plan =
                SeriesPlan.of(VERSIONS, Tolerances.of("5 %"), WeighingMethod.TARE_EACH, Optional.empty(), own);
        assertThat(plan.way()).isEqualTo(SeriesPlan.Way.FROM_SCRATCH);
        assertThat(plan.total()).hasToString("150 g");
    }
}
