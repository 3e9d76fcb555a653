package io.github.formulationmath.limit;

import static io.github.formulationmath.support.Checkers.FACE_CREAM;
import static io.github.formulationmath.support.WorkingAssertions.assertSelfChecking;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.support.Checkers;
import io.github.formulationmath.support.HandWeighed;
import io.github.formulationmath.weighing.Addition;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.MadeMasses;
import io.github.formulationmath.weighing.Weighed;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Verdicts with the balance in them. */
class WeighedLimitTest {

    private static final Balance TENTH = Balance.of("0.1 g", "2 kg");
    private static final Balance HUNDREDTH = Balance.of("0.01 g", "2 kg");

    private static Formula preserved(String percent) {
        return Formula.inPercent("Cream")
                .phase("water")
                .quantitySufficient("Aqua")
                .line("Phenoxyethanol", percent)
                .phase("oil")
                .line("Caprylic/Capric Triglyceride", "20 %")
                .line("Tocopherol", "0.5 %")
                .build();
    }

    /** Every line at its exact mass, as the display would read it. */
    private static Weighed weighed(Formula formula, String batch, Balance balance, WeighingMethod method) {
        return HandWeighed.exactly(formula, batch, balance, method);
    }

    private static Verdict binding(DecisionRule rule, Weighed weighed) {
        return LimitChecker.of(LimitTable.eu2024February(), FACE_CREAM, rule)
                .check(weighed)
                .binding()
                .orElseThrow();
    }

    /** The example of LimitChecker: 5.00 g in 500 g, a display of 0.1 g, a cap of 1.0 % (Annex V, entry 29). */
    @Test
    void a_preservative_at_its_cap_is_not_shown_to_be_within_on_a_real_balance() {
        Formula formula = preserved("1.0 %");
        LimitChecker checker = Checkers.of(FACE_CREAM);
        assertThat(checker.check(formula).binding().orElseThrow().conformity()).isEqualTo(Conformity.WITHIN);
        Weighed weighed = weighed(formula, "500 g", TENTH, WeighingMethod.TARE_EACH);
        Verdict verdict = checker.check(weighed).binding().orElseThrow();
        assertThat(verdict.conformity()).isEqualTo(Conformity.NOT_SHOWN_WITHIN);
        assertThat(verdict.share().canonical()).isEqualTo(Ratio.parse("0.01"));
        // (5 + 0.1) / (5.1 + 495 − 0.3), ALGORITHMS: the line at its upper end, the three others at their lower ends
        assertThat(verdict.highest().map(Amount::canonical))
                .contains(Ratio.parse("5.1").dividedBy(Ratio.parse("499.8")));
        assertThat(verdict.probability().orElseThrow().canonical().doubleValue())
                .isEqualTo(0.5, within(1e-9));
        assertThat(verdict.headroom().signum()).isNegative();
        assertThat(String.join("\n", verdict.describe(Wording.english())))
                .contains("not shown to be within", "worst case", "qualified safety assessor");
        assertSelfChecking(verdict);
        assertSelfChecking(verdict.headroom());
        assertSelfChecking(verdict.probability().orElseThrow());
        assertSelfChecking(verdict.acceptableTarget().orElseThrow());
    }

    @Test
    void simple_acceptance_lets_it_pass_and_the_guard_band_does_not() {
        Formula formula = preserved("1.0 %");
        Weighed weighed = weighed(formula, "500 g", TENTH, WeighingMethod.TARE_EACH);
        assertThat(binding(DecisionRule.simpleAcceptance(), weighed).conformity())
                .isEqualTo(Conformity.WITHIN);
        Verdict guarded = binding(DecisionRule.guardBand(), weighed);
        assertThat(guarded.conformity()).isEqualTo(Conformity.NOT_SHOWN_WITHIN);
        assertSelfChecking(guarded.headroom());
        assertSelfChecking(guarded.acceptableTarget().orElseThrow());
    }

    /** The target that the verdict names is within, and the least more is not: tried, not believed. */
    @ParameterizedTest
    @ValueSource(strings = {"100 g", "250 g", "500 g", "2 kg"})
    void the_acceptable_target_is_the_largest_that_is_within(String batch) {
        for (DecisionRule rule : List.of(DecisionRule.worstCase(), DecisionRule.guardBand())) {
            Formula formula = preserved("0.8 %");
            Verdict verdict = binding(rule, weighed(formula, batch, HUNDREDTH, WeighingMethod.TARE_EACH));
            Ratio target = verdict.acceptableTarget().orElseThrow().canonical();
            assertThat(target).isLessThan(Ratio.parse("0.01"));
            assertThat(at(rule, target, batch)).isEqualTo(Conformity.WITHIN);
            assertThat(at(rule, target.plus(Ratio.parse("1e-14")), batch)).isNotEqualTo(Conformity.WITHIN);
        }
    }

    private static Conformity at(DecisionRule rule, Ratio share, String batch) {
        Formula formula = Formula.inPercent("Cream")
                .phase("water")
                .quantitySufficient("Aqua")
                .line(io.github.formulationmath.formula.Ingredient.of("Phenoxyethanol"), MassFraction.of(share))
                .phase("oil")
                .line("Caprylic/Capric Triglyceride", "20 %")
                .line("Tocopherol", "0.5 %")
                .build();
        return binding(rule, weighed(formula, batch, HUNDREDTH, WeighingMethod.TARE_EACH))
                .conformity();
    }

    @Test
    void weighed_cumulatively_the_acceptable_target_is_on_the_safe_side() {
        Formula formula = preserved("0.9 %");
        Weighed weighed = weighed(formula, "250 g", TENTH, WeighingMethod.CUMULATIVE);
        Verdict verdict = binding(DecisionRule.worstCase(), weighed);
        Ratio target = verdict.acceptableTarget().orElseThrow().canonical();
        Formula lower = preserved(target.times(100)
                        .rounded(io.github.formulationmath.number.Rounding.toDecimalPlaces(6)
                                .with(java.math.RoundingMode.FLOOR))
                + " %");
        assertThat(binding(DecisionRule.worstCase(), weighed(lower, "250 g", TENTH, WeighingMethod.CUMULATIVE))
                        .conformity())
                .isEqualTo(Conformity.WITHIN);
    }

    @Test
    void a_balance_too_coarse_leaves_no_target() {
        Formula formula = preserved("0.9 %");
        Weighed weighed = weighed(formula, "5 g", TENTH, WeighingMethod.TARE_EACH);
        assertThat(binding(DecisionRule.worstCase(), weighed).acceptableTarget())
                .isEmpty();
        assertThat(binding(DecisionRule.guardBand(), weighed).acceptableTarget())
                .isEmpty();
    }

    /** 0.5 % tocopherol of 20.5 % oil phase is 2.439 % of the phase. */
    @Test
    void a_limit_on_a_phase_counts_the_phase_alone() {
        UsageLimit limit = UsageLimit.of(
                        "HOUSE-1", SubstanceGroup.of("Tocopherol"), LimitKind.MAXIMUM, MassFraction.ofPercent("2.5"))
                .inPhase("Oil phase");
        LimitChecker checker =
                LimitChecker.of(LimitTable.of("house", List.of(limit)), FACE_CREAM, DecisionRule.worstCase());
        Formula formula = preserved("0.5 %");
        Verdict written = checker.check(formula).binding().orElseThrow();
        assertThat(written.share().canonical()).isEqualTo(Ratio.of(5, 205));
        assertThat(written.conformity()).isEqualTo(Conformity.WITHIN);
        assertSelfChecking(written);
        Verdict made = checker.check(weighed(formula, "200 g", TENTH, WeighingMethod.TARE_EACH))
                .binding()
                .orElseThrow();
        assertThat(made.share().canonical()).isEqualTo(Ratio.of(5, 205));
        assertThat(made.conformity()).isEqualTo(Conformity.NOT_SHOWN_WITHIN);
        assertThat(made.highest().map(Amount::canonical))
                .contains(Ratio.parse("1.1").dividedBy(Ratio.parse("41")));
        assertSelfChecking(made.headroom());
        assertSelfChecking(made.acceptableTarget().orElseThrow());
        assertThat(written.limitingShareOf(formula.line("Tocopherol")).map(Amount::canonical))
                .contains(Ratio.parse("0.005125"));
    }

    @Test
    void a_phase_the_formula_does_not_have_is_said() {
        UsageLimit limit = UsageLimit.of(
                        "HOUSE-1", SubstanceGroup.of("Tocopherol"), LimitKind.MAXIMUM, MassFraction.ofPercent("2"))
                .inPhase("wax phase");
        LimitChecker checker =
                LimitChecker.of(LimitTable.of("house", List.of(limit)), FACE_CREAM, DecisionRule.worstCase());
        Verdict verdict = checker.check(preserved("0.5 %")).binding().orElseThrow();
        assertThat(verdict.conformity()).isEqualTo(Conformity.NOT_ASSESSABLE);
        assertThat(String.join("\n", verdict.describe(Wording.english()))).contains("wax phase");
        assertThat(verdict.acceptableTarget()).isNotEmpty();
    }

    @Test
    void a_lowest_effective_share_is_held_from_below() {
        UsageLimit least = UsageLimit.of(
                "HOUSE-2", SubstanceGroup.of("Phenoxyethanol"), LimitKind.MINIMUM, MassFraction.ofPercent("0.5"));
        LimitTable table = LimitTable.of("house", List.of(least));
        LimitChecker checker = LimitChecker.of(table, FACE_CREAM, DecisionRule.worstCase());
        assertThat(checker.check(preserved("0.5 %")).binding().orElseThrow().conformity())
                .isEqualTo(Conformity.WITHIN);
        assertThat(checker.check(preserved("0.4 %")).binding().orElseThrow().conformity())
                .isEqualTo(Conformity.FALLS_SHORT);
        Formula formula = preserved("0.5 %");
        Verdict made = checker.check(weighed(formula, "400 g", TENTH, WeighingMethod.TARE_EACH))
                .binding()
                .orElseThrow();
        assertThat(made.conformity()).isEqualTo(Conformity.NOT_SHOWN_WITHIN);
        Ratio target = made.acceptableTarget().orElseThrow().canonical();
        assertThat(target).isGreaterThan(Ratio.parse("0.005"));
        Formula higher = preserved("0.6 %");
        assertThat(checker.check(weighed(higher, "400 g", TENTH, WeighingMethod.TARE_EACH))
                        .binding()
                        .orElseThrow()
                        .conformity())
                .isEqualTo(Conformity.WITHIN);
        assertSelfChecking(made.headroom());
        assertSelfChecking(made.acceptableTarget().orElseThrow());
        LimitChecker guarded = LimitChecker.of(table, FACE_CREAM, DecisionRule.guardBand());
        Verdict band = guarded.check(weighed(formula, "400 g", TENTH, WeighingMethod.TARE_EACH))
                .binding()
                .orElseThrow();
        assertThat(band.acceptableTarget().orElseThrow().canonical()).isGreaterThan(Ratio.parse("0.005"));
        assertSelfChecking(band.acceptableTarget().orElseThrow());
    }

    @Test
    void masses_and_lines_must_be_as_many() {
        Formula formula = preserved("1 %");
        MadeMasses two = MadeMasses.of(List.of(
                Addition.of("a", Amount.mass("1 g"), Amount.mass("1 g"), TENTH),
                Addition.of("b", Amount.mass("1 g"), Amount.mass("1 g"), TENTH)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> binding(DecisionRule.worstCase(), new HandWeighed(formula, two)))
                .withMessageContaining("weighed has 2 masses, \"Cream\" has 4 lines")
                .withMessageContaining("ExpectedProduct");
    }
}
