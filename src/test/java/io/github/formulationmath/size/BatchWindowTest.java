package io.github.formulationmath.size;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.oracle.BatchOracle;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.support.Formulas;
import io.github.formulationmath.support.RandomFormulas;
import io.github.formulationmath.support.WorkingAssertions;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.ErrorModel;
import io.github.formulationmath.weighing.Vessel;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.List;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;

class BatchWindowTest {

    private static final Formula BALM = Formulas.balm("balm");

    private static final Bench BENCH = Bench.of(Balance.of("0.1 g", "2000 g"))
            .with(Vessel.of("beaker", "214 g").holding("600 mL", "450 mL"));

    private static final BatchConstraints ONE_DIVISION = BatchConstraints.of(Criterion.oneDivision());

    private static Amount<Mass> mass(String text) {
        return Amount.mass(text);
    }

    private static BatchWindow.Feasible feasible(Bench bench, BatchConstraints constraints) {
        return (BatchWindow.Feasible) BatchWindow.of(BALM, bench, constraints);
    }

    @Test
    void a_window_reaches_from_the_smallest_line_to_the_capacity_left_under_the_vessel() {
        BatchWindow.Feasible window = feasible(BENCH, ONE_DIVISION);
        assertThat(window.lowerEnd().mass()).isEqualTo(mass("20 g"));
        assertThat(window.lowerEnd().bindingLine()).contains(BALM.line("Tocopherol"));
        assertThat(window.upperEnd().mass()).isEqualTo(mass("1786 g"));
        assertThat(window.upperEnd().boundBy().key()).isEqualTo("ceiling.capacity");
        assertThat(window.upperEnd().bindingLine()).isEmpty();
        WorkingAssertions.assertSelfChecking(window.lowerEnd());
        WorkingAssertions.assertSelfChecking(window.upperEnd());
    }

    @Test
    void volume_and_stock_lower_the_upper_end() {
        Bench watched = BENCH.withProductDensity(Density.parse("0.9 g/mL"));
        BatchWindow.Feasible byVolume = feasible(watched, ONE_DIVISION);
        assertThat(byVolume.upperEnd().mass()).isEqualTo(mass("405 g"));
        assertThat(byVolume.upperEnd().boundBy().key()).isEqualTo("ceiling.volume");
        WorkingAssertions.assertSelfChecking(byVolume.upperEnd());
        BatchWindow.Feasible byStock =
                feasible(watched, ONE_DIVISION.withStock("Wax", "30 g").withStock("Oil", "200 g"));
        assertThat(byStock.upperEnd().mass()).isEqualTo(mass("150 g"));
        assertThat(byStock.upperEnd().bindingLine()).contains(BALM.line("Wax"));
        WorkingAssertions.assertSelfChecking(byStock.upperEnd());
        assertThatThrownBy(() -> feasible(watched, ONE_DIVISION.withStock("Cocoa butter", "1 kg")))
                .hasMessageContaining("Cocoa butter");
    }

    @Test
    void sizes_may_be_rounded_to_a_step_and_wished_for() {
        BatchWindow.Feasible window =
                feasible(BENCH, ONE_DIVISION.inStepsOf("50 g").withLeastSize("120 g"));
        assertThat(window.lowerEnd().mass()).isEqualTo(mass("150 g"));
        assertThat(window.upperEnd().mass()).isEqualTo(mass("1750 g"));
        assertThat(window.contains(mass("200 g"))).isTrue();
        assertThat(window.contains(mass("210 g"))).isFalse();
        assertThat(window.contains(mass("100 g"))).isFalse();
        assertThat(window.nearest(mass("224 g"))).contains(mass("200 g"));
        assertThat(window.nearest(mass("10 g"))).contains(mass("150 g"));
        assertThat(window.nearest(mass("10 kg"))).contains(mass("1750 g"));
        WorkingAssertions.assertSelfChecking(window.lowerEnd());
        WorkingAssertions.assertSelfChecking(window.upperEnd());
    }

    @Test
    void an_empty_window_says_what_would_open_it() {
        Bench small = Bench.of(Balance.of("1 g", "500 g"))
                .with(Vessel.of("jar", "320 g").holding("150 mL", "120 mL"))
                .withProductDensity(Density.parse("0.9 g/mL"));
        BatchWindow.Empty none = (BatchWindow.Empty) BatchWindow.of(BALM, small, ONE_DIVISION.withStock("Wax", "30 g"));
        assertThat(none.smallestNeeded().orElseThrow().mass()).isEqualTo(mass("200 g"));
        assertThat(none.largestAllowed().mass()).isEqualTo(mass("107 g"));
        assertThat(none.openings())
                .containsExactly(
                        together(new WindowOpening.HigherCapacity(mass("520 g"))),
                        together(new WindowOpening.LighterVessel(mass("300 g"))),
                        new WindowOpening.FinerBalance(mass("0.5 g")),
                        new WindowOpening.PreDilute(
                                List.of(new WindowOpening.Dilution(BALM.line("Tocopherol"), Ratio.of(2))),
                                BALM.line("Oil")));
        none.openings()
                .forEach(opening -> assertThat(io.github.formulationmath.reckoning.Wording.english()
                                .text(opening.phrase()))
                        .doesNotContain("{"));
        Bench finer = Bench.of(Balance.of("0.5 g", "500 g"))
                .with(small.vessel())
                .withProductDensity(Density.parse("0.9 g/mL"));
        assertThat(BatchWindow.of(BALM, finer, ONE_DIVISION)).isInstanceOf(BatchWindow.Feasible.class);
    }

    /** Vessel and stock are too little as well, whatever is done about the load. */
    private static WindowOpening together(WindowOpening load) {
        return new WindowOpening.Together(List.of(
                load,
                new WindowOpening.LargerVessel(Density.parse("0.9 g/mL").volumeOf(mass("200 g"))),
                new WindowOpening.MoreStock("Wax", mass("40 g"))));
    }

    /** By hand: worst error 1.5 d + a; 5 % of 0.5 % of 700 g is 0.175 g: d = 0.05 g for a = 0.1 g, none for a = 0.2 g. */
    @Test
    void a_finer_display_does_not_straighten_a_crooked_balance() {
        BatchConstraints within =
                BatchConstraints.of(Criterion.errorBound(Tolerances.of("5 %"), WeighingMethod.TARE_EACH));
        assertThat(finerBalances("0.1 g", within)).containsExactly(new WindowOpening.FinerBalance(mass("0.05 g")));
        assertThat(finerBalances("0.2 g", within)).isEmpty();
    }

    private static List<WindowOpening> finerBalances(String linearity, BatchConstraints constraints) {
        Balance crooked = Balance.of("0.1 g", "700 g")
                .withErrors(ErrorModel.readabilityOnly().withLinearityOfNetReading(linearity));
        BatchWindow.Empty none = (BatchWindow.Empty) BatchWindow.of(BALM, Bench.of(crooked), constraints);
        return none.openings().stream()
                .filter(WindowOpening.FinerBalance.class::isInstance)
                .toList();
    }

    @Test
    void nothing_opens_a_window_that_no_size_fits() {
        BatchConstraints hopeless = BatchConstraints.of(Criterion.madeWithin(Tolerances.of("0 %"), mass("0.05 g")));
        BatchWindow.Empty none = (BatchWindow.Empty) BatchWindow.of(BALM, BENCH, hopeless);
        assertThat(none.obstacle()).isPresent();
        assertThat(none.openings()).isEmpty();
        assertThat(none.smallestNeeded()).isEmpty();
    }

    /** Both ends pass by the count of the oracle, and points just outside fail, for every pair of criteria. */
    @Test
    void window_ends_pass_and_points_just_outside_fail() {
        RandomFormulas random = new RandomFormulas(41);
        for (int run = 0; run < 500; run++) {
            long[] parts = random.parts(30);
            long p = 3 + random.below(25);
            BatchOracle oracle = new BatchOracle(parts, p, 100);
            Tolerances tolerances = Tolerances.of(MassFraction.of(Ratio.of(p, 100)));
            Bench bench = Bench.of(Balance.of("1 g", (20 + random.below(500)) + " g"));
            BatchWindow window = BatchWindow.of(
                    RandomFormulas.formula(parts), bench, BatchConstraints.of(Criterion.roundingWithin(tolerances)));
            Ratio capacity = bench.balance().capacity().in(io.github.formulationmath.quantity.FormulationUnits.GRAM);
            if (window instanceof BatchWindow.Feasible found) {
                Ratio low = found.lowerEnd().mass().canonical();
                Ratio high = found.upperEnd().mass().canonical();
                assertThat(passes(oracle, low)).isTrue();
                assertThat(passes(oracle, high)).isTrue();
                assertThat(passes(oracle, low.minus(Ratio.of(1, 100_000)))).isFalse();
                Ratio above = high.plus(Ratio.of(1, 100_000));
                boolean readingsTooMuch =
                        RandomFormulas.independentTotal(parts, high.floor().plus(Ratio.ONE))
                                        .compareTo(capacity)
                                > 0;
                assertThat(above.compareTo(capacity) > 0 || !passes(oracle, above) || readingsTooMuch)
                        .isTrue();
                found.lowerEnd().working().check();
                found.upperEnd().working().check();
            } else {
                long[] best = oracle.smallestRounding(capacity.toLongExact());
                assertThat(best.length == 0 || Ratio.of(best[0], best[1]).compareTo(capacity) > 0)
                        .isTrue();
            }
        }
    }

    private static boolean passes(BatchOracle oracle, Ratio size) {
        return oracle.roundingPasses(
                size.numerator().longValueExact(), size.denominator().longValueExact());
    }

    /** A total as made that is at the same time a multiple of a step and rounds well, found by trying each. */
    @Test
    void several_criteria_hold_together() {
        RandomFormulas random = new RandomFormulas(42);
        for (int run = 0; run < 300; run++) {
            long[] parts = random.parts(20);
            long p = 5 + random.below(25);
            BatchOracle oracle = new BatchOracle(parts, p, 100);
            Tolerances tolerances = Tolerances.of(MassFraction.of(Ratio.of(p, 100)));
            int capacity = 100 + random.below(100);
            BatchWindow window = BatchWindow.of(
                    RandomFormulas.formula(parts),
                    Bench.of(Balance.of("1 g", capacity + " g")),
                    BatchConstraints.of(Criterion.madeWithin(tolerances), Criterion.roundingWithin(tolerances))
                            .inStepsOf("3 g"));
            int least = 0;
            int most = 0;
            for (int total = 3; total <= capacity; total += 3) {
                if (oracle.madePasses(total, 0, 1)
                        && oracle.roundingPasses(total, 1)
                        && RandomFormulas.independentTotal(parts, Ratio.of(total))
                                        .compareTo(Ratio.of(capacity))
                                <= 0) {
                    least = least == 0 ? total : least;
                    most = total;
                }
            }
            if (window instanceof BatchWindow.Feasible found) {
                assertThat(found.lowerEnd().mass().canonical()).isEqualTo(Ratio.of(least));
                assertThat(found.upperEnd().mass().canonical()).isEqualTo(Ratio.of(most));
            } else {
                assertThat(least).isZero();
            }
        }
    }
}
