package io.github.formulationmath.annex;

import io.github.formulationmath.csv.CsvFormat;
import io.github.formulationmath.csv.CsvRow;
import io.github.formulationmath.formula.LooseNames;
import io.github.formulationmath.quantity.MassFraction;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** Reads the tables of the two lists. They lie beside the tables of limits. */
final class AnnexFiles {

    /** The day of the export. */
    static final LocalDate SNAPSHOT = LocalDate.of(2024, 2, 25);

    /** The names of Annex II in the form in which spellings agree, made from the list. */
    static final String LOOSE_NAMES = "annex-names.txt";

    private static final String FOLDER = "/io/github/formulationmath/limit/eu-1223-2009-2024-02-";
    private static final CsvFormat PROHIBITED = format(
            "ref_no",
            "printed",
            "reach",
            "applies",
            "lets_through",
            "cas_numbers",
            "names",
            "listed",
            "amending_act",
            "entry_updated");
    private static final CsvFormat READINGS = format("ref_no", "match", "text", "why");
    private static final CsvFormat COLORANTS = format(
            "ref_no",
            "printed",
            "ci_numbers",
            "colour",
            "field",
            "max_percent",
            "field_as_printed",
            "limit_as_printed",
            "conditions",
            "cas_numbers",
            "names",
            "amending_act",
            "entry_updated");

    private AnnexFiles() {}

    private static CsvFormat format(String... columns) {
        return CsvFormat.of(List.of(columns)).withCommentHead();
    }

    static List<ProhibitedEntry> prohibited() {
        return read("prohibited.csv", PROHIBITED).rows().stream()
                .map(AnnexFiles::prohibited)
                .toList();
    }

    static List<WordReading> readings() {
        Map<String, WordReading.Match> matches = new LinkedHashMap<>();
        for (WordReading.Match match : WordReading.Match.values()) {
            matches.put(match.code(), match);
        }
        List<WordReading> readings = new ArrayList<>();
        for (CsvRow row : read("prohibited-readings.csv", READINGS).rows()) {
            readings.add(new WordReading(
                    row.required("ref_no"), row.choice("match", matches), KeyFile.keyOf(row.required("text"))));
        }
        return List.copyOf(readings);
    }

    static List<ColorantEntry> colorants() {
        return read("colorants.csv", COLORANTS).rows().stream()
                .map(AnnexFiles::colorant)
                .toList();
    }

    static LooseNames looseNames() {
        try (InputStream in = Objects.requireNonNull(
                AnnexFiles.class.getResourceAsStream(LOOSE_NAMES), "the names of a list are missing from the jar")) {
            return LooseNames.read(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException("the names of a list cannot be read", e);
        }
    }

    private static CsvFormat.Table read(String part, CsvFormat format) {
        return format.shipped(AnnexFiles.class, FOLDER + part);
    }

    private static ProhibitedEntry prohibited(CsvRow row) {
        return new ProhibitedEntry(
                row.required("ref_no"),
                row.required("printed"),
                row.choice("applies", List.of(ProhibitedEntry.Condition.values()), ProhibitedEntry.Condition::code),
                row.text("lets_through"),
                row.text("reach").equals("group"),
                list(row.text("cas_numbers"), ';'),
                list(row.text("names"), '|'),
                list(row.text("listed"), '|'),
                row.text("amending_act"),
                day(row));
    }

    private static ColorantEntry colorant(CsvRow row) {
        return new ColorantEntry(
                row.required("ref_no"),
                row.required("printed"),
                list(row.text("ci_numbers"), ';'),
                row.text("colour"),
                row.choice("field", List.of(ColorantEntry.Field.values()), ColorantEntry.Field::code),
                row.text("max_percent").isEmpty()
                        ? Optional.empty()
                        : Optional.of(MassFraction.ofPercent(row.decimal("max_percent"))),
                row.text("field_as_printed"),
                row.text("limit_as_printed"),
                row.text("conditions"),
                list(row.text("cas_numbers"), ';'),
                list(row.text("names"), '|'),
                row.text("amending_act"),
                day(row));
    }

    private static LocalDate day(CsvRow row) {
        return Objects.requireNonNull(row.date("entry_updated"), "entry_updated");
    }

    private static List<String> list(String text, char separator) {
        return text.isEmpty() ? List.of() : CsvRow.listed(text, separator);
    }
}
