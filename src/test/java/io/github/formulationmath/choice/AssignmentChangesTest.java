package io.github.formulationmath.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchLine;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Closure;
import io.github.formulationmath.plan.PlannedLine;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.support.Formulas;
import io.github.formulationmath.support.WorkingAssertions;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Vessel;
import io.github.formulationmath.weighing.WeighingStation;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A line fixed to a balance, the bench and the plan of an assignment: a balm of 200 g, which is 159 g, 40 g and 1 g. */
class AssignmentChangesTest {

    private static final Formula BALM = Formulas.balm("balm");
    private static final Batch BATCH = Batch.of(BALM, BatchSize.ofMass("200 g"));
    private static final Balance KITCHEN = Balance.of("0.1 g", "2 kg").named("kitchen");
    private static final Balance LAB = Balance.of("0.01 g", "400 g").named("lab");
    private static final Balance POCKET = Balance.of("0.001 g", "50 g").named("pocket");
    private static final Vessel BEAKER = Vessel.of("beaker", "120 g");
    private static final Vessel BOAT = Vessel.of("boat", "2 g");
    private static final WeighingStation IN_KITCHEN = WeighingStation.inVessel(KITCHEN, BEAKER);
    private static final WeighingStation IN_LAB = WeighingStation.inVessel(LAB, BEAKER);
    private static final WeighingStation FROM_POCKET = WeighingStation.fromBoat(POCKET, BOAT);

    private static BalanceAssignment assign(WeighingStation... stations) {
        return BalanceAssignment.of(BATCH, List.of(stations), Tolerances.of("10 %"));
    }

    private static List<String> balances(BalanceAssignment assignment) {
        return assignment.lines().stream()
                .map(line -> line.station().balance().name())
                .toList();
    }

    @Test
    void a_line_fixed_to_a_balance_is_weighed_there_though_another_would_be_finer() {
        BalanceAssignment free = assign(IN_KITCHEN, FROM_POCKET);
        assertThat(balances(free)).containsExactly("kitchen", "pocket", "pocket");
        BalanceAssignment fixed = free.fixing(BALM.line("Wax"), KITCHEN);
        assertThat(balances(fixed)).containsExactly("kitchen", "kitchen", "pocket");
        assertThat(fixed.candidates(BALM.line("Wax")))
                .extracting(BalanceAssignment.AssignedLine.Candidate::station)
                .containsExactly(IN_KITCHEN);
        assertThat(fixed.candidates(BALM.line("Oil")))
                .extracting(BalanceAssignment.AssignedLine.Candidate::station)
                .containsExactly(IN_KITCHEN, FROM_POCKET);
        // 0.1 g is a tenth of 1 g, which is just the tolerance.
        BalanceAssignment both = fixed.fixing(BALM.line("Tocopherol"), KITCHEN);
        assertThat(balances(both)).containsExactly("kitchen", "kitchen", "kitchen");
        assertThat(both.fixing(BALM.line("Wax"), POCKET).lines())
                .extracting(line -> line.station().balance())
                .containsExactly(KITCHEN, POCKET, KITCHEN);
    }

    @Test
    void a_line_fixed_to_a_balance_that_cannot_weigh_it_is_nowhere() {
        BalanceAssignment fixed = assign(IN_KITCHEN, FROM_POCKET).fixing(BALM.line("Oil"), POCKET);
        assertThat(fixed.unassigned()).extracting(BatchLine::name).containsExactly("Oil");
        assertThat(fixed.toString().lines().toList())
                .hasSize(4)
                .startsWith(
                        "balm, 200 g",
                        "Oil 159 g nowhere: pocket, from boat: would carry 161 g, which is 111 g too much")
                .element(2)
                .asString()
                .startsWith("Wax: 40 g on pocket, from boat, off by at most 0.002");
        assertThatThrownBy(fixed::plan)
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("no balance can weigh")
                .hasMessageContaining("Oil")
                .hasMessageContaining("make a larger one, allow more, or pre-dilute");
        assertThatThrownBy(fixed::masses).isInstanceOf(IllegalStateException.class);
    }

    @Test
    void a_balance_that_stands_nowhere_and_a_line_of_another_formula_are_refused() {
        BalanceAssignment free = assign(IN_KITCHEN, FROM_POCKET);
        assertThatThrownBy(() -> free.fixing(BALM.line("Wax"), LAB))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("lab")
                .hasMessageContaining("stands at none of the stations")
                .hasMessageContaining("take one of those, or give it a station");
        Formula other = Formulas.oilAndWax("other");
        assertThatThrownBy(() -> free.fixing(other.line("Oil"), KITCHEN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> free.candidates(other.line("Oil"))).isInstanceOf(IllegalArgumentException.class);
    }

    /** A balance has the pot if some line is weighed under it; the last such line tells where the pot stands in the end. */
    @Test
    void the_bench_is_the_pot_on_the_balance_of_the_last_line_weighed_in_it() {
        assertThat(assign(IN_KITCHEN, FROM_POCKET).bench())
                .isEqualTo(Bench.of(KITCHEN).with(BEAKER));
        BalanceAssignment moved = assign(IN_KITCHEN, IN_LAB);
        assertThat(balances(moved)).containsExactly("lab", "lab", "lab");
        assertThat(moved.bench()).isEqualTo(Bench.of(LAB).with(BEAKER));
        assertThat(moved.fixing(BALM.line("Tocopherol"), KITCHEN).bench())
                .isEqualTo(Bench.of(KITCHEN).with(BEAKER));
        assertThat(moved.fixing(BALM.line("Oil"), KITCHEN).bench())
                .isEqualTo(Bench.of(LAB).with(BEAKER));
    }

    @Test
    void where_every_line_comes_from_a_boat_the_pot_stands_on_its_first_balance() {
        WeighingStation largeBoat = WeighingStation.fromBoat(LAB, BOAT);
        WeighingStation otherPot = WeighingStation.inVessel(Balance.of("5 g", "50 g"), Vessel.of("bowl", "100 g"));
        WeighingStation coarse =
                WeighingStation.inVessel(Balance.of("20 g", "2 kg").named("coarse"), BEAKER);
        BalanceAssignment boats = assign(largeBoat, coarse, otherPot);
        assertThat(balances(boats)).containsExactly("lab", "lab", "lab");
        assertThat(boats.bench()).isEqualTo(Bench.of(coarse.balance()).with(BEAKER));
        assertThatThrownBy(() -> assign(largeBoat).bench())
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining(
                        "every station is a boat: add the balance on which the vessel of the batch stands");
    }

    @Test
    void the_plan_weighs_every_line_where_it_is_assigned() {
        BalanceAssignment assignment = assign(IN_KITCHEN, FROM_POCKET);
        WeighingPlan plan = assignment.plan();
        assertThat(plan.formula()).isEqualTo(assignment.formula()).isEqualTo(BALM);
        assertThat(plan.lines().stream().map(PlannedLine::reading).map(Amount::toString))
                .containsExactly("159 g", "40 g", "1 g");
        assertThat(plan.bench()).isEqualTo(assignment.bench());
        WeighingPlan closed = assignment.plan(Closure.CLOSED);
        assertThat(closed.bench()).isEqualTo(assignment.bench().closing(Closure.CLOSED));
        Bench told = assignment.bench();
        assertThat(assignment.plan(told)).isEqualTo(plan);
        assertThat(assignment.masses().additions()).hasSize(3);
        assignment.lines().forEach(WorkingAssertions::assertSelfChecking);
    }

    /** Two balances of one step, and two vessels of one mass. */
    @Test
    void of_stations_as_good_as_each_other_the_first_is_taken() {
        WeighingStation again = WeighingStation.inVessel(KITCHEN.named("again"), BEAKER);
        assertThat(balances(assign(IN_KITCHEN, again))).containsExactly("kitchen", "kitchen", "kitchen");
        assertThat(balances(assign(again, IN_KITCHEN))).containsExactly("again", "again", "again");
        WeighingStation bowl = WeighingStation.inVessel(KITCHEN, Vessel.of("bowl", "120 g"));
        assertThat(assign(bowl, IN_KITCHEN).bench().vessel()).isEqualTo(bowl.vessel());
        assertThat(assign(IN_KITCHEN, bowl).bench().vessel()).isEqualTo(BEAKER);
    }

    @Test
    void a_balance_without_a_name_is_called_by_its_step() {
        WeighingStation nameless = WeighingStation.inVessel(Balance.of("0.1 g", "2 kg"), BEAKER);
        BalanceAssignment.AssignedLine oil = assign(nameless).lines().get(0);
        assertThat(oil.toString()).startsWith("Oil: 159 g on d = 0.1 g, in beaker, off by at most 0.0");
        assertThat(assign(IN_KITCHEN).lines().get(0).toString())
                .startsWith("Oil: 159 g on kitchen, in beaker, off by at most 0.0");
        assertThat(oil.candidates().get(0).toString())
                .startsWith(nameless + ": ")
                .contains("Oil is off by at most")
                .endsWith(" %");
    }

    /** Oil of 0.8 g/mL: 159 g are 198.75 mL. */
    @Test
    void a_vessel_holds_what_its_volume_allows_and_one_that_is_not_used_is_not_asked() {
        Formula dense = Formula.inPercent("dense")
                .line(Ingredient.of("Oil").withDensity(Density.parse("0.8 g/mL")), "79.5 %")
                .line("Wax", "20.5 %")
                .build();
        Batch batch = Batch.of(dense, BatchSize.ofMass("200 g"));
        WeighingStation small =
                WeighingStation.inVessel(KITCHEN, Vessel.of("small", "120 g").holding("198 mL"));
        WeighingStation large =
                WeighingStation.inVessel(KITCHEN, Vessel.of("large", "120 g").holding("198.75 mL"));
        BalanceAssignment assignment = BalanceAssignment.of(batch, List.of(small, large), Tolerances.of("10 %"));
        assertThat(assignment.unassigned()).isEmpty();
        assertThat(assignment.bench().vessel()).isEqualTo(large.vessel());
        assertThat(assignment.candidates(dense.line("Oil")).get(0).verdict())
                .hasToString("stands under another vessel (small) than the one the batch is made in");
        assertThat(assignment.notConsidered().stream().map(Object::toString))
                .containsExactly("the volume of large was not considered for Wax: densities are missing");
        assertThat(BalanceAssignment.of(batch, List.of(small), Tolerances.of("10 %"))
                        .candidates(dense.line("Oil"))
                        .get(0)
                        .verdict())
                .hasToString("would hold 198.75 mL, more than 198 mL");
    }
}
