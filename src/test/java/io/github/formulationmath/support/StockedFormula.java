package io.github.formulationmath.support;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.formula.FormulaLine;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** Lines, each in a phase of its own, some of one ingredient of which so many grams are in stock. */
public record StockedFormula(List<Line> lines, int stock) {

    /** Three spellings of one name, and another ingredient. */
    private static final List<String> NAMES = List.of("Glycerin", "GLYCERIN", "glycerin", "Aqua");

    /** A line: which name, and its parts. */
    public record Line(int name, int parts) {}

    /** Two to six lines, the first of them of the stocked ingredient. */
    public static Arbitrary<StockedFormula> any() {
        Arbitrary<Line> line = Combinators.combine(
                        Arbitraries.integers().between(0, 3),
                        Arbitraries.integers().between(1, 20))
                .as(Line::new);
        return Combinators.combine(
                        line.map(first -> new Line(0, first.parts)),
                        line.list().ofMinSize(1).ofMaxSize(5),
                        Arbitraries.integers().between(1, 120))
                .as((first, others, stock) -> {
                    List<Line> all = new ArrayList<>(others);
                    all.add(0, first);
                    return new StockedFormula(all, stock);
                });
    }

    public Formula formula() {
        FormulaBuilder parts = Formula.inParts("random");
        for (int i = 0; i < lines.size(); i++) {
            parts.phase("phase " + i).line(NAMES.get(lines.get(i).name), Integer.toString(lines.get(i).parts));
        }
        return parts.build();
    }

    /** Whether a line, counted from 0, is of the stocked ingredient. */
    public boolean isStocked(int line) {
        return lines.get(line).name < 3;
    }

    /** A line of the stocked ingredient: not always the first. */
    public FormulaLine stocked(Formula formula) {
        return formula.lines().stream()
                .filter(line -> isStocked(line.index()))
                .reduce((first, last) -> last)
                .orElseThrow();
    }
}
