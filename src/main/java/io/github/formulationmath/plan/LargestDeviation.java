package io.github.formulationmath.plan;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.reckoning.Entry.Comparison;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Symbol;
import java.util.List;
import javax.measure.quantity.Dimensionless;

/**
 * How far a share that is sure to lie in an interval can be off, and whether that is within its tolerance. Whatever plans or delivers
 * a line asks here.
 *
 * @param line the line as the formula has it
 * @param bounds where its share is sure to lie
 */
record LargestDeviation(FormulaLine line, Interval<Amount<Dimensionless>> bounds) {

    private static final Symbol DEVIATION = Symbol.of("Δ", "largest-deviation", Kind.SHARE_DIFFERENCE);
    private static final Symbol ALLOWED = Symbol.of("Δ_max", "allowed-deviation", Kind.SHARE_DIFFERENCE);

    /** Δ = max(φ_hi − w, w − φ_lo). */
    <V> V deviation(Reckoning<V> r) {
        V share = r.known(line);
        V above = r.difference(r.known(bounds.greatest()), share);
        V below = r.difference(share, r.known(bounds.least()));
        return r.named(DEVIATION, line, r.maximum(List.of(above, below)));
    }

    <V> ToleranceVerdict decide(Reckoning<V> r, Tolerances tolerances) {
        V share = r.known(line);
        V allowed = r.named(ALLOWED, line, r.product(tolerances.value(r, line), share));
        if (r.holds(deviation(r), Comparison.AT_MOST, allowed)) {
            return ToleranceVerdict.WITHIN;
        }
        boolean outside = r.holds(r.known(bounds.least()), Comparison.GREATER, r.sum(share, allowed))
                || r.holds(r.known(bounds.greatest()), Comparison.LESS, r.difference(share, allowed));
        return outside ? ToleranceVerdict.OUTSIDE : ToleranceVerdict.NOT_SHOWN_WITHIN;
    }
}
