package io.github.formulationmath.limit;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.weighing.MadeMasses;
import io.github.formulationmath.weighing.MadeShare;
import java.util.List;
import java.util.Objects;

/** The masses of the lines of a formula, from which shares of the product or of a phase are made. */
record MadeShares(Formula formula, MadeMasses masses) {

    /** The masses, once it is sure that there is one for each line. */
    static MadeMasses oneForEachLine(Formula formula, MadeMasses masses) {
        Objects.requireNonNull(formula, "formula");
        if (Objects.requireNonNull(masses, "masses").size() != formula.lines().size()) {
            throw new IllegalArgumentException("masses are " + masses.size() + ": \"" + formula.name() + "\" has "
                    + formula.lines().size() + " lines, and each needs one, in their order");
        }
        return masses;
    }

    /** The masses of the lines that make up the whole of a tally. */
    MadeMasses of(List<FormulaLine> whole) {
        if (whole.isEmpty() || whole.size() == formula.lines().size()) {
            return masses;
        }
        return masses.part(whole.stream().map(line -> line.position() - 1).toList());
    }

    MadeShare share(Tally tally, End end) {
        List<FormulaLine> whole = tally.whole().isEmpty() ? formula.lines() : tally.whole();
        return of(whole).madeShare(tally, tally.strengths(whole, end));
    }
}
