package io.github.formulationmath.limit;

import static io.github.formulationmath.support.Checkers.FACE_CREAM;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.support.Formulas;
import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Formulas that a safety assessor would stop. Percentages and scopes: Regulation (EC) No 1223/2009, the snapshot. */
class ReviewedFormulasTest {

    private static final LimitTable EU = LimitTable.eu2024February();
    private static final Product TOOTHPASTE =
            Product.rinseOff().on("oral").ofKind("toothpaste").inForm("paste");

    private static LimitReport check(Product product, String... materials) {
        FormulaBuilder draft = Formula.inPercent("F");
        draft.quantitySufficient("Aqua");
        for (int i = 0; i < materials.length; i += 2) {
            draft.line(materials[i], materials[i + 1]);
        }
        return LimitChecker.of(EU, product, DecisionRule.worstCase()).check(draft.build());
    }

    private static LimitOutcome outcome(Product product, String... materials) {
        return check(product, materials).outcome();
    }

    @Test
    void entries_left_out_and_words_unknown_are_never_fine() {
        assertThat(outcome(TOOTHPASTE, "Sodium Fluoride", "1 %")).isEqualTo(LimitOutcome.CONDITIONS_OPEN);
        assertThat(outcome(TOOTHPASTE, "Stannous Fluoride", "0.454 %", "Sodium Fluoride", "0.32 %"))
                .isEqualTo(LimitOutcome.CONDITIONS_OPEN);
        assertThat(outcome(FACE_CREAM, "Talc", "95 %")).isEqualTo(LimitOutcome.CONDITIONS_OPEN);
        assertThat(outcome(FACE_CREAM, "Hydroquinone", "2 %", "Tretinoin", "0.05 %"))
                .isEqualTo(LimitOutcome.PROHIBITED);
    }

    /** Annex V, entries 11 and 13: not in aerosol dispensers (sprays); entry 1: 1.7 % as acid in oral products. */
    @Test
    void a_word_of_ones_own_switches_no_exclusion_off() {
        Product aerosol = Product.leaveOn().on("body").inForm("aerosol");
        assertThat(outcome(aerosol, "Chlorobutanol", "0.3 %")).isEqualTo(LimitOutcome.PROHIBITED);
        assertThat(outcome(aerosol, "Dehydroacetic Acid", "0.3 %")).isEqualTo(LimitOutcome.PROHIBITED);
        assertThat(outcome(Product.leaveOn().on("body").inForm("aerosol_spray"), "Glutaral", "0.05 %"))
                .isEqualTo(LimitOutcome.PROHIBITED);
        Product own = Product.leaveOn().on("body").inForm("puffing_bottle");
        assertThat(outcome(own, "Glutaral", "0.05 %")).isEqualTo(LimitOutcome.CONDITIONS_OPEN);
        assertThat(outcome(Product.rinseOff().on("mouth").ofKind("mouth_rinse"), "Sodium Benzoate", "2.9 %"))
                .isEqualTo(LimitOutcome.EXCEEDS);
        assertThat(outcome(Product.leaveOn().on("intimate"), "P-Chloro-m-Cresol", "0.2 %"))
                .isEqualTo(LimitOutcome.PROHIBITED);
        assertThat(outcome(Product.leaveOn().on("body").ofKind("body_butter"), "Iodopropynyl Butylcarbamate", "0.01 %"))
                .isGreaterThanOrEqualTo(LimitOutcome.CONDITIONS_OPEN);
        assertThat(outcome(Product.leaveOn().on("face").inForm("spray"), "Benzophenone-3", "5 %"))
                .isGreaterThanOrEqualTo(LimitOutcome.CONDITIONS_OPEN);
    }

    /** Annex VI, entry 3: homosalate in face products; Annex V, entry 57: methylisothiazolinone, rinse-off. */
    @Test
    void what_is_allowed_in_other_products_only_stands_first_everywhere() {
        Product lotion = Product.leaveOn().on("body").ofKind("body_lotion").inForm("cream");
        LimitReport report =
                check(lotion, "Homosalate", "15 %", "Methylisothiazolinone", "0.01 %", "Phenoxyethanol", "0.9 %");
        assertThat(report.outcome()).isEqualTo(LimitOutcome.PROHIBITED);
        assertThat(report.verdicts().subList(0, 2))
                .extracting(verdict -> verdict.limit().id())
                .containsExactlyInAnyOrder("EU-V-57", "EU-VI-3");
        assertThat(report.binding().orElseThrow().conformity()).isEqualTo(Conformity.PROHIBITED);
        List<String> text = report.describe(Wording.english());
        assertThat(text.get(1)).contains("PROHIBITED");
        assertThat(text.get(2)).contains("not allowed in such a product: PROHIBITED");
        assertThat(report.toString()).startsWith("F: PROHIBITED [");
    }

    /** Annex II, entries 10, 221, 300, 375, 1175, 1339, 1395, 1577, 1666, 1670. */
    @Test
    void what_annex_ii_names_is_never_fine() {
        LimitReport cream = check(
                FACE_CREAM,
                "Hydroquinone",
                "2 %",
                "Tretinoin",
                "0.05 %",
                "Clobetasol Propionate",
                "0.05 %",
                "Mercurous Chloride",
                "1 %");
        assertThat(cream.outcome()).isEqualTo(LimitOutcome.PROHIBITED);
        assertThat(cream.binding().orElseThrow().limit().id()).isEqualTo("EU-II-1339");
        assertThat(cream.mayBeProhibited())
                .extracting(finding -> finding.substance().name())
                .containsExactly("Clobetasol Propionate", "Mercurous Chloride");
        assertThat(cream.withoutLimit()).extracting(Substance::name).containsExactly("Aqua");
        assertThat(cream.describe(Wording.english()))
                .anyMatch(line -> line.startsWith(
                        "Tretinoin: 0.05 %, named in Annex II, entry 375 (Tretinoin (INN) (retinoic acid and its salts)); "
                                + "read it: PROHIBITED"));
        for (String name : List.of(
                "Formaldehyde",
                "Zinc Pyrithione",
                "Butylphenyl Methylpropional",
                "Trichloroacetic Acid",
                "Boric Acid",
                "Phenol")) {
            assertThat(outcome(FACE_CREAM, name, "1 %")).as(name).isEqualTo(LimitOutcome.PROHIBITED);
        }
    }

    /** A table that says what it does not hold is quoted first. */
    @Test
    void what_a_table_does_not_hold_is_told_by_the_first_line() throws IOException {
        String limits = "# not held: Annex X\n" + String.join(",", LimitTableReader.LIMITS.columns()) + "\n";
        String substances = String.join(",", LimitTableReader.SUBSTANCES.columns()) + "\n";
        LimitTable house = LimitTable.read("house", new StringReader(limits), new StringReader(substances));
        LimitReport report =
                LimitChecker.of(house, FACE_CREAM, DecisionRule.worstCase()).check(Formulas.only("F", "Aqua"));
        assertThat(report.describe(Wording.english()).get(0))
                .startsWith("Not checked, because the table does not hold it: Annex X");
        assertThat(report.toString()).startsWith("F: not checked Annex X;");
        LimitReport asked = LimitChecker.of(house.withEuAnnexes(), FACE_CREAM, DecisionRule.worstCase())
                .check(Formula.inPercent("F").line("Tretinoin", "100 %").build());
        assertThat(asked.outcome()).isEqualTo(LimitOutcome.PROHIBITED);
        assertThat(house.withEuAnnexes()).isNotEqualTo(house);
    }

    @Test
    void a_purpose_the_table_does_not_know_is_refused_with_those_it_knows() {
        for (String purpose : List.of("preservatives", "fragrance", "Konservierung")) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> check(FACE_CREAM.using("Phenoxyethanol", purpose), "Phenoxyethanol", "5 %"))
                    .withMessageContaining(
                            "other_than_preservative, other_than_rust_inhibitor, other_than_uv_filter, preservative");
        }
        for (String purpose : EU.words().purposes()) {
            LimitReport report = check(FACE_CREAM.using("Phenoxyethanol", purpose), "Phenoxyethanol", "5 %");
            assertThat(LimitCases.toldOf(report)).contains(Substance.of("Phenoxyethanol"));
            assertThat(report.outcome()).isGreaterThanOrEqualTo(LimitOutcome.CONDITIONS_OPEN);
        }
        assertThat(outcome(FACE_CREAM.using("Homosalate", "other_than_preservative"), "Homosalate", "15 %"))
                .isEqualTo(LimitOutcome.EXCEEDS);
    }

    /** Annex V, entry 44: 0.1 %; Annex III, entry 287: 3.0 % in leave-on hair products for other purposes. */
    @Test
    void a_verdict_says_that_a_purpose_would_lift_its_cap() {
        Product conditioner = Product.leaveOn().on("hair").inForm("cream");
        Verdict unsaid =
                check(conditioner, "Behentrimonium Chloride", "2 %").binding().orElseThrow();
        assertThat(unsaid.conformity()).isEqualTo(Conformity.EXCEEDS);
        assertThat(String.join("\n", unsaid.describe(Wording.english())))
                .contains("using(\"Behentrimonium Chloride\", \"other_than_preservative\")");
        assertThat(outcome(
                        conditioner.using("Behentrimonium Chloride", "other_than_preservative"),
                        "Behentrimonium Chloride",
                        "2 %"))
                .isLessThan(LimitOutcome.CANNOT_BE_ASSESSED);
    }

    /** Annex V, entry 54: 0.1 % as benzalkonium chloride; Annex III, entry 2a: 5 % as thioglycolic acid. */
    @Test
    void as_x_counts_x_itself_and_the_known_part_alone_may_exceed() {
        assertThat(outcome(FACE_CREAM, "Benzalkonium Chloride", "0.2 %")).isEqualTo(LimitOutcome.EXCEEDS);
        assertThat(outcome(FACE_CREAM, "Benzalkonium Bromide", "0.2 %")).isEqualTo(LimitOutcome.CANNOT_BE_ASSESSED);
        Product depilatory = Product.rinseOff().on("body").ofKind("depilatory").inForm("cream");
        assertThat(outcome(depilatory, "Calcium Thioglycolate", "6 %", "Potassium Thioglycolate", "8 %"))
                .isEqualTo(LimitOutcome.EXCEEDS);
        Verdict zinc = check(FACE_CREAM, "Zinc Glycinate", "0.3 %").binding().orElseThrow();
        assertThat(zinc.conformity()).isEqualTo(Conformity.WITHIN);
        assertThat(zinc.describe(Wording.english()).get(0)).contains("between 0 % and 0.3 %");
    }

    /** Annex III, entry 154: 0.4 % of balsam of Peru oil; entry 360: lavender oil to be declared. */
    @Test
    void an_oil_made_of_declared_constituents_is_still_the_oil() {
        for (String[] oil : new String[][] {
            {"Myroxylon Pereirae Oil", "Benzyl Benzoate", "EU-III-154"},
            {"Lavandula Angustifolia Oil", "Linalool", "EU-III-360-declare-leave-on"}
        }) {
            Formula formula = Formula.inPercent("Balm")
                    .quantitySufficient("Squalane")
                    .line(
                            Ingredient.blend(oil[0]).part(oil[1], "60 %").rest("Linalyl Acetate"),
                            MassFraction.parse("2 %"))
                    .build();
            LimitReport report =
                    LimitChecker.of(EU, FACE_CREAM, DecisionRule.worstCase()).check(formula);
            assertThat(report.verdict(oil[2])).hasValueSatisfying(verdict -> {
                assertThat(verdict.conformity()).isEqualTo(Conformity.EXCEEDS);
                assertThat(verdict.share().canonical())
                        .isEqualTo(MassFraction.parse("2 %").fraction());
            });
            assertThat(report.verdictsFor(oil[1])).isNotEmpty();
        }
    }

    @Test
    void a_blend_that_tells_how_much_of_its_own_name_it_holds_counts_that_much() {
        Formula formula = Formula.inPercent("F")
                .quantitySufficient("Aqua")
                .line(
                        Ingredient.blend("Phenoxyethanol")
                                .part("phenoxyethanol", "50 %")
                                .rest("Glycerin"),
                        MassFraction.parse("1.6 %"))
                .build();
        LimitReport report =
                LimitChecker.of(EU, FACE_CREAM, DecisionRule.worstCase()).check(formula);
        assertThat(report.binding().orElseThrow().share().canonical())
                .isEqualTo(MassFraction.parse("0.8 %").fraction());
    }

    @Test
    void a_declaration_is_told_by_its_short_name_and_is_no_excess() {
        LimitReport report = check(FACE_CREAM, "Linalool", "0.35 %");
        assertThat(report.outcome()).isEqualTo(LimitOutcome.CONDITIONS_OPEN);
        List<String> text = report.describe(Wording.english());
        assertThat(text).contains("To be declared: LINALOOL 0.35 %");
        assertThat(String.join("\n", text)).doesNotContain(": exceeds", "1,6-Octadien");
    }

    @Test
    void caution_and_table_stand_once_and_last() {
        LimitReport report =
                check(FACE_CREAM, "Phenoxyethanol", "0.9 %", "Linalool", "0.35 %", "Sodium Benzoate", "0.4 %");
        List<String> text = report.describe(Wording.english());
        assertThat(text).doesNotHaveDuplicates();
        assertThat(text.get(text.size() - 2)).startsWith("Caution: this is arithmetic.");
        assertThat(text.get(text.size() - 1)).contains("not presented as current law");
    }

    @Test
    void a_clean_product_that_states_everything_passes() {
        LimitReport report =
                check(FACE_CREAM, "Phenoxyethanol", "0.9 %", "Glycerin", "5 %", "Sodium Benzoate", "0.4 %");
        assertThat(report.outcome()).isEqualTo(LimitOutcome.NO_COUNTED_LIMIT_PASSED);
        assertThat(report.withoutLimit()).extracting(Substance::name).containsExactly("Aqua", "Glycerin");
    }

    /** A row whose area is a slip of the pen: the area that the product states is unknown to such a table. */
    @Test
    void a_limit_for_something_else_is_in_a_list() {
        UsageLimit own = UsageLimit.of(
                        "H", SubstanceGroup.of("Phenoxyethanol"), LimitKind.MAXIMUM, MassFraction.parse("0.4 %"))
                .within(Scope.leaveOn().withAreas("temples of the head"));
        Formula formula = Formula.inPercent("F")
                .quantitySufficient("Aqua")
                .line("Phenoxyethanol", "1 %")
                .build();
        LimitTable table = LimitTable.of("house", List.of(own));
        LimitReport unknown =
                LimitChecker.of(table, FACE_CREAM, DecisionRule.worstCase()).check(formula);
        assertThat(unknown.outcome()).isEqualTo(LimitOutcome.EXCEEDS);
        assertThat(unknown.closestWords().keySet()).contains("face");
        LimitReport rinsed = LimitChecker.of(table, Product.rinseOff(), DecisionRule.worstCase())
                .check(formula);
        assertThat(rinsed.outOfScope()).singleElement().satisfies(finding -> {
            assertThat(finding.substance().name()).isEqualTo("Phenoxyethanol");
            assertThat(finding.mustBeRead()).isFalse();
        });
        assertThat(rinsed.outcome()).isEqualTo(LimitOutcome.NO_COUNTED_LIMIT_PASSED);
        assertThat(String.join("\n", rinsed.describe(Wording.english())))
                .contains("Phenoxyethanol: its entry is for other products.");
    }
}
