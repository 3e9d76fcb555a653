package io.github.formulationmath.limit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.support.Checkers;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the caller states, what the table mentions and what the formula puts elsewhere is used, told or refused. */
class NothingIsIgnoredTest {

    private static final DecisionRule RULE = DecisionRule.worstCase();

    private static UsageLimit cap(String id, String name, String percent) {
        return UsageLimit.of(id, SubstanceGroup.of(name), LimitKind.MAXIMUM, MassFraction.parse(percent));
    }

    private static LimitTable table(UsageLimit... limits) {
        return LimitTable.of("house", List.of(limits));
    }

    private static LimitReport check(LimitTable table, Product product, Formula formula) {
        return LimitChecker.of(table, product, RULE).check(formula);
    }

    private static Formula with(String name, String percent) {
        return Formula.inPercent("F")
                .quantitySufficient("Aqua")
                .line(name, percent)
                .build();
    }

    private static String text(LimitReport report) {
        return String.join("\n", report.describe(Wording.english()));
    }

    @Test
    void a_purpose_stated_for_what_the_formula_does_not_hold_is_told() {
        LimitTable table = table(cap("H", "Zinc salt", "2 %").within(Scope.any().withPurpose("preservative")));
        for (String name : List.of("Zinc salts", "Zinc", "Phenoxyethanol")) {
            LimitReport report =
                    check(table, Product.leaveOn().using(name, "other_than_preservative"), with("Zinc salt", "2.5 %"));
            assertThat(report.outcome()).isEqualTo(LimitOutcome.EXCEEDS);
            assertThat(report.unusedPurposes()).hasSize(1);
            assertThat(text(report)).contains("The purpose stated for " + name.toUpperCase(java.util.Locale.ROOT));
            assertThat(report.toString()).contains("purposes stated and not used");
        }
    }

    @Test
    void two_purposes_of_one_substance_are_not_used_and_told() {
        LimitTable table = table(cap("H", "Zinc salt", "2 %").within(Scope.any().withPurpose("preservative")));
        Formula formula = Formula.inPercent("F")
                .quantitySufficient("Aqua")
                .line(Ingredient.of("M", Substance.of("Trade").withSynonyms("Zinc salt")), "2.5 %")
                .build();
        Product product =
                Product.leaveOn().using("Trade", "other_than_preservative").using("Zinc salt", "preservative");
        LimitReport report = check(table, product, formula);
        assertThat(report.outcome()).isEqualTo(LimitOutcome.EXCEEDS);
        assertThat(report.unusedPurposes()).containsExactly("TRADE", "ZINC SALT");
        assertThat(check(table, Product.leaveOn().using("Trade", "preservative"), formula)
                        .unusedPurposes())
                .isEmpty();
    }

    @Test
    void a_limit_that_a_purpose_lifts_is_told_also_where_another_counts() {
        LimitTable table = table(
                cap("P", "Zinc salt", "1 %").within(Scope.any().withPurpose("preservative")),
                cap("H", "Zinc salt", "5 %"));
        LimitReport report = check(
                table, Product.leaveOn().using("Zinc salt", "other_than_preservative"), with("Zinc salt", "2.5 %"));
        assertThat(report.outOfScope())
                .singleElement()
                .satisfies(finding -> assertThat(finding.otherPurpose()).isTrue());
        assertThat(report.outcome()).isEqualTo(LimitOutcome.NO_COUNTED_LIMIT_PASSED);
        assertThat(text(report)).contains("its entry is for another purpose than the one stated");
    }

    /** A content that reaches no member of the table would leave the factor that it was to replace. */
    @Test
    void a_content_reaches_its_substance_under_every_name_of_the_table_or_is_refused() {
        UsageLimit limit = UsageLimit.of(
                        "H",
                        SubstanceGroup.of(
                                "zinc",
                                List.of(GroupMember.of(Substance.of("Zinc salt")
                                        .withSynonyms("ZS")
                                        .withCas("7646-85-7")))),
                        LimitKind.MAXIMUM,
                        MassFraction.parse("1 %"))
                .on(LimitBasis.as("zinc"));
        LimitChecker checker = LimitChecker.of(table(limit), Product.leaveOn(), RULE);
        for (String name : List.of("zinc SALT", "ZS", "7646-85-7")) {
            LimitReport report = checker.withContent(name, "Zinc", Ratio.of(9, 10), Source.user())
                    .check(with("Zinc salt", "1.2 %"));
            assertThat(report.outcome()).isEqualTo(LimitOutcome.EXCEEDS);
        }
        for (Map.Entry<String, String> slip :
                Map.of("Zinc salts", "zinc", "Zinc salt", "zink").entrySet()) {
            assertThatThrownBy(() -> checker.withContent(slip.getKey(), slip.getValue(), Ratio.ONE, Source.user()))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining(slip.getKey())
                    .hasMessageContaining("name both as the table does");
        }
    }

    @Test
    void what_an_entry_only_mentions_is_told_and_left_open() {
        SubstanceGroup group = SubstanceGroup.of(
                "phenol",
                List.of(
                        GroupMember.of(Substance.of("Phenol thing")),
                        GroupMember.of(Substance.of("Sodium phenate").withCas("139-02-6"))
                                .mentionedOnly()));
        LimitTable table = table(UsageLimit.of("H", group, LimitKind.MAXIMUM, MassFraction.parse("1 %")));
        Formula formula = Formula.inPercent("F")
                .quantitySufficient("Aqua")
                .line(Ingredient.of("M", Substance.of("Trade").withCas("139-02-6")), "5 %")
                .build();
        LimitReport report = check(table, Product.leaveOn(), formula);
        assertThat(report.outcome()).isEqualTo(LimitOutcome.CONDITIONS_OPEN);
        assertThat(report.mentioned())
                .singleElement()
                .satisfies(found -> assertThat(found.substance().name()).isEqualTo("Trade"));
        assertThat(report.withoutLimit()).extracting(Substance::name).containsExactly("Aqua");
        assertThat(text(report)).contains("an entry names it without counting it; read it");
        LimitReport phenate =
                check(LimitTable.eu2024February(), Product.leaveOn(), with("Sodium o-Phenylphenate", "0.1 %"));
        assertThat(phenate.outcome()).isEqualTo(LimitOutcome.PROHIBITED);
        assertThat(phenate.binding().orElseThrow().limit().id()).isEqualTo("EU-V-7-leave-on");
        assertThat(check(LimitTable.eu2024February(), Product.leaveOn(), with("Citric Acid", "0.1 %"))
                        .mentioned())
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"oil", "OIL", "Oil phase", "o\u200Bil", "oil\u00A0phase", "\uFF2F\uFF49\uFF4C"})
    void a_limit_of_a_phase_counts_every_spelling_of_it(String spelling) {
        Formula formula = Formula.inPercent("F")
                .phase("water")
                .line("Aqua", "50 %")
                .phase(spelling)
                .line("Zinc salt", "5 %")
                .line("Jojoba Esters", "45 %")
                .build();
        LimitReport report = check(table(cap("H", "Zinc salt", "1 %").inPhase("Oil")), Product.leaveOn(), formula);
        assertThat(report.outcome()).isEqualTo(LimitOutcome.EXCEEDS);
    }

    @Test
    void what_stands_in_another_phase_than_the_limit_is_of_is_told_and_left_open() {
        Formula formula = Formula.inPercent("F")
                .phase("oil")
                .line("Squalane", "50 %")
                .phase("cool-down")
                .line("Zinc salt", "50 %")
                .build();
        LimitReport report = check(table(cap("H", "Zinc salt", "1 %").inPhase("oil")), Product.leaveOn(), formula);
        assertThat(report.outcome()).isEqualTo(LimitOutcome.CONDITIONS_OPEN);
        assertThat(text(report)).contains("Zinc salt stands in another phase than the oil and is not counted there.");
        Verdict verdict = report.binding().orElseThrow();
        assertThatThrownBy(() -> verdict.limitingShareOf(formula.lines().get(1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("not counted");
    }

    /** A lowest effective share is not reached by calling the material what it holds a tenth of. */
    @Test
    void a_material_does_not_count_more_towards_a_lowest_share_than_its_parts() {
        SubstanceGroup group = SubstanceGroup.of(
                "pair", List.of(GroupMember.of(Substance.of("Mixture X")), GroupMember.of(Substance.of("Active X"))));
        UsageLimit least = UsageLimit.of("L", group, LimitKind.MINIMUM, MassFraction.parse("1 %"))
                .counting(SumRule.SUM);
        Formula formula = Formula.inPercent("F")
                .quantitySufficient("Aqua")
                .line(Ingredient.blend("Mixture X").part("Active X", "10 %").rest("Glycerin"), "2 %")
                .build();
        assertThat(check(table(least), Product.leaveOn(), formula).outcome()).isEqualTo(LimitOutcome.EXCEEDS);
    }

    @Test
    void no_word_is_unknown_where_no_limit_asks() {
        Product product = Checkers.FACE_CREAM;
        LimitReport plain = check(table(cap("H", "Zinc salt", "2 %")), product, with("Zinc salt", "1 %"));
        assertThat(plain.closestWords().keySet()).isEmpty();
        assertThat(plain.outcome()).isEqualTo(LimitOutcome.NO_COUNTED_LIMIT_PASSED);
        LimitTable asking = table(
                cap("H", "Zinc salt", "2 %"),
                cap("G", "Zink", "2 %").within(Scope.any().withAreas("feet")));
        assertThat(check(asking, product, with("Zinc salt", "1 %")).closestWords())
                .as("what everybody calls a part of the body is told apart from the feet")
                .isEmpty();
        assertThat(check(asking, product.on("moon"), with("Zinc salt", "1 %"))
                        .closestWords()
                        .keySet())
                .containsExactly("moon");
    }

    @Test
    void where_nothing_is_compared_the_first_line_says_so() {
        for (LimitReport report : List.of(
                check(table(), Product.leaveOn(), with("Zinc salt", "1 %")),
                check(table(cap("H", "Another", "2 %")), Product.leaveOn(), with("Zinc salt", "1 %")))) {
            assertThat(report.describe(Wording.english()).get(0)).startsWith("Outcome: nothing was compared.");
        }
        assertThat(check(table(cap("H", "Zinc salt", "2 %")), Product.leaveOn(), with("Zinc salt", "1 %"))
                        .describe(Wording.english())
                        .get(0))
                .startsWith("Outcome: no counted limit is passed.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "faec"})
    void where_only_the_product_keeps_a_substance_from_being_prohibited_the_text_says_so(String area) {
        Product product = area.isEmpty() ? Product.leaveOn() : Product.leaveOn().on(area);
        LimitReport report = check(LimitTable.eu2024February(), product, with("Homosalate", "5 %"));
        assertThat(report.outcome()).isEqualTo(LimitOutcome.CONDITIONS_OPEN);
        assertThat(text(report)).contains("If the product is another than that, Homosalate is not allowed in it.");
    }
}
