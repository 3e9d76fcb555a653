package io.github.formulationmath.size;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.document.Format;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.support.RandomFormulas;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Vessel;
import java.util.List;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;

/** What a window says of itself: ends, gaps, and what it could not consider. */
class WindowAnswersTest {

    private static final Formula BALM = Formula.inPercent("balm")
            .line("Oil", "78 %")
            .line("Wax", "20 %")
            .line("Tocopherol", "2 %")
            .build();

    private static final Balance TENTH = Balance.of("0.1 g", "2 kg");

    private static final Criterion ROUNDING = Criterion.roundingWithin(Tolerances.of("5 %"));

    private static final Bench BLIND =
            Bench.of(TENTH).with(Vessel.of("jar", "85 g").holding("150 mL", "120 mL"));

    private static final String REMARK = "the volume of jar is not considered: the density of the product is not known;"
            + " give it by withProductDensity";

    private static Amount<Mass> mass(String text) {
        return Amount.mass(text);
    }

    @Test
    void a_volume_without_a_density_is_said_not_to_be_considered() {
        BatchWindow window = BatchWindow.of(BALM, BLIND, Criterion.oneDivision());
        assertThat(window.notConsidered()).hasToString("[" + REMARK + "]");
        assertThat(window).hasToString("balm: from 5 g to 1915 g; " + REMARK);
        assertThat(explained(window.largest().orElseThrow())).contains(REMARK);
        assertThat(explained(window.smallest().orElseThrow())).doesNotContain("withProductDensity");
        WeighingPlan plan = WeighingPlan.of(Batch.of(BALM, BatchSize.ofMass("500 g")), BLIND);
        assertThat(plan.notConsidered()).isEqualTo(window.notConsidered());
        assertThat(plan.toString()).endsWith("; " + REMARK);
    }

    private static String explained(BatchWindow.End end) {
        return end.working().document().print(Format.TEXT).replaceAll("\\s+", " ");
    }

    @Test
    void with_the_density_the_volume_counts_and_nothing_is_left_out() {
        Bench watched = BLIND.withProductDensity(Density.parse("0.96 g/mL"));
        assertThat(BLIND.withProductDensity("0.96 g/mL")).isEqualTo(watched);
        assertThatThrownBy(() -> BLIND.withProductDensity("0.96")).hasMessageContaining("unit is missing");
        BatchWindow window = BatchWindow.of(BALM, watched, Criterion.oneDivision());
        assertThat(window.notConsidered()).isEmpty();
        assertThat(window).hasToString("balm: from 5 g to 115.2 g");
        WeighingPlan plan = WeighingPlan.of(Batch.of(BALM, BatchSize.ofMass("100 g")), watched);
        assertThat(plan.notConsidered()).isEmpty();
        assertThat(plan.toString()).doesNotContain("not considered");
    }

    @Test
    void an_empty_window_says_what_it_left_out_too() {
        Bench coarse = Bench.of(Balance.of("5 g", "200 g")).with(BLIND.vessel());
        BatchWindow none = BatchWindow.of(BALM, coarse, Criterion.oneDivision());
        assertThat(none.toString()).startsWith("balm: no batch; ").endsWith("; " + REMARK);
        assertThat(none.smallest()).isEmpty();
        assertThat(none.largest()).isEmpty();
        assertThat(none.contains("100 g")).isFalse();
        assertThat(none.nearest("100 g")).isEmpty();
    }

    /** By hand: 2 % of M shown as one division of 0.1 g, 5 % off, needs 0.1/(1.05 · 0.02) = 100/21 g; all from n = 10 on. */
    @Test
    void the_text_says_where_the_gaps_end_and_what_fractions_come_to() {
        BatchWindow window = BatchWindow.of(BALM, Balance.of("0.1 g", "115 g"), ROUNDING);
        assertThat(window).hasToString("balm: from 4.762 g to 115 g, with gaps below 47.62 g");
        assertThat(((BatchWindow.Feasible) window).everySizeFrom()).isEqualTo(Amount.grams(Ratio.of(1000, 21)));
        assertThat(window.smallest().orElseThrow().toString()).startsWith("4.762 g (");
        assertThat(MinimumBatch.of(BALM, TENTH, ROUNDING).toString()).contains("at least 4.762 g (");
        assertThat(window.contains(Amount.grams(Ratio.of(100, 21)))).isTrue();
        assertThat(window.contains("4.76 g")).isFalse();
        assertThat(window.contains("6 g")).isFalse();
        assertThat(window.nearest("6 g").orElseThrow().in(FormulationUnits.GRAM))
                .isEqualTo(Ratio.of(100, 19));
    }

    @Test
    void a_window_without_gaps_speaks_of_none() {
        BatchWindow.Feasible window = (BatchWindow.Feasible) BatchWindow.of(BALM, TENTH, Criterion.oneDivision());
        assertThat(window.everySizeFrom()).isEqualTo(mass("5 g"));
        assertThat(window).hasToString("balm: from 5 g to 2000 g");
        assertThat(window.smallest()).contains(window.lowerEnd());
        assertThat(window.largest()).contains(window.upperEnd());
    }

    @Test
    void sizes_that_stand_apart_have_gaps_up_to_the_largest() {
        for (BatchConstraints apart : new BatchConstraints[] {
            BatchConstraints.of(Criterion.exactReadings()),
            BatchConstraints.of(Criterion.madeWithin(Tolerances.of("5 %"))),
            BatchConstraints.of(ROUNDING).inStepsOf("1 g").withLeastSize("10 g")
        }) {
            BatchWindow.Feasible window = (BatchWindow.Feasible) BatchWindow.of(BALM, Bench.of(TENTH), apart);
            assertThat(window.everySizeFrom()).isEqualTo(window.upperEnd().mass());
            assertThat(window.toString()).endsWith("with gaps between");
        }
    }

    @Test
    void a_single_size_has_no_gaps() {
        BatchWindow window = BatchWindow.of(BALM, Balance.of("0.1 g", "9 g"), Criterion.exactReadings());
        assertThat(window).hasToString("balm: from 5 g to 5 g");
    }

    /** The islands are walked upwards by {@link Sizes}; here the start is looked for from above. */
    @Test
    void the_end_of_the_gaps_is_the_start_of_the_last_island_for_random_formulas() {
        RandomFormulas random = new RandomFormulas(7);
        int met = 0;
        for (int run = 0; run < 300; run++) {
            Formula formula = RandomFormulas.formula(random.parts(30));
            Tolerances tolerances = Tolerances.of((3 + random.below(25)) + " %");
            Balance balance = Balance.of("1 g", (20 + random.below(500)) + " g");
            BatchWindow window = BatchWindow.of(formula, balance, Criterion.roundingWithin(tolerances));
            if (window instanceof BatchWindow.Feasible open) {
                met++;
                Ratio last = open.upperEnd().mass().canonical();
                List<Bounds> islands = Listed.parts(
                        Criterion.roundingWithin(tolerances).on(formula, Bench.of(balance)),
                        open.lowerEnd().mass().canonical(),
                        last);
                Bounds island = islands.get(islands.size() - 1);
                assertThat(open.everySizeFrom().in(FormulationUnits.GRAM))
                        .isEqualTo(island.lower().orElseThrow());
                assertThat(island.upper()).contains(last);
            }
        }
        assertThat(met).isGreaterThan(100);
    }

    @Test
    void questions_in_words_are_answered_like_amounts() {
        Sizes sizes = Criterion.roundingWithin(Tolerances.of("5 %")).on(BALM, Bench.of(TENTH));
        assertThat(sizes.contains("50 g")).isTrue();
        assertThat(sizes.contains("4.76 g")).isFalse();
        assertThat(sizes.nearest("6 g")).isEqualTo(sizes.nearest(mass("6 g")));
        assertThatThrownBy(() -> sizes.contains("6 mL")).hasMessageContaining("mL");
        assertThatThrownBy(() -> BatchWindow.of(BALM, TENTH, ROUNDING).contains("six"))
                .hasMessageContaining("a number and a unit");
    }

    @Test
    void passing_sizes_say_where_they_start_and_where_the_gaps_end() {
        assertThat(Criterion.roundingWithin(Tolerances.of("5 %")).on(BALM, Bench.of(TENTH)))
                .hasToString("balm on d = 0.1 g, rounding of each line within ± 5 %: from 4.762 g;"
                        + " all from 47.62 g on");
        assertThat(Criterion.roundingWithin(Tolerances.of("0 %"))
                        .on(BALM, Bench.of(TENTH))
                        .toString())
                .endsWith("from 5 g; gaps never end");
    }
}
