package io.github.formulationmath.weighing;

import static io.github.formulationmath.support.Made.madeShare;
import static io.github.formulationmath.support.WorkingAssertions.assertSelfChecking;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.support.WorkingAssertions;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The extremes of a share show the corner in which they lie; where there is none to show, they say so. */
class ShareWorkingTest {

    private static MadeMasses masses(WeighingMethod method, String... grams) {
        return MadeMassesTest.masses(MadeMassesTest.TENTH, method, grams);
    }

    private static boolean isCutOff(Explained extreme) {
        return extreme.working().toString().contains("No mixture has less than its weakest part");
    }

    /** The first line has the 0.05 g of the tare and of its reading; the third is off by its own reading the other way. */
    @Test
    void the_corner_of_a_cumulative_weighing() {
        MadeShare share = masses(WeighingMethod.CUMULATIVE, "10", "20", "30").madeShare(0);
        assertThat(share.bounds().greatest().canonical())
                .isEqualTo(Ratio.parse("10.1").dividedBy(60));
        assertThat(share.bounds().least().canonical())
                .isEqualTo(Ratio.parse("9.9").dividedBy(60));
        assertThat(share.bounds().greatest()).hasToString("101/6 %");
        for (Explained end : List.of(share.bounds().least(), share.bounds().greatest())) {
            assertThat(isCutOff(end)).isFalse();
            assertThat(WorkingAssertions.values(end.working())).containsEntry("r_L3", "30");
            assertSelfChecking(end);
        }
    }

    @Test
    void either_end_has_its_own_question_and_its_own_symbol() {
        MadeShare share = masses(WeighingMethod.TARE_EACH, "10", "30").madeShare(0);
        assertThat(share.bounds().least().origin().question())
                .hasToString("What is the least share of L1 that can have been made?");
        assertThat(share.bounds().greatest().origin().question())
                .hasToString("What is the largest share of L1 that can have been made?");
        assertThat(WorkingAssertions.values(share.bounds().least().working()))
                .containsEntry("φ_lo,L1", "0.2475")
                .containsEntry("lo_L1", "9.9")
                .containsEntry("hi_L2", "30.1");
        assertThat(WorkingAssertions.values(share.bounds().greatest().working()))
                .containsEntry("φ_hi,L1", "0.2525")
                .containsEntry("hi_L1", "10.1")
                .containsEntry("lo_L2", "29.9");
    }

    /** 0.05 g on a display of 0.1 g may be nothing, but not less, if it is weighed by itself. */
    @Test
    void independent_masses_are_cut_off_one_by_one() {
        MadeShare mixture = madeShare(
                masses(WeighingMethod.TARE_EACH, "0.05", "10", "10"),
                Subject.of("Y", "dye"),
                List.of(Ratio.ZERO, Ratio.of(1, 2), Ratio.ONE));
        // (9.9/2 + 10.1) / (0 + 9.9 + 10.1) and (10.1/2 + 9.9) / (0.15 + 10.1 + 9.9)
        assertThat(mixture.bounds().greatest().canonical()).isEqualTo(Ratio.parse("0.7525"));
        assertThat(mixture.bounds().least().canonical())
                .isEqualTo(Ratio.parse("14.95").dividedBy(Ratio.parse("20.15")));
    }

    @Test
    void a_corner_is_shown_even_if_it_is_as_extreme_as_a_mixture_can_be() {
        MadeShare alone = masses(WeighingMethod.TARE_EACH, "10").madeShare(0);
        assertThat(alone.bounds().least().canonical()).isEqualTo(Ratio.ONE);
        assertThat(isCutOff(alone.bounds().least())).isFalse();
        assertThat(isCutOff(alone.bounds().greatest())).isFalse();
        // Independent masses, each perhaps 0: all of the second may be missing.
        MadeShare little = masses(WeighingMethod.TARE_EACH, "0.05", "0.05").madeShare(0);
        assertThat(little.bounds().greatest().canonical()).isEqualTo(Ratio.ONE);
        assertThat(isCutOff(little.bounds().greatest())).isFalse();
        assertSelfChecking(little.bounds().greatest());
    }

    @Test
    void where_a_common_error_could_take_everything_the_strengths_are_the_limits() {
        MadeShare share = masses(WeighingMethod.CUMULATIVE, "0.05", "0.05").madeShare(0);
        for (Explained end : List.of(share.bounds().least(), share.bounds().greatest())) {
            assertThat(isCutOff(end)).isTrue();
            assertSelfChecking(end);
        }
        assertThat(share.bounds().least().canonical()).isEqualTo(Ratio.ZERO);
        assertThat(share.bounds().greatest().canonical()).isEqualTo(Ratio.ONE);
    }

    /** Something that is in both lines, a quarter of the one and all of the other, is a quarter of any mixture at least. */
    @Test
    void what_every_line_contains_is_in_every_mixture() {
        MadeShare mixture = madeShare(
                masses(WeighingMethod.CUMULATIVE, "0.05", "0.05"),
                Subject.of("Y", "dye"),
                List.of(Ratio.of(1, 4), Ratio.ONE));
        assertThat(mixture.bounds().least().canonical()).isEqualTo(Ratio.of(1, 4));
        assertThat(mixture.bounds().greatest().canonical()).isEqualTo(Ratio.ONE);
    }
}
