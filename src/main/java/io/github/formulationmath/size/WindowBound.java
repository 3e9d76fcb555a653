package io.github.formulationmath.size;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Divisions;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.weighing.Balance;
import java.util.Optional;

/** What a batch is bound by at an end of a window: something asked of its size, or a ceiling. */
sealed interface WindowBound permits Part, Ceiling {

    /** What it is, for the reader. */
    Phrase name();

    /** The line it concerns at a size, if it is one line. */
    Optional<FormulaLine> line(Formula formula, Landing at);

    /** The relation that shows a size at which it ends a window, the lower end or the upper. */
    <V> V shown(Reckoning<V> r, Landing at, boolean lower);

    /** A size as so many divisions of a display, which keeps its unit in a working. */
    static <V> V inDivisions(Reckoning<V> r, Ratio grams, Balance balance) {
        Ratio divisions = grams.dividedBy(balance.readability().canonical());
        return r.product(r.literal(divisions), Divisions.readability(r, balance));
    }
}
