package io.github.formulationmath.weighing;

import static io.github.formulationmath.support.Made.massBounds;
import static io.github.formulationmath.support.Made.shareBounds;
import static io.github.formulationmath.support.Made.shareVariance;
import static io.github.formulationmath.support.WorkingAssertions.assertSelfChecking;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.simulation.CoverageFactor;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What has no bound is taken in as far as k times its standard deviation; what has one stays within it. By hand. */
class CoveringTest {

    private static final Balance TENTH = MadeMassesTest.TENTH;

    private static Bounds bounds(String lower, String upper) {
        return Bounds.closed(Ratio.parse(lower), Ratio.parse(upper));
    }

    private static Bounds shares(String least, String leastTotal, String most, String mostTotal) {
        return Bounds.closed(
                Ratio.parse(least).dividedBy(Ratio.parse(leastTotal)),
                Ratio.parse(most).dividedBy(Ratio.parse(mostTotal)));
    }

    private static void workingsLeadThere(MadeMasses made) {
        assertSelfChecking(made.additions().get(0).lowest());
        assertSelfChecking(made.madeShare(0).bounds().least());
        assertSelfChecking(made.madeShare(0).bounds().greatest());
    }

    /** d/2 = 0.05 g, s = 0.05 g, a = 0.1 g, k = 2. */
    @Test
    void repeatability_is_taken_in_and_linearity_stays() {
        Balance balance = TENTH.withErrors(
                ErrorModel.readabilityOnly().withRepeatability("0.05 g").withLinearityOfNetReading("0.1 g"));
        MadeMasses made = MadeMassesTest.masses(balance, WeighingMethod.CUMULATIVE, "10", "20");
        // 10 ± (0.05 + 0.05 + 0.1); the second is then 20 ∓ (0.05 + 0.1) ∓ (0.05 + 0.1).
        assertThat(massBounds(made, 0)).isEqualTo(bounds("9.8", "10.2"));
        assertThat(shareBounds(made, 0)).isEqualTo(shares("9.8", "30.1", "10.2", "29.9"));
        // Each net weighing gets 2 s = 0.1 g more, each of its two indications half of that.
        MadeMasses covered = made.covering(CoverageFactor.of(2));
        assertThat(massBounds(covered, 0)).isEqualTo(bounds("9.7", "10.3"));
        assertThat(massBounds(covered, 1)).isEqualTo(bounds("19.6", "20.4"));
        // The tare is off by 0.05 + 0.05 at most, a reading by 0.05 + 0.1 + 0.05: 10 − 0.1 − 0.2 in 30 − 0.1 + 0.2.
        assertThat(shareBounds(covered, 0)).isEqualTo(shares("9.7", "30.1", "10.3", "29.9"));
        assertThat(shareVariance(covered, 0)).isEqualTo(shareVariance(made, 0));
        workingsLeadThere(covered);
    }

    /** A scale known to 1 % is off by at most 2 % for both lines alike, so that the tenths of a gram weigh more or less. */
    @Test
    void a_common_scale_is_common_to_all_lines() {
        Balance balance = TENTH.withErrors(ErrorModel.readabilityOnly().withCalibration(Ratio.of(1, 100)));
        MadeMasses covered = MadeMassesTest.masses(balance, WeighingMethod.TARE_EACH, "10", "20")
                .covering(CoverageFactor.of(2));
        assertThat(massBounds(covered, 0)).isEqualTo(bounds("9.7", "10.3"));
        assertThat(massBounds(covered, 1)).isEqualTo(bounds("19.5", "20.5"));
        // (9.8 ± 0.1) g in 9.8 g + 19.6 g
        assertThat(shareBounds(covered, 0)).isEqualTo(shares("9.7", "29.4", "9.9", "29.4"));
        workingsLeadThere(covered);
    }

    @Test
    void it_remembers_how_far_it_was_taken() {
        MadeMasses made = MadeMassesTest.masses(MadeMassesTest.KNOWN, WeighingMethod.TARE_EACH, "10", "20");
        assertThat(made.coverage()).isEmpty();
        assertThat(made.covering(CoverageFactor.of(2)).coverage()).contains(CoverageFactor.of(2));
        assertThat(made.covering(CoverageFactor.of(2)).part(List.of(1)).coverage())
                .contains(CoverageFactor.of(2));
    }

    @Test
    void errors_are_left_out_only_where_one_has_no_bound_and_none_was_set() {
        ErrorModel bounded = ErrorModel.readabilityOnly().withLinearityOfNetReading("0.1 g");
        for (ErrorModel unbounded :
                List.of(bounded.withRepeatability("0.05 g"), bounded.withCalibration(Ratio.of(1, 1000)))) {
            MadeMasses made = MadeMassesTest.masses(TENTH.withErrors(unbounded), WeighingMethod.TARE_EACH, "10", "20");
            assertThat(made.leavesErrorsOut()).isTrue();
            assertThat(made.covering(CoverageFactor.of(2)).leavesErrorsOut()).isFalse();
        }
        assertThat(MadeMassesTest.masses(TENTH.withErrors(bounded), WeighingMethod.TARE_EACH, "10")
                        .leavesErrorsOut())
                .isFalse();
    }
}
