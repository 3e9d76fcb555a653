package io.github.formulationmath.mend;

import static io.github.formulationmath.pot.Lotion.g;
import static io.github.formulationmath.pot.Lotion.line;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.pot.LineAddition;
import io.github.formulationmath.pot.Lotion;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.support.WorkingAssertions;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import org.junit.jupiter.api.Test;

final class CorrectionTest {

    private static final CorrectionRules RULES = CorrectionRules.within(Tolerances.of("5 %"));

    private static final Formula TWO = Formula.inPercent("Two lines")
            .line("Aqua", "80 %")
            .line("Glycerin", "20 %")
            .build();

    private static MadeBatch two(String first, String second) {
        WeighingPlan plan = WeighingPlan.of(Batch.of(TWO, BatchSize.ofMass("100 g")), Balance.of("0.1 g", "1 kg"));
        return MadeBatch.of(Lotion.readings(plan, WeighingMethod.TARE_EACH, first, second));
    }

    /** 22 g may be 21 % at most, so that the pot must reach 22/0.21 g: solved by hand. */
    @Test
    void the_smallest_addition_stops_at_the_tolerance() {
        Correction correction = Correction.smallest(two("80", "22"), RULES);
        assertThat(correction.outcome()).isEqualTo(Correction.Outcome.MENDED);
        assertThat(correction.total()).isEqualTo(Amount.grams(Ratio.of(2200, 21).minus(Ratio.of(102))));
        assertThat(correction.additions()).hasSize(1);
        assertThat(correction.additions().get(0).line().name()).isEqualTo("Aqua");
        WorkingAssertions.assertSelfChecking(correction);
        assertThat(correction.obstacles()).isEmpty();
        assertThat(correction.worstDeviation()).isEmpty();

        DisplayedAdditions displayed = correction.onDisplay();
        assertThat(displayed.quality()).isEqualTo(DisplayedAdditions.Quality.SMALLEST);
        assertThat(displayed.total()).isEqualTo(g("2.8"));
        assertThat(displayed.furthestOutside()).isEmpty();
        WorkingAssertions.assertSelfChecking(displayed);
    }

    @Test
    void a_batch_within_tolerance_needs_nothing() {
        Correction correction = Correction.smallest(two("80", "20.5"), RULES);
        assertThat(correction.outcome()).isEqualTo(Correction.Outcome.NOTHING_TO_DO);
        assertThat(correction.additions()).isEmpty();
        WorkingAssertions.assertSelfChecking(correction);
    }

    @Test
    void a_cap_asks_for_more_than_the_tolerance() {
        CorrectionRules capped = RULES.withCap(Substance.of("Glycerin"), MassFraction.parse("20 %"));
        Correction correction = Correction.smallest(two("80", "22"), capped);
        assertThat(correction.total()).isEqualTo(g("8"));
        WorkingAssertions.assertSelfChecking(correction);
    }

    @Test
    void a_cap_on_a_part_of_a_blend_counts_the_part() {
        // 8 g of a blend with 90 % of it are 7.2 g; at most 1 % may be there, so the pot must reach 720 g.
        CorrectionRules capped = CorrectionRules.within(Tolerances.of("99 %"))
                .withCap(Substance.of("Phenoxyethanol"), MassFraction.parse("1 %"));
        Correction correction = Correction.smallest(Lotion.made("316.0", "12.0", "48.0", "20.0", "8.0"), capped);
        assertThat(correction.total()).isEqualTo(g("316"));
        assertThat(correction.after().mass()).isEqualTo(g("720"));
    }

    @Test
    void a_full_pot_gets_the_best_that_can_be_done() {
        // 80 + 24 g in a pot for 106 g: all 2 g go to the water, the glycerin stays at 24/106 = 22.64 %, 13.2 % too
        // much.
        Correction correction = Correction.smallest(two("80", "24"), RULES.withRoomFor(g("106")));
        assertThat(correction.outcome()).isEqualTo(Correction.Outcome.BEST_POSSIBLE);
        assertThat(correction.obstacles())
                .extracting(Obstacle::kind)
                .containsExactly(Obstacle.Kind.LINE_TOO_MUCH, Obstacle.Kind.VESSEL_FULL);
        assertThat(correction.worstDeviation())
                .contains(Amount.percent(Ratio.of(24, 106)
                        .dividedBy(Ratio.of(1, 5))
                        .minus(Ratio.ONE)
                        .times(100)));
        assertThat(correction.additions()).containsExactly(LineAddition.of(TWO.line("Aqua"), g("2")));
        WorkingAssertions.assertSelfChecking(correction);
        WorkingAssertions.assertSelfChecking(
                correction.worstDeviation().orElseThrow().working());
        DisplayedAdditions displayed = correction.onDisplay();
        assertThat(displayed.quality()).isEqualTo(DisplayedAdditions.Quality.NOT_WITHIN);
        assertThat(displayed.furthestOutside().orElseThrow().line().name()).isEqualTo("Glycerin");
    }

    @Test
    void stock_that_is_out_and_lines_that_are_frozen_are_obstacles() {
        MadeBatch made = two("80", "24");
        assertThat(Correction.smallest(made, RULES.withStock(TWO.line("Aqua"), g("1")))
                        .obstacles())
                .extracting(Obstacle::kind)
                .containsExactly(Obstacle.Kind.LINE_TOO_MUCH, Obstacle.Kind.STOCK_OUT);
        Correction frozen = Correction.smallest(made, RULES.freezing(TWO.line("Aqua")));
        assertThat(frozen.obstacles())
                .extracting(Obstacle::kind)
                .containsExactly(Obstacle.Kind.LINE_TOO_MUCH, Obstacle.Kind.LINE_FROZEN);
        assertThat(frozen.additions()).isEmpty();
        assertThat(frozen.worstDeviation())
                .contains(Amount.percent(Ratio.of(24, 104)
                        .dividedBy(Ratio.of(1, 5))
                        .minus(Ratio.ONE)
                        .times(100)));
    }

    @Test
    void a_cap_that_cannot_be_kept_comes_before_the_lines() {
        // Nothing but 1 g of water can be added: the glycerin stays at 24/105 = 22.857 %, the cap is 21 %.
        CorrectionRules rules = RULES.withCap(Substance.of("Glycerin"), MassFraction.parse("21 %"))
                .withStock(TWO.line("Aqua"), g("1"));
        Correction correction = Correction.smallest(two("80", "24"), rules);
        assertThat(correction.outcome()).isEqualTo(Correction.Outcome.BEST_POSSIBLE);
        assertThat(correction.exceededCaps())
                .containsExactly(new ExceededCap(
                        Substance.of("Glycerin"), MassFraction.parse("21 %"), MassFraction.of(Ratio.of(24, 105))));
        assertThat(correction.additions()).containsExactly(LineAddition.of(TWO.line("Aqua"), g("1")));
        WorkingAssertions.assertSelfChecking(correction);
        WorkingAssertions.assertSelfChecking(
                correction.worstDeviation().orElseThrow().working());
    }

    @Test
    void a_line_more_than_twice_too_large_is_as_good_as_it_gets() {
        Correction correction = Correction.smallest(two("20", "80"), RULES.freezing(TWO.line("Aqua")));
        assertThat(correction.worstDeviation())
                .contains(Amount.percent(Ratio.of(3).times(100)));
        WorkingAssertions.assertSelfChecking(correction);
    }

    @Test
    void additions_that_no_display_can_show_are_said_to_be_none() {
        // 21 g at 30 % ask for 49 g of water, between the steps of 48 and 51 g; 27 + 63 g would do, but not in 85 g.
        Formula formula = Formula.inPercent("Steps")
                .line("Aqua", "70 %")
                .line("Glycerin", "30 %")
                .build();
        WeighingPlan plan = WeighingPlan.of(Batch.of(formula, BatchSize.ofMass("60 g")), Balance.of("3 g", "1 kg"));
        MadeBatch made = MadeBatch.of(Lotion.readings(plan, WeighingMethod.TARE_EACH, "45", "21"));
        Correction correction = Correction.smallest(
                made, CorrectionRules.within(Tolerances.of("0.1 %")).withRoomFor(g("85")));
        assertThat(correction.outcome()).isEqualTo(Correction.Outcome.MENDED);
        assertThat(correction.onDisplay().quality()).isEqualTo(DisplayedAdditions.Quality.NONE_WITHIN);
    }

    @Test
    void several_lines_poured_over_in_a_lotion() {
        MadeBatch made = Lotion.made("316.0", "13.5", "52.0", "20.0", "4.6");
        CorrectionRules rules = CorrectionRules.within(Tolerances.of("2 %").withLine("Preservative blend", "1 %"))
                .withCap(Substance.of("Phenoxyethanol"), MassFraction.parse("0.95 %"));
        Correction correction = Correction.smallest(made, rules);
        assertThat(correction.outcome()).isEqualTo(Correction.Outcome.MENDED);
        WorkingAssertions.assertSelfChecking(correction);
        correction
                .after()
                .check(rules.tolerances())
                .forEach(check -> assertThat(
                                check.allowed().contains(check.line().share()))
                        .as("%s", check)
                        .isTrue());
        DisplayedAdditions displayed = correction.onDisplay();
        assertThat(displayed.isWithin()).isTrue();
        assertThat(displayed.total().compareTo(correction.total())).isGreaterThanOrEqualTo(0);
        assertThat(line("Aqua").name()).isEqualTo("Aqua");
    }
}
