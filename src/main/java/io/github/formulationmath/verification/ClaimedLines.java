package io.github.formulationmath.verification;

import io.github.formulationmath.csv.CsvRow;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.formula.FormulaTotalException;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.formula.SubstanceName;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.NumberText;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The formula that the lines of a table make. */
record ClaimedLines(List<CsvRow> lines, ClaimedMaterials materials, ClaimedSettings settings) {

    private static final String REST = "q.s.";

    Formula formula() {
        CsvRow.Field name = settings.required("formula");
        CsvRow.Field kind = settings.required("formula value");
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
        for (CsvRow row : lines) {
            CsvRow.Field group = row.field("group");
            String name = SubstanceName.normalise(group.text());
            if (!name.equals(phase)) {
                ended.add(phase);
                if (!name.isEmpty() && ended.contains(name)) {
                    throw group.wrong("the lines of phase \"" + group.text()
                            + "\" stand in two places: move them together, in the order of the formula");
                }
                group.as(builder::phase);
                phase = name;
            }
            row.field("value").as(amount -> added(builder, materials.of(row.field("name")), amount));
        }
        return settings.last().as(text -> built(builder));
    }

    private static FormulaBuilder added(FormulaBuilder builder, Ingredient ingredient, String amount) {
        return amount.equals(REST) ? builder.quantitySufficient(ingredient) : builder.line(ingredient, amount);
    }

    /** Shares that make no whole are told with what can be done about it in a table. */
    private Formula built(FormulaBuilder builder) {
        try {
            return builder.build();
        } catch (FormulaTotalException e) {
            boolean hasRest = lines.stream().anyMatch(row -> row.text("value").equals(REST));
            String shares = hasRest ? "the shares beside the q.s. line make " : "the shares make ";
            String remedy = hasRest ? "" : "write q.s. for a line that takes what is left; ";
            throw settings.last()
                    .wrong(shares + Excerpt.of(NumberText.percentExactly(e.total()))
                            + ", from which no batch of 100 % follows; that is itself a "
                            + "finding about the figures. Compare the shares with their source; " + remedy
                            + "or, to hold the "
                            + "figures against the proportions, write the value parts instead of percent, and the shares as "
                            + "numbers without %");
        }
    }
}
