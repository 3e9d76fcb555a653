package io.github.formulationmath.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.support.Formulas;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.ErrorModel;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What answers are made of and how they read at a prompt: one balm of 200 g on a display of 0.1 g, by hand. */
class AnswersTest {

    private static final Formula BALM = Formulas.balm("balm");
    private static final Balance TENTH = Balance.of("0.1 g", "2 kg");
    private static final Batch BATCH = Batch.of(BALM, BatchSize.ofMass("200 g"));

    private static String english(Phrase phrase) {
        return Wording.english().text(phrase);
    }

    @Test
    void a_plan_reads_as_its_batch_its_bench_and_its_readings() {
        WeighingPlan plan = WeighingPlan.of(BATCH, TENTH);
        assertThat(plan.toString())
                .contains("balm", "200 g", "0.1 g")
                .contains("Oil: 159")
                .contains("Wax: 40")
                .contains("Tocopherol: 1");
        assertThat(plan.lines().get(2).toString()).startsWith("Tocopherol: 1");
        assertThat(plan).hasSameHashCodeAs(WeighingPlan.of(BATCH, TENTH));
        assertThat(plan.hashCode())
                .isNotEqualTo(WeighingPlan.of(Batch.of(BALM, BatchSize.ofMass("300 g")), TENTH)
                        .hashCode());
        assertThat(plan.lines().stream().map(Object::hashCode)).doesNotHaveDuplicates();
    }

    /** Repeatability 0.05 g and display 0.1 g: u² = 0.05² + 2 · 0.1²/12 = 0.0041666… g² for each addition. */
    @Test
    void an_expected_product_has_its_parts() {
        Balance balance = TENTH.withErrors(ErrorModel.readabilityOnly().withRepeatability("0.05 g"));
        WeighingPlan plan = WeighingPlan.of(BATCH, balance);
        ExpectedProduct product = ExpectedProduct.of(plan, WeighingMethod.TARE_EACH);
        assertThat(product.plan()).isSameAs(plan);
        assertThat(product.lines()).hasSize(3);
        assertThat(product.masses().size()).isEqualTo(3);
        assertThat(product.toString()).startsWith(plan.batch() + " as made: [");
        ExpectedLine wax = product.lines().get(1);
        assertThat(wax.planned()).isEqualTo(plan.lines().get(1));
        assertThat(wax.addition().uncertainty().canonical().doubleValue())
                .isCloseTo(Math.sqrt(0.05 * 0.05 + 2 * 0.01 / 12), within(1e-12));
        assertThat(wax.made().uncertainty().signum()).isPositive();
        assertThat(wax.name()).isEqualTo("Wax");
        assertThat(wax.subscript()).isEqualTo("2");
        assertThat(wax).hasToString(wax.made().toString());
        assertThat(english(wax.origin().question())).contains("Wax");
        assertThat(english(wax.relativeDeviation().origin().question())).contains("Wax");
    }

    @Test
    void tolerances_have_their_parts() {
        Tolerances tolerances = Tolerances.of("5 %").withPhase("oils", "3 %").withLine("Wax", "2 %");
        assertThat(tolerances.general()).isEqualTo(MassFraction.parse("5 %"));
        assertThat(tolerances.byPhase()).hasSize(1).containsEntry("oils", MassFraction.parse("3 %"));
        assertThat(tolerances.byIngredient()).hasSize(1).containsEntry("Wax", MassFraction.parse("2 %"));
        assertThat(tolerances.toString()).contains("5 %", "oils", "3 %", "Wax", "2 %");
        FormulaLine wax = BALM.line("Wax");
        assertThat(tolerances.forLine(wax)).isEqualTo(MassFraction.parse("2 %"));
        assertThat(tolerances.forLine(BALM.line("Oil"))).isEqualTo(MassFraction.parse("5 %"));
    }

    @Test
    void a_bulk_planner_knows_its_size() {
        BulkPlanner planner = BulkPlanner.of(List.of(BALM, BALM));
        assertThat(planner.size()).isEqualTo(2);
        assertThat(planner.lineCount(1)).isEqualTo(3);
        double[] divisions = new double[3];
        assertThat(planner.plan(1, Ratio.of(2000), divisions)).isEqualTo(2000);
        assertThat(divisions).containsExactly(1590, 400, 10);
    }
}
