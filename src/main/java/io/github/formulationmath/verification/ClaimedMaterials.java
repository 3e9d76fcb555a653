package io.github.formulationmath.verification;

import io.github.formulationmath.csv.CsvRow;
import io.github.formulationmath.formula.BlendBuilder;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.quantity.Density;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The materials of a table: their parts and densities, each of a material that stands in a line. */
final class ClaimedMaterials {

    private final Map<String, List<CsvRow>> parts = new LinkedHashMap<>();
    private final Map<String, CsvRow> densities = new LinkedHashMap<>();
    private final Map<String, Ingredient> built = new HashMap<>();

    void part(CsvRow row) {
        parts.computeIfAbsent(row.text("group"), name -> new ArrayList<>()).add(row);
    }

    void density(CsvRow row) {
        if (densities.putIfAbsent(row.text("name"), row) != null) {
            throw row.field("record")
                    .wrong("\"" + row.text("name")
                            + "\" stands twice: a material has one density; keep one of the two rows");
        }
    }

    /** A part or a density that no line uses is a name mistyped, or a line forgotten. */
    void requireUsed(Set<String> names) {
        parts.values().forEach(rows -> requireUsed("part", rows.get(0).field("group"), names));
        densities.values().forEach(row -> requireUsed("density", row.field("name"), names));
    }

    private static void requireUsed(String record, CsvRow.Field name, Set<String> names) {
        if (!names.contains(name.text())) {
            throw name.wrong("no line has the material \"" + name.text() + "\", of which this row gives the " + record
                    + ": write the name as in its line, letter by letter, or leave the row out");
        }
    }

    boolean hasDensity(String name) {
        return densities.containsKey(name);
    }

    /** Each is built once, however many lines have it. */
    Ingredient of(CsvRow.Field name) {
        Ingredient known = built.get(name.text());
        if (known == null) {
            known = withDensity(plain(name));
            built.put(name.text(), known);
        }
        return known;
    }

    private Ingredient plain(CsvRow.Field name) {
        List<CsvRow> rows = parts.getOrDefault(name.text(), List.of());
        if (rows.isEmpty()) {
            return name.as(Ingredient::of);
        }
        CsvRow.Field first = rows.get(0).field("group");
        BlendBuilder blend = first.as(Ingredient::blend);
        rows.forEach(row -> row.field("value").as(strength -> blend.part(row.text("name"), strength)));
        return first.as(text -> blend.build());
    }

    private Ingredient withDensity(Ingredient plain) {
        CsvRow row = densities.get(plain.name());
        return row == null ? plain : plain.withDensity(row.field("value").as(Density::parse));
    }
}
