package io.github.formulationmath.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.support.Formulas;
import io.github.formulationmath.support.RandomFormulas;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Vessel;
import io.github.formulationmath.weighing.WeighingMethod;
import org.junit.jupiter.api.Test;

/** A figure that is just met counts as met; what a plan or an assignment was made of can be read from it. */
class EdgesOfPlansTest {

    private static final Formula BALM = Formulas.balmToMakeUp("balm");

    private static final Balance TENTH = Balance.of("0.1 g", "2 kg");

    private static Batch batch(String size) {
        return Batch.of(BALM, BatchSize.ofMass(size));
    }

    @Test
    void a_line_at_the_minimum_load_is_not_below_it() {
        Balance fromHalf = TENTH.withMinimumLoad(Amount.mass("0.5 g"));
        assertThat(WeighingPlan.of(batch("100 g"), fromHalf).line("Tocopherol").isBelowMinimumLoad())
                .isFalse();
        assertThat(WeighingPlan.of(batch("99 g"), fromHalf).line("Tocopherol").isBelowMinimumLoad())
                .isTrue();
    }

    @Test
    void a_batch_that_overfills_says_by_how_much() {
        Bench small = Bench.of(TENTH)
                .with(Vessel.of("jar", "100 g").holding("150 mL", "120 mL"))
                .withProductDensity(Density.parse("0.8 g/mL"));
        assertThat(WeighingPlan.of(batch("96 g"), small).total()).isEqualTo(Amount.mass("96 g"));
        // 100 g take 125 mL.
        assertThatThrownBy(() -> WeighingPlan.of(batch("100 g"), small))
                .isInstanceOfSatisfying(OverfillException.class, e -> {
                    assertThat(e.excess().in(FormulationUnits.MILLILITRE)).isEqualTo(Ratio.of(5));
                    assertThat(e.largestContent().in(FormulationUnits.GRAM)).isEqualTo(Ratio.of(96));
                });
        assertThat(small.toString()).contains("0.8 g/mL");
        assertThat(Bench.of(TENTH).toString()).doesNotContain("g/mL").doesNotContain("null");
    }

    /** Tare and reading are each even over ± 0.05 g: u = 0.1/√6 g = 0.0408 g, of 100 g 0.041 %, times 1 − w. */
    @Test
    void what_an_expected_product_is_made_of_can_be_read() {
        WeighingPlan plan = WeighingPlan.of(batch("100 g"), TENTH);
        ExpectedProduct product = ExpectedProduct.of(plan, WeighingMethod.TARE_EACH);
        assertThat(product.plan()).isSameAs(plan);
        assertThat(product.lines()).hasSize(3);
        assertThat(product.masses().additions()).hasSize(3);
        assertThat(product.toString()).contains("as made: [").contains("Tocopherol 0.5 % in [");
        ExpectedLine trace = product.line("Tocopherol");
        assertThat(trace.addition().addition().target().canonical()).isEqualTo(Ratio.of(1, 2));
        assertThat(trace.made().uncertainty().canonical().doubleValue()).isCloseTo(0.0004062, within(0.0000002));
        assertThat(trace.origin().question().key()).isEqualTo("question.largest-deviation");
        assertThat(trace.origin().question().arguments()).contains("Tocopherol");
        assertThat(trace.name()).isEqualTo("Tocopherol");
        assertThat(trace.working().steps().stream().map(step -> step.label())).contains("Δ_3");
    }

    @Test
    void a_vessel_without_a_volume_leaves_nothing_to_say() {
        assertThat(Bench.of(TENTH).notConsidered()).isEmpty();
        assertThat(Bench.of(TENTH).with(Vessel.of("jar", "85 g")).notConsidered())
                .isEmpty();
    }

    @Test
    void a_volume_without_a_density_is_told_in_a_sentence() {
        Bench blind = Bench.of(TENTH).with(Vessel.of("jar", "85 g").holding("150 mL"));
        assertThat(blind.notConsidered()).hasSize(1);
        assertThat(blind.unconsideredText())
                .isEqualTo("; the volume of jar is not considered: the density of the product is not known; give it by"
                        + " withProductDensity");
        assertThat(WeighingPlan.of(batch("50 g"), blind).toString()).endsWith(blind.unconsideredText());
        Bench seeing = blind.withProductDensity("0.96 g/mL");
        assertThat(seeing.notConsidered()).isEmpty();
        assertThat(seeing.unconsideredText()).isEmpty();
    }

    @Test
    void a_bench_tells_what_it_closes_within() {
        assertThat(Bench.of(TENTH).closingWithin(Tolerances.of("5 %")).toString())
                .endsWith("WITHIN_TOLERANCE (± 5 %)");
        assertThat(Bench.of(TENTH).closing(Closure.WITHIN_TOLERANCE).toString()).endsWith("WITHIN_TOLERANCE");
    }

    /** 1786 g and a beaker of 214 g are the 2 kg that the balance carries. */
    @Test
    void a_balance_carries_its_capacity_and_no_division_more() {
        Bench bench = Bench.of(TENTH).with(Vessel.of("beaker", "214 g"));
        assertThat(WeighingPlan.of(batch("1786 g"), bench).total()).isEqualTo(Amount.mass("1786 g"));
        assertThatThrownBy(() -> WeighingPlan.of(batch("1786.1 g"), bench))
                .isInstanceOfSatisfying(OverloadException.class, e -> {
                    assertThat(e.excess()).isEqualTo(Amount.mass("0.1 g"));
                    assertThat(e).hasMessageStartingWith("a batch of 1786.1 g in beaker");
                });
    }

    /** Of 0.6 g each, two lines read 1 g when three are closed to 2 g, and all three by themselves. */
    @Test
    void a_line_that_the_closure_leaves_out_is_told_from_one_that_is_too_small() {
        Formula three = RandomFormulas.formula(1, 1, 1);
        Bench grams = Bench.of(Balance.of("1 g", "2 kg"));
        WeighingPlan closed =
                WeighingPlan.of(Batch.of(three, BatchSize.ofMass("1.8 g")), grams.closing(Closure.CLOSED));
        assertThat(closed.lines()).extracting(PlannedLine::isDroppedByClosure).containsExactly(false, false, true);
        assertThat(closed.lines().get(2).reading()).isEqualTo(Amount.mass("0 g"));
        assertThat(closed.lines().get(2).nearestReading()).isEqualTo(Amount.mass("1 g"));
        WeighingPlan small = WeighingPlan.of(Batch.of(three, BatchSize.ofMass("1.5 g")), grams);
        assertThat(small.lines()).noneMatch(PlannedLine::isDroppedByClosure);
        assertThat(small.lines().get(0).nearestReading()).isEqualTo(Amount.mass("0 g"));
    }

    /** The readings of three times 0.6 g pass the batch, and a balance that carries just that. */
    @Test
    void readings_that_pass_the_batch_are_told_and_only_they() {
        Formula three = RandomFormulas.formula(1, 1, 1);
        Bench tight = Bench.of(Balance.of("1 g", "2.5 g"));
        assertThatThrownBy(() -> WeighingPlan.of(Batch.of(three, BatchSize.ofMass("1.8 g")), tight))
                .hasMessageStartingWith("a batch of 1.8 g, whose rounded lines add up to 3 g, in ");
        assertThatThrownBy(() -> WeighingPlan.of(Batch.of(three, BatchSize.ofMass("3 g")), tight))
                .hasMessageStartingWith("a batch of 3 g in ");
    }
}
