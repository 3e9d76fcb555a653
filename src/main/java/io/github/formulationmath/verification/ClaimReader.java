package io.github.formulationmath.verification;

import java.io.IOException;
import java.io.Reader;
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

    private static final List<String> HEADER = List.of("record", "group", "name", "value", "figure");

    private final List<Row> lines = new ArrayList<>();
    private final Map<String, Cell> settings = new LinkedHashMap<>();
    private final ClaimedMaterials materials = new ClaimedMaterials();

    /** A row with its five fields. */
    record Row(Cell kind, Cell group, Cell name, Cell value, Cell figure) {

        /** Refuses what stands where this kind of record has no use for it. */
        void requireEmpty(String field, Cell cell) {
            if (!cell.text().isEmpty()) {
                throw cell.wrong("a record of " + kind.text() + " has no use for the field " + field + ", where \""
                        + cell.text() + "\" stands: leave it empty, or move it to the field it belongs to");
            }
        }
    }

    private ClaimReader() {}

    static Claim read(Reader reader) throws IOException {
        List<List<Cell>> rows = Cells.read(reader, ClaimReader::requireHeader);
        ClaimReader claim = new ClaimReader();
        for (List<Cell> row : rows.subList(1, rows.size())) {
            if (row.size() != HEADER.size()) {
                throw row.get(0).wrong("the row has " + row.size() + " fields, it must have " + HEADER.size());
            }
            claim.add(new Row(row.get(0), row.get(1), row.get(2), row.get(3), row.get(4)));
        }
        Cell last = rows.get(rows.size() - 1).get(0);
        return new ClaimAssembly(claim.settings, claim.lines, claim.materials, last).claim();
    }

    private static void requireHeader(List<Cell> first) {
        List<String> found = first.stream().map(Cell::text).toList();
        for (String separator : List.of(";", "\t")) {
            if (found.equals(List.of(String.join(separator, HEADER)))) {
                throw new ClaimFormatException(
                        1,
                        1,
                        "the fields are separated by " + (separator.equals(";") ? "semicolons" : "tabs")
                                + ": separate them by commas, and write decimals with a point");
            }
        }
        if (!found.equals(HEADER)) {
            throw new ClaimFormatException(1, 1, "the first line must be " + String.join(",", HEADER));
        }
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

    private void set(Row row, String key, Cell... values) {
        for (int i = 0; i < values.length; i++) {
            String field = i == 0 ? key : key + " value";
            if (settings.putIfAbsent(field, values[i]) != null) {
                throw row.kind().wrong("\"" + field + "\" stands twice: a claim has one; keep one of the two rows");
            }
        }
    }
}
