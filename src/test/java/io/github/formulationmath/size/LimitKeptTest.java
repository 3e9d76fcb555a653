package io.github.formulationmath.size;

import static io.github.formulationmath.support.WorkingAssertions.assertSelfChecking;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.limit.Conformity;
import io.github.formulationmath.limit.DecisionRule;
import io.github.formulationmath.limit.LimitChecker;
import io.github.formulationmath.limit.LimitKind;
import io.github.formulationmath.limit.LimitTable;
import io.github.formulationmath.limit.Product;
import io.github.formulationmath.limit.SubstanceGroup;
import io.github.formulationmath.limit.UsageLimit;
import io.github.formulationmath.limit.Verdict;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.support.Checkers;
import io.github.formulationmath.support.HandWeighed;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.ErrorModel;
import io.github.formulationmath.weighing.Weighed;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.List;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A batch from which on a limit is sure to be kept. */
class LimitKeptTest {

    private static final Balance TENTH = Balance.of("0.1 g", "5 kg");
    private static final Balance LOSSY = TENTH.withErrors(ErrorModel.readabilityOnly()
            .withResidue(Amount.mass("0.02 g"), Amount.mass("0.3 g"))
            .withBuoyancy(Bounds.closed(Ratio.parse("0.0008"), Ratio.parse("0.0014"))));
    private static final LimitChecker EU = Checkers.of(Checkers.FACE_CREAM);

    private static Formula cream(String preservative, String percent) {
        return Formula.inPercent("Cream")
                .quantitySufficient("Aqua")
                .line(preservative, percent)
                .line("Glycerin", "3 %")
                .build();
    }

    private static Criterion kept(Verdict verdict) {
        return Criterion.limitKept(verdict, WeighingMethod.TARE_EACH);
    }

    private static MinimumBatch.Found smallest(Formula formula, LimitChecker checker) {
        Verdict verdict = checker.check(formula).binding().orElseThrow();
        return (MinimumBatch.Found) MinimumBatch.of(formula, TENTH, kept(verdict));
    }

    private static Verdict binding(Formula formula) {
        return EU.check(formula).binding().orElseThrow();
    }

    /** By hand: H = 0.99 · 0.15 + 2 · 0.01 · 0.15, G = 0.1 %. */
    @Test
    void the_example_of_the_class_holds() {
        MinimumBatch.Found batch = smallest(cream("Phenoxyethanol", "0.9 %"), EU);
        assertThat(batch.smallest()).isEqualTo(Amount.mass("151.5 g"));
        assertThat(batch.bindingLine().orElseThrow().name()).isEqualTo("Phenoxyethanol");
        assertThat(batch.criterion()).hasToString("PHENOXYETHANOL keeps limit EU-V-29");
        assertSelfChecking(batch);
    }

    @Test
    void a_target_at_the_cap_is_safe_in_no_batch() {
        for (String share : List.of("1.0 %", "1.1 %")) {
            Formula formula = cream("Phenoxyethanol", share);
            MinimumBatch none = MinimumBatch.of(formula, TENTH, kept(binding(formula)));
            assertThat(((MinimumBatch.Impossible) none).reason().key()).isEqualTo("obstacle.target-at-limit");
            assertThat(Wording.english().text(((MinimumBatch.Impossible) none).reason()))
                    .contains("EU-V-29")
                    .doesNotContain("{");
        }
    }

    /** Tried, not believed: every display reading nearest to the targets, from the safe batch on. */
    @ParameterizedTest
    @ValueSource(strings = {"1", "1.01", "1.1", "1.37", "2", "5"})
    void from_the_safe_batch_on_the_worst_case_is_within_also_as_acid(String factor) {
        Formula formula = cream("Sodium Benzoate", "0.5 %");
        MinimumBatch.Found safe = smallest(formula, EU);
        Amount<Mass> whole = safe.smallest().times(Ratio.parse(factor));
        assertThat(EU.check(onDisplay(formula, whole)).binding().orElseThrow().conformity())
                .isEqualTo(Conformity.WITHIN);
        assertSelfChecking(safe);
    }

    private static Weighed onDisplay(Formula formula, Amount<Mass> whole) {
        return HandWeighed.of(
                formula,
                whole,
                TENTH,
                WeighingMethod.TARE_EACH,
                mass -> mass.rounded(Rounding.toMultipleOf(Ratio.parse("0.1"))));
    }

    @Test
    void a_lowest_share_is_kept_from_a_batch_on_too() {
        UsageLimit least = UsageLimit.of(
                "HOUSE-2", SubstanceGroup.of("Phenoxyethanol"), LimitKind.MINIMUM, MassFraction.ofPercent("0.5"));
        LimitChecker checker =
                LimitChecker.of(LimitTable.of("house", List.of(least)), Product.leaveOn(), DecisionRule.worstCase());
        Formula formula = cream("Phenoxyethanol", "0.6 %");
        MinimumBatch.Found safe = smallest(formula, checker);
        // H = 0.995 · 0.15 + 2 · 0.005 · 0.15 = 0.15075 g, G = 0.1 %
        assertThat(safe.smallest().canonical()).isEqualTo(Ratio.parse("150.75"));
        assertThat(checker.check(onDisplay(formula, safe.smallest()))
                        .binding()
                        .orElseThrow()
                        .conformity())
                .isEqualTo(Conformity.WITHIN);
        assertSelfChecking(safe);
    }

    /** By hand: only lines of the phase count, T = 2.5 %, H = (0.975 + 0.025) · 0.15 g, G = 0.025 · 0.2 − 0.975 · 0.004. */
    @Test
    void a_limit_on_a_phase_counts_the_lines_of_the_phase_wherever_they_stand() {
        UsageLimit limit = UsageLimit.of(
                        "HOUSE-1", SubstanceGroup.of("Tocopherol"), LimitKind.MAXIMUM, MassFraction.ofPercent("2.5"))
                .inPhase("Oil phase");
        LimitChecker checker =
                LimitChecker.of(LimitTable.of("house", List.of(limit)), Product.leaveOn(), DecisionRule.worstCase());
        Formula formula = Formula.inPercent("Cream")
                .phase("Oil")
                .line("Squalane", "20 %")
                .phase("water")
                .quantitySufficient("Aqua")
                .phase("Oil phase")
                .line("Tocopherol", "0.4 %")
                .build();
        MinimumBatch.Found safe = smallest(formula, checker);
        assertThat(safe.smallest().canonical())
                .isEqualTo(Ratio.parse("0.15").dividedBy(Ratio.parse("0.005").minus(Ratio.parse("0.0039"))));
        assertSelfChecking(safe);
        assertThat(checker.check(onDisplay(formula, safe.smallest()))
                        .binding()
                        .orElseThrow()
                        .conformity())
                .isEqualTo(Conformity.WITHIN);
    }

    /** Where a limit is a plain cap of one substance the two criteria are one. */
    @ParameterizedTest
    @EnumSource(WeighingMethod.class)
    void a_plain_cap_asked_by_its_verdict_gives_the_same_batch(WeighingMethod method) {
        for (int tenths = 1; tenths < 10; tenths++) {
            Formula formula = cream("Phenoxyethanol", "0." + tenths + " %");
            Criterion byCap = Criterion.capKept(Substance.of("Phenoxyethanol"), MassFraction.ofPercent("1"), method);
            Criterion byLimit = Criterion.limitKept(binding(formula), method);
            for (Balance balance : List.of(TENTH, LOSSY)) {
                MinimumBatch found = MinimumBatch.of(formula, balance, byLimit);
                assertThat(found.mass())
                        .isEqualTo(MinimumBatch.of(formula, balance, byCap).mass());
                assertSelfChecking((MinimumBatch.Found) found);
            }
        }
    }

    @Test
    void a_verdict_on_another_formula_is_refused() {
        Formula weak = cream("Phenoxyethanol", "0.1 %");
        Formula strong = cream("Phenoxyethanol", "0.99 %");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> MinimumBatch.of(strong, TENTH, kept(binding(weak))))
                .withMessageContaining("EU-V-29")
                .withMessageContaining("take its own verdict");
    }

    @Test
    void another_formula_or_method_is_another_criterion() {
        Verdict verdict = binding(cream("Phenoxyethanol", "0.9 %"));
        assertThat(kept(verdict))
                .isEqualTo(kept(binding(cream("Phenoxyethanol", "0.9 %"))))
                .isNotEqualTo(kept(binding(cream("Phenoxyethanol", "0.8 %"))))
                .isNotEqualTo(Criterion.limitKept(verdict, WeighingMethod.CUMULATIVE));
    }

    @Test
    void a_verdict_that_could_not_be_given_names_no_batch() {
        UsageLimit limit = UsageLimit.of(
                        "HOUSE-1", SubstanceGroup.of("Glycerin"), LimitKind.MAXIMUM, MassFraction.ofPercent("2"))
                .inPhase("wax phase");
        Verdict open = LimitChecker.of(
                        LimitTable.of("house", List.of(limit)), Product.leaveOn(), DecisionRule.worstCase())
                .check(cream("Phenoxyethanol", "0.9 %"))
                .binding()
                .orElseThrow();
        assertThatIllegalArgumentException().isThrownBy(() -> kept(open)).withMessageContaining("NOT_ASSESSABLE");
    }
}
