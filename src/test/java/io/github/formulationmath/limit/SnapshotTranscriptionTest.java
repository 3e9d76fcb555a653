package io.github.formulationmath.limit;

import static io.github.formulationmath.limit.PrintedText.normalised;
import static io.github.formulationmath.limit.SnapshotTable.field;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.limit.PrintedText.Printed;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Compares the transcribed limits table with the raw exports of Annexes III, V and VI of Regulation (EC) No 1223/2009
 * (European Commission, cosmetic ingredient database, annex tables exported in February 2024), entry by entry.
 */
@DisplayName("The EU limits table says what the raw export prints")
final class SnapshotTranscriptionTest {

    /** The fragrance substances' sentence, in every wording of the export ("must", "shall", point or comma). */
    private static final Pattern DECLARATION = Pattern.compile("in the list of ingredients referred to in Article"
            + " (?:19|6)\\(1\\).{1,200}? exceeds[^:]{0,40}: [-—] (0[.,]001) ?% in leave-on products [-—] (0[.,]01) ?% in rinse-off"
            + " products.*");

    static Stream<RawEntry> rawEntries() {
        return Stream.of("III", "V", "VI").flatMap(annex -> RawEntry.annex(annex).stream());
    }

    static Stream<RawEntry> transcribedEntries() {
        return rawEntries().filter(entry -> !SnapshotTable.rowsOf(entry).isEmpty());
    }

    static Stream<RawEntry> annexVEntries() {
        return RawEntry.annex("V").stream().filter(RawEntry::isLive);
    }

    @Test
    void the_exports_hold_the_records_that_their_source_counts() {
        assertThat(RawEntry.annex("III")).hasSize(367);
        assertThat(RawEntry.annex("V")).hasSize(57);
        assertThat(RawEntry.annex("VI")).hasSize(35);
    }

    @Test
    void every_raw_entry_is_either_transcribed_or_omitted_with_a_reason() {
        Set<String> transcribed =
                SnapshotTable.LIMITS.stream().map(SnapshotTable::key).collect(Collectors.toSet());
        Set<String> omitted =
                SnapshotTable.OMITTED.stream().map(SnapshotTable::key).collect(Collectors.toSet());
        Set<String> raw = rawEntries().map(RawEntry::key).collect(Collectors.toSet());

        assertThat(transcribed).doesNotContainAnyElementsOf(omitted);
        Set<String> both = new HashSet<>(transcribed);
        both.addAll(omitted);
        assertThat(both).isEqualTo(raw);
        assertThat(SnapshotTable.OMITTED)
                .allSatisfy(row -> assertThat(field(row, "reason")).isNotBlank());
    }

    @Test
    void annexes_v_and_vi_are_complete() {
        assertThat(SnapshotTable.OMITTED)
                .filteredOn(row -> !field(row, "annex").equals("III"))
                .extracting(row -> field(row, "annex") + " " + field(row, "ref_no") + " " + field(row, "reason"))
                .containsExactly(
                        "V 6 moved or deleted",
                        "V 10 moved or deleted",
                        "V 36 moved or deleted",
                        "VI 5 moved or deleted");
    }

    @ParameterizedTest
    @MethodSource("annexVEntries")
    void annex_v_has_exactly_the_printed_percentages(RawEntry entry) {
        assertThat(percentsOf(SnapshotTable.rowsOf(entry)))
                .isEqualTo(new TreeSet<>(PrintedText.percentages(entry.concentration())));
    }

    @ParameterizedTest
    @MethodSource("transcribedEntries")
    void no_percentage_of_a_concentration_cell_is_lost_and_none_is_invented(RawEntry entry) {
        Set<String> inTable = percentsOf(SnapshotTable.rowsOf(entry));
        Set<String> anywhere = new TreeSet<>(
                PrintedText.percentages(entry.concentration() + "\n" + entry.conditions() + "\n" + entry.wording()));

        assertThat(inTable).containsAll(PrintedText.percentages(entry.concentration()));
        assertThat(anywhere).containsAll(inTable);
    }

    @ParameterizedTest
    @MethodSource("transcribedEntries")
    void each_row_is_read_by_machine_or_listed_for_human_reading_and_never_both(RawEntry entry) {
        for (Map<String, String> row : SnapshotTable.rowsOf(entry)) {
            assertThat(isReadByMachine(entry, row))
                    .as(
                            "%s: read by machine, against needs_human_reading = \"%s\"",
                            field(row, "limit_id"), field(row, "needs_human_reading"))
                    .isEqualTo(field(row, "needs_human_reading").isEmpty());
        }
    }

    @ParameterizedTest
    @MethodSource("transcribedEntries")
    void the_printed_text_is_carried_word_by_word(RawEntry entry) {
        Map<String, String> types = PrintedText.lettered(entry.productType());
        for (Map<String, String> row : SnapshotTable.rowsOf(entry)) {
            String letter = field(row, "sub_entry").split("-", 2)[0];
            String scope = letter.isEmpty()
                    ? normalised(entry.productType())
                    : types.getOrDefault(letter, normalised(entry.productType()));
            if (field(row, "needs_human_reading").isEmpty()) {
                assertThat(field(row, "scope_as_printed")).isEqualTo(scope);
            } else {
                assertThat(scope).contains(field(row, "scope_as_printed"));
            }
            assertThat(field(row, "limit_as_printed")).isEqualTo(normalised(entry.concentration()));
            assertThat(field(row, "conditions")).isEqualTo(normalised(entry.conditions()));
            assertThat(field(row, "warning_text")).isEqualTo(normalised(entry.wording()));
            assertThat(field(row, "amending_act")).isEqualTo(entry.act());
            assertThat(field(row, "entry_updated")).isEqualTo(entry.updated());
        }
    }

    @ParameterizedTest
    @MethodSource("transcribedEntries")
    void every_printed_letter_with_a_percentage_has_a_row(RawEntry entry) {
        List<String> letters = SnapshotTable.rowsOf(entry).stream()
                .map(row -> field(row, "sub_entry").split("-", 2)[0])
                .toList();
        PrintedText.lettered(entry.concentration()).forEach((letter, part) -> {
            if (!PrintedText.percentages(part).isEmpty()) {
                assertThat(letters).contains(letter);
            }
        });
    }

    @Test
    void every_entry_that_must_be_declared_has_both_thresholds() {
        Set<String> declared = SnapshotTable.LIMITS.stream()
                .filter(row -> field(row, "kind").equals("declare_above"))
                .map(row -> SnapshotTable.key(row) + " " + field(row, "scope_use") + " " + field(row, "percent"))
                .collect(Collectors.toSet());
        Set<String> printed = rawEntries()
                .filter(entry -> entry.conditions().contains("list of ingredients"))
                .flatMap(entry -> Stream.of(entry.key() + " leave_on 0.001", entry.key() + " rinse_off 0.01"))
                .collect(Collectors.toSet());

        assertThat(printed).hasSize(162);
        assertThat(declared).isEqualTo(printed);
    }

    private static Set<String> percentsOf(List<Map<String, String>> rows) {
        return rows.stream().map(row -> field(row, "percent")).collect(Collectors.toCollection(TreeSet::new));
    }

    private static boolean isReadByMachine(RawEntry entry, Map<String, String> row) {
        return switch (field(row, "kind")) {
            case "max" ->
                PrintedText.limits(entry.concentration())
                        .filter(limits -> new Printed(field(row, "percent"), field(row, "basis_as_printed"))
                                .equals(limits.get(field(row, "sub_entry"))))
                        .isPresent();
            case "declare_above" -> isDeclaration(entry, row);
            default -> false;
        };
    }

    private static boolean isDeclaration(RawEntry entry, Map<String, String> row) {
        var sentence = DECLARATION.matcher(normalised(entry.conditions()));
        int group = field(row, "scope_use").equals("leave_on") ? 1 : 2;
        return sentence.find() && sentence.group(group).replace(',', '.').equals(field(row, "percent"));
    }
}
