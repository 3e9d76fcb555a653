package io.github.formulationmath.limit;

import static io.github.formulationmath.limit.SnapshotTable.field;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.support.CasNumbers;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The substances that the EU limits count, and the closed vocabularies of both tables. */
@DisplayName("The members of the EU limits are those of the raw export")
final class SnapshotSubstancesTest {

    private static final Pattern CAS = Pattern.compile("(?<!\\d)\\d{2,7}-\\d{2}-\\d(?!\\d)");
    private static final Pattern ITEM =
            Pattern.compile("any|(?:(?:perhaps_)?not:)?[a-z][a-z0-9_]*(?:;(?:(?:perhaps_)?not:)?[a-z][a-z0-9_]*)*");

    static Stream<RawEntry> transcribedEntries() {
        return SnapshotTranscriptionTest.transcribedEntries();
    }

    @Test
    void limits_have_unique_keys_and_closed_vocabularies() {
        assertThat(SnapshotTable.LIMITS).extracting(row -> row.get("limit_id")).doesNotHaveDuplicates();
        assertThat(SnapshotTable.LIMITS).allSatisfy(row -> {
            assertThat(field(row, "kind")).isIn("max", "min", "declare_above", "warn_above");
            assertThat(field(row, "percent")).matches("\\d+(\\.\\d+)?");
            assertThat(field(row, "basis")).isIn("active", "as_supplied", "as_reference");
            assertThat(field(row, "purpose"))
                    .isIn("preservative", "uv_filter", "other_than_preservative", "rust_inhibitor", "any");
            assertThat(field(row, "scope_use")).isIn("rinse_off", "leave_on", "any");
            assertThat(field(row, "scope_area")).matches(ITEM);
            assertThat(field(row, "scope_product")).matches(ITEM);
            assertThat(field(row, "scope_form")).matches(ITEM);
            assertThat(field(row, "scope_user"))
                    .isIn(
                            "general",
                            "professional",
                            "any",
                            "not:under_3",
                            "not:under_6",
                            "not:under_10",
                            "not:under_18");
            assertThat(field(row, "outside_scope")).isIn("not_allowed", "read_entry", "none");
            assertThat(field(row, "whole")).isIn("product", "ethanol_and_isopropyl_alcohol");
            assertThat(field(row, "sum_rule")).isIn("single", "sum", "perhaps_sum", "sum_of_ratios");
            assertThat(field(row, "snapshot_date")).isEqualTo("2024-02-25");
            assertThat(field(row, "citation")).startsWith("Regulation (EC) No 1223/2009, Annex ");
            assertThat(field(row, "declared_as").isEmpty())
                    .isEqualTo(!field(row, "kind").equals("declare_above"));
            assertThat(field(row, "reference_substance").isEmpty())
                    .isEqualTo(!field(row, "basis").equals("as_reference"));
        });
    }

    @Test
    void every_group_has_members_and_every_member_a_limit() {
        Set<String> groups =
                SnapshotTable.LIMITS.stream().map(row -> field(row, "group_id")).collect(Collectors.toSet());
        Set<String> counted = SnapshotTable.SUBSTANCES.stream()
                .filter(row -> field(row, "role").equals("member"))
                .map(row -> field(row, "group_id"))
                .collect(Collectors.toSet());
        assertThat(counted).isEqualTo(groups);
    }

    @Test
    void members_are_named_once_per_cas_number_and_form() {
        assertThat(SnapshotTable.SUBSTANCES)
                .extracting(row -> List.of(
                        field(row, "group_id"), field(row, "inci_name"), field(row, "cas_number"), field(row, "form")))
                .doesNotHaveDuplicates();
        assertThat(SnapshotTable.SUBSTANCES).allSatisfy(row -> {
            assertThat(field(row, "inci_name")).isNotBlank().isUpperCase();
            assertThat(field(row, "role")).isIn("member", "mentioned", "not_allowed", "part");
        });
    }

    @Test
    void cas_numbers_have_the_right_check_digit() {
        assertThat(SnapshotTable.SUBSTANCES)
                .extracting(row -> field(row, "cas_number"))
                .filteredOn(cas -> !cas.isEmpty())
                .allMatch(CasNumbers::hasCheckDigit);
        assertThat(CasNumbers.hasCheckDigit("1205-50-3"))
                .as("as the export prints isobutyl benzoate")
                .isFalse();
    }

    @ParameterizedTest
    @MethodSource("transcribedEntries")
    void each_sound_cas_number_of_the_entry_is_in_the_table(RawEntry entry) {
        Set<String> groups = SnapshotTable.rowsOf(entry).stream()
                .map(row -> field(row, "group_id"))
                .collect(Collectors.toSet());
        List<String> inTable = SnapshotTable.SUBSTANCES.stream()
                .filter(row -> groups.contains(field(row, "group_id")))
                .map(row -> field(row, "cas_number"))
                .toList();
        assertThat(inTable)
                .containsAll(casNumbers(entry).filter(CasNumbers::hasCheckDigit).toList());
    }

    @Test
    void a_cas_number_from_elsewhere_says_so() {
        Set<String> printed = SnapshotTranscriptionTest.rawEntries()
                .flatMap(SnapshotSubstancesTest::casNumbers)
                .collect(Collectors.toSet());
        assertThat(SnapshotTable.SUBSTANCES)
                .filteredOn(row -> !field(row, "cas_number").isEmpty())
                .filteredOn(row -> !printed.contains(field(row, "cas_number")))
                .extracting(row -> field(row, "note"))
                .hasSizeGreaterThanOrEqualTo(3)
                .allMatch(note -> note.contains("from memory"));
    }

    @Test
    void where_a_limit_is_expressed_as_a_reference_each_member_has_a_formula_or_the_reason_why_not() {
        Map<String, String> reference = SnapshotTable.LIMITS.stream()
                .filter(row -> field(row, "basis").equals("as_reference"))
                .collect(Collectors.toMap(
                        row -> field(row, "group_id"), row -> field(row, "reference_formula"), (one, same) -> one));
        assertThat(SnapshotTable.SUBSTANCES)
                .filteredOn(row ->
                        !reference.getOrDefault(field(row, "group_id"), "").isEmpty())
                .allSatisfy(row -> assertThat(field(row, "molecular_formula") + field(row, "note"))
                        .isNotBlank())
                .allSatisfy(row -> assertThat(field(row, "reference_units").isEmpty())
                        .isEqualTo(field(row, "molecular_formula").isEmpty()));
    }

    @Test
    void nested_sums_share_their_members() {
        Function<String, Set<String>> members = group -> SnapshotTable.SUBSTANCES.stream()
                .filter(row -> field(row, "group_id").equals(group))
                .map(row -> field(row, "inci_name"))
                .collect(Collectors.toSet());
        assertThat(members.apply("III-287"))
                .containsAll(members.apply("III-286"))
                .contains("BEHENTRIMONIUM CHLORIDE");
        assertThat(members.apply("V-12+12a"))
                .containsAll(members.apply("V-12"))
                .containsAll(members.apply("V-12a"))
                .hasSize(16);
        assertThat(members.apply("VI-30+30a")).containsExactlyInAnyOrder("ZINC OXIDE", "ZINC OXIDE (NANO)");
    }

    private static Stream<String> casNumbers(RawEntry entry) {
        return CAS.matcher(entry.casNumbers()).results().map(found -> found.group());
    }
}
