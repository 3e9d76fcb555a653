package io.github.formulationmath.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.simulation.InputQuantity;
import io.github.formulationmath.simulation.InputQuantity.Law;
import io.github.formulationmath.simulation.MonteCarlo;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * The model that is drawn, against masses worked out by hand: tared each, an addition has two errors, that of its tare,
 * which it loses, and that of its reading, which it gains.
 */
class ShareModelTest {

    private static final double[] READINGS = {10, 20, 30, 40, 50};

    private static final double[] STRENGTHS = {0.5, 0, 0.25, 1, 0.125};

    private static final InputQuantity<?> HALF_STEP =
            new InputQuantity<>(Law.RECTANGULAR, Amount.mass("0 g"), Amount.mass("0.05 g"));

    private static ShareModel model(Weights weights) {
        return new ShareModel(
                MadeMassesTest.masses(MadeMassesTest.TENTH, WeighingMethod.TARE_EACH, "10", "20", "30", "40", "50"),
                weights);
    }

    /** Σ c · m / Σ m with m = reading − tare error + reading error. */
    private static double byHand(double[] strengths, double[] errors) {
        double part = 0;
        double total = 0;
        for (int i = 0; i < READINGS.length; i++) {
            double mass = READINGS[i] - errors[2 * i] + errors[2 * i + 1];
            part += strengths[i] * mass;
            total += mass;
        }
        return part / total;
    }

    private static void agrees(Weights weights, double[] strengths) {
        ShareModel model = model(weights);
        assertThat(model.inputs()).hasSize(10).containsOnly(HALF_STEP);
        double[] all = new double[10];
        for (int i = 0; i < all.length; i++) {
            double[] alone = new double[10];
            alone[i] = 0.05;
            assertThat(model.applyAsDouble(alone)).isCloseTo(byHand(strengths, alone), within(1e-15));
            all[i] = 0.004 * (i + 1) * (i % 3 - 1);
        }
        assertThat(model.applyAsDouble(all)).isCloseTo(byHand(strengths, all), within(1e-15));
    }

    @Test
    void the_share_of_a_line() {
        agrees(Weights.line(3), new double[] {0, 0, 0, 1, 0});
    }

    @Test
    void the_share_of_a_mixture() {
        agrees(
                Weights.strengths(
                        IntStream.range(0, 5).boxed().collect(Collectors.toMap(i -> i, i -> Ratio.from(STRENGTHS[i])))),
                STRENGTHS);
    }

    /** Lines that share nothing with the others are drawn as if they had been weighed alone: the same bits. */
    @Test
    void a_part_of_independent_lines_draws_its_own_errors_alone() throws InterruptedException {
        MadeMasses part = MadeMassesTest.masses(MadeMassesTest.TENTH, WeighingMethod.TARE_EACH, "10", "20", "30")
                .part(List.of(0, 1));
        MadeMasses alone = MadeMassesTest.masses(MadeMassesTest.TENTH, WeighingMethod.TARE_EACH, "10", "20");
        assertThat(drawn(part)).isEqualTo(drawn(alone));
    }

    private static String drawn(MadeMasses made) throws InterruptedException {
        MonteCarlo.Result<?> result =
                made.madeShare(0).simulation().withMostTrials(20_000).run();
        return result.estimate() + " " + result.standardUncertainty() + " " + result.shortestInterval();
    }

    /** A scale on which nothing was weighed but nothing: its calibration changes no mass. */
    @Test
    void an_error_in_proportion_to_nothing_is_not_drawn() {
        Balance scaled = MadeMassesTest.TENTH
                .withErrors(ErrorModel.readabilityOnly().withCalibration(Ratio.of(1, 100)))
                .named("scaled");
        Amount<javax.measure.quantity.Mass> some = Amount.mass("10 g");
        Amount<javax.measure.quantity.Mass> none = Amount.mass("0 g");
        List<Addition> additions =
                List.of(Addition.of("A", some, some, MadeMassesTest.TENTH), Addition.of("B", none, none, scaled));
        assertThat(ErrorTerms.of(additions))
                .extracting(ErrorTerm::source)
                .containsExactly(ErrorSource.TARE, ErrorSource.READING, ErrorSource.TARE, ErrorSource.READING);
    }
}
