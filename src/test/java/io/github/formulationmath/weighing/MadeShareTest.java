package io.github.formulationmath.weighing;

import static io.github.formulationmath.support.Made.madeShare;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.formulationmath.document.Format;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Style;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.support.WorkingAssertions;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a share says of its uncertainty, and how the working of it counts errors that are alike. */
class MadeShareTest {

    private static final Balance TENTH = MadeMassesTest.TENTH;

    private static final Balance SCALED =
            TENTH.withErrors(ErrorModel.readabilityOnly().withCalibration(Ratio.of(1, 1000)));

    private static MadeShare share(Balance balance, WeighingMethod method, String... grams) {
        return MadeMassesTest.masses(balance, method, grams).madeShare(0);
    }

    private static String text(Explained result) {
        return result.working().document(Style.everything()).print(Format.TEXT).replaceAll("\\s+", " ");
    }

    /** 10 g in 40 g, both with u² = 0.01/6 g²: u² = (1 − 2/4 + 2/16) · 0.01/6 / 40² = 6.51e-7. */
    @Test
    void standard_and_expanded_uncertainty() {
        MadeShare share = share(TENTH, WeighingMethod.TARE_EACH, "10", "30");
        double u = Math.sqrt(0.625 * 0.01 / 6) / 40;
        assertThat(share.uncertainty().canonical().doubleValue()).isCloseTo(u, within(1e-17));
    }

    @Test
    void its_text_rounds_outwards() {
        assertThat(share(TENTH, WeighingMethod.CUMULATIVE, "10", "20", "30"))
                .hasToString("L1 ≈ 16.6667 % in [16.5, 16.8334] %");
    }

    @Test
    void what_cancels_is_not_in_the_budget() {
        MadeShare share = share(SCALED, WeighingMethod.TARE_EACH, "10", "30");
        assertThat(share.budget().variances()).containsOnlyKeys(ErrorSource.TARE, ErrorSource.READING);
        assertThat(share.budget().share(ErrorSource.TARE)).isEqualTo(Ratio.of(1, 2));
    }

    /** Three tares and three readings, all of the same display. */
    @Test
    void errors_that_are_alike_are_counted() {
        String text =
                text(share(TENTH, WeighingMethod.TARE_EACH, "10", "20", "30").variance());
        assertThat(text)
                .contains("v_S = 3 · (d / 2 · (d / 2) / 3) + 3 · (d / 2 · (d / 2) / 3) =")
                .contains("v_N,L1 = d / 2 · (d / 2) / 3 + d / 2 · (d / 2) / 3 =")
                .contains("v_NS,L1 = d / 2 · (d / 2) / 3 + d / 2 · (d / 2) / 3 =");
    }

    /** Weighed one upon the other, the reading of the first is in the second too, the other way round. */
    @Test
    void indications_in_between_are_gone_from_the_total() {
        String text =
                text(share(TENTH, WeighingMethod.CUMULATIVE, "10", "20", "30").variance());
        assertThat(text)
                .contains("v_S = d / 2 · (d / 2) / 3 + d / 2 · (d / 2) / 3 =")
                .contains("v_NS,L1 = d / 2 · (d / 2) / 3 =");
    }

    @Test
    void errors_in_proportion_name_the_reading_and_strengths_the_line() {
        MadeMasses made = MadeMassesTest.masses(SCALED, WeighingMethod.TARE_EACH, "10", "30");
        assertThat(text(made.madeShare(0).variance()))
                .contains("v_N,L1 = q · q · r_L1 · r_L1 + d / 2")
                .contains("v_NS,L1 = q · q · r_L1 · R_q + d / 2");
        MadeShare mixture = madeShare(made, Subject.of("Y", "dye"), List.of(Ratio.ZERO, Ratio.of(1, 4)));
        assertThat(text(mixture.variance()))
                .contains("v_N,Y = d / 2 · (d / 2) / 3 · c_L2 · (−1) · c_L2 · (−1) + d / 2")
                .contains("+ q · q · c_L2 · r_L2 · c_L2 · r_L2 =");
    }

    @Test
    void all_readings_on_a_scale_are_added_up_once_and_a_single_one_not_at_all() {
        assertThat(WorkingAssertions.values(share(SCALED, WeighingMethod.TARE_EACH, "10", "30")
                        .variance()
                        .working()))
                .containsEntry("R_q", "40");
        assertThat(WorkingAssertions.values(
                        share(SCALED, WeighingMethod.TARE_EACH, "10").variance().working()))
                .doesNotContainKey("R_q");
    }

    @Test
    void the_sum_of_the_readings_is_a_result_of_its_own() {
        List<Addition> additions =
                MadeMassesTest.masses(SCALED, WeighingMethod.TARE_EACH, "10", "30").additions().stream()
                        .map(AdditionError::addition)
                        .toList();
        MassRelations relations = MassRelations.of(additions);
        MassRelations.Entry scale = relations.felt(Weights.TOTAL).values().stream()
                .filter(entry -> entry.term().source() == ErrorSource.CALIBRATION)
                .findFirst()
                .orElseThrow();
        Derived total = relations.scaleTotal(scale);
        assertThat(total.origin().question()).hasToString("What do all readings of the balance add up to?");
        assertThat(total.number()).isEqualTo(Ratio.of(40));
        WorkingAssertions.assertSelfChecking(total);
    }
}
