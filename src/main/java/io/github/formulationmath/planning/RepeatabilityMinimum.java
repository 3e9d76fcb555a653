package io.github.formulationmath.planning;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.CoverageFactor;
import io.github.formulationmath.weighing.MinimumWeight;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import java.io.Serial;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** No line below the minimum weight that follows from the repeatability of whatever balance is asked about. */
final class RepeatabilityMinimum extends LineBoundCriterion {

    @Serial
    private static final long serialVersionUID = 1L;

    private final Ratio tolerance;
    private final CoverageFactor factor;

    RepeatabilityMinimum(Ratio tolerance, CoverageFactor factor) {
        this.tolerance = tolerance;
        this.factor = factor;
    }

    @Override
    Phrase name() {
        return Phrase.of("criterion.minimum-weight", tolerance.times(100).toString());
    }

    @Override
    <V> V bound(Reckoning<V> r, Formula formula, Balance balance, FormulaLine line) {
        return r.quotient(r.known(MinimumWeight.byRepeatability(balance, tolerance, factor)), r.known(line));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof RepeatabilityMinimum that
                && tolerance.equals(that.tolerance)
                && factor.equals(that.factor);
    }

    @Override
    public int hashCode() {
        return Objects.hash(tolerance, factor);
    }

    @Override
    public String toString() {
        return "every line at least the minimum weight at " + tolerance.times(100) + " %";
    }
}
