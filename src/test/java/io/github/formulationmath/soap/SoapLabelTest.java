package io.github.formulationmath.soap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.document.Format;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.LineAmount;
import io.github.formulationmath.label.IngredientList;
import io.github.formulationmath.label.Label;
import io.github.formulationmath.label.LabelRule;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.support.Bar;
import org.junit.jupiter.api.Test;

/** The ingredient list as added and as saponified. */
class SoapLabelTest {

    private static final Label EU = Label.of(LabelRule.eu());

    private static final SaltNames NAMES = SaltNames.none()
            .naming("Olive", "Olivate")
            .naming("Coconut", "Cocoate")
            .naming("Shea", "Shea Butterate");

    private static Soap soap() {
        return Soap.of(Bar.FORMULA)
                .fat("Olive", Bar.fat("Olive", "190", "190"))
                .fat("Coconut", Bar.fat("Coconut", "256", "256"))
                .fat("Shea", Bar.fat("Shea", "178", "178"))
                .alkali(
                        "Sodium Hydroxide",
                        Bar.SOAP.alkaliOf("Sodium Hydroxide").orElseThrow())
                .lyeWater("Aqua");
    }

    private static double grams(Formula formula, String name) {
        return formula.lines().stream()
                .filter(line -> line.name().equals(name))
                .mapToDouble(SoapLabelTest::grams)
                .sum();
    }

    private static double grams(FormulaLine line) {
        return ((LineAmount.Weight) line.amount()).mass().canonical().doubleValue();
    }

    /** By names: what is added has no salt and no glycerin, what is there has no hydroxide. */
    @Test
    void two_lists_of_one_soap() {
        SoapLabel label = SoapLabel.of(soap(), NAMES);
        assertThat(label.asAdded(EU).text()).isEqualTo("Olive, Aqua, Coconut, Sodium Hydroxide, Shea");
        assertThat(label.asSaponified(EU).text())
                .isEqualTo(
                        "Sodium Olivate, Aqua, Sodium Cocoate, Glycerin, Sodium Shea Butterate, Olive, Coconut, Shea");
        assertThat(label.document(EU, Wording.english()).print(Format.TEXT))
                .contains("Ingredients as added")
                .contains("Ingredients when all has reacted");
    }

    /**
     * By hand, for 1439.6 g: 139.6 g of 98 % are 136.808 g, 3.420447 mol of NaOH; the fats can take (700 · 190 + 200 · 256 + 100 · 178)/56.10564
     * = 3.600351 mol, so that 95.00315 % react. Coconut: 190.0063 g take 0.866974 mol; 26.6146 g of glycerol go, 34.6765 g of NaOH come: 198.068 g.
     */
    @Test
    void the_masses_are_those_of_the_reaction() {
        Formula formula = SoapLabel.of(soap(), NAMES).saponified();
        double times = 1000 / 1439.6;
        double demand = (700 * 190 + 200 * 256 + 100 * 178) / 56105.64;
        double moles = 139.6 * 0.98 / 39.99710928;
        double reacted = moles / demand;
        double taken = 200 * reacted * 256 / 56105.64;
        double coconut = 200 * reacted - taken / 3 * 92.09382 + taken * 39.99710928;
        assertThat(grams(formula, "Sodium Cocoate")).isBetween(coconut * times - 1e-6, coconut * times + 1e-6);
        assertThat(grams(formula, "Glycerin"))
                .isBetween(moles / 3 * 92.09382 * times - 1e-6, moles / 3 * 92.09382 * times + 1e-6);
        assertThat(grams(formula, "Coconut"))
                .isBetween(200 * (1 - reacted) * times - 1e-6, 200 * (1 - reacted) * times + 1e-6);
        // Nothing is lost but the carbonate, 1 % of 139.6 g.
        double all = formula.lines().stream().mapToDouble(SoapLabelTest::grams).sum();
        assertThat(all).isBetween(1000 - 1.396 * times - 1e-6, 1000 - 1.396 * times + 1e-6);
    }

    @Test
    void two_alkalis_give_two_salts_by_mole_and_an_acid_its_own() {
        LyeCalculation lye = LyeCalculation.named("shaving")
                .fat(Bar.fat("Olive", "190", "190"), "1000 g")
                .acid(Acid.of("Citric Acid", "C6H8O7", 3, "100 %", "100 %"), "10 g")
                .alkalis(
                        AlkaliMixture.byMole("60 %"), grade(Alkali.SODIUM_HYDROXIDE), grade(Alkali.POTASSIUM_HYDROXIDE))
                .leaving(Unsaponified.alkaliShortfall("5 %"), Reckoned.WITH_THE_MIDDLES)
                .water("Aqua", LyeWater.ofFats("30 %"))
                .build();
        IngredientList list = SoapLabel.of(
                        lye.soap(), SaltNames.none().naming("Olive", "Olivate").naming("Citric Acid", "Citrate"))
                .asSaponified(EU);
        assertThat(list.text())
                .isEqualTo("Sodium Olivate, Potassium Olivate, Aqua, Glycerin, Olive, Potassium Citrate, Sodium Citrate"
                        .replace("Potassium Citrate, Sodium Citrate", "Sodium Citrate, Potassium Citrate"));
    }

    private static AlkaliGrade grade(Alkali alkali) {
        return AlkaliGrade.assay(alkali, "98 %", "98 %", AlkaliGrade.Stated.HYDROXIDE)
                .carbonate("0 %", "0 %", Evidence.MAXIMUM_ERROR, Bar.EXAMPLE);
    }

    @Test
    void a_name_that_is_not_known_is_asked_for() {
        assertThatThrownBy(() -> SoapLabel.of(soap(), SaltNames.none().naming("Olive", "Olivate")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("Coconut")
                .hasMessageContaining("naming(");
        assertThatThrownBy(() -> SaltNames.none().naming("Olive", "Sodium Olivate"))
                .hasMessageContaining("leave the metal out");
        assertThatThrownBy(() -> SaltNames.none().naming("Olive", " ")).hasMessageContaining("blank");
    }

    @Test
    void a_soap_with_more_alkali_than_the_fats_take_has_no_list() {
        Soap strong = Soap.of(Bar.FORMULA)
                .fat("Olive", Bar.fat("Olive", "170", "170"))
                .fat("Coconut", Bar.fat("Coconut", "248", "248"))
                .fat("Shea", Bar.fat("Shea", "160", "160"))
                .alkali(
                        "Sodium Hydroxide",
                        Bar.SOAP.alkaliOf("Sodium Hydroxide").orElseThrow())
                .lyeWater("Aqua");
        assertThatThrownBy(() -> SoapLabel.of(strong, NAMES)).hasMessageContaining("more than the fats can take");
        assertThatThrownBy(() -> SoapLabel.of(Soap.of(Bar.FORMULA), NAMES)).hasMessageContaining("not declared");
    }

    @Test
    void a_wax_stays_what_it_is() {
        LyeCalculation lye = LyeCalculation.named("candle")
                .fat(Bar.fat("Olive", "190", "190"), "1000 g")
                .fat(
                        Fat.wax(
                                "Cera Alba",
                                SaponificationValue.ofStandard("87 mg KOH/g", "102 mg KOH/g", Bar.EXAMPLE),
                                InertMatter.countedInTheValue()),
                        "20 g")
                .alkali(grade(Alkali.SODIUM_HYDROXIDE))
                .leaving(Unsaponified.alkaliShortfall("5 %"), Reckoned.FOR_EVERY_LOT)
                .water("Aqua", LyeWater.ofFats("30 %"))
                .build();
        SaltNames names = SaltNames.none().naming("Olive", "Olivate");
        assertThat(SoapLabel.of(lye.soap(), names).asSaponified(EU).text()).contains("Cera Alba");
    }
}
