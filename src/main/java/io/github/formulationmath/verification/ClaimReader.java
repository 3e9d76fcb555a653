package io.github.formulationmath.verification;

import io.github.formulationmath.csv.CsvFormat;
import io.github.formulationmath.csv.CsvRow;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Reads a claim from a table with the columns {@code record,group,name,value,figure}. Records: {@code formula} (name;
 * percent, parts or masses), {@code size} (mass; packs, fill mass, overage; volume, density), {@code balance} (readability,
 * capacity), {@code part} (material, substance, strength), {@code density} (material, density), {@code line} (phase,
 * ingredient, amount or q.s., figure), {@code total} (figure).
 */
final class ClaimReader {

    static final CsvFormat FORMAT =
            CsvFormat.of(List.of("record", "group", "name", "value", "figure")).ofAtMost(1_000_000);

    /** Which fields each record has a use for; a field that nothing reads would be a claim that nobody holds to. */
    private static final Map<String, Set<String>> USED = Map.of(
            "formula", Set.of("name", "value"),
            "size", Set.of("name", "value"),
            "balance", Set.of("name", "value"),
            "part", Set.of("group", "name", "value"),
            "density", Set.of("name", "value"),
            "line", Set.of("group", "name", "value", "figure"),
            "total", Set.of("figure"));

    private final List<CsvRow> lines = new ArrayList<>();
    private final ClaimedMaterials materials = new ClaimedMaterials();
    private final ClaimedSettings settings;

    private ClaimReader(CsvRow.Field last) {
        this.settings = new ClaimedSettings(last);
    }

    static Claim read(CsvFormat.Table table) {
        ClaimReader reader = new ClaimReader(table.last());
        table.rows().forEach(reader::add);
        return reader.claim();
    }

    private void add(CsvRow row) {
        String kind = row.text("record");
        requireEmpty(row, USED.getOrDefault(kind, Set.copyOf(FORMAT.columns())));
        switch (kind) {
            case "formula" -> {
                settings.set(row, "formula", "name");
                settings.set(row, "formula value", "value");
            }
            case "size", "balance" -> settings.set(row, kind + " " + row.text("name"), "value");
            case "part" -> materials.part(row);
            case "density" -> materials.density(row);
            case "line" -> lines.add(row);
            case "total" -> settings.set(row, "total", "figure");
            default ->
                throw row.field("record")
                        .wrong("record is \"" + kind
                                + "\": it must be formula, size, balance, part, density, line or total");
        }
    }

    private static void requireEmpty(CsvRow row, Set<String> used) {
        for (String column : List.of("group", "name", "value", "figure")) {
            if (!used.contains(column) && !row.text(column).isEmpty()) {
                throw row.field(column)
                        .wrong("a record of " + row.text("record") + " has no use for the field " + column
                                + ", where \""
                                + row.text(column)
                                + "\" stands: leave it empty, or move it to the field it belongs to");
            }
        }
    }

    private Claim claim() {
        settings.requireWhole();
        materials.requireUsed(lines.stream().map(row -> row.text("name")).collect(Collectors.toSet()));
        Claim claim = Claim.about(new ClaimedLines(lines, materials, settings).formula(), settings.size());
        Claim on = settings.balance().map(claim::on).orElse(claim);
        Claim all = on.withFigures(figures(claim.formula()));
        return settings.get("total").map(total -> total.as(all::withTotal)).orElse(all);
    }

    private Map<FormulaLine, Figure> figures(Formula formula) {
        Map<FormulaLine, Figure> figures = new LinkedHashMap<>();
        for (int i = 0; i < lines.size(); i++) {
            if (!lines.get(i).text("figure").isEmpty()) {
                figures.put(formula.lines().get(i), figure(lines.get(i)));
            }
        }
        if (figures.isEmpty()) {
            throw settings.last()
                    .wrong("no line has a figure: write what was shown into the last field of at least one line");
        }
        return figures;
    }

    private Figure figure(CsvRow row) {
        Figure figure = row.field("figure").as(Figure::parse);
        if (figure.isVolume() && !materials.hasDensity(row.text("name"))) {
            throw row.field("figure")
                    .wrong("the figure of " + row.text("name") + " is the volume " + figure
                            + ", and the material has no density: add a record of density with that name and a value like"
                            + " 0.92 g/mL, or give the figure as a mass");
        }
        return figure;
    }
}
