package io.github.formulationmath.pot;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.ToleranceVerdict;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Entry.Comparison;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Symbol;
import java.util.Objects;
import javax.measure.quantity.Dimensionless;

/**
 * A made line held against its tolerance: {@code δ = v/w − 1}, asked to lie between −τ and τ.
 *
 * <p>Example: 3.075 % where 3 % was asked for is δ = 2.5 %, within a tolerance of 5 %.
 *
 * <p>Immutable and thread-safe.
 *
 * @param line the made line
 * @param tolerance τ, by how much of itself the line may be off
 */
public record LineCheck(MadeLine line, MassFraction tolerance) implements Explained {

    private static final Symbol DEVIATION = Symbol.of("δ", "share-deviation", Kind.SHARE);
    private static final Symbol TOLERANCE = Symbol.of("τ", "line-tolerance", Kind.SHARE);

    /**
     * Refuses null.
     *
     * @param line the made line
     * @param tolerance by how much of itself the line may be off
     */
    public LineCheck {
        Objects.requireNonNull(line, "line");
        Objects.requireNonNull(tolerance, "tolerance");
    }

    /**
     * How far the share is off, relative to what was asked for.
     *
     * @return δ in percent, with its working; negative if there is too little
     */
    public Amount<Dimensionless> deviation() {
        return Amount.percent(deviation(Reckoning.plain()).times(100))
                .withWorking(check -> Phrase.of("question.share-deviation", check.line.name()), this, LineCheck::held);
    }

    /**
     * The shares that are within.
     *
     * @return from w(1 − τ) to w(1 + τ), or to 100 % if that is less
     */
    public Interval<MassFraction> allowed() {
        Ratio share = line.line().fraction();
        Ratio off = share.times(tolerance.fraction());
        return Interval.of(
                MassFraction.of(share.minus(off)),
                MassFraction.of(share.plus(off).min(Ratio.ONE)));
    }

    /**
     * The verdict.
     *
     * @return whether the line is within, and how sure that is
     */
    public ToleranceVerdict verdict() {
        if (line.isAssumed()) {
            return ToleranceVerdict.NOT_KNOWN;
        }
        Interval<MassFraction> shares = allowed();
        Bounds allowed =
                Bounds.closed(shares.least().fraction(), shares.greatest().fraction());
        Bounds possible = line.possibleShares();
        if (shares.contains(line.share())) {
            return allowed.encloses(possible) ? ToleranceVerdict.WITHIN : ToleranceVerdict.WITHIN_AS_READ;
        }
        return allowed.intersection(possible).isPresent() ? ToleranceVerdict.OUTSIDE_AS_READ : ToleranceVerdict.OUTSIDE;
    }

    /** Where the {@link #deviation()} comes from. */
    @Override
    public Origin origin() {
        return deviation().origin();
    }

    private <V> V held(Reckoning<V> r) {
        V deviation = deviation(r);
        V allowed = r.given(TOLERANCE, line.line(), tolerance.fraction(), tolerance.source());
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
