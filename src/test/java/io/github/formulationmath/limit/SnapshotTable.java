package io.github.formulationmath.limit;

import io.github.formulationmath.reference.ReferenceTable;
import java.util.List;
import java.util.Map;

/** The transcribed tables as plain text fields, read with a general-purpose CSV library and nothing of ours. */
final class SnapshotTable {

    static final List<Map<String, String>> LIMITS = ReferenceTable.fields("shared/limits/eu-1223-2009-2024-02.csv");
    static final List<Map<String, String>> SUBSTANCES =
            ReferenceTable.fields("shared/limits/eu-1223-2009-2024-02-substances.csv");
    static final List<Map<String, String>> OMITTED =
            ReferenceTable.fields("shared/limits/eu-1223-2009-2024-02-omitted.csv");

    private SnapshotTable() {}

    /** Annex, reference number and name, as {@link RawEntry#key()}. */
    static String key(Map<String, String> row) {
        return field(row, "annex") + " " + field(row, "ref_no") + " " + field(row, "substance_group");
    }

    static List<Map<String, String>> rowsOf(RawEntry entry) {
        return LIMITS.stream().filter(row -> key(row).equals(entry.key())).toList();
    }

    static String field(Map<String, String> row, String column) {
        String value = row.get(column);
        if (value == null) {
            throw new IllegalArgumentException("no column " + column + " in " + row.keySet());
        }
        return value;
    }
}
