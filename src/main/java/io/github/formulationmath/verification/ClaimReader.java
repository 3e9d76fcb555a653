package io.github.formulationmath.verification;

import io.github.formulationmath.csv.CsvField;
import io.github.formulationmath.csv.CsvFormat;
import io.github.formulationmath.csv.CsvRow;
import io.github.formulationmath.csv.CsvTable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads a claim from a table with the columns {@code record,group,name,value,figure}. Records: {@code formula} (name;
 * percent, parts or masses), {@code size} (mass; packs, fill mass, overage; volume, density), {@code balance} (readability,
 * capacity), {@code part} (material, substance, strength), {@code density} (material, density), {@code line} (phase,
 * ingredient, amount or q.s., figure), {@code total} (figure).
 */
final class ClaimReader {

    static final CsvFormat FORMAT =
            CsvFormat.of(List.of("record", "group", "name", "value", "figure")).ofAtMost(1_000_000);

    private final List<Row> lines = new ArrayList<>();
    private final Map<String, CsvField> settings = new LinkedHashMap<>();
    private final ClaimedMaterials materials = new ClaimedMaterials();

    /** A row with its five fields. */
    record Row(CsvField kind, CsvField group, CsvField name, CsvField value, CsvField figure) {

        /** Refuses what stands where this kind of record has no use for it. */
        void requireEmpty(String field, CsvField cell) {
            if (!cell.text().isEmpty()) {
                throw cell.wrong("a record of " + kind.text() + " has no use for the field " + field + ", where \""
                        + cell.text() + "\" stands: leave it empty, or move it to the field it belongs to");
            }
        }
    }

    private ClaimReader() {}

    static Claim read(CsvTable table) {
        ClaimReader claim = new ClaimReader();
        for (CsvRow row : table.rows()) {
            claim.add(new Row(
                    row.field("record"),
                    row.field("group"),
                    row.field("name"),
                    row.field("value"),
                    row.field("figure")));
        }
        return new ClaimAssembly(claim.settings, claim.lines, claim.materials, table.last()).claim();
    }

    private void add(Row row) {
        requireUsed(row);
        switch (row.kind().text()) {
            case "formula" -> set(row, "formula", row.name(), row.value());
            case "size", "balance" ->
                set(row, row.kind().text() + " " + row.name().text(), row.value());
            case "part" -> materials.part(row);
            case "density" -> materials.density(row);
            case "line" -> lines.add(row);
            case "total" -> set(row, "total", row.figure());
            default ->
                throw row.kind()
                        .wrong("record is \"" + row.kind().text()
                                + "\": it must be formula, size, balance, part, density, line or total");
        }
    }

    /** Which fields each record uses; a field that nothing reads would be a claim that nobody holds to. */
    private static void requireUsed(Row row) {
        String kind = row.kind().text();
        if (List.of("formula", "size", "balance", "density", "total").contains(kind)) {
            row.requireEmpty("group", row.group());
        }
        if (List.of("formula", "size", "balance", "part", "density").contains(kind)) {
            row.requireEmpty("figure", row.figure());
        }
        if (kind.equals("total")) {
            row.requireEmpty("name", row.name());
            row.requireEmpty("value", row.value());
        }
    }

    private void set(Row row, String key, CsvField... values) {
        for (int i = 0; i < values.length; i++) {
            String field = i == 0 ? key : key + " value";
            if (settings.putIfAbsent(field, values[i]) != null) {
                throw row.kind().wrong("\"" + field + "\" stands twice: a claim has one; keep one of the two rows");
            }
        }
    }
}
