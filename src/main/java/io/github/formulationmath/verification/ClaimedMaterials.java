package io.github.formulationmath.verification;

import io.github.formulationmath.csv.CsvField;
import io.github.formulationmath.formula.BlendBuilder;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.quantity.Density;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/** The materials of a table: their parts and densities, each of a material that stands in a line. */
final class ClaimedMaterials {

    private final Map<String, BlendBuilder> blends = new LinkedHashMap<>();
    private final Map<String, CsvField> firstParts = new LinkedHashMap<>();
    private final Map<String, CsvField> densities = new LinkedHashMap<>();
    private final Map<String, CsvField> densityNames = new LinkedHashMap<>();
    private final Map<String, Ingredient> built = new HashMap<>();

    void part(ClaimReader.Row row) {
        BlendBuilder blend = row.group().as(name -> blends.computeIfAbsent(name, Ingredient::blend));
        firstParts.putIfAbsent(row.group().text(), row.group());
        row.value().as(strength -> blend.part(row.name().text(), strength));
    }

    void density(ClaimReader.Row row) {
        if (densities.putIfAbsent(row.name().text(), row.value()) != null) {
            throw row.kind()
                    .wrong("\"" + row.name().text()
                            + "\" stands twice: a material has one density; keep one of the two " + "rows");
        }
        densityNames.put(row.name().text(), row.name());
    }

    /** A part or a density that no line uses is a name mistyped, or a line forgotten. */
    void requireUsed(Set<String> names) {
        requireUsed("part", firstParts, names);
        requireUsed("density", densityNames, names);
    }

    private static void requireUsed(String record, Map<String, CsvField> cells, Set<String> names) {
        cells.forEach((name, cell) -> {
            if (!names.contains(name)) {
                throw cell.wrong("no line has the material \"" + name + "\", of which this row gives the " + record
                        + ": write the name as in its line, letter by letter, or leave the row out");
            }
        });
    }

    boolean hasDensity(String name) {
        return densities.containsKey(name);
    }

    /** Each is built once, however many lines have it. */
    Ingredient of(CsvField name) {
        Ingredient known = built.get(name.text());
        if (known != null) {
            return known;
        }
        BlendBuilder blend = blends.get(name.text());
        Ingredient plain = blend == null
                ? name.as(Ingredient::of)
                : firstParts.getOrDefault(name.text(), name).as(text -> blend.build());
        CsvField density = densities.get(name.text());
        Ingredient whole = density == null ? plain : plain.withDensity(density.as(Density::parse));
        built.put(name.text(), whole);
        return whole;
    }
}
