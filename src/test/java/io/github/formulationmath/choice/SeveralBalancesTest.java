package io.github.formulationmath.choice;

import static io.github.formulationmath.support.Made.shareBounds;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.support.WorkingAssertions;
import io.github.formulationmath.weighing.AdditionError;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.ErrorModel;
import io.github.formulationmath.weighing.MadeMasses;
import io.github.formulationmath.weighing.Vessel;
import io.github.formulationmath.weighing.WeighingStation;
import java.util.List;
import org.junit.jupiter.api.Test;

class SeveralBalancesTest {

    private static final Formula LOTION = Formula.inPercent("lotion")
            .line("Aqua", "80 %")
            .line("Oil", "19 %")
            .line("Tocopherol", "0.9 %")
            .line("Colour", "0.1 %")
            .build();
    private static final Batch BATCH = Batch.of(LOTION, BatchSize.ofMass("500.3 g"));

    private static final Balance KITCHEN =
            Balance.of("1 g", "5 kg").named("kitchen").withMinimumLoad(Amount.mass("3 g"));
    private static final Balance POCKET = Balance.of("0.01 g", "100 g")
            .named("pocket")
            .withErrors(ErrorModel.readabilityOnly().withResidue(Amount.mass("0 g"), Amount.mass("0.02 g")));

    private static final List<WeighingStation> STATIONS = List.of(
            WeighingStation.inVessel(KITCHEN, Vessel.of("beaker", "214 g")),
            WeighingStation.fromBoat(POCKET, Vessel.of("boat", "2 g")));

    @Test
    void each_line_goes_to_the_balance_that_carries_it_with_the_smallest_error() {
        BalanceAssignment assignment = BalanceAssignment.of(BATCH, STATIONS, Tolerances.of("50 %"));
        assertThat(assignment.unassigned()).isEmpty();
        assertThat(assignment.lines().stream()
                        .map(line -> line.station().balance().name()))
                .containsExactly("kitchen", "pocket", "pocket", "pocket");
        assertThat(reasons(assignment, 0)).containsExactly("station.carries", "station.overloaded");
        assertThat(reasons(assignment, 2)).containsExactly("station.carries", "station.carries");
        assertThat(reasons(assignment, 3)).containsExactly("station.below-minimum", "station.carries");
        assignment.lines().forEach(line -> {
            WorkingAssertions.assertSelfChecking(line);
            line.candidates()
                    .forEach(candidate -> assertThat(Wording.english().text(candidate.verdict()))
                            .doesNotContain("{"));
            assertThat(line.candidates().stream()
                            .filter(BalanceAssignment.AssignedLine.Candidate::isUsable)
                            .map(BalanceAssignment.AssignedLine.Candidate::relativeError))
                    .allMatch(error -> error.compareTo(line.relativeError()) >= 0);
        });
        MadeMasses made = assignment.masses();
        assertThat(shareBounds(made, 3).contains(Ratio.of(1, 1000))).isTrue();
    }

    private static List<String> reasons(BalanceAssignment assignment, int line) {
        return assignment.lines().get(line).candidates().stream()
                .map(candidate -> candidate.verdict().key())
                .toList();
    }

    @Test
    void a_line_that_no_balance_can_weigh_is_named() {
        BalanceAssignment assignment = BalanceAssignment.of(BATCH, List.of(STATIONS.get(1)), Tolerances.of("50 %"));
        assertThat(assignment.unassigned()).containsExactly(BATCH.line("Aqua"));
        assertThatThrownBy(assignment::masses).isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(() -> BalanceAssignment.of(BATCH, List.of(), Tolerances.of("50 %")))
                .hasMessageContaining("stations");
    }

    /** Aliquot method (lecture on pharmaceutical calculations): 12 mg; 120 mg and 1080 mg make 1200 mg; take 120 mg. */
    @Test
    void the_published_aliquot_method() {
        Formula powder = Formula.inMasses("powder")
                .line("Substance", "12 mg")
                .line("Lactose", "988 mg")
                .build();
        Batch batch = Batch.of(powder, BatchSize.ofMass("1 g"));
        Balance class_a = Balance.of("1 mg", "120 g");
        PredilutionPlan plan = (PredilutionPlan)
                Predilution.of(batch, powder.line("Substance"), powder.line("Lactose"), class_a, Amount.mass("120 mg"));
        assertThat(plan.factor()).isEqualTo(Ratio.of(10));
        assertThat(plan.substance()).isEqualTo(Amount.mass("120 mg"));
        assertThat(plan.diluent()).isEqualTo(Amount.mass("1080 mg"));
        assertThat(plan.aliquot()).isEqualTo(Amount.mass("120 mg"));
        assertThat(plan.carrierLeft()).isEqualTo(Amount.mass("880 mg"));
        assertThat(plan.deliveredBounds().contains(Amount.mass("12 mg"))).isTrue();
        // By hand: (119/1200)·119 to (121/1200)·121 mg.
        assertThat(plan.deliveredBounds().least().canonical()).isEqualTo(Ratio.of(119 * 119, 1_200_000));
        assertThat(plan.relativeError().canonical())
                .isEqualTo(Ratio.of(121 * 121, 1200).minus(Ratio.of(12)).dividedBy(12));
        WorkingAssertions.assertSelfChecking(plan);
        WorkingAssertions.assertSelfChecking(plan.carrierLeft().working());
        WorkingAssertions.assertSelfChecking(plan.relativeError().working());
    }

    /** Three weighings, each within 2 %, would deliver up to 5 %; what is delivered is asked for, and kept. */
    @Test
    void what_a_predilution_delivers_is_within_tolerance_and_so_is_every_weighing() {
        Balance balance = Balance.of("0.1 g", "2 kg");
        Ratio tolerance = Ratio.of(2, 100);
        PredilutionPlan plan = (PredilutionPlan)
                Predilution.of(BATCH, LOTION.line("Colour"), LOTION.line("Aqua"), balance, Tolerances.of("2 %"));
        assertThat(plan.relativeError().canonical()).isLessThanOrEqualTo(tolerance);
        for (Amount<javax.measure.quantity.Mass> mass : List.of(plan.substance(), plan.diluent(), plan.aliquot())) {
            Ratio divisions =
                    balance.divisions(mass).rounded(io.github.formulationmath.number.Rounding.toDecimalPlaces(0));
            AdditionError error = AdditionError.of(io.github.formulationmath.weighing.Addition.of(
                    "weighed", mass, balance.readability().times(divisions), balance));
            assertThat(error.largest()
                            .canonical()
                            .dividedBy(error.addition().target().canonical()))
                    .isLessThanOrEqualTo(tolerance);
        }
    }

    @Test
    void there_may_be_nothing_to_dilute_or_nothing_to_dilute_in() {
        Balance balance = Balance.of("0.1 g", "2 kg");
        Predilution.None notNeeded = (Predilution.None)
                Predilution.of(BATCH, LOTION.line("Oil"), LOTION.line("Aqua"), balance, Tolerances.of("5 %"));
        assertThat(notNeeded.reason().key()).isEqualTo("predilution.within-undiluted");
        Predilution.None tooSmall = (Predilution.None)
                Predilution.of(BATCH, LOTION.line("Colour"), LOTION.line("Tocopherol"), balance, Tolerances.of("1 %"));
        assertThat(tooSmall.reason().key()).isEqualTo("predilution.carrier-too-small");
        assertThat(Wording.english().text(tooSmall.reason()))
                .contains("Tocopherol")
                .doesNotContain("{");
        assertThatThrownBy(() ->
                        Predilution.of(BATCH, LOTION.line("Oil"), LOTION.line("Oil"), balance, Tolerances.of("5 %")))
                .hasMessageContaining("take another");
        assertThatThrownBy(() ->
                        Predilution.of(BATCH, LOTION.line("Oil"), LOTION.line("Aqua"), balance, Tolerances.of("0 %")))
                .hasMessageContaining("widen");
        assertThatThrownBy(() ->
                        Predilution.of(BATCH, LOTION.line("Oil"), LOTION.line("Aqua"), balance, Amount.mass("0 g")))
                .hasMessageContaining("leastWeighed");
    }
}
