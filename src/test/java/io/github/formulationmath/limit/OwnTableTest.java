package io.github.formulationmath.limit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.csv.CsvException;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Wording;
import java.io.IOException;
import java.io.StringReader;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A rule of four facts needs four facts; what is changed in a table keeps its provenance. */
class OwnTableTest {

    private static final String HEAD = "# House rules, 2026-11-01\nsubstance,limit,scope,source\n";
    private static final Product FACE = Product.leaveOn().on("face");

    private static LimitTable read(String rows) throws IOException {
        return LimitTable.read("house", new StringReader(HEAD + rows));
    }

    private static LimitReport check(LimitTable table, String name, String percent) {
        return LimitChecker.of(table, FACE, DecisionRule.worstCase())
                .check(Formula.inPercent("F")
                        .quantitySufficient("Aqua")
                        .line(name, percent)
                        .build());
    }

    @Test
    void four_facts_in_a_file_are_the_rule_of_four_facts_in_code() throws IOException {
        LimitTable table = read("Niacinamide,max 5 %,leave_on; area=face,\"Data sheet, edition 3\"\n"
                + "Niacinamide,min 2 %,any,\"Data sheet, edition 3\"\n"
                + "Chamomile extract,max 4 % as supplied,any,Own trial 7\n");
        assertThat(table.limits().subList(0, 2))
                .containsExactly(
                        UsageLimit.atMost(
                                "Niacinamide", "5 %", Scope.leaveOn().withAreas("face"), "Data sheet, edition 3"),
                        UsageLimit.atLeast("Niacinamide", "2 %", Scope.any(), "Data sheet, edition 3"));
        assertThat(table.limits().get(2).basis()).isEqualTo(LimitBasis.asSupplied());
        assertThat(table.provenance()).containsExactly("House rules, 2026-11-01");
        assertThat(check(table, "Niacinamide", "5.1 %").outcome()).isEqualTo(LimitOutcome.EXCEEDS);
        assertThat(check(table, "Niacinamide", "5 %").outcome()).isEqualTo(LimitOutcome.NO_COUNTED_LIMIT_PASSED);
        assertThat(check(table, "Niacinamide", "1.9 %").binding().orElseThrow().conformity())
                .isEqualTo(Conformity.FALLS_SHORT);
    }

    @Test
    void rules_of_one_substance_have_ids_of_their_own() throws IOException {
        assertThat(read("A,max 5 %,leave_on,S\nA,max 9 %,rinse_off,S\n").limits())
                .extracting(UsageLimit::id)
                .containsExactly("OWN-A-MAX", "OWN-A-MAX-2");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "A,5 %,any,S|limit|max 0.9 %",
                "A,max 5,any,S|limit|max 0.9 %",
                "A,max 5 g %,any,S|limit|5 g",
                "A,max -5 %,any,S|limit|-5",
                "A,max 5 %,face,S|scope|leave_on",
                "A,max 5 %,area,S|scope|leave_on",
                "A,max 5 %,colour=red,S|scope|area=face",
                "A,max 5 %,leave_on;rinse_off,S|scope|parted by semicolons",
                "A,max 5 %,area=,S|scope|a word",
                "A,max 5 %,area=fcae,S|scope|face",
                "A,max 5 %,area=not:lpis,S|scope|not:lips",
                "A,max 5 %,area=shampoo,S|scope|product=shampoo",
                "A,max 5 %,area=pump_spray,S|scope|form=pump_spray",
                "A,max 5 %,product=not:hair,S|scope|area=not:hair",
                "A,max 5 %,form=face,S|scope|area=face",
                "A,max 5 %,product=face_craem,S|scope|face_cream",
                "A,max 5 %,form=not:pump sprai,S|scope|not:pump_spray",
                "A,max 5 %,purpose=preservativ,S|scope|preservative",
                "A,max 5 %,purpose=other than preservativ,S|scope|other_than_preservative",
                "A,max 5 %,purpose=spray,S|scope|form=spray",
                "A,max 5 %,user=profesional,S|scope|professional may be meant",
                "A,max 5 %,user=not:professional,S|scope|write general",
                "A,max 5 %,user=adults,S|scope|not:under_18",
                "A,max 5 %,user=from_12,S|scope|not:under_12",
                "A,max 5 %,user=babies,S|scope|ages are left out",
                "A,max 5 %,user=robots,S|scope|not:under_3",
                "A,max 5 %,any,|source|",
                ",max 5 %,any,S|substance|",
                "A,max 5 %,,S|scope|"
            })
    void a_row_that_is_wrong_is_refused_with_place_and_remedy(String row, String column, String remedy) {
        assertThatThrownBy(() -> read("B,max 1 %,any,S\n" + row + "\n"))
                .isInstanceOf(CsvException.class)
                .hasMessageContaining("line 4")
                .hasMessageContaining(column)
                .hasMessageContaining(remedy == null ? "" : remedy);
    }

    /** The long form has the same words. */
    @ParameterizedTest
    @CsvSource({
        "scope_area,nail_,nails",
        "scope_product,lip_balmm,lip_balm",
        "scope_form,not:aersol,not:aerosol",
        "scope_user,profesional,professional",
        "purpose,uv_filtre,uv_filter",
        "scope_use,leaveon,leave_on",
        "kind,maximum,max",
        "sum_rule,all,sum",
        "basis,as_acid,as_reference",
        "outside_scope,forbidden,not_allowed",
    })
    void a_word_of_the_long_form_that_is_wrong_is_refused_with_place_and_remedy(
            String column, String word, String remedy) {
        List<String> columns = LimitTableReader.LIMITS.columns();
        Map<String, String> row = new HashMap<>(Map.of(
                "limit_id", "H-1",
                "annex", "house",
                "ref_no", "1",
                "group_id", "A",
                "substance_group", "A",
                "kind", "max",
                "percent", "1",
                "basis", "active",
                "purpose", "any",
                "scope_use", "any"));
        row.putAll(Map.of(
                "scope_area", "any",
                "scope_product", "any",
                "scope_form", "any",
                "scope_user", "any",
                "outside_scope", "none",
                "whole", "product",
                "sum_rule", "single",
                "citation", "House rule 1"));
        row.put(column, word);
        String limits = String.join(",", columns) + "\n"
                + columns.stream().map(one -> row.getOrDefault(one, "")).collect(Collectors.joining(",")) + "\n";
        String substances = String.join(",", LimitTableReader.SUBSTANCES.columns()) + "\nA,A,,,,,A,member,\n";
        assertThatThrownBy(() -> LimitTable.read("house", new StringReader(limits), new StringReader(substances)))
                .isInstanceOf(CsvException.class)
                .hasMessageContaining("limits, line 2, column ")
                .hasMessageContaining(remedy);
    }

    /** Every known word with a letter wrong is known as well, or refused. */
    @Test
    void no_slip_of_the_pen_becomes_a_word_of_ones_own() {
        ProductWords words = LimitTable.eu2024February().words();
        for (String word : words.kinds()) {
            String slip = word.substring(0, 2) + 'q' + word.substring(3);
            if (word.length() > 4 && !slip.equals(word)) {
                assertThatIllegalArgumentException()
                        .isThrownBy(() -> Scope.any().withProducts(slip))
                        .as(slip)
                        .withMessageContaining(word);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"skin food", "knees", "elbow_care", "beard_wax", "workshop_1", "own_shampoo_bar"})
    void a_word_of_ones_own_that_is_like_no_other_is_taken(String word) {
        assertThat(Scope.any().withProducts(word).products()).hasSize(1);
    }

    /** The name is what the report and a label print; the rule is otherwise the same. */
    @Test
    void the_name_to_be_declared_is_what_the_report_and_the_label_print() {
        UsageLimit plain = UsageLimit.of(
                "H-1",
                SubstanceGroup.of("1,6-Octadien-3-ol, 3,7-dimethyl-"),
                LimitKind.DECLARE_ABOVE,
                MassFraction.ofPercent("0.001"));
        UsageLimit rule = plain.toBeDeclaredAs("Linalool");
        assertThat(rule.declaredAs()).isEqualTo("Linalool");
        assertThat(rule.toBeDeclaredAs("")).isEqualTo(plain);
        assertThat(plain.declaredAs()).isEmpty();
        assertThatThrownBy(() -> plain.toBeDeclaredAs(null)).isInstanceOf(NullPointerException.class);
        Formula formula = Formula.inPercent("F")
                .quantitySufficient("Aqua")
                .line("1,6-Octadien-3-ol, 3,7-dimethyl-", "0.35 %")
                .build();
        LimitReport report = LimitChecker.of(LimitTable.of("house", List.of(rule)), FACE, DecisionRule.worstCase())
                .check(formula);
        assertThat(report.describe(Wording.english())).contains("To be declared: Linalool 0.35 %");
        assertThat(report.declarations())
                .singleElement()
                .extracting(Verdict::shortName)
                .isEqualTo("Linalool");
    }

    @Test
    void a_table_that_was_changed_keeps_its_provenance_and_tells_the_change() {
        LimitTable law = LimitTable.eu2024February();
        UsageLimit ban = UsageLimit.atMost(
                "4-Methylbenzylidene Camphor", "0 %", Scope.any(), "Regulation (EU) 2024/996, as read on 2026-11-01");
        LimitTable changed = law.replacing("EU-VI-18", ban)
                .adding(UsageLimit.atMost("Niacinamide", "5 %", Scope.leaveOn(), "Data sheet, edition 3"));
        assertThat(changed.provenance()).containsAll(law.provenance());
        assertThat(changed.provenance()
                        .subList(law.provenance().size(), changed.provenance().size()))
                .satisfiesExactly(
                        line -> assertThat(line)
                                .startsWith("replaced: EU-VI-18 by OWN-4-")
                                .contains("2024/996"),
                        line -> assertThat(line)
                                .startsWith("added: OWN-NIACINAMIDE-MAX")
                                .contains("edition 3"));
        assertThat(changed.limits()).hasSize(law.limits().size() + 1);
        assertThat(changed.omitted()).isEqualTo(law.omitted());
        assertThat(changed.notHeld()).isEqualTo(law.notHeld());
        assertThat(check(law, "4-Methylbenzylidene Camphor", "1 %").outcome()).isLessThan(LimitOutcome.EXCEEDS);
        assertThat(check(changed, "4-Methylbenzylidene Camphor", "1 %").outcome())
                .isEqualTo(LimitOutcome.EXCEEDS);
        assertThat(check(changed, "Talc", "1 %").notTranscribed()).hasSize(1);
    }

    @Test
    void two_tables_hold_together() throws IOException {
        LimitTable both = LimitTable.eu2024February().adding(read("Phenoxyethanol,max 0.8 %,any,House\n"));
        assertThat(check(both, "Phenoxyethanol", "0.9 %")
                        .binding()
                        .orElseThrow()
                        .limit()
                        .id())
                .isEqualTo("OWN-PHENOXYETHANOL-MAX");
        assertThat(both.provenance()).contains("House rules, 2026-11-01");
    }

    @Test
    void what_cannot_be_is_refused() {
        LimitTable law = LimitTable.eu2024February();
        UsageLimit rule = UsageLimit.atMost("A", "1 %", Scope.any(), "S");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> law.replacing("EU-VI-18"))
                .withMessageContaining("0 %");
        assertThatIllegalArgumentException().isThrownBy(() -> law.replacing("EU-VI-1888", rule));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> law.adding(rule, rule))
                .withMessageContaining("id");
        assertThatIllegalArgumentException().isThrownBy(() -> UsageLimit.atMost("A", "1 %", Scope.any(), " "));
        assertThatIllegalArgumentException().isThrownBy(() -> UsageLimit.atMost("A", "1 g", Scope.any(), "S"));
    }

    @Test
    void a_rule_allowed_nowhere_else_forbids_the_rest() {
        LimitTable table = LimitTable.of(
                "house",
                List.of(UsageLimit.atMost("A", "1 %", Scope.rinseOff(), "S")
                        .allowedNowhereElse()
                        .withId("H-1")));
        assertThat(check(table, "A", "0.1 %").outcome()).isEqualTo(LimitOutcome.PROHIBITED);
    }
}
