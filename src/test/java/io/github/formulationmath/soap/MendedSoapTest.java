package io.github.formulationmath.soap;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.mend.Condition;
import io.github.formulationmath.mend.Correction;
import io.github.formulationmath.mend.CorrectionRules;
import io.github.formulationmath.mend.Obstacle;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.pot.Reading;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.support.Bar;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** A wrong pour of alkali: what now. */
class MendedSoapTest {

    private static MadeBatch pot(String alkali) {
        WeighingPlan plan = Bar.plan(Amount.mass("1439.6 g"), Balance.of("0.1 g", "20 kg"));
        return MadeBatch.of(Readings.of(
                plan,
                WeighingMethod.TARE_EACH,
                List.of(
                        Reading.of(Bar.FORMULA.line("Olive"), "700 g"),
                        Reading.of(Bar.FORMULA.line("Coconut"), "200 g"),
                        Reading.of(Bar.FORMULA.line("Shea"), "100 g"),
                        Reading.of(Bar.FORMULA.line("Sodium Hydroxide"), alkali),
                        Reading.of(Bar.FORMULA.line("Aqua"), "300 g"))));
    }

    private static CorrectionRules keeping(String shortfall) {
        return CorrectionRules.within(Tolerances.of("60 %"))
                .keeping(Bar.SOAP.leaving(Unsaponified.alkaliShortfall(shortfall)));
    }

    /**
     * 150 g in the place of 139.6 g. As KOH they are at most 150·0.99·1.40274 = 208.307 g where the fats take at least 194.4 g; of the
     * fats coconut takes most for a gram, 0.248 g, so that 56.078 g of it are the least that make it up.
     */
    @Test
    void after_too_much_alkali_the_smallest_addition_leaves_no_hydroxide() {
        MadeBatch made = pot("150 g");
        assertThat(AlkaliBalance.of(Bar.SOAP, made).verdict()).isNotEqualTo(HydroxideVerdict.NO_HYDROXIDE_LEFT);
        Correction correction = Correction.smallest(made, keeping("0 %"));
        assertThat(correction.outcome()).isEqualTo(Correction.Outcome.MENDED);
        double wanted = (150 * 0.99 * 56.10564 / 39.99710928 - 194.4) / 0.248;
        assertThat(correction.addition(Bar.FORMULA.line("Coconut")).canonical().doubleValue())
                .isCloseTo(wanted, Offset.offset(1e-9));
        assertThat(correction.total()).isEqualTo(correction.addition(Bar.FORMULA.line("Coconut")));
        assertThat(correction.brokenConditions()).isEmpty();
        correction.working().check();
    }

    /** With 1 % to spare the errors of the balance have room too, and the pot that the display shows is judged. */
    @Test
    void with_a_little_to_spare_the_mended_pot_is_sure() {
        Correction correction = Correction.smallest(pot("150 g"), keeping("1 %"));
        MadeBatch after = correction.onDisplay().after();
        AlkaliBalance balance = AlkaliBalance.of(Bar.SOAP, after);
        assertThat(balance.verdict()).isEqualTo(HydroxideVerdict.NO_HYDROXIDE_LEFT);
        assertThat(balance.shortfall().least().exactValue()).isGreaterThan(Ratio.ZERO);
    }

    @Test
    void what_was_poured_rightly_needs_nothing() {
        assertThat(Correction.smallest(pot("139.6 g"), keeping("0 %")).outcome())
                .isEqualTo(Correction.Outcome.NOTHING_TO_DO);
    }

    @Test
    void without_fat_the_condition_is_told_to_be_broken() {
        CorrectionRules none = keeping("0 %");
        for (String fat : List.of("Olive", "Coconut", "Shea")) {
            none = none.freezing(Bar.FORMULA.line(fat));
        }
        Correction correction = Correction.smallest(pot("150 g"), none);
        Condition condition = Bar.SOAP.leaving(Unsaponified.alkaliShortfall("0 %"));
        assertThat(correction.outcome()).isEqualTo(Correction.Outcome.BEST_POSSIBLE);
        assertThat(correction.brokenConditions()).containsExactly(condition);
        assertThat(correction.obstacles()).extracting(Obstacle::kind).contains(Obstacle.Kind.CONDITION);
    }
}
