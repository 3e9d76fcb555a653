package io.github.formulationmath.limit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.csv.CsvException;
import io.github.formulationmath.formula.Formula;
import java.io.IOException;
import java.io.StringReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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
                java.util.List.of(UsageLimit.atMost("A", "1 %", Scope.rinseOff(), "S")
                        .allowedNowhereElse()
                        .withId("H-1")));
        assertThat(check(table, "A", "0.1 %").outcome()).isEqualTo(LimitOutcome.PROHIBITED);
    }
}
