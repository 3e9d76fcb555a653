package io.github.formulationmath.label;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.support.Checkers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How names are printed. Order, colorants, "may contain" and "(nano)" after Regulation (EC) No 1223/2009, Article 19(1)(g). */
class LabelNamesTest {

    private static final Label EU = Label.of(LabelRule.eu());

    private static FormulaBuilder cream() {
        return Formula.inPercent("Cream").quantitySufficient("Aqua").line("Glycerin", "5 %");
    }

    private static String list(String name, String percent) {
        return EU.list(cream().line(name, percent).build()).text();
    }

    private static String text(IngredientList list) {
        return String.join("\n", list.describe(Wording.english()));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "CI 77491",
                "CI77491",
                "ci77491",
                "C.I. 77491",
                "CI-77491",
                "Iron Oxides (CI 77491)",
                "CI 77491 (Iron Oxides)",
                "Colour Index 77491"
            })
    void a_colour_index_number_is_a_colorant_in_any_spelling(String name) {
        assertThat(list(name, "7 %")).isEqualTo("Aqua, Glycerin, CI 77491");
    }

    @ParameterizedTest
    @ValueSource(strings = {"CI 7749", "CI 774911", "Ascii 77491", "Acacia 12345", "PEG-77491", "Lacid 77491x"})
    void what_only_looks_like_one_is_no_colorant(String name) {
        assertThat(EU.list(cream().line(name, "7 %").build()).colorants()).isEmpty();
    }

    @Test
    void two_spellings_of_one_colorant_are_one() {
        Formula formula = cream().line("CI77491", "1 %")
                .line("Iron Oxides (CI 77491)", "1 %")
                .build();
        assertThat(EU.list(formula).colorants())
                .singleElement()
                .satisfies(one -> assertThat(one.share().fraction())
                        .isEqualTo(MassFraction.parse("2 %").fraction()));
    }

    @Test
    void other_shades_may_contain_what_this_one_does_not() {
        Formula formula = cream().line("CI 77491", "1 %").build();
        IngredientList list = EU.mayContain("CI77491", "C.I. 77492", "Mica").list(formula);
        assertThat(list.text()).isEqualTo("Aqua, Glycerin, CI 77491 [+/- CI 77492, Mica]");
        assertThat(list.mayContain()).containsExactly("CI 77492", "Mica");
        assertThat(EU.list(formula).text()).doesNotContain("+/-");
    }

    @ParameterizedTest
    @CsvSource({
        "Zinc Oxide (nano),Zinc Oxide (nano)",
        "[nano] Zinc Oxide,Zinc Oxide (nano)",
        "Zinc Oxide [NANO],Zinc Oxide (nano)",
        "Nano Zinc Oxide,Zinc Oxide (nano)",
        "ZINC OXIDE NANO,Zinc Oxide (nano)",
        "Zinc Oxide (non-nano),Zinc Oxide (non-nano)",
        "Nanofin,Nanofin"
    })
    void a_mark_for_nanomaterials_is_printed_in_one_way(String name, String printed) {
        assertThat(list(name, "3 %")).isEqualTo("Aqua, Glycerin, " + printed);
    }

    @ParameterizedTest
    @CsvSource({
        "LINALOOL,Linalool",
        "linalool,Linalool",
        "BHT,BHT",
        "PEG-40 HYDROGENATED CASTOR OIL,PEG-40 Hydrogenated Castor Oil",
        "alpha-isomethyl ionone,Alpha-Isomethyl Ionone",
        "Sodium PCA,Sodium PCA",
        "TEA-LACTATE,TEA-Lactate"
    })
    void letters_have_one_style(String name, String printed) {
        assertThat(list(name, "3 %")).isEqualTo("Aqua, Glycerin, " + printed);
    }

    @Test
    void a_formula_in_capitals_has_a_label_in_capitals() {
        Formula capitals = Formula.inPercent("F")
                .quantitySufficient("AQUA")
                .line("GLYCERIN", "5 %")
                .build();
        assertThat(EU.list(capitals).text()).isEqualTo("AQUA, GLYCERIN");
        assertThat(EU.inCapitals().list(cream().build()).text()).isEqualTo("AQUA, GLYCERIN");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Linalyl Acetate", "Lavandula Angustifolia Oil"})
    void an_oil_whose_constituents_are_told_is_listed_once_and_its_allergens_beside_it(String rest) {
        Formula formula = cream().line(
                        Ingredient.blend("Lavandula Angustifolia Oil")
                                .part("Linalool", "35 %")
                                .part("Ocimene", "5 %")
                                .rest(rest),
                        MassFraction.parse("2 %"))
                .build();
        IngredientList list = EU.declaring(Checkers.LEAVE_ON.check(formula)).list(formula);
        assertThat(list.text())
                .startsWith("Aqua, Glycerin, Lavandula Oil/ Extract, ")
                .contains(", Linalool")
                .doesNotContain("Ocimene");
        assertThat(list.ordered().get(2).share().fraction())
                .isEqualTo(MassFraction.parse("2 %").fraction());
        assertThat(text(list)).contains("is listed under its own name");
    }

    @Test
    void a_fat_with_an_additive_is_listed_by_what_it_holds() {
        Formula formula = cream().line(
                        Ingredient.blend("Helianthus Annuus Seed Oil")
                                .part("Tocopherol", "1 %")
                                .rest("Helianthus Annuus Seed Oil"),
                        MassFraction.parse("2 %"))
                .build();
        assertThat(EU.list(formula).text()).isEqualTo("Aqua, Glycerin, Helianthus Annuus Seed Oil, Tocopherol");
    }

    @Test
    void a_perfume_without_its_word_is_told() {
        Ingredient fragrance =
                Ingredient.blend("Lavender fragrance").part("Linalool", "5 %").rest("Dipropylene Glycol");
        Formula formula = cream().line(fragrance, MassFraction.parse("2 %")).build();
        assertThat(text(EU.list(formula))).contains("withPerfume(\"Lavender fragrance\", \"Parfum\")");
        assertThat(text(EU.withPerfume("Lavender fragrance", "Parfum").list(formula)))
                .doesNotContain("withPerfume");
    }

    @Test
    void what_needs_a_breakdown_is_asked_for_one_and_several_names_for_shares() {
        assertThat(text(EU.list(cream().line("Parfum", "1 %").build()))).contains("Nothing is known of what Parfum");
        assertThat(text(EU.list(cream().line("Phenoxyethanol (and) Ethylhexylglycerin", "1 %")
                        .build())))
                .contains("is several names in one");
        assertThat(EU.list(cream().line("Olea Europaea Fruit Oil", "1 %").build())
                        .remarks())
                .isEmpty();
    }
}
