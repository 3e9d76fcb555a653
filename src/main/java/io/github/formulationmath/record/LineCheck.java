package io.github.formulationmath.record;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.working.Comparison;
import io.github.formulationmath.working.Explained;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Symbol;
import java.io.Serial;
import java.io.Serializable;

/**
 * A made line held against its tolerance: {@code δ = v/w − 1}, asked to lie between −τ and τ.
 *
 * <p>Example: 3.075 % where 3 % was asked for is δ = 2.5 %, within a tolerance of 5 %.
 *
 * <p>Immutable and thread-safe.
 */
public final class LineCheck implements Explained, Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private static final Symbol DEVIATION = Symbol.of("δ", "share-deviation", Kind.SHARE);
    private static final Symbol TOLERANCE = Symbol.of("τ", "line-tolerance", Kind.SHARE);

    private final MadeLine line;
    private final MassFraction tolerance;

    LineCheck(MadeLine line, MassFraction tolerance) {
        this.line = line;
        this.tolerance = tolerance;
    }

    /**
     * The made line.
     *
     * @return the line
     */
    public MadeLine line() {
        return line;
    }

    /**
     * By how much of itself the line may be off.
     *
     * @return the tolerance τ
     */
    public MassFraction tolerance() {
        return tolerance;
    }

    /**
     * How far the share is off, relative to what was asked for.
     *
     * @return δ as a fraction of one; negative if there is too little
     */
    public Ratio deviation() {
        return deviation(Reckoning.plain());
    }

    /**
     * The shares that are within.
     *
     * @return from w(1 − τ) to w(1 + τ), as fractions of one
     */
    public Bounds allowed() {
        Ratio share = line.line().fraction();
        return Bounds.closed(
                share.times(Ratio.ONE.minus(tolerance.fraction())), share.times(Ratio.ONE.plus(tolerance.fraction())));
    }

    /**
     * The verdict.
     *
     * @return whether the line is within, and how sure that is
     */
    public LineVerdict verdict() {
        if (line.isAssumed()) {
            return LineVerdict.NOT_KNOWN;
        }
        Bounds allowed = allowed();
        Bounds possible = line.shareBounds();
        if (allowed.contains(line.share().fraction())) {
            return allowed.encloses(possible) ? LineVerdict.WITHIN : LineVerdict.WITHIN_AS_READ;
        }
        return allowed.intersection(possible).isPresent() ? LineVerdict.OUTSIDE_AS_READ : LineVerdict.OUTSIDE;
    }

    @Override
    public Phrase question() {
        return Phrase.of("question.share-deviation", line.name());
    }

    @Override
    public Ratio result() {
        return deviation(Reckoning.plain());
    }

    @Override
    public <V> V derive(Reckoning<V> r) {
        V deviation = deviation(r);
        V allowed = r.given(TOLERANCE, line.line(), tolerance.fraction(), Sources.of(tolerance));
        r.holds(r.absolute(deviation), Comparison.AT_MOST, allowed);
        return deviation;
    }

    private <V> V deviation(Reckoning<V> r) {
        V asked = r.known(line.line());
        return r.named(DEVIATION, line.line(), r.quotient(r.difference(line.share(r), asked), asked));
    }

    @Override
    public String toString() {
        return line.name() + ": " + verdict();
    }
}
