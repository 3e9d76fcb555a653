package io.github.formulationmath.record;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Source;
import io.github.formulationmath.working.Symbol;
import java.io.Serializable;

/** How far a line may be off: the least and the largest share {@code w(1 − τ)} and {@code w(1 + τ)}. */
record Allowance(FormulaLine line, Ratio tolerance, Source source) implements Serializable {

    /** The allowance that a tolerance gives. */
    static Allowance of(FormulaLine line, MassFraction tolerance) {
        Source source = Sources.of(tolerance);
        return new Allowance(line, tolerance.fraction(), source);
    }

    private static final Symbol TOLERANCE = Symbol.of("τ", "line-tolerance", Kind.SHARE);
    private static final Symbol LEAST = Symbol.of("lo", "least-share", Kind.SHARE);
    private static final Symbol MOST = Symbol.of("hi", "largest-share", Kind.SHARE);

    <V> V least(Reckoning<V> r) {
        return r.named(LEAST, line, r.product(r.known(line), r.difference(r.literal(1), tolerance(r))));
    }

    <V> V most(Reckoning<V> r) {
        return r.named(MOST, line, r.product(r.known(line), r.sum(r.literal(1), tolerance(r))));
    }

    private <V> V tolerance(Reckoning<V> r) {
        return r.given(TOLERANCE, line, tolerance, source);
    }
}
