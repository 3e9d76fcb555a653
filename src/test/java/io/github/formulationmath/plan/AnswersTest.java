package io.github.formulationmath.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.choice.BalanceAssignment;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.simulation.CoverageFactor;
import io.github.formulationmath.size.BatchConstraints;
import io.github.formulationmath.size.BatchWindow;
import io.github.formulationmath.size.Criterion;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.ErrorModel;
import io.github.formulationmath.weighing.Vessel;
import io.github.formulationmath.weighing.WeighingMethod;
import io.github.formulationmath.weighing.WeighingStation;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What answers are made of and how they read at a prompt: one balm of 200 g on a display of 0.1 g, by hand. */
class AnswersTest {

    private static final Formula BALM = Formula.inPercent("balm")
            .line("Oil", "79.5 %")
            .line("Wax", "20 %")
            .line("Tocopherol", "0.5 %")
            .build();
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
    void a_window_end_says_what_binds_it() {
        BatchWindow.Feasible window = (BatchWindow.Feasible) BatchWindow.of(
                BALM,
                Bench.of(TENTH),
                BatchConstraints.of(Criterion.oneDivision()).withStock("Wax", "100 g"));
        assertThat(window.constraints().criteria()).containsExactly(Criterion.oneDivision());
        assertThat(window.lowerEnd().toString()).isEqualTo("20 g (every line at least one division)");
        assertThat(window.lowerEnd().bindingLine()).contains(BALM.line("Tocopherol"));
        assertThat(window.upperEnd().toString()).startsWith("500 g (").contains("Wax");
        assertThat(english(window.lowerEnd().origin().question()))
                .isNotEqualTo(english(window.upperEnd().origin().question()));
        assertThat(window.contains(Amount.mass("20 g"))).isTrue();
        assertThat(window.contains(Amount.mass("500 g"))).isTrue();
        assertThat(window.contains(Amount.mass("500.1 g"))).isFalse();
        assertThat(window.contains(Amount.mass("19.9 g"))).isFalse();
    }

    @Test
    void an_assignment_tells_who_weighs_what_and_what_nobody_can() {
        WeighingStation bench = WeighingStation.inVessel(TENTH, Vessel.of("beaker", "120 g"));
        WeighingStation fine = WeighingStation.fromBoat(Balance.of("0.001 g", "20 g"), Vessel.of("boat", "2 g"));
        BalanceAssignment assignment = BalanceAssignment.of(BATCH, List.of(bench, fine), Tolerances.of("50 %"));
        assertThat(assignment.batch()).isEqualTo(BATCH);
        assertThat(assignment.unassigned()).isEmpty();
        assertThat(assignment.toString())
                .contains(
                        "Oil: 159 g on d = 0.1 g, in beaker",
                        "Wax: 40 g on d = 0.1 g, in beaker",
                        "Tocopherol: 1 g on d = 0.001 g, from boat")
                .doesNotContain("nowhere: ");
        BalanceAssignment.AssignedLine oil = assignment.lines().get(0);
        assertThat(oil.line().name()).isEqualTo("Oil");
        assertThat(english(oil.origin().question())).contains("Oil");
        assertThat(bench.toString()).contains("beaker").isNotEqualTo(fine.toString());
        assertThat(bench.hashCode()).isNotEqualTo(fine.hashCode());
        BalanceAssignment lacking = BalanceAssignment.of(BATCH, List.of(fine), Tolerances.of("50 %"));
        assertThat(lacking.unassigned()).hasSize(2);
        assertThat(lacking.toString()).contains("nowhere: ");
    }

    /** 18 g and the boat of 2 g are just what 20 g carry; a least load of 18 g is just reached. */
    @Test
    void a_station_carries_up_to_its_capacity_and_from_its_least_load() {
        Formula two =
                Formula.inPercent("two").line("A", "18 %").line("B", "82 %").build();
        Batch batch = Batch.of(two, BatchSize.ofMass("100 g"));
        Vessel boat = Vessel.of("boat", "2 g");
        Balance exact = Balance.of("0.001 g", "20 g").withMinimumLoad(Amount.mass("18 g"));
        assertThat(BalanceAssignment.of(batch, List.of(WeighingStation.fromBoat(exact, boat)), Tolerances.of("50 %"))
                        .lines())
                .extracting(line -> line.line().name())
                .containsExactly("A");
        Balance more = Balance.of("0.001 g", "20 g").withMinimumLoad(Amount.mass("18.001 g"));
        assertThat(BalanceAssignment.of(batch, List.of(WeighingStation.fromBoat(more, boat)), Tolerances.of("50 %"))
                        .lines())
                .isEmpty();
        Balance less = Balance.of("0.001 g", "19.999 g");
        assertThat(BalanceAssignment.of(batch, List.of(WeighingStation.fromBoat(less, boat)), Tolerances.of("50 %"))
                        .lines())
                .isEmpty();
    }

    @Test
    void criteria_are_told_apart_by_name_and_text() {
        List<Criterion> criteria = List.of(
                Criterion.oneDivision(),
                Criterion.exactReadings(),
                Criterion.minimumWeight(),
                Criterion.leastNetMass(Amount.mass("1 g")),
                Criterion.roundingWithin(Tolerances.of("5 %")),
                Criterion.madeWithin(Tolerances.of("5 %")),
                Criterion.madeWithin(Tolerances.of("5 %"), Amount.mass("0.1 g")),
                Criterion.errorBound(Tolerances.of("5 %"), WeighingMethod.TARE_EACH),
                Criterion.errorBound(Tolerances.of("5 %"), WeighingMethod.TARE_EACH, CoverageFactor.of(2)),
                Criterion.capKept(
                        BALM.lines()
                                .get(1)
                                .ingredient()
                                .parts()
                                .keySet()
                                .iterator()
                                .next(),
                        MassFraction.parse("25 %"),
                        WeighingMethod.TARE_EACH));
        assertThat(criteria)
                .extracting(Object::toString)
                .doesNotHaveDuplicates()
                .doesNotContain("");
        assertThat(criteria)
                .extracting(criterion ->
                        english(criterion.on(BALM, Bench.of(TENTH)).asked().get(0)))
                .doesNotContain("");
        assertThat(criteria).doesNotHaveDuplicates();
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
