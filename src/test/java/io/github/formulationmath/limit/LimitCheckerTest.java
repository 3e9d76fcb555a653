package io.github.formulationmath.limit;

import static io.github.formulationmath.support.Checkers.FACE_CREAM;
import static io.github.formulationmath.support.WorkingAssertions.assertSelfChecking;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Wording;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Whole checks against the bundled snapshot; percentages as in Regulation (EC) No 1223/2009, snapshot of February 2024. */
class LimitCheckerTest {

    private static final LimitTable EU = LimitTable.eu2024February();

    private static LimitChecker checker(Product product) {
        return LimitChecker.of(EU, product, DecisionRule.worstCase());
    }

    private static Formula with(String material, String percent) {
        return Formula.inPercent("Test cream")
                .quantitySufficient("Aqua")
                .line(material, percent)
                .build();
    }

    private static Verdict binding(Product product, String material, String percent) {
        return checker(product).check(with(material, percent)).binding().orElseThrow();
    }

    /** Annex V, entry 29: 1.0 %. Exactly the limit is within it. */
    @Test
    void a_share_exactly_at_its_cap_is_within_and_the_least_more_exceeds() {
        assertThat(binding(FACE_CREAM, "Phenoxyethanol", "1.0 %").conformity()).isEqualTo(Conformity.WITHIN);
        assertThat(binding(FACE_CREAM, "Phenoxyethanol", "1.0 %").headroom().canonical())
                .isEqualTo(Ratio.ZERO);
        assertThat(binding(FACE_CREAM, "Phenoxyethanol", "1.0000000000000000001 %")
                        .conformity())
                .isEqualTo(Conformity.EXCEEDS);
    }

    /** Annex V, entry 1: 0.5 % as acid leave-on, 2.5 % as acid rinse-off; 0.59 % and 2.95 % of the salt (derived). */
    @Test
    void a_salt_counts_as_its_acid() {
        Verdict verdict = binding(FACE_CREAM, "Sodium Benzoate", "0.5 %");
        assertThat(verdict.conformity()).isEqualTo(Conformity.WITHIN);
        assertThat(verdict.share().canonical().doubleValue())
                .isEqualTo(0.0042373, org.assertj.core.data.Offset.offset(1e-7));
        assertSelfChecking(verdict);
        assertSelfChecking(verdict.headroom());
        assertThat(binding(FACE_CREAM, "Sodium Benzoate", "0.5899 %").conformity())
                .isEqualTo(Conformity.WITHIN);
        assertThat(binding(FACE_CREAM, "Sodium Benzoate", "0.5901 %").conformity())
                .isEqualTo(Conformity.EXCEEDS);
        Product wash = Product.rinseOff().on("hands").ofKind("hand_wash").inForm("liquid");
        assertThat(binding(wash, "Sodium Benzoate", "2.94 %").conformity()).isEqualTo(Conformity.WITHIN);
        assertThat(binding(wash, "Sodium Benzoate", "2.951 %").conformity()).isEqualTo(Conformity.EXCEEDS);
    }

    @Test
    void how_much_of_a_line_is_allowed_is_told_on_the_basis_of_the_line() {
        Verdict verdict = binding(FACE_CREAM, "Sodium Benzoate", "0.5 %");
        Ratio most =
                verdict.limitingShareOf(verdict.lines().get(0)).orElseThrow().canonical();
        assertThat(most.times(100).doubleValue()).isEqualTo(0.5900, org.assertj.core.data.Offset.offset(5e-5));
        assertThat(binding(FACE_CREAM, "Sodium Benzoate", most.times(100) + " %")
                        .headroom()
                        .canonical())
                .isEqualTo(Ratio.ZERO);
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        verdict.limitingShareOf(with("Sodium Benzoate", "0.5 %").line("Aqua")));
    }

    /** Annex V, entries 12 and 12a: 0.4 % single as acid, 0.14 % for butyl- and propylparaben together, 0.8 % mixtures. */
    @Test
    void several_limits_are_all_reported_and_the_binding_one_comes_first() {
        Formula formula = Formula.inPercent("Three esters")
                .quantitySufficient("Aqua")
                .line("Methylparaben", "0.4 %")
                .line("Propylparaben", "0.1 %")
                .line("Butylparaben", "0.1 %")
                .build();
        LimitReport report = checker(FACE_CREAM).check(formula);
        Verdict binding = report.binding().orElseThrow();
        assertThat(binding.limit().share().percent()).isEqualTo(Ratio.parse("0.14"));
        assertThat(binding.conformity()).isEqualTo(Conformity.EXCEEDS);
        assertThat(binding.substances()).extracting(Substance::name).containsExactly("Propylparaben", "Butylparaben");
        assertThat(report.verdictsFor("METHYLPARABEN"))
                .hasSizeGreaterThanOrEqualTo(2)
                .allMatch(verdict -> verdict.conformity() == Conformity.WITHIN);
        report.verdicts().forEach(verdict -> assertSelfChecking(verdict.headroom()));
        assertThat(report.outcome()).isEqualTo(LimitOutcome.EXCEEDS);
    }

    /** Annex III, entries 286 and 287: the sum of two, and the sum of three that contains it; leave-on hair 1.0 and 3.0. */
    @Test
    void nested_sums_hold_side_by_side() {
        Product conditioner = Product.leaveOn()
                .on("hair")
                .ofKind("conditioner")
                .inForm("cream")
                .using("Cetrimonium Chloride", "other_than_preservative")
                .using("Steartrimonium Chloride", "other_than_preservative")
                .using("Behentrimonium Chloride", "other_than_preservative");
        Formula formula = Formula.inPercent("Conditioner")
                .quantitySufficient("Aqua")
                .line("Cetrimonium Chloride", "0.6 %")
                .line("Steartrimonium Chloride", "0.3 %")
                .line("Behentrimonium Chloride", "2.2 %")
                .build();
        LimitReport report = checker(conditioner).check(formula);
        List<Verdict> sums = report.verdicts().stream()
                .filter(verdict -> verdict.limit().id().matches("EU-III-28[67].*"))
                .toList();
        assertThat(sums).extracting(v -> v.share().canonical()).contains(Ratio.parse("0.009"), Ratio.parse("0.031"));
        assertThat(sums.get(0).conformity()).isEqualTo(Conformity.EXCEEDS);
        assertThat(sums.get(0).share().canonical()).isEqualTo(Ratio.parse("0.031"));
        assertThat(sums.get(1).conformity()).isEqualTo(Conformity.WITHIN);
        assertThat(sums.get(1).share().canonical()).isEqualTo(Ratio.parse("0.009"));
    }

    @Test
    void a_blend_counts_by_what_it_holds() {
        Formula formula = Formula.inPercent("Cream")
                .quantitySufficient("Aqua")
                .line(
                        Ingredient.blend("Preservative blend")
                                .part("Phenoxyethanol", "90 %")
                                .rest("Ethylhexylglycerin"),
                        MassFraction.parse("1.1 %"))
                .build();
        LimitReport report = checker(FACE_CREAM).check(formula);
        assertThat(report.binding().orElseThrow().share().canonical()).isEqualTo(Ratio.parse("0.0099"));
        assertThat(report.binding().orElseThrow().conformity()).isEqualTo(Conformity.WITHIN);
        assertThat(report.withoutLimit()).extracting(Substance::name).contains("Ethylhexylglycerin");
        assertSelfChecking(report.binding().orElseThrow());
    }

    /** Annex V, entry 57: methylisothiazolinone, rinse-off products only. */
    @Test
    void a_substance_allowed_in_other_products_only_is_not_passed_over() {
        LimitReport report = checker(FACE_CREAM).check(with("Methylisothiazolinone", "0.001 %"));
        Verdict first = report.binding().orElseThrow();
        assertThat(first.limit().id()).isEqualTo("EU-V-57");
        assertThat(first.conformity()).isEqualTo(Conformity.PROHIBITED);
        assertThat(first.applicability()).isEqualTo(Applicability.OUT_OF_SCOPE);
        assertThat(first.substances()).extracting(Substance::name).containsExactly("Methylisothiazolinone");
        assertThat(report.outcome()).isEqualTo(LimitOutcome.PROHIBITED);
        assertThat(report.toString()).contains("PROHIBITED", "EU-V-57");
        assertThat(String.join("\n", report.describe(Wording.english())))
                .contains("Methylisothiazolinone: 0.001 %, not allowed in such a product: PROHIBITED");
        assertSelfChecking(first);
        assertSelfChecking(first.headroom());
    }

    /** Annex V, entry 13: dehydroacetic acid 0.6 % as acid, not in sprays; the salt is sold with and without water. */
    @Test
    void a_form_that_was_not_stated_is_taken_as_the_strictest_and_said_so() {
        Verdict verdict = binding(FACE_CREAM, "Sodium Dehydroacetate", "0.678 %");
        assertThat(verdict.conformity()).isEqualTo(Conformity.WITHIN);
        assertThat(binding(FACE_CREAM, "Sodium Dehydroacetate", "0.679 %").conformity())
                .isEqualTo(Conformity.EXCEEDS);
        assertThat(verdict.remarks().toString()).contains("anhydrous");
    }

    @Test
    void a_scope_the_product_did_not_speak_of_may_apply() {
        Product vague = Product.leaveOn();
        LimitReport report = checker(vague).check(with("Sodium Dehydroacetate", "0.5 %"));
        assertThat(report.verdicts())
                .anyMatch(verdict -> verdict.applicability() == Applicability.MAY_APPLY
                        && verdict.remarks().stream()
                                .anyMatch(remark -> remark.key().contains("may-apply")));
        Product spray = Product.leaveOn().on("body").inForm("pump spray");
        LimitReport sprayed = checker(spray).check(with("Sodium Dehydroacetate", "0.5 %"));
        assertThat(sprayed.verdicts()).singleElement().satisfies(verdict -> {
            assertThat(verdict.conformity()).isEqualTo(Conformity.PROHIBITED);
            assertThat(verdict.limit().id()).isEqualTo("EU-V-13");
            assertThat(verdict.limit().share()).isEqualTo(MassFraction.ZERO);
        });
    }

    /** The allergens of Annex III: above 0.001 % leave-on, above 0.01 % rinse-off; 0.0010 % exactly is not above. */
    @Test
    void an_allergen_is_declared_only_above_its_threshold() {
        assertThat(checker(FACE_CREAM).check(with("Linalool", "0.0010 %")).declarations())
                .isEmpty();
        assertThat(checker(FACE_CREAM).check(with("Linalool", "0.0010001 %")).declarations())
                .singleElement()
                .satisfies(verdict -> {
                    assertThat(verdict.conformity()).isEqualTo(Conformity.EXCEEDS);
                    assertThat(verdict.limit().declaredAs()).isEqualToIgnoringCase("linalool");
                });
        Product wash = Product.rinseOff().on("hair").ofKind("shampoo").inForm("liquid");
        assertThat(checker(wash).check(with("Linalool", "0.01 %")).declarations())
                .isEmpty();
        assertThat(checker(wash).check(with("Linalool", "0.0101 %")).declarations())
                .hasSize(1);
    }

    @Test
    void a_substance_without_a_limit_is_said_to_have_none_in_this_table() {
        LimitReport report = checker(FACE_CREAM).check(with("Glycerin", "3 %"));
        assertThat(report.verdicts()).isEmpty();
        assertThat(report.binding()).isEmpty();
        assertThat(report.withoutLimit()).extracting(Substance::name).containsExactly("Aqua", "Glycerin");
        assertThat(String.join("\n", report.describe(Wording.english())))
                .contains("Aqua; Glycerin: no limit in this table. That does not mean that it is safe")
                .contains("qualified safety assessor")
                .contains("2024-02-25");
    }

    @Test
    void every_verdict_in_words_carries_its_cautions_and_conditions() {
        Verdict verdict = binding(FACE_CREAM, "Salicylic Acid", "0.4 %");
        List<String> lines = verdict.describe(Wording.english());
        assertThat(String.join("\n", lines))
                .contains("within")
                .contains("law in force")
                .contains("supplier's documents")
                .contains("not presented as current law")
                .contains("Conditions: ");
        assertThat(verdict.toString()).contains("0.4 %", "WITHIN");
    }

    @Test
    void a_purpose_that_is_stated_leaves_out_the_other_limits() {
        Formula formula = with("Salicylic Acid", "1.5 %");
        assertThat(checker(FACE_CREAM)
                        .check(formula)
                        .binding()
                        .orElseThrow()
                        .limit()
                        .id())
                .startsWith("EU-V-3");
        LimitReport peel = checker(FACE_CREAM.using("salicylic acid", "other_than_preservative"))
                .check(formula);
        assertThat(peel.verdicts())
                .isNotEmpty()
                .allMatch(verdict -> verdict.limit().id().startsWith("EU-III-98"));
        assertThat(peel.binding().orElseThrow().conformity()).isEqualTo(Conformity.WITHIN);
    }

    /** Annex V: the supplier has to say what a material without a single formula holds. */
    @Test
    void what_no_molecular_formula_tells_is_not_assessed_until_the_supplier_tells() {
        Product depilatory = Product.rinseOff().on("body").ofKind("depilatory").inForm("cream");
        Formula formula = with("Calcium Thioglycolate", "5.4 %");
        Verdict unknown = checker(depilatory).check(formula).binding().orElseThrow();
        assertThat(unknown.conformity()).isEqualTo(Conformity.NOT_ASSESSABLE);
        assertThat(String.join("\n", unknown.describe(Wording.english()))).contains("supplier's documents");
        Verdict known = checker(depilatory)
                .withContent(
                        "calcium thioglycolate",
                        "thioglycolic acid",
                        Ratio.parse("0.5"),
                        Source.published("supplier's analysis", "2024"))
                .check(formula)
                .binding()
                .orElseThrow();
        assertThat(known.conformity()).isEqualTo(Conformity.WITHIN);
        assertThat(known.share().canonical()).isEqualTo(Ratio.parse("0.027"));
        assertSelfChecking(known);
    }

    @Test
    void a_cas_number_finds_what_a_name_does_not() {
        Substance byNumber = Substance.of("Ethylene glycol monophenyl ether").withCas("122-99-6");
        Formula formula = Formula.inPercent("Cream")
                .quantitySufficient("Aqua")
                .line(Ingredient.of("Preservative", byNumber), MassFraction.parse("1.2 %"))
                .build();
        LimitReport report = checker(FACE_CREAM).check(formula);
        assertThat(report.binding().orElseThrow().limit().id()).startsWith("EU-V-29");
        assertThat(report.binding().orElseThrow().conformity()).isEqualTo(Conformity.EXCEEDS);
        assertThat(report.casConflicts()).isEmpty();
    }

    @Test
    void a_cas_number_that_contradicts_the_name_is_reported() {
        Substance odd = Substance.of("Phenoxyethanol").withCas("56-81-5");
        Formula formula = Formula.inPercent("Cream")
                .quantitySufficient("Aqua")
                .line(Ingredient.of("Preservative", odd), MassFraction.parse("0.8 %"))
                .build();
        LimitReport report = checker(FACE_CREAM).check(formula);
        assertThat(report.casConflicts()).containsExactly(odd);
        assertThat(report.binding().orElseThrow().limit().id()).startsWith("EU-V-29");
    }

    @Test
    void words_the_table_does_not_know_are_reported() {
        LimitReport report = checker(Product.leaveOn().on("faec").inForm("cream", "looze powder"))
                .check(with("Glycerin", "3 %"));
        assertThat(report.closestWords().keySet()).containsExactly("faec", "looze_powder");
        assertThat(report.closestWords())
                .containsEntry("faec", List.of("face"))
                .containsEntry("looze_powder", List.of("loose_powder"));
        assertThat(report.outcome()).isEqualTo(LimitOutcome.CONDITIONS_OPEN);
        assertThat(String.join("\n", report.describe(Wording.english())))
                .contains("\"faec\"", "Known words that may be meant: face.");
    }

    @Test
    void two_checks_of_the_same_are_equal_and_of_another_product_are_not() {
        Formula formula = with("Phenoxyethanol", "0.9 %");
        LimitReport report = checker(FACE_CREAM).check(formula);
        assertThat(checker(FACE_CREAM).check(formula)).isEqualTo(report).hasSameHashCodeAs(report);
        assertThat(checker(FACE_CREAM).check(with("Phenoxyethanol", "0.8 %"))).isNotEqualTo(report);
        assertThat(checker(Product.rinseOff()).check(formula)).isNotEqualTo(report);
        assertThat(checker(Product.rinseOff()).check(formula).verdicts())
                .doesNotContainAnyElementsOf(report.verdicts());
    }
}
