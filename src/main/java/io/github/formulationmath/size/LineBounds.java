package io.github.formulationmath.size;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.size.SizeSearch.Landing;
import java.util.ArrayList;
import java.util.List;

/** Each of at least one line asks for a least size; the largest of them binds, and every larger one passes. */
record LineBounds(List<FormulaLine> lines, Sizes.LineBound bound) implements Part.Proof {

    LineBounds {
        lines = List.copyOf(lines);
    }

    /** The sizes that pass, with the first line that asks for the largest least size. */
    SizeSearch sizes() {
        Landing largest = Landing.resting(Ratio.ZERO);
        for (FormulaLine line : lines) {
            Ratio own = bound.of(Reckoning.plain(), line);
            if (largest.line().isEmpty() || own.compareTo(largest.at()) > 0) {
                largest = Landing.by(line.index(), own);
            }
        }
        return new SizeSearch.Ray(largest);
    }

    @Override
    public <V> V smallest(Reckoning<V> r, Landing smallest) {
        List<V> bounds = new ArrayList<>();
        for (FormulaLine line : lines) {
            bounds.add(r.named(BatchSymbols.LEAST_FOR, line, bound.of(r, line)));
        }
        return r.named(BatchSymbols.LEAST, BatchSymbols.MIN, r.maximum(bounds));
    }
}
