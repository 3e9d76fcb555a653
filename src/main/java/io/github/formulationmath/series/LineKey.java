package io.github.formulationmath.series;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.SubstanceName;
import java.util.LinkedHashMap;
import java.util.Map;

/** By what a line is found again in another version: its phase and its ingredient, in any spelling. */
record LineKey(String normalPhase, String normalName) {

    static LineKey of(FormulaLine line) {
        return new LineKey(
                SubstanceName.normalise(line.phase()), line.ingredient().normalName());
    }

    /** The lines of a formula in their order. */
    static Map<LineKey, FormulaLine> lines(Formula formula) {
        Map<LineKey, FormulaLine> all = new LinkedHashMap<>();
        formula.lines().forEach(line -> all.put(of(line), line));
        return all;
    }
}
