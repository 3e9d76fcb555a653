package io.github.formulationmath.limit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.formulationmath.csv.CsvException;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.support.ValueContract;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Tag("locale")
class LimitTableTest {

    private static final String HEADER = String.join(",", LimitTableReader.LIMITS.columns()) + "\n";
    private static final String SUBSTANCES = String.join(",", LimitTableReader.SUBSTANCES.columns()) + "\n"
            + "G1,Tocopherol,59-02-9,,,,TOCOPHEROL,member,\n";
    private static final String ROW =
            "HOUSE-1,own,1,,G1,Tocopherol,max,0.50,active,,,,any,any,any,any,any,any,none,product,single,,,,,,,,"
                    + "2024-02-25,House rule,,\n";

    private static LimitTable read(String limits) throws IOException {
        return LimitTable.read("house", new StringReader(limits), new StringReader(SUBSTANCES));
    }

    /** The tables read with a general-purpose CSV library (SnapshotTable) and with ours say the same, field by field. */
    @Test
    void the_bundled_table_is_the_file_field_by_field() {
        LimitTable table = LimitTable.eu2024February();
        assertThat(table.limits()).hasSize(SnapshotTable.LIMITS.size());
        for (int i = 0; i < table.limits().size(); i++) {
            UsageLimit limit = table.limits().get(i);
            Map<String, String> row = SnapshotTable.LIMITS.get(i);
            assertThat(limit.id()).isEqualTo(row.get("limit_id"));
            assertThat(limit.share().percent()).isEqualTo(Ratio.parse(row.get("percent")));
            assertThat(limit.share().asWritten()).contains(row.get("percent") + " %");
            assertThat(limit.kind().code()).isEqualTo(row.get("kind"));
            assertThat(limit.basis().code()).isEqualTo(row.get("basis"));
            assertThat(limit.basis().referenceName()).isEqualTo(row.get("reference_substance"));
            assertThat(limit.sumRule().code()).isEqualTo(row.get("sum_rule"));
            assertThat(limit.outside().code()).isEqualTo(row.get("outside_scope"));
            assertThat(limit.whole()).isEqualTo(row.get("whole"));
            assertThat(limit.declaredAs()).isEqualTo(row.get("declared_as"));
            assertThat(limit.text().conditions()).isEqualTo(row.get("conditions"));
            assertThat(limit.text().warnings()).isEqualTo(row.get("warning_text"));
            assertThat(limit.citation().text()).isEqualTo(row.get("citation"));
            assertThat(limit.citation().snapshot()).contains(LocalDate.parse(row.get("snapshot_date")));
            assertThat(limit.scope().purpose()).isEqualTo(row.get("purpose"));
            assertThat(limit.group().members()).hasSize((int) SnapshotTable.SUBSTANCES.stream()
                    .filter(s -> s.get("group_id").equals(row.get("group_id")))
                    .filter(s -> !s.get("role").equals("part"))
                    .count());
        }
    }

    @Test
    void the_bundled_table_says_of_which_day_it_is_and_that_it_is_no_law() {
        LimitTable table = LimitTable.eu2024February();
        assertThat(table.snapshot()).contains(LocalDate.of(2024, 2, 25));
        assertThat(String.join("\n", table.provenance())).contains("never current law");
        assertThat(table.toString()).contains("snapshot of 2024-02-25");
        assertThat(table.limit("EU-V-29").citation().toString()).contains("Annex V, entry 29", "2024-02-25");
        assertThatIllegalArgumentException().isThrownBy(() -> table.limit("EU-V-999"));
    }

    @ParameterizedTest
    @CsvSource({
        "Phenoxyethanol",
        "PHENOXYETHANOL",
        "'  phenoxy ethanol '",
        "'phenoxyethanol\u00a0'",
        "' Phenoxyethanol\t'"
    })
    void case_and_spacing_at_the_ends_are_forgiven(String name) {
        assertThat(LimitTable.eu2024February().limitsFor(Substance.of(name))).isNotEmpty();
    }

    @ParameterizedTest
    @CsvSource({"'Sodium   Benzoate'", "' sodium benzoate'", "'SODIUM\tBENZOATE'", "'sodIum benzoate'"})
    void runs_of_spaces_are_one(String name) {
        assertThat(LimitTable.eu2024February().limitsFor(Substance.of(name))).isNotEmpty();
    }

    @Test
    void nothing_is_matched_that_is_merely_alike_but_it_is_suggested_when_asked() {
        LimitTable table = LimitTable.eu2024February();
        assertThat(table.limitsFor(Substance.of("Phenoxyethanole"))).isEmpty();
        assertThat(table.closestNames("Phenoxyethanole", 3)).first().isEqualTo("PHENOXYETHANOL");
        assertThat(table.closestNames("sodium bensoate", 2)).first().isEqualTo("SODIUM BENZOATE");
        assertThat(table.closestNames("x", 3)).isEmpty();
        assertThat(table.closestNames("y".repeat(1_000_000), 3)).isEmpty();
        assertThatIllegalArgumentException().isThrownBy(() -> table.closestNames("x", 0));
    }

    /** kitten to sitting takes three steps, the example of every textbook. */
    @Test
    void a_table_of_ones_own_is_read(@TempDir Path folder) throws IOException {
        Path limits = Files.writeString(folder.resolve("house.csv"), "# title: house rules\n" + HEADER + ROW);
        Path substances = Files.writeString(folder.resolve("house-substances.csv"), SUBSTANCES);
        LimitTable table = LimitTable.read(limits, substances);
        assertThat(table.name()).isEqualTo("house.csv");
        assertThat(table.provenance()).containsExactly("title: house rules");
        assertThat(table.limit("HOUSE-1").share()).isEqualTo(MassFraction.ofPercent("0.5"));
        assertThat(table.limitsFor(Substance.of("alpha-tocopherol").withCas("59-02-9")))
                .hasSize(1);
        assertThat(read((HEADER + ROW).replace("\n", "\r\n")).limits())
                .isEqualTo(read(HEADER + ROW).limits());
        Files.write(substances, new byte[] {(byte) 0xff, (byte) 0xfe, 'x'});
        assertThatExceptionOfType(CsvException.class)
                .isThrownBy(() -> LimitTable.read(limits, substances))
                .withMessageContaining("UTF-8");
    }

    @Test
    void a_table_survives_serialization() throws Exception {
        LimitTable table = read(HEADER + ROW);
        LimitTable again = ValueContract.copy(table);
        assertThat(again.limits()).isEqualTo(table.limits());
        assertThat(again.limitsFor(Substance.of("tocopherol"))).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource({
        "max, maximum, 'kind is \"maximum\": it must be one of max, min'",
        "0.50, '0,50', fields",
        "0.50, 5e-1, plain number",
        "0.50, -1, plain number",
        "0.50, 101, percent cannot be read",
        "0.50, '', plain number",
        "active, as_reference, 'reference_substance is empty'",
        "active, wet, 'basis is \"wet\"'",
        "G1, G9, 'the substances file does not have'",
        "2024-02-25, 13.05.2024, 'write a date as 2024-02-25'",
        "House rule, '', 'citation is empty'",
        "HOUSE-1, '', 'limit_id is empty'",
        "HOUSE-1, HOUSE 1, 'without spaces'",
        "single, alone, sum_of_ratios",
        "'any,any,none', 'any,hobby,none', 'scope_user cannot be read: user is \"hobby\"'",
        "none, never, not_allowed"
    })
    void what_is_wrong_in_a_row_is_told_with_line_and_column(String right, String wrong, String message) {
        String row = ROW.replaceFirst(java.util.regex.Pattern.quote(right), wrong);
        assertThatExceptionOfType(CsvException.class)
                .isThrownBy(() -> read("# one line of comment\n" + HEADER + row))
                .withMessageContaining(message)
                .satisfies(e -> assertThat(e.line()).isEqualTo(3))
                .satisfies(e -> assertThat(e.column()).isPositive());
    }

    @ParameterizedTest
    @CsvSource({
        "'59-02-9', '59-02-8', cas_number cannot be read",
        "member, guest, role",
        "'Tocopherol', '', inci_name cannot be read",
        "',,,TOC', ',c2,1,TOC', molecular_formula cannot be read",
        "',,,TOC', ',C2,,TOC', reference_units"
    })
    void what_is_wrong_in_the_substances_is_told_too(String right, String wrong, String message) {
        String text = SUBSTANCES.replaceFirst(java.util.regex.Pattern.quote(right), wrong);
        assertThatExceptionOfType(CsvException.class)
                .isThrownBy(() -> LimitTable.read("house", new StringReader(HEADER + ROW), new StringReader(text)))
                .withMessageContaining(message)
                .satisfies(e -> assertThat(e.line()).isEqualTo(2));
    }

    @Test
    void a_column_says_at_which_character_the_field_begins() {
        assertThatExceptionOfType(CsvException.class)
                .isThrownBy(() -> read(HEADER + ROW.replace(",max,", ",most,")))
                .withMessageStartingWith("limits, line 2, column 30: kind is \"most\"");
    }

    @Test
    void an_id_a_second_time_is_refused_with_its_line() {
        assertThatExceptionOfType(CsvException.class)
                .isThrownBy(() -> read(HEADER + ROW + ROW))
                .withMessageStartingWith("limits, line 3, column 1: limit_id is \"")
                .withMessageContaining("a second time");
    }

    /** Two files make a table, so what is wrong is told with the one it stands in. */
    @Test
    void the_file_that_is_wrong_is_named(@TempDir Path folder) throws IOException {
        Path limits = Files.writeString(folder.resolve("limits.csv"), HEADER + ROW);
        Path good = Files.writeString(folder.resolve("good.csv"), "\ufeff" + SUBSTANCES);
        Path bad = Files.writeString(folder.resolve("bad.csv"), SUBSTANCES.replace("inci_name", "name"));
        Path latin = Files.writeString(
                folder.resolve("latin.csv"), SUBSTANCES + "é", java.nio.charset.StandardCharsets.ISO_8859_1);
        assertThat(LimitTable.read(limits, good).limits()).hasSize(1);
        assertThatExceptionOfType(CsvException.class)
                .isThrownBy(() -> LimitTable.read(limits, bad))
                .withMessageStartingWith(bad + ", line 1, column 10: column 2 of the header must be inci_name")
                .satisfies(e -> assertThat(e.file()).isEqualTo(bad.toString()));
        assertThatExceptionOfType(CsvException.class)
                .isThrownBy(() -> LimitTable.read(bad, good))
                .withMessageStartingWith(bad + ", line 1, column 1: ");
        assertThatExceptionOfType(CsvException.class)
                .isThrownBy(() -> LimitTable.read(limits, latin))
                .withMessageStartingWith(latin + ", line 3, column 1: from here on the file is not in UTF-8");
    }

    @Test
    void ten_thousand_limits_are_read() throws IOException {
        StringBuilder rows = new StringBuilder(HEADER);
        for (int i = 0; i < 10_000; i++) {
            rows.append("H").append(i).append(ROW.substring(ROW.indexOf(','))).append(ROW.endsWith("\n") ? "" : "\n");
        }
        assertThat(read(rows.toString()).limits()).hasSize(10_000);
    }

    @Test
    void limits_made_in_code_need_ids_of_their_own() {
        UsageLimit limit =
                UsageLimit.of("A", SubstanceGroup.of("Tocopherol"), LimitKind.MAXIMUM, MassFraction.ofPercent("1"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LimitTable.of("house", List.of(limit, limit)))
                .withMessageContaining("A");
        assertThat(StandardCharsets.UTF_8.newEncoder().canEncode(limit.toString()))
                .isTrue();
    }
}
