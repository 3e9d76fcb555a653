package io.github.formulationmath.soap;

import static io.github.formulationmath.support.Bar.EXAMPLE;
import static io.github.formulationmath.support.Bar.fat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.plan.ExpectedProduct;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import org.junit.jupiter.api.Test;

/** The judgement on a plan, with the errors of its balance and what they have in common. */
class WeighedSoapTest {

    private static final LyeCalculation BAR = LyeCalculation.named("bar")
            .fat(fat("Olea Europaea Fruit Oil", "184", "196"), "700 g")
            .fat(fat("Cocos Nucifera Oil", "248", "265"), "200 g")
            .fat(fat("Butyrospermum Parkii Butter", "160", "195"), "100 g")
            .alkali(AlkaliGrade.assay(Alkali.SODIUM_HYDROXIDE, "97 %", "99 %", AlkaliGrade.Stated.HYDROXIDE)
                    .carbonate("0 %", "1 %", Evidence.MAXIMUM_ERROR, EXAMPLE))
            .leaving(Unsaponified.alkaliShortfall("5 %"), Reckoned.WITH_THE_MIDDLES)
            .water("Aqua", LyeWater.concentration("30 %", LyeWater.Of.PURE_HYDROXIDE))
            .build();

    private static ExpectedProduct expected(Formula formula, String step) {
        Batch batch =
                Batch.of(formula, BatchSize.ofStock(formula.line("Olea Europaea Fruit Oil"), Amount.mass("700 g")));
        return ExpectedProduct.of(WeighingPlan.of(batch, Balance.of(step, "5 kg")), WeighingMethod.TARE_EACH);
    }

    private static LyeBuilder bar() {
        return LyeCalculation.named("bar")
                .fat(fat("Olea Europaea Fruit Oil", "184", "196"), "700 g")
                .alkali(AlkaliGrade.assay(Alkali.SODIUM_HYDROXIDE, "97 %", "99 %", AlkaliGrade.Stated.HYDROXIDE)
                        .carbonate("0 %", "1 %", Evidence.MAXIMUM_ERROR, EXAMPLE))
                .leaving(Unsaponified.alkaliShortfall("5 %"), Reckoned.WITH_THE_MIDDLES)
                .water("Aqua", LyeWater.concentration("30 %", LyeWater.Of.PURE_HYDROXIDE));
    }

    @Test
    void the_soap_of_a_calculation_is_the_one_declared_line_by_line() {
        LyeCalculation lye = bar().neither("Kaolin", "20 g").build();
        assertThat(lye.soap())
                .isEqualTo(Soap.of(lye.formula())
                        .fat("Olea Europaea Fruit Oil", fat("Olea Europaea Fruit Oil", "184", "196"))
                        .alkali("Sodium Hydroxide", lye.alkalis().get(0).what())
                        .lyeWater("Aqua")
                        .neither("Kaolin"));
    }

    @Test
    void what_is_in_the_lye_may_be_added_again_behind_it() {
        Soap soap = bar().neither("Aqua", "50 g").build().soap();
        assertThat(soap.undeclared()).isEmpty();
        assertThat(soap.lines(Soap.Part.LYE_WATER))
                .singleElement()
                .satisfies(line -> assertThat(line.index()).isEqualTo(2));
        assertThat(soap.lines(Soap.Part.NEITHER))
                .singleElement()
                .satisfies(line -> assertThat(line.index()).isEqualTo(3));
    }

    @Test
    void a_plan_on_a_tenth_of_a_gram_is_judged() {
        AlkaliBalance balance = AlkaliBalance.of(BAR.soap(), expected(BAR.formula(), "0.1 g"));
        assertThat(balance.verdict()).isEqualTo(HydroxideVerdict.NO_HYDROXIDE_LEFT);
        assertThat(balance.isWithinCoverage()).isFalse();
        assertThat(balance.shortfall().least().canonical().doubleValue()).isBetween(0.001, 0.003);
    }

    /**
     * By hand: tare and reading are rounded to half a step each, so that a mass lies within 0.1 g. The fats take at least (699.9 · 184 +
     * 199.9 · 248 + 99.9 · 160)/56.10564 mmol, 138.5435 g of NaOH. Over 0.99 and less 0.1 g that is 139.843 g, with 2 % kept
     * 137.045 g.
     */
    @Test
    void the_largest_reading_is_safe_and_the_next_step_is_not() {
        ExpectedProduct expected = expected(BAR.formula(), "0.1 g");
        assertThat(AlkaliBalance.largestReading(
                        BAR.soap(), expected, "Sodium Hydroxide", Unsaponified.alkaliShortfall("0 %")))
                .hasToString("Optional[139.8 g]");
        assertThat(AlkaliBalance.largestReading(
                        BAR.soap(), expected, "Sodium Hydroxide", Unsaponified.alkaliShortfall("2 %")))
                .hasToString("Optional[137 g]");
    }

    @Test
    void the_masses_of_another_formula_are_refused() {
        Formula other = Formula.inMasses("other")
                .line("Olea Europaea Fruit Oil", "700 g")
                .build();
        assertThatThrownBy(() -> AlkaliBalance.of(BAR.soap(), expected(other, "0.1 g")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("not the same formula");
    }
}
