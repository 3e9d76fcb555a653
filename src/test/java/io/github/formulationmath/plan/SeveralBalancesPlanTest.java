package io.github.formulationmath.plan;

import static io.github.formulationmath.support.WorkingParts.notes;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.support.WorkingAssertions;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Vessel;
import io.github.formulationmath.weighing.WeighingMethod;
import io.github.formulationmath.weighing.WeighingStation;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A plan that gives each line its balance, closed to a total, counted in milligrams. */
class SeveralBalancesPlanTest {

    private static final Vessel BEAKER = Vessel.of("beaker", "214 g");
    private static final Balance KITCHEN = Balance.of("1 g", "5 kg").named("kitchen");
    private static final Balance POCKET = Balance.of("0.01 g", "200 g").named("pocket");
    private static final WeighingStation POT = WeighingStation.inVessel(KITCHEN, BEAKER);
    private static final WeighingStation BOAT =
            WeighingStation.fromBoat(POCKET, Vessel.of("boat", "2 g").holding("40 mL", "30 mL"));

    private static final Formula CREAM = Formula.inPercent("Cream")
            .quantitySufficient("Aqua")
            .line("Oil", "12 %")
            .line(Ingredient.of("Glycerin").withDensity("1.26 g/mL"), "5 %")
            .line("Preservative", "0.9 %")
            .build();

    private static WeighingPlan plan(String mass, Closure closure, WeighingStation... places) {
        return WeighingPlan.of(
                Batch.of(CREAM, BatchSize.ofMass(mass)),
                Bench.of(KITCHEN).with(BEAKER).closing(closure),
                List.of(places));
    }

    @Test
    void each_line_has_the_digits_of_its_display() {
        WeighingPlan plan = plan("250 g", Closure.INDEPENDENT, POT, POT, BOAT, BOAT);
        assertThat(plan.lines())
                .extracting(line -> line.reading().toString())
                .containsExactly("205 g", "30 g", "12.5 g", "2.25 g");
        assertThat(plan.difference()).hasToString("-0.25 g");
        plan.lines()
                .forEach(line ->
                        WorkingAssertions.assertSelfChecking(line.reading().working()));
        WorkingAssertions.assertSelfChecking(plan.total().working());
    }

    @Test
    void the_line_of_the_rest_takes_it_on_its_own_display() {
        WeighingPlan plan = plan("250 g", Closure.QS_TAKES_REST, POT, POT, BOAT, BOAT);
        // 250 - 30 - 12.50 - 2.25 = 205.25, shown in whole grams.
        assertThat(plan.line("Aqua").reading()).hasToString("205 g");
        WeighingPlan fine = plan("150 g", Closure.QS_TAKES_REST, BOAT, POT, BOAT, BOAT);
        assertThat(fine.line("Aqua").reading()).hasToString("123.15 g");
        assertThat(fine.closes()).isTrue();
    }

    @Test
    void a_boat_carries_its_own_line_and_the_pot_everything_in_it() {
        assertThatThrownBy(() -> plan("5 kg", Closure.INDEPENDENT, POT, POT, BOAT, BOAT))
                .isInstanceOf(OverloadException.class)
                .hasMessageContaining("Glycerin");
        assertThatThrownBy(() -> plan("4.9 kg", Closure.INDEPENDENT, POT, POT, POT, BOAT))
                .isInstanceOf(OverloadException.class)
                .hasMessageContaining("once");
        // 45 g of glycerin are 35.7 mL, more than the 30 mL that the boat should hold.
        assertThatThrownBy(() -> plan("900 g", Closure.INDEPENDENT, POT, POT, BOAT, BOAT))
                .isInstanceOf(OverfillException.class)
                .hasMessageContaining("Glycerin");
        assertThat(plan("250 g", Closure.INDEPENDENT, POT, POT, BOAT, BOAT).notConsidered())
                .extracting(Object::toString)
                .containsExactly(
                        "the volume of boat is not considered for Preservative: the density of the ingredient is not known");
    }

    @Test
    void a_place_in_another_pot_or_without_a_line_is_refused() {
        WeighingStation other = WeighingStation.inVessel(POCKET, Vessel.of("jar", "80 g"));
        assertThatThrownBy(() -> plan("100 g", Closure.INDEPENDENT, POT, POT, other, BOAT))
                .hasMessageContaining("a batch is made in one vessel");
        assertThatThrownBy(() -> plan("100 g", Closure.INDEPENDENT, POT, BOAT)).hasMessageContaining("4 lines");
        WeighingStation twin =
                WeighingStation.fromBoat(Balance.of("0.1 g", "1 kg").named("pocket"), Vessel.of("boat", "2 g"));
        assertThatThrownBy(() -> plan("100 g", Closure.INDEPENDENT, POT, POT, BOAT, twin))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("pocket");
    }

    /** 12 % of 1650 g are the 198 g that the balance carries beside the boat, 5 % of 756 g the 30 mL that the boat holds. */
    @Test
    void a_boat_may_be_loaded_and_filled_to_its_limit_and_no_further() {
        assertThat(plan("1650 g", Closure.INDEPENDENT, POT, BOAT, POT, POT)
                        .line("Oil")
                        .reading())
                .isEqualTo(Amount.mass("198 g"));
        assertThatThrownBy(() -> plan("1651 g", Closure.INDEPENDENT, POT, BOAT, POT, POT))
                .isInstanceOfSatisfying(OverloadException.class, e -> {
                    assertThat(e).hasMessageContaining("Oil, 198.12 g, in boat").hasMessageContaining("by 0.12 g");
                    assertThat(e.largestContent()).isEqualTo(Amount.mass("198 g"));
                    assertThat(e.said().key()).isEqualTo("refusal.overload");
                });
        assertThat(plan("756 g", Closure.INDEPENDENT, POT, POT, BOAT, POT)
                        .line("Glycerin")
                        .reading())
                .isEqualTo(Amount.mass("37.8 g"));
        assertThatThrownBy(() -> plan("756.2 g", Closure.INDEPENDENT, POT, POT, BOAT, POT))
                .isInstanceOfSatisfying(OverfillException.class, e -> {
                    assertThat(e).hasMessageContaining("Glycerin, 37.81 g,");
                    assertThat(e.largestContent()).isEqualTo(Amount.mass("37.8 g"));
                    assertThat(e.said().key()).isEqualTo("refusal.overfill");
                });
    }

    /** Before the preservative 99.1 % are in the pot; beside the beaker the balance carries 4786 g. */
    @Test
    void a_pot_may_be_loaded_to_what_its_balance_carries_and_no_further() {
        WeighingPlan full = WeighingPlan.of(
                Batch.of(CREAM, BatchSize.ofMass(Amount.grams(Ratio.of(4_786_000, 991)))),
                Bench.of(KITCHEN).with(BEAKER),
                List.of(POT, POT, POT, BOAT));
        assertThat(full.line("Glycerin").cumulativeReading()).isEqualTo(Amount.mass("4786 g"));
        Batch more = Batch.of(CREAM, BatchSize.ofMass(Amount.grams(Ratio.of(4_787_000, 991))));
        assertThatThrownBy(() -> WeighingPlan.of(more, Bench.of(KITCHEN).with(BEAKER), List.of(POT, POT, POT, BOAT)))
                .isInstanceOfSatisfying(OverloadException.class, e -> {
                    assertThat(e).hasMessageContaining(" once Glycerin is in, in beaker (214 g) overloads");
                    // 3965.8, 579.7 and 241.5 g read 3966, 580 and 242 g.
                    assertThat(e.excess()).isEqualTo(Amount.mass("2 g"));
                    assertThat(e.largestContent()).isEqualTo(Amount.mass("4786 g"));
                });
    }

    /** 101.3114 g of water read 101 g; the lines in 0.01 g take of the rest what is less than a division of theirs. */
    @Test
    void finer_lines_take_what_coarser_ones_left_and_none_a_whole_division() {
        WeighingPlan plan = plan("123.4 g", Closure.CLOSED, POT, BOAT, BOAT, BOAT);
        assertThat(plan.lines())
                .extracting(line -> line.reading().toString())
                .containsExactly("101 g", "14.81 g", "6.17 g", "1.12 g");
        assertThat(plan.difference()).hasToString("-0.3 g");
        WorkingAssertions.assertSelfChecking(plan.line("Aqua"));
        assertThat(notes(plan.line("Aqua").working())).containsExactly("note.coarsest-first", "note.largest-remainder");
        assertThat(plan("250 g", Closure.CLOSED, POT, POT, BOAT, BOAT).lines())
                .extracting(line -> line.reading().toString())
                .containsExactly("205 g", "30 g", "12.5 g", "2.25 g");
    }

    /** 100.983 g of water read 101 g, 0.017 g too much: 1.107 g of preservative read 1.10 g. */
    @Test
    void finer_lines_give_back_what_coarser_ones_took_too_much() {
        WeighingPlan plan = plan("123 g", Closure.CLOSED, POT, BOAT, BOAT, BOAT);
        assertThat(plan.lines())
                .extracting(line -> line.reading().toString())
                .containsExactly("101 g", "14.76 g", "6.15 g", "1.1 g");
        assertThat(plan.line("Preservative")).hasToString("Preservative: 1.10 g (" + BOAT + ")");
    }

    /** 1000.5 divisions are 1000, of which 120 + 50 + 9 leave 821; rounded at the end, 821.5 would be 822. */
    @Test
    void on_displays_of_one_step_the_line_of_the_rest_closes_the_rounded_total() {
        Bench bench = Bench.of(Balance.of("0.1 g", "5 kg").named("bench")).closing(Closure.QS_TAKES_REST);
        WeighingStation boat =
                WeighingStation.fromBoat(Balance.of("0.1 g", "200 g").named("other"), Vessel.of("boat", "2 g"));
        WeighingPlan plan = WeighingPlan.of(
                Batch.of(CREAM, BatchSize.ofMass("100.05 g")),
                bench,
                List.of(bench.station(), bench.station(), boat, boat));
        assertThat(plan.line("Aqua").divisions()).isEqualTo(Ratio.of(821));
    }

    @Test
    void a_line_knows_whether_it_is_weighed_on_the_bench_and_by_which_method() {
        WeighingPlan plan = plan("250 g", Closure.INDEPENDENT, POT, BOAT, POT, POT);
        assertThat(plan.lines()).extracting(PlannedLine::isOnBench).containsExactly(true, false, true, true);
        assertThat(plan.lines())
                .extracting(line -> line.method(WeighingMethod.CUMULATIVE))
                .containsExactly(
                        WeighingMethod.CUMULATIVE,
                        WeighingMethod.FROM_BOAT,
                        WeighingMethod.CUMULATIVE,
                        WeighingMethod.CUMULATIVE);
        assertThat(plan("250 g", Closure.INDEPENDENT).lines()).allMatch(PlannedLine::isOnBench);
    }

    /** 205.25, 12.5 and 2.25 g read 205, 12 and 2 g; after the boat the balance is tared again. */
    @Test
    void what_is_read_on_one_tare_begins_anew_after_a_boat() {
        WeighingPlan plan = plan("250 g", Closure.INDEPENDENT, POT, BOAT, POT, POT);
        assertThat(plan.lines())
                .extracting(line -> line.cumulativeReading().toString())
                .containsExactly("205 g", "30 g", "12 g", "14 g");
        plan.lines().forEach(line -> WorkingAssertions.assertSelfChecking(line.cumulativeReading()));
    }

    @Test
    void places_that_are_all_on_the_bench_say_nothing_and_must_still_be_one_for_each_line() {
        WeighingPlan plan = plan("250 g", Closure.INDEPENDENT, POT, POT, POT, POT);
        assertThat(plan.stations()).isEmpty();
        assertThat(plan).isEqualTo(plan("250 g", Closure.INDEPENDENT));
        assertThatThrownBy(() -> plan("250 g", Closure.INDEPENDENT, POT, POT))
                .hasMessageContaining("stations has 2 places, and \"Cream\" 4 lines");
    }

    @Test
    void a_plan_ends_with_what_it_does_not_consider() {
        assertThat(plan("250 g", Closure.INDEPENDENT, POT, POT, BOAT, BOAT).toString())
                .endsWith(
                        "; the volume of boat is not considered for Preservative: the density of the ingredient is not"
                                + " known");
        assertThat(plan("250 g", Closure.INDEPENDENT, POT, POT, BOAT, POT).toString())
                .endsWith("Preservative: 2 g]");
    }

    /** Integers only: no line moves by a whole division of its display, and what is left is told. */
    @ParameterizedTest
    @EnumSource(names = {"INDEPENDENT", "CLOSED", "QS_TAKES_REST"})
    void readings_are_near_their_targets_and_what_is_left_is_told(Closure closure) {
        int cases = 300 * Math.max(1, Integer.getInteger("formulationmath.cases", 1));
        for (int seed = 0; seed < cases; seed++) {
            SplittableRandom r = new SplittableRandom(85_000_000L + seed);
            int lines = r.nextInt(2, 7);
            long[] steps = {10, 20, 50, 100, 200, 500, 1000};
            long[] step = new long[lines];
            long[] parts = new long[lines];
            long batch = r.nextLong(20_000, 900_000);
            List<WeighingStation> places = new ArrayList<>();
            Balance bench = balance(steps[r.nextInt(7)], "bench");
            FormulaBuilder builder = Formula.inPercent("Random");
            long left = 10_000;
            for (int i = 0; i < lines; i++) {
                boolean onBench = r.nextBoolean();
                step[i] = onBench ? milligrams(bench.readability()) : steps[r.nextInt(7)];
                parts[i] = i == 0 ? 0 : r.nextLong(1, 1500);
                left -= parts[i];
                places.add(
                        onBench
                                ? WeighingStation.inVessel(bench, Vessel.none())
                                : WeighingStation.fromBoat(balance(step[i], "place " + i), Vessel.of("boat", "1 g")));
                if (i == 0) {
                    builder.quantitySufficient("Line 0");
                } else {
                    builder.line("Line " + i, parts[i] / 100 + "." + parts[i] / 10 % 10 + parts[i] % 10 + " %");
                }
            }
            parts[0] = left;
            Batch made = Batch.of(builder.build(), BatchSize.ofMass(Amount.grams(Ratio.of(batch, 1000))));
            WeighingPlan plan = WeighingPlan.of(made, Bench.of(bench).closing(closure), places);
            long total = 0;
            long others = 0;
            for (int i = 0; i < lines; i++) {
                long reading = milligrams(plan.lines().get(i).reading());
                total += reading;
                others += i == 0 ? 0 : reading;
                assertThat(reading % step[i]).as("seed %d", seed).isZero();
                // In 10 000ths of a milligram; nearest, but for the line of the rest and lines that close a total.
                long off = Math.abs(reading * 10_000 - parts[i] * batch);
                boolean isNearest = closure == Closure.INDEPENDENT || closure == Closure.QS_TAKES_REST && i > 0;
                if (isNearest) {
                    assertThat(2 * off).as("seed %d", seed).isLessThanOrEqualTo(step[i] * 10_000);
                } else if (closure == Closure.CLOSED) {
                    assertThat(off).as("seed %d", seed).isLessThan(step[i] * 10_000);
                }
            }
            assertThat(plan.difference().canonical()).isEqualTo(Ratio.of(total - batch, 1000));
            boolean oneStep = java.util.Arrays.stream(step).distinct().count() == 1;
            if (closure == Closure.QS_TAKES_REST || closure == Closure.CLOSED && oneStep) {
                assertThat(2 * Math.abs(total - batch)).as("seed %d", seed).isLessThanOrEqualTo(step[0]);
            }
        }
    }

    private static Balance balance(long milligrams, String name) {
        return Balance.of(Amount.grams(Ratio.of(milligrams, 1000)), Amount.mass("10 kg"))
                .named(name);
    }

    private static long milligrams(Amount<javax.measure.quantity.Mass> mass) {
        return mass.canonical().times(1000).toLongExact();
    }
}
