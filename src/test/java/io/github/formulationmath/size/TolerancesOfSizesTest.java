package io.github.formulationmath.size;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.reckoning.Step;
import io.github.formulationmath.weighing.Balance;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A phase or a line may have a tolerance of its own, and the smallest batch follows. */
class TolerancesOfSizesTest {

    private static final Formula LOTION = Formula.inPercent("lotion")
            .phase("water")
            .line("Aqua", "80 %")
            .phase("oil")
            .line("Oil", "19 %")
            .line("Tocopherol", "1 %")
            .build();

    /** By hand: one division of 1 %, 0.1 g, within 25 % reaches 0.1/(1.25 · 0.01) = 8 g; within 60 % 6.25 g. */
    @Test
    void a_phase_or_a_line_alone_may_have_its_own() {
        Tolerances general = Tolerances.of("25 %");
        assertThat(smallest(general)).isEqualTo("8 g");
        assertThat(smallest(general.withPhase("oil", "60 %"))).isEqualTo("6.25 g");
        assertThat(smallest(general.withLine("Tocopherol", "60 %"))).isEqualTo("6.25 g");
        assertThat(smallest(general.withPhase("oil", "60 %").withLine("Tocopherol", "25 %")))
                .isEqualTo("8 g");
    }

    private static MinimumBatch.Found found(Tolerances tolerances) {
        return (MinimumBatch.Found)
                MinimumBatch.of(LOTION, Balance.of("0.1 g", "2 kg"), Criterion.roundingWithin(tolerances));
    }

    private static String smallest(Tolerances tolerances) {
        return found(tolerances).smallest().toString();
    }

    @Test
    void a_working_shows_one_tolerance_for_all_and_the_lines_own_by_its_side() {
        assertThat(labels(Tolerances.of("25 %"))).containsOnlyOnce("τ");
        assertThat(labels(Tolerances.of("25 %").withLine("Tocopherol", "60 %"))).contains("τ", "τ_3");
        assertThat(labels(Tolerances.of("25 %").withLine("Tocopherol", "60 %"))).doesNotContain("τ_1", "τ_2");
    }

    private static List<String> labels(Tolerances tolerances) {
        return found(tolerances).working().steps().stream().map(Step::label).toList();
    }
}
