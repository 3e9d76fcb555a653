package io.github.formulationmath.limit;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.annex.Colorants;
import io.github.formulationmath.annex.ProhibitedSubstances;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/** The day that stands in the data is the day that stands in every file name, method name, citation and text. */
class TrueDateTest {

    private static final LocalDate DAY =
            LocalDate.parse(SnapshotTable.LIMITS.get(0).get("snapshot_date"));
    private static final DateTimeFormatter LONG = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMMM uuuu", Locale.ENGLISH);
    private static final List<String> RIGHT = List.of(DAY.toString(), LONG.format(DAY), MONTH.format(DAY));

    private static final String A_DAY =
            "(?<day>\\d{4}-\\d{2}-\\d{2}|(?:\\d{1,2} )?(?:January|February|March|April|May|June"
                    + "|July|August|September|October|November|December) \\d{4})";
    /** What a text says of the day of the export. */
    private static final Pattern STATED = Pattern.compile(
            "(?:snapshot[ _](?:of|date)|exported in|export of|state of|of Annexes? [^.]{0,60} as of)[ :]{1,2}(?:the )?"
                    + A_DAY);

    private static final Pattern FILE = Pattern.compile("eu-1223-2009-(\\d{4}-\\d{2})");
    private static final Pattern METHOD =
            Pattern.compile("\\beu(\\d{4}(?:January|February|March|April|May|June|July|August"
                    + "|September|October|November|December))\\b");

    private static List<Path> texts() throws IOException {
        List<Path> all = new ArrayList<>(List.of(Path.of("README.md"), Path.of("DEVELOPERS.md")));
        for (String folder : List.of("docs", "src", "shared", "benchmarks/src")) {
            try (Stream<Path> files = Files.walk(Path.of(folder))) {
                files.filter(file -> file.toString().matches(".*\\.(md|java|properties|jsh|txt|csv|kt|xml|json)"))
                        .filter(file -> !file.toString().replace('\\', '/').matches("shared/limits/raw/.*\\.csv"))
                        .filter(file -> !file.endsWith("TrueDateTest.java"))
                        .forEach(all::add);
            }
        }
        return all;
    }

    private static String read(Path file) {
        try {
            return Files.readString(file).replaceAll("\\s+(?:\\*|//|#)?\\s*", " ");
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static Map<String, List<String>> found(Pattern pattern, int group) throws IOException {
        Map<String, List<String>> places = new TreeMap<>();
        for (Path file : texts()) {
            pattern.matcher(read(file))
                    .results()
                    .map(match -> match.group(group))
                    .forEach(text -> places.computeIfAbsent(text, key -> new ArrayList<>())
                            .add(file.toString()));
        }
        return places;
    }

    @Test
    void every_row_and_every_list_has_it() {
        assertThat(SnapshotTable.LIMITS)
                .extracting(row -> row.get("snapshot_date"))
                .containsOnly(DAY.toString());
        assertThat(LimitTable.eu2024February().snapshot()).contains(DAY);
        assertThat(ProhibitedSubstances.eu2024February().snapshot()).isEqualTo(DAY);
        assertThat(Colorants.eu2024February().snapshot()).isEqualTo(DAY);
    }

    @Test
    void texts_that_state_it_state_that_day() throws IOException {
        Map<String, List<String>> stated = found(STATED, 1);
        stated.values().forEach(files -> files.removeIf(file -> file.endsWith("SumOfRatiosTest.java")));
        stated.values().removeIf(List::isEmpty);
        assertThat(stated.keySet()).isSubsetOf(RIGHT);
        assertThat(stated.values().stream().mapToInt(List::size).sum()).isGreaterThan(20);
    }

    @Test
    void files_and_methods_are_named_after_it() throws IOException {
        assertThat(found(FILE, 1).keySet()).containsExactly(DAY.toString().substring(0, 7));
        assertThat(found(METHOD, 1).keySet())
                .containsExactly(
                        DateTimeFormatter.ofPattern("uuuuMMMM", Locale.ENGLISH).format(DAY));
        try (Stream<Path> files = Files.list(Path.of("shared/limits"))) {
            assertThat(files.map(file -> file.getFileName().toString()).filter(name -> name.startsWith("eu-")))
                    .allMatch(name ->
                            name.startsWith("eu-1223-2009-" + DAY.toString().substring(0, 7)));
        }
    }

    @Test
    void every_citation_and_the_caution_have_it() {
        assertThat(LimitTable.eu2024February().limits())
                .filteredOn(limit -> limit.id().startsWith("EU-"))
                .allSatisfy(limit -> assertThat(limit.citation().toString()).contains("snapshot of " + DAY));
        assertThat(LimitTable.eu2024February().caution().toString()).contains(DAY.toString());
    }

    @Test
    void heads_of_the_tables_have_it_with_the_notice_of_the_source() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("shared/limits"))) {
            List<Path> own = files.filter(file -> file.toString().endsWith(".csv"))
                    .filter(file -> read(file).contains("ingredient database (CosIng)"))
                    .toList();
            assertThat(own).hasSizeGreaterThanOrEqualTo(6);
            assertThat(own)
                    .allSatisfy(file -> assertThat(read(file))
                            .contains("snapshot date " + DAY)
                            .contains(
                                    "notice: Contains data from the European Commission's cosmetic ingredient database, © European "
                                            + "Union, transcribed and shortened; not an official text; state of "
                                            + LONG.format(DAY)));
        }
    }

    /** No entry is newer than the export, and what the page on the exports says of them is so. */
    @Test
    void raw_exports_are_not_newer_and_are_described_as_they_are() throws IOException {
        String page = Files.readString(Path.of("shared/limits/raw/README.md"));
        assertThat(page).contains("**" + DAY + "**").contains(LONG.format(DAY));
        LocalDate newest = LocalDate.MIN;
        for (String annex : List.of("II", "III", "IV", "V", "VI")) {
            List<CSVRecord> records = records(annex);
            LocalDate last = records.stream()
                    .map(TrueDateTest::updated)
                    .max(LocalDate::compareTo)
                    .orElseThrow();
            long numbered = records.stream()
                    .map(record -> record.get(annex.equals("II") ? 2 : 3))
                    .filter(cas -> !cas.isEmpty() && !cas.equals("-"))
                    .count();
            assertThat(last).isBeforeOrEqualTo(DAY);
            assertThat(page).contains("| `annex" + annex + ".csv` | " + annex + ", ");
            assertThat(page).contains(" | " + records.size() + " | " + numbered + " | " + last + " |");
            newest = newest.isAfter(last) ? newest : last;
        }
        assertThat(page).contains("newest entry date inside them is " + newest);
    }

    private static List<CSVRecord> records(String annex) throws IOException {
        try (CSVParser parser =
                CSVFormat.RFC4180.parse(Files.newBufferedReader(Path.of("shared/limits/raw/annex" + annex + ".csv")))) {
            return parser.stream().skip(1).toList();
        }
    }

    private static LocalDate updated(CSVRecord record) {
        return LocalDate.parse(record.get(record.size() - 1), DateTimeFormatter.ofPattern("dd/MM/uuuu", Locale.ROOT));
    }

    /** The pattern sees what it must see, and a wrong day would fail. */
    @Test
    void a_wrong_day_would_be_seen() {
        List<String> seen = Stream.of(
                        "(snapshot of 2024-05-13)",
                        "annex tables exported in May 2024 (snapshot",
                        "an unofficial text; state of 13 May 2024.",
                        "the limits of Annexes V and VI of the regulation as of 13 May 2024")
                .flatMap(text -> STATED.matcher(text).results())
                .map(MatchResult::group)
                .collect(Collectors.toList());
        assertThat(seen).hasSize(4);
    }
}
