package io.github.formulationmath.size;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Symbol;
import java.util.ArrayList;
import java.util.List;

/** Each of at least one line asks for a least size; the largest of them binds, and every larger one passes. */
record LineBounds(List<FormulaLine> lines, Sizes.LineBound bound) implements Part.Proof {

    private static final Symbol LEAST_FOR = Symbol.of("M", "least-batch-for", Kind.MASS);

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
            bounds.add(r.named(LEAST_FOR, line, bound.of(r, line)));
        }
        return r.named(LEAST, MIN, r.maximum(bounds));
    }
}
