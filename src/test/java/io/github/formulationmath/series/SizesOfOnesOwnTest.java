package io.github.formulationmath.series;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.support.Trials;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Sizes that somebody sets make a plan. */
final class SizesOfOnesOwnTest {

    @Test
    void sizes_of_ones_own_make_a_plan() {
        List<WeighingPlan> own = Trials.THREE.stream()
                .map(version -> WeighingPlan.of(Batch.of(version, BatchSize.ofMass("50 g")), Trials.COARSE))
                .toList();
        SeriesPlan plan =
                SeriesPlan.of(Trials.THREE, Tolerances.of("5 %"), WeighingMethod.TARE_EACH, Optional.empty(), own);
        assertThat(plan.way()).isEqualTo(SeriesPlan.Way.FROM_SCRATCH);
        assertThat(plan.total()).hasToString("150 g");
    }
}
