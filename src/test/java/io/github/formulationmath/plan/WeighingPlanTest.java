package io.github.formulationmath.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.support.Formulas;
import io.github.formulationmath.support.WorkingAssertions;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Vessel;
import org.junit.jupiter.api.Test;

class WeighingPlanTest {

    private static final Formula LOTION = Formula.inPercent("Oat lotion")
            .phase("water")
            .quantitySufficient("Aqua")
            .line("Glycerin", "3.33 %")
            .phase("oil")
            .line("Avena Sativa Kernel Oil", "12 %")
            .line("Glyceryl Stearate SE", "5.125 %")
            .build();

    private static final Balance TENTH = Balance.of("0.1 g", "2 kg");

    private static WeighingPlan plan(String batch, Closure closure) {
        return WeighingPlan.of(
                Batch.of(LOTION, BatchSize.ofMass(batch)), Bench.of(TENTH).closing(closure));
    }

    @Test
    void each_line_by_itself_leaves_a_difference_that_is_reported() {
        WeighingPlan plan = plan("250 g", Closure.INDEPENDENT);
        assertThat(plan.line("Aqua").reading()).isEqualTo(Amount.mass("198.9 g"));
        assertThat(plan.line("Glycerin").reading()).isEqualTo(Amount.mass("8.3 g"));
        assertThat(plan.line("Glycerin").roundingError()).isEqualTo(Amount.mass("-0.025 g"));
        assertThat(plan.line("Glycerin").relativeRoundingError().canonical()).isEqualTo(Ratio.of(1, 333));
        assertThat(plan.line("Avena Sativa Kernel Oil").cumulativeReading()).isEqualTo(Amount.mass("237.2 g"));
        assertThat(plan.closes()).isTrue();
    }

    @Test
    void every_number_shows_its_working() {
        for (Closure closure : Closure.values()) {
            WeighingPlan plan = plan("123.4 g", closure);
            WorkingAssertions.assertSelfChecking(plan.total());
            WorkingAssertions.assertSelfChecking(plan.difference().working());
            for (PlannedLine line : plan.lines()) {
                WorkingAssertions.assertSelfChecking(line);
                WorkingAssertions.assertSelfChecking(line.roundingError().working());
                WorkingAssertions.assertSelfChecking(
                        line.relativeRoundingError().working());
                WorkingAssertions.assertSelfChecking(line.cumulativeReading().working());
            }
        }
    }

    @Test
    void closed_lines_add_up_to_the_rounded_batch() {
        Formula formula = Formula.inPercent("example")
                .line("a", "44.42 %")
                .line("b", "36.38 %")
                .line("c", "19.20 %")
                .build();
        Batch batch = Batch.of(formula, BatchSize.ofMass("100 g"));
        Balance coarse = Balance.of("1 g", "500 g");
        WeighingPlan apart = WeighingPlan.of(batch, coarse);
        assertThat(apart.total()).isEqualTo(Amount.mass("99 g"));
        assertThat(apart.difference()).isEqualTo(Amount.mass("-1 g"));
        assertThat(apart.closes()).isFalse();
        WeighingPlan closed = WeighingPlan.of(batch, Bench.of(coarse).closing(Closure.CLOSED));
        assertThat(closed.lines())
                .extracting(PlannedLine::divisions)
                .containsExactly(Ratio.of(45), Ratio.of(36), Ratio.of(19));
        assertThat(closed.closes()).isTrue();
    }

    @Test
    void the_quantity_sufficient_line_may_take_the_rest() {
        WeighingPlan plan = plan("100.06 g", Closure.QS_TAKES_REST);
        assertThat(plan.total()).isEqualTo(Amount.mass("100.1 g"));
        Formula fixed = Formulas.only("fixed", "Aqua");
        assertThatThrownBy(() -> WeighingPlan.of(
                        Batch.of(fixed, BatchSize.ofMass("10 g")),
                        Bench.of(TENTH).closing(Closure.QS_TAKES_REST)))
                .hasMessageContaining("no line of \"fixed\" is q.s.");
        Formula crowded = Formula.inPercent("crowded")
                .quantitySufficient("Aqua")
                .line("a", "36 %")
                .line("b", "36 %")
                .line("c", "27 %")
                .build();
        assertThatThrownBy(() -> WeighingPlan.of(
                        Batch.of(crowded, BatchSize.ofMass("0.2 g")),
                        Bench.of(TENTH).closing(Closure.QS_TAKES_REST)))
                .hasMessageContaining("-1 divisions for Aqua");
    }

    @Test
    void ties_go_to_the_even_division() {
        Formula halves =
                Formula.inPercent("halves").line("a", "50 %").line("b", "50 %").build();
        WeighingPlan plan = WeighingPlan.of(Batch.of(halves, BatchSize.ofMass("0.5 g")), TENTH);
        assertThat(plan.line("a").reading()).isEqualTo(Amount.mass("0.2 g"));
        assertThat(plan.total()).isEqualTo(Amount.mass("0.4 g"));
    }

    @Test
    void a_display_in_ounces_is_read_in_ounces() {
        Balance ounces = Balance.of("0.05 oz", "5 lb");
        WeighingPlan plan = WeighingPlan.of(Batch.of(LOTION, BatchSize.ofMass("16 oz")), ounces);
        assertThat(plan.line("Avena Sativa Kernel Oil").reading()).isEqualTo(Amount.mass("1.9 oz"));
        assertThat(plan.line("Avena Sativa Kernel Oil").roundingError()).isEqualTo(Amount.mass("-0.02 oz"));
        WorkingAssertions.assertSelfChecking(plan.line("Avena Sativa Kernel Oil"));
    }

    /** Common practice, no published source: 0.5 % on a display of 1 g needs 200 g, on 0.1 g needs 20 g. */
    @Test
    void half_a_percent_needs_two_hundred_divisions() {
        Formula formula = Formula.inPercent("half")
                .quantitySufficient("Aqua")
                .line("active", "0.5 %")
                .build();
        assertThat(shownFor(formula, "200 g", "1 g")).isEqualTo(Ratio.ONE);
        assertThat(shownFor(formula, "20 g", "0.1 g")).isEqualTo(Ratio.ONE);
        assertThat(shownFor(formula, "100 g", "1 g")).isEqualTo(Ratio.ZERO);
    }

    private static Ratio shownFor(Formula formula, String batch, String step) {
        return WeighingPlan.of(Batch.of(formula, BatchSize.ofMass(batch)), Balance.of(step, "1 kg"))
                .line("active")
                .divisions();
    }

    @Test
    void an_overload_says_by_how_much_and_what_would_fit() {
        Bench bench = Bench.of(TENTH).with(Vessel.of("beaker", "214 g"));
        assertThatThrownBy(() -> WeighingPlan.of(Batch.of(LOTION, BatchSize.ofMass("1.8 kg")), bench))
                .isInstanceOf(OverloadException.class)
                .hasMessageContaining("by 14 g")
                .hasMessageContaining("1786 g")
                .satisfies(e -> {
                    assertThat(((OverloadException) e).excess().isEquivalentTo(Amount.mass("14 g")))
                            .isTrue();
                    assertThat(((OverloadException) e).largestContent().isEquivalentTo(Amount.mass("1786 g")))
                            .isTrue();
                });
        assertThatThrownBy(() -> Bench.of(TENTH).with(Vessel.of("iron pot", "2.5 kg")))
                .hasMessageContaining("alone overloads");
    }

    @Test
    void what_a_balance_still_carries_may_fix_the_batch() {
        Vessel beaker = Vessel.of("beaker", "214 g");
        Batch largest = Batch.of(LOTION, BatchSize.ofMass(TENTH.capacityUnder(beaker)));
        assertThat(largest.mass()).isEqualTo(Amount.mass("1786 g"));
        assertThat(WeighingPlan.of(largest, Bench.of(TENTH).with(beaker).closing(Closure.CLOSED))
                        .closes())
                .isTrue();
    }

    @Test
    void an_overfilled_vessel_says_by_how_much_and_what_would_fit() {
        Bench bench = Bench.of(TENTH)
                .with(Vessel.of("beaker", "214 g").holding("600 mL", "450 mL"))
                .withProductDensity(Density.ofGramsPerMillilitre("0.96"));
        assertThat(WeighingPlan.of(Batch.of(LOTION, BatchSize.ofMass("432 g")), bench)
                        .lines())
                .hasSize(4);
        assertThatThrownBy(() -> WeighingPlan.of(Batch.of(LOTION, BatchSize.ofMass("480 g")), bench))
                .isInstanceOf(OverfillException.class)
                .hasMessageContaining("by 50 mL")
                .hasMessageContaining("432 g");
    }

    @Test
    void lines_below_the_minimum_load_are_marked() {
        Bench bench = Bench.of(TENTH.withMinimumLoad(Amount.mass("5 g")));
        WeighingPlan plan = WeighingPlan.of(Batch.of(LOTION, BatchSize.ofMass("100 g")), bench);
        assertThat(plan.lines()).extracting(PlannedLine::isBelowMinimumLoad).containsExactly(false, true, false, false);
    }
}
