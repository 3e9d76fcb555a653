package io.github.formulationmath.limit;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Symbol;
import java.util.Optional;

/** The relations behind a verdict. */
record VerdictRelations(Tally tally, DecisionRule rule, Evidence evidence) {

    private static final Symbol LIMIT = Symbol.of("T", "usage-limit", Kind.SHARE);
    private static final Symbol HEADROOM = Symbol.of("h", "headroom", Kind.SHARE);
    private static final Symbol PROBABILITY = Symbol.of("p", "conformance-probability", Kind.SHARE);

    private UsageLimit limit() {
        return tally.slot().limit();
    }

    private <V> V cap(Reckoning<V> r) {
        return r.given(LIMIT, limit().share().fraction(), limit().citation().source());
    }

    <V> V value(Reckoning<V> r) {
        return evidence.value(r);
    }

    <V> Conformity decide(Reckoning<V> r) {
        return rule.decide(r, limit().kind(), cap(r), evidence);
    }

    <V> V headroom(Reckoning<V> r) {
        return r.named(HEADROOM, rule.headroom(r, limit().kind(), cap(r), evidence));
    }

    <V> V probability(Reckoning<V> r) {
        V room = limit().kind().isUpper()
                ? r.difference(cap(r), evidence.value(r))
                : r.difference(evidence.value(r), cap(r));
        return r.named(PROBABILITY, NormalLaw.probabilityBelow(r, room, r.root(evidence.variance(r))));
    }

    /** (T − (y − c·w/W)) · W / c on the written formula. */
    Optional<Ratio> limitingShare(FormulaLine line, Ratio own) {
        Reckoning<Ratio> r = Reckoning.plain();
        Ratio whole = limit().isOfProduct() ? Ratio.ONE : tally.whole().result();
        End harmful = limit().kind().isUpper() ? End.HIGHEST : End.LOWEST;
        Ratio others = tally.share(r, harmful).minus(own.times(line.fraction()).dividedBy(whole));
        Ratio left = limit().share().fraction().minus(others);
        return left.signum() < 0
                ? Optional.empty()
                : Optional.of(left.times(whole).dividedBy(own));
    }
}
