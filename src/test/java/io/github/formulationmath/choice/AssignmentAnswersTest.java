package io.github.formulationmath.choice;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.support.Formulas;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Vessel;
import io.github.formulationmath.weighing.WeighingStation;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Who weighs what, and what nobody can: one balm of 200 g on displays of 0.1 g and 0.001 g, by hand. */
class AssignmentAnswersTest {

    private static final Formula BALM = Formulas.balm("balm");
    private static final Balance TENTH = Balance.of("0.1 g", "2 kg");
    private static final Batch BATCH = Batch.of(BALM, BatchSize.ofMass("200 g"));

    private static String english(Phrase phrase) {
        return Wording.english().text(phrase);
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
}
