package io.github.formulationmath.verification;

import io.github.formulationmath.formula.BlendBuilder;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.quantity.Density;
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
    private final Map<String, BlendBuilder> blends = new LinkedHashMap<>();
    private final Map<String, Cell> densities = new LinkedHashMap<>();

    /** A row with its five fields. */
    record Row(Cell kind, Cell group, Cell name, Cell value, Cell figure) {}

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
        return new ClaimAssembly(claim.settings, claim.lines, claim::ingredient, last).claim();
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
        switch (row.kind().text()) {
            case "formula" -> set(row, "formula", row.name(), row.value());
            case "size", "balance" ->
                set(row, row.kind().text() + " " + row.name().text(), row.value());
            case "part" -> part(row);
            case "density" -> once(densities, row.name().text(), row.value(), row);
            case "line" -> lines.add(row);
            case "total" -> set(row, "total", row.figure());
            default ->
                throw row.kind()
                        .wrong("record is \"" + row.kind().text()
                                + "\": it must be formula, size, balance, part, density, line or total");
        }
    }

    private void set(Row row, String key, Cell... values) {
        for (int i = 0; i < values.length; i++) {
            once(settings, i == 0 ? key : key + " value", values[i], row);
        }
    }

    private static void once(Map<String, Cell> map, String key, Cell value, Row row) {
        if (map.putIfAbsent(key, value) != null) {
            throw row.kind().wrong("\"" + key + "\" stands twice");
        }
    }

    private void part(Row row) {
        BlendBuilder blend = row.group().as(name -> blends.computeIfAbsent(name, Ingredient::blend));
        row.value().as(strength -> blend.part(row.name().text(), strength));
    }

    private Ingredient ingredient(Cell name) {
        Ingredient ingredient =
                name.as(text -> blends.containsKey(text) ? blends.get(text).build() : Ingredient.of(text));
        Cell density = densities.get(name.text());
        return density == null ? ingredient : ingredient.withDensity(density.as(Density::parse));
    }
}
