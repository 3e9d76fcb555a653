package io.github.formulationmath.label;

import static io.github.formulationmath.support.WorkingAssertions.assertSelfChecking;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.limit.DecisionRule;
import io.github.formulationmath.limit.LimitChecker;
import io.github.formulationmath.limit.LimitReport;
import io.github.formulationmath.limit.LimitTable;
import io.github.formulationmath.limit.Product;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.support.HandWeighed;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import org.junit.jupiter.api.Test;

/** Order by Regulation (EC) No 1223/2009, Article 19(1)(g), and 21 CFR 701.3; both as quoted, texts from memory. */
class IngredientListTest {

    private static Formula lotion() {
        return Formula.inPercent("Lotion")
                .quantitySufficient("Aqua")
                .line("Glycerin", "5 %")
                .line("Xanthan Gum", "0.3 %")
                .line("CI 77891", "6 %")
                .line("Phenoxyethanol", "1 %")
                .line("Cetearyl Alcohol", "1 %")
                .line("Tocopherol", "0.5 %")
                .build();
    }

    @Test
    void eu_exactly_one_percent_stands_in_its_place_and_colorants_come_last() {
        IngredientList list = Label.of(LabelRule.eu()).list(lotion());
        assertThat(list.text())
                .isEqualTo("Aqua, Glycerin, Cetearyl Alcohol, Phenoxyethanol, Tocopherol, Xanthan Gum, CI 77891");
        assertThat(list.ordered()).hasSize(4);
        assertThat(list.free()).hasSize(2);
        assertThat(list.colorants()).hasSize(1);
        assertThat(list.orderDoubts()).isEmpty();
        assertThat(list.thresholdDoubts()).isEmpty();
        list.all().forEach(ingredient -> assertSelfChecking(ingredient));
    }

    @Test
    void us_exactly_one_percent_is_free() {
        IngredientList list = Label.of(LabelRule.us()).list(lotion());
        assertThat(list.ordered())
                .extracting(IngredientList.ListedIngredient::name)
                .containsExactly("Aqua", "Glycerin");
        assertThat(list.free()).hasSize(4);
    }

    @Test
    void blends_are_broken_up_and_equal_names_merged() {
        Formula formula = Formula.inPercent("Wash")
                .quantitySufficient("Aqua")
                .line(
                        Ingredient.blend("Betaine solution")
                                .part("Cocamidopropyl Betaine", "30 %")
                                .rest("AQUA"),
                        MassFraction.parse("20 %"))
                .line("Glycerin", "2 %")
                .line(
                        Ingredient.blend("Glycerin solution")
                                .part("Glycerin", "50 %")
                                .rest("Aqua"),
                        MassFraction.parse("4 %"))
                .build();
        IngredientList list = Label.of(LabelRule.eu()).list(formula);
        assertThat(list.text()).isEqualTo("Aqua, Cocamidopropyl Betaine, Glycerin");
        assertThat(list.all())
                .extracting(listed -> listed.share().fraction())
                .containsExactly(Ratio.parse("0.90"), Ratio.parse("0.06"), Ratio.parse("0.04"));
        list.all().forEach(ingredient -> assertSelfChecking(ingredient));
    }

    /** Annex III, linalool: above 0.001 % leave-on. 5 % of a fragrance at 0.02 % is exactly 0.001 %: not declared. */
    @Test
    void a_perfume_is_one_word_and_its_allergens_stand_beside_it_only_when_due() {
        assertThat(perfumed("0.02 %")).isEqualTo("Aqua, Parfum");
        assertThat(perfumed("0.021 %")).isEqualTo("Aqua, Parfum, LINALOOL");
    }

    private static String perfumed(String share) {
        Formula formula = Formula.inPercent("Lotion")
                .quantitySufficient("Aqua")
                .line(
                        Ingredient.blend("Lavender fragrance")
                                .part("Linalool", "5 %")
                                .rest("Dipropylene Glycol"),
                        MassFraction.parse(share))
                .build();
        LimitReport report = LimitChecker.of(
                        LimitTable.eu2024February(),
                        Product.leaveOn().on("body").ofKind("body_lotion").inForm("cream"),
                        DecisionRule.worstCase())
                .check(formula);
        String text = Label.of(LabelRule.eu())
                .withPerfume("lavender fragrance", "Parfum")
                .declaring(report)
                .list(formula)
                .text();
        return text.replace("Linalool", "LINALOOL");
    }

    @Test
    void what_the_weighing_does_not_settle_is_pointed_out() {
        Formula formula = Formula.inPercent("Balm")
                .quantitySufficient("Helianthus Annuus Seed Oil")
                .line("Cera Alba", "10 %")
                .line("Butyrospermum Parkii Butter", "10.1 %")
                .line("Tocopherol", "0.95 %")
                .build();
        Balance balance = Balance.of("0.1 g", "2 kg");
        IngredientList list = Label.of(LabelRule.eu()).list(weighed(formula, "50 g", balance));
        assertThat(list.orderDoubts()).singleElement().satisfies(doubt -> {
            assertThat(doubt.name()).isEqualTo("Butyrospermum Parkii Butter");
            assertThat(list.ordered().get(list.ordered().indexOf(doubt) + 1).name())
                    .isEqualTo("Cera Alba");
        });
        assertThat(list.thresholdDoubts())
                .extracting(IngredientList.ListedIngredient::name)
                .containsExactly("Tocopherol");
        assertThat(String.join("\n", list.describe(Wording.english())))
                .contains("does not settle whether there is more of Butyrospermum Parkii Butter or of Cera Alba")
                .contains("on which side of 1 % Tocopherol is")
                .contains("law in force");
        list.all().forEach(ingredient -> assertSelfChecking(ingredient));
        IngredientList fine = Label.of(LabelRule.eu()).list(weighed(formula, "5000 g", Balance.of("0.1 g", "10 kg")));
        assertThat(fine.orderDoubts()).isEmpty();
        assertThat(fine.thresholdDoubts()).isEmpty();
    }

    private static HandWeighed weighed(Formula formula, String batch, Balance balance) {
        return HandWeighed.exactly(formula, batch, balance, WeighingMethod.TARE_EACH);
    }

    @Test
    void colorants_may_be_named_and_rules_made() {
        IngredientList list = Label.of(LabelRule.of("house", MassFraction.ofPercent("2"), true, Source.user()))
                .withColorants("xanthan  gum")
                .list(lotion());
        assertThat(list.text()).endsWith("CI 77891, Xanthan Gum");
        assertThat(list.ordered()).hasSize(2);
        assertThat(LabelRule.eu()).isEqualTo(LabelRule.eu()).isNotEqualTo(LabelRule.us());
        assertThat(LabelRule.us()).hasToString("US: any order at or below 1 %");
    }

    /** 1 oz is 28.349523125 g (international avoirdupois pound, 0.45359237 kg). */
    @Test
    void net_contents_never_promise_more_than_the_fill() {
        NetContents<?> grams = NetContents.byMass(Amount.mass("50.7 g"), Amount.mass("1 g"));
        assertThat(grams).hasToString("50 g");
        assertSelfChecking(grams);
        NetContents<?> ounces = NetContents.byMass(Amount.mass("50.7 g"), Amount.mass("0.05 oz"));
        assertThat(ounces).hasToString("1.75 oz");
        NetContents<?> volume = NetContents.byVolume(
                Amount.mass("50.7 g"), Density.ofGramsPerMillilitre("0.95"), Amount.volume("1 mL"));
        assertThat(volume).hasToString("53 mL");
        assertSelfChecking(volume);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> NetContents.byMass(Amount.mass("0.5 g"), Amount.mass("1 g")))
                .withMessageContaining("finer step");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> NetContents.byMass(Amount.mass("0 g"), Amount.mass("1 g")));
    }
}
