package io.github.formulationmath.limit;

import io.github.formulationmath.csv.CsvFormat;
import io.github.formulationmath.csv.CsvRow;
import io.github.formulationmath.csv.CsvTable;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.number.Excerpt;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads the two files that tell which entries of a source are not transcribed, and of what they speak. */
final class OmittedReader {

    static final CsvFormat ENTRIES = CsvFormat.of(List.of("annex", "ref_no", "substance_group", "reason"))
            .withCommentHead();

    static final CsvFormat NAMES = CsvFormat.of(List.of("annex", "ref_no", "substance_group", "name", "cas_number"))
            .withCommentHead();

    private OmittedReader() {}

    static List<OmittedEntry> read(CsvTable entries, CsvTable names) {
        Map<List<String>, List<String>> reasons = new LinkedHashMap<>();
        Map<List<String>, List<String>> called = new LinkedHashMap<>();
        Map<List<String>, List<String>> numbered = new LinkedHashMap<>();
        for (CsvRow row : entries.rows()) {
            reasons.computeIfAbsent(key(row), key -> new ArrayList<>()).add(row.required("reason"));
        }
        for (CsvRow row : names.rows()) {
            if (!reasons.containsKey(key(row))) {
                throw row.wrong(
                        "ref_no",
                        "is \"" + Excerpt.of(row.text("ref_no")) + "\", no entry left out: write the "
                                + "three fields as in the file of entries");
            }
            add(called, row, "name");
            if (!row.text("cas_number").isEmpty()) {
                row.read("cas_number", Substance.of("any")::withCas);
                add(numbered, row, "cas_number");
            }
        }
        return reasons.entrySet().stream()
                .map(entry -> new OmittedEntry(
                        entry.getKey().get(0),
                        entry.getKey().get(1),
                        entry.getKey().get(2),
                        String.join("; ", entry.getValue()),
                        called.getOrDefault(entry.getKey(), List.of()),
                        numbered.getOrDefault(entry.getKey(), List.of())))
                .toList();
    }

    private static void add(Map<List<String>, List<String>> lists, CsvRow row, String column) {
        if (!row.text(column).isEmpty()) {
            lists.computeIfAbsent(key(row), key -> new ArrayList<>()).add(row.text(column));
        }
    }

    private static List<String> key(CsvRow row) {
        return List.of(row.required("annex"), row.required("ref_no"), row.required("substance_group"));
    }
}
