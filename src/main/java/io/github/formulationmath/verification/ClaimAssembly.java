package io.github.formulationmath.verification;

import io.github.formulationmath.csv.CsvField;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.FormulaTotalException;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.formula.SubstanceName;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.scaling.BatchSize;
import io.github.formulationmath.weighing.Balance;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/** Makes a claim of the rows that were read. */
final class ClaimAssembly {

    private static final String REST = "q.s.";

    private static final Set<String> KNOWN = Set.of(
            "formula",
            "formula value",
            "size mass",
            "size packs",
            "size fill mass",
            "size overage",
            "size volume",
            "size density",
            "balance readability",
            "balance capacity",
            "total");

    private final Map<String, CsvField> settings;
    private final List<ClaimReader.Row> lines;
    private final ClaimedMaterials materials;
    private final CsvField last;

    ClaimAssembly(
            Map<String, CsvField> settings, List<ClaimReader.Row> lines, ClaimedMaterials materials, CsvField last) {
        this.settings = settings;
        this.lines = lines;
        this.materials = materials;
        this.last = last;
    }

    Claim claim() {
        settings.forEach((key, cell) -> {
            if (!KNOWN.contains(key)) {
                throw cell.wrong("\"" + key + "\" is not known: choose from " + new TreeSet<>(KNOWN));
            }
        });
        requireOneSize();
        materials.requireUsed(lines.stream().map(row -> row.name().text()).collect(Collectors.toSet()));
        Claim claim = Claim.about(formula(), size());
        if (settings.containsKey("balance readability") || settings.containsKey("balance capacity")) {
            String capacity = required("balance capacity").text();
            claim = claim.on(required("balance readability").as(d -> Balance.of(d, capacity)));
        }
        Claim all = claim.withFigures(figures(claim.formula()));
        CsvField total = settings.get("total");
        return total == null ? all : total.as(all::withTotal);
    }

    private Map<FormulaLine, Figure> figures(Formula formula) {
        Map<FormulaLine, Figure> figures = new LinkedHashMap<>();
        for (int i = 0; i < lines.size(); i++) {
            CsvField cell = lines.get(i).figure();
            if (!cell.text().isEmpty()) {
                figures.put(
                        formula.lines().get(i), figure(cell, lines.get(i).name().text()));
            }
        }
        if (figures.isEmpty()) {
            throw last.wrong("no line has a figure: write what was shown into the last field of at least one line");
        }
        return figures;
    }

    private Figure figure(CsvField cell, String name) {
        Figure figure = cell.as(Figure::parse);
        if (figure.isVolume() && !materials.hasDensity(name)) {
            throw cell.wrong("the figure of " + name + " is the volume " + figure
                    + ", and the material has no density: add a record of density with that name and a value like 0.92 g/mL, "
                    + "or give the figure as a mass");
        }
        return figure;
    }

    /** A second size beside the first would be silently left aside. */
    private void requireOneSize() {
        List<Set<String>> kinds = List.of(
                Set.of("size mass"),
                Set.of("size packs", "size fill mass", "size overage"),
                Set.of("size volume", "size density"));
        List<String> given = settings.keySet().stream()
                .filter(key -> key.startsWith("size "))
                .toList();
        for (String key : given) {
            String first = given.get(0);
            if (kinds.stream().noneMatch(kind -> kind.contains(first) && kind.contains(key))) {
                throw Objects.requireNonNull(settings.get(key))
                        .wrong("\"" + key + "\" stands beside \"" + first + "\": a size is a mass; or packs, fill mass "
                                + "and, if there is one, overage; or volume and density; keep the rows of one of them");
            }
        }
    }

    private Formula formula() {
        CsvField name = required("formula");
        CsvField kind = required("formula value");
        return switch (kind.text()) {
            case "percent" -> filled(name.as(Formula::inPercent));
            case "parts" -> filled(name.as(Formula::inParts));
            case "masses" -> filled(name.as(Formula::inMasses));
            default -> throw kind.wrong("value is \"" + kind.text() + "\": it must be percent, parts or masses");
        };
    }

    private Formula filled(FormulaBuilder builder) {
        String phase = "";
        Set<String> ended = new HashSet<>();
        for (ClaimReader.Row row : lines) {
            String group = SubstanceName.normalise(row.group().text());
            if (!group.equals(phase)) {
                ended.add(phase);
                if (!group.isEmpty() && ended.contains(group)) {
                    throw row.group()
                            .wrong("the lines of phase \"" + row.group().text()
                                    + "\" stand in two places: move them together, in the order of the formula");
                }
                row.group().as(builder::phase);
                phase = group;
            }
            row.value().as(amount -> added(builder, materials.of(row.name()), amount));
        }
        return last.as(text -> built(builder));
    }

    /** Shares that make no whole are told with what can be done about it in a table. */
    private Formula built(FormulaBuilder builder) {
        try {
            return builder.build();
        } catch (FormulaTotalException e) {
            boolean hasRest = lines.stream().anyMatch(row -> row.value().text().equals(REST));
            String shares = hasRest ? "the shares beside the q.s. line make " : "the shares make ";
            String remedy = hasRest ? "" : "write q.s. for a line that takes what is left; ";
            throw last.wrong(shares + Excerpt.of(e.total().times(100))
                    + " %, from which no batch of 100 % follows; that is itself a "
                    + "finding about the figures. Compare the shares with their source; " + remedy + "or, to hold the "
                    + "figures against the proportions, write the value parts instead of percent, and the shares as "
                    + "numbers without %");
        }
    }

    private static FormulaBuilder added(FormulaBuilder builder, Ingredient ingredient, String amount) {
        return amount.equals(REST) ? builder.quantitySufficient(ingredient) : builder.line(ingredient, amount);
    }

    private BatchSize size() {
        @Nullable CsvField mass = settings.get("size mass");
        @Nullable CsvField volume = settings.get("size volume");
        if (mass != null) {
            return mass.as(text -> BatchSize.ofMass(text));
        }
        if (volume != null) {
            Density density = required("size density").as(Density::parse);
            return volume.as(text -> BatchSize.ofVolume(Amount.volume(text), density));
        }
        return packs();
    }

    private BatchSize packs() {
        int packs = required("size packs").as(ClaimAssembly::packCount);
        Amount<Mass> fill = required("size fill mass").as(Amount::mass);
        @Nullable CsvField overage = settings.get("size overage");
        MassFraction extra = overage == null ? MassFraction.ZERO : overage.as(MassFraction::parse);
        return required("size packs").as(text -> BatchSize.ofPacks(packs, fill, extra));
    }

    private static int packCount(String text) {
        Ratio packs = Ratio.parse(text);
        if (!packs.isInteger() || packs.abs().compareTo(Ratio.of(Integer.MAX_VALUE)) > 0) {
            throw new IllegalArgumentException(
                    "packs is " + Excerpt.of(text) + ": it must be a whole number that can be counted");
        }
        return packs.intValue();
    }

    private CsvField required(String key) {
        CsvField cell = settings.get(key);
        if (cell == null) {
            throw last.wrong("the claim ends without a row for \"" + key + "\"");
        }
        return cell;
    }
}
