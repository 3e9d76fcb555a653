package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.working.Explained;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Subject;
import io.github.formulationmath.working.Symbol;
import org.jspecify.annotations.Nullable;

/** One end of the interval of a share: found by {@link ShareExtremes}, worked out again at the corner it was found in. */
final class ShareExtreme implements Explained {

    private static final Symbol LOWEST = Symbol.of("φlo", "lowest-made-share", Kind.SHARE);
    private static final Symbol HIGHEST = Symbol.of("φhi", "highest-made-share", Kind.SHARE);

    private final Whole whole;
    private final Weights weights;
    private final Subject subject;
    private final boolean largest;
    private final ShareExtremes.@Nullable Corner corner;
    private final Ratio value;

    ShareExtreme(Whole whole, Weights weights, Subject subject, boolean largest) {
        this.whole = whole;
        this.weights = weights;
        this.subject = subject;
        this.largest = largest;
        Ratio hull = whole.hull(weights, largest);
        this.corner = cornerWithin(hull);
        this.value = corner == null ? hull : corner.share();
    }

    /** The corner with the extreme share; none if the masses reach so far down that the hull is all that can be said. */
    private ShareExtremes.@Nullable Corner cornerWithin(Ratio hull) {
        // The search needs a total above 0 wherever it goes.
        if (totalMayVanish()) {
            return null;
        }
        ShareExtremes.Corner found = new ShareExtremes(whole.box(), whole.range(), weights).extreme(largest);
        return found.share().compareTo(hull) * (largest ? 1 : -1) > 0 ? null : found;
    }

    /** Only where masses share errors can the sum come down to 0 without every mass being cut off there. */
    private boolean totalMayVanish() {
        Ratio extreme = whole.box().sharesAnything()
                ? whole.range().least()
                : whole.range().most();
        return extreme.signum() <= 0;
    }

    @Override
    public Phrase question() {
        return Phrase.of(largest ? "question.highest-made-share" : "question.lowest-made-share", subject.name());
    }

    @Override
    public Ratio result() {
        return value;
    }

    @Override
    public <V> V derive(Reckoning<V> r) {
        Symbol symbol = largest ? HIGHEST : LOWEST;
        ShareExtremes.Corner at = corner;
        if (at == null) {
            r.note(() -> Phrase.of("note.share-cut"));
            return r.named(symbol, subject, r.literal(value));
        }
        V part = whole.weighted(r, weights, i -> massAt(r, at, i));
        V total = whole.weighted(r, Weights.TOTAL, i -> massAt(r, at, i));
        return r.named(symbol, subject, r.quotient(part, total));
    }

    private <V> V massAt(Reckoning<V> r, ShareExtremes.Corner at, int line) {
        MassBox box = whole.box();
        if (!box.isShared(line)) {
            return r.known(whole.extreme(line, at.isHigh(box.massOf(line))));
        }
        return whole.relations().massAt(r, line, entry -> at.isHigh(box.variableOf(entry.term())));
    }

    @Override
    public String toString() {
        return value.toString();
    }
}
