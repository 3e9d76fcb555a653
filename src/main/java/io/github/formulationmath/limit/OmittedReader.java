package io.github.formulationmath.limit;

import io.github.formulationmath.formula.Substance;
import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads the two files that tell which entries of a source are not transcribed, and of what they speak. */
final class OmittedReader {

    static final List<String> ENTRY_COLUMNS = List.of("annex", "ref_no", "substance_group", "reason");
    static final List<String> NAME_COLUMNS = List.of("annex", "ref_no", "substance_group", "name", "cas_number");

    private OmittedReader() {}

    static List<OmittedEntry> read(Reader entries, Reader names) throws IOException {
        Map<List<String>, List<String>> reasons = new LinkedHashMap<>();
        Map<List<String>, List<String>> called = new LinkedHashMap<>();
        Map<List<String>, List<String>> numbered = new LinkedHashMap<>();
        for (CsvRow row : CsvRow.readAll(new CsvReader(entries), ENTRY_COLUMNS)) {
            reasons.computeIfAbsent(key(row), key -> new ArrayList<>()).add(row.required("reason"));
        }
        for (CsvRow row : CsvRow.readAll(new CsvReader(names), NAME_COLUMNS)) {
            if (!reasons.containsKey(key(row))) {
                throw row.wrong("ref_no", "is \"" + CsvRow.shortened(row.text("ref_no")) + "\", no entry left out");
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
