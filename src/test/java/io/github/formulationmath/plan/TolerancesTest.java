package io.github.formulationmath.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Step;
import io.github.formulationmath.size.Criterion;
import io.github.formulationmath.size.MinimumBatch;
import io.github.formulationmath.support.ValueContract;
import io.github.formulationmath.weighing.Balance;
import java.util.List;
import org.junit.jupiter.api.Test;

class TolerancesTest implements ValueContract<Tolerances> {

    private static final Formula LOTION = Formula.inPercent("lotion")
            .phase("water")
            .line("Aqua", "80 %")
            .phase("oil")
            .line("Oil", "19 %")
            .line("Tocopherol", "1 %")
            .build();

    @Override
    public List<Tolerances> different() {
        Tolerances five = Tolerances.of("5 %");
        return List.of(
                five,
                Tolerances.of("4 %"),
                five.withPhase("A", "3 %"),
                five.withPhase("A", "2 %"),
                five.withPhase("B", "3 %"),
                five.withLine("Wax", "3 %"),
                five.withLine("Wax", "2 %"),
                five.withPhase("A", "3 %").withLine("Wax", "2 %"));
    }

    @Override
    public List<Tolerances> same() {
        return different();
    }

    @Test
    void what_was_set_can_be_read() {
        Tolerances set = Tolerances.of("5 %")
                .withPhase("A", "3 %")
                .withLine("Wax", "2 %")
                .withLine("Oil", "1 %");
        assertThat(set.general()).isEqualTo(MassFraction.parse("5 %"));
        assertThat(set.byPhase()).containsExactly(entry("A", MassFraction.parse("3 %")));
        assertThat(set.byIngredient())
                .containsExactly(entry("Wax", MassFraction.parse("2 %")), entry("Oil", MassFraction.parse("1 %")));
        assertThat(set).hasToString("± 5 %, phase A ± 3 %, Wax ± 2 %, Oil ± 1 %");
    }

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
