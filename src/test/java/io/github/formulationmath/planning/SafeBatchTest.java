package io.github.formulationmath.planning;

import static io.github.formulationmath.support.WorkingAssertions.assertSelfChecking;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.limit.Conformity;
import io.github.formulationmath.limit.DecisionRule;
import io.github.formulationmath.limit.LimitChecker;
import io.github.formulationmath.limit.LimitKind;
import io.github.formulationmath.limit.LimitTable;
import io.github.formulationmath.limit.Product;
import io.github.formulationmath.limit.SubstanceGroup;
import io.github.formulationmath.limit.UsageLimit;
import io.github.formulationmath.limit.Verdict;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.support.HandWeighed;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Weighed;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.List;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SafeBatchTest {

    private static final Balance TENTH = Balance.of("0.1 g", "5 kg");
    private static final LimitChecker EU = LimitChecker.of(
            LimitTable.eu2024May(),
            Product.leaveOn().on("face").ofKind("face_cream").inForm("cream"),
            DecisionRule.worstCase());

    private static Formula cream(String preservative, String percent) {
        return Formula.inPercent("Cream")
                .quantitySufficient("Aqua")
                .line(preservative, percent)
                .line("Glycerin", "3 %")
                .build();
    }

    private static Verdict binding(Formula formula) {
        return EU.check(formula).binding().orElseThrow();
    }

    /** By hand: H = 0.99 · 0.15 + 2 · 0.01 · 0.15, G = 0.1 %. */
    @Test
    void the_example_of_the_class_holds() {
        SafeBatch batch = SafeBatch.of(binding(cream("Phenoxyethanol", "0.9 %")), TENTH, WeighingMethod.TARE_EACH)
                .orElseThrow();
        assertThat(batch.mass().exactValue()).isEqualTo(Ratio.parse("151.5"));
        assertThat(batch).hasToString("PHENOXYETHANOL: safe from 151.5 g on");
        assertSelfChecking(batch);
    }

    @Test
    void a_target_at_the_cap_is_safe_in_no_batch() {
        assertThat(SafeBatch.of(binding(cream("Phenoxyethanol", "1.0 %")), TENTH, WeighingMethod.TARE_EACH))
                .isEmpty();
        assertThat(SafeBatch.of(binding(cream("Phenoxyethanol", "1.1 %")), TENTH, WeighingMethod.TARE_EACH))
                .isEmpty();
    }

    /** Tried, not believed: every display reading nearest to the targets, from the safe batch on. */
    @ParameterizedTest
    @ValueSource(strings = {"1", "1.01", "1.1", "1.37", "2", "5"})
    void from_the_safe_batch_on_the_worst_case_is_within_also_as_acid(String factor) {
        Formula formula = cream("Sodium Benzoate", "0.5 %");
        SafeBatch safe =
                SafeBatch.of(binding(formula), TENTH, WeighingMethod.TARE_EACH).orElseThrow();
        Amount<Mass> whole = safe.mass().times(Ratio.parse(factor));
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
        SafeBatch safe = SafeBatch.of(checker.check(formula).binding().orElseThrow(), TENTH, WeighingMethod.TARE_EACH)
                .orElseThrow();
        // H = 0.995 · 0.15 + 2 · 0.005 · 0.15 = 0.15075 g, G = 0.1 %
        assertThat(safe.result()).isEqualTo(Ratio.parse("150.75"));
        assertThat(checker.check(onDisplay(formula, safe.mass()))
                        .binding()
                        .orElseThrow()
                        .conformity())
                .isEqualTo(Conformity.WITHIN);
        assertSelfChecking(safe);
    }

    @Test
    void a_boat_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () -> SafeBatch.of(binding(cream("Phenoxyethanol", "0.9 %")), TENTH, WeighingMethod.FROM_BOAT))
                .withMessageContaining("residue");
    }
}
