package io.github.formulationmath.limit;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.limit.LimitKind.End;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.weighing.MadeMasses;
import java.util.Optional;

/**
 * What a rule says of a tally at both ends of what may be: of what is known alone, and of all that is possible. Where
 * everything is known, both are one.
 */
final class Assessment {

    private static final Symbol HEADROOM = Symbol.of("h", "headroom", Kind.SHARE_DIFFERENCE);
    private static final Symbol PROBABILITY = Symbol.of("p", "conformance-probability", Kind.SHARE);

    private final Tally tally;
    private final DecisionRule rule;
    private final KnownShare known;
    private final KnownShare possible;
    /** Both once more as numbers, which decide. */
    private final KnownShare knownNumbers;

    private final KnownShare possibleNumbers;
    private final boolean assessable;

    Assessment(Tally tally, DecisionRule rule) {
        this.tally = tally;
        this.rule = rule;
        this.known = tally.evidence(End.LOWEST);
        this.knownNumbers = known.plainly();
        this.assessable = tally.isAssessable();
        this.possible = assessable ? known : tally.evidence(End.HIGHEST);
        this.possibleNumbers = assessable ? knownNumbers : possible.plainly();
    }

    /** The share as far as it is known. */
    KnownShare known() {
        return known;
    }

    /** The share as far as it is known, as a number. */
    Ratio share() {
        return knownNumbers.value(Reckoning.plain());
    }

    /** The share that stands most against the formula, as far as there is one. */
    private KnownShare harmful() {
        return tally.limit().kind().isUpper() && tally.isBounded() ? possible : known;
    }

    /** The comparison that decides, and what is left of the limit. */
    <V> Conformity decide(Reckoning<V> r) {
        return decide(r, harmful());
    }

    private <V> Conformity decide(Reckoning<V> r, KnownShare evidence) {
        return rule.decide(r, tally.limit().kind(), tally.cap(r), evidence);
    }

    <V> V headroom(Reckoning<V> r) {
        return r.named(HEADROOM, rule.headroom(r, tally.limit().kind(), tally.cap(r), harmful()));
    }

    /** The probability that the true share keeps the limit, if the error is normal. */
    <V> V probability(Reckoning<V> r) {
        V room = tally.limit().kind().isUpper()
                ? r.difference(tally.cap(r), known.value(r))
                : r.difference(known.value(r), tally.cap(r));
        return r.named(PROBABILITY, StandardNormal.probabilityBelow(r, room, r.root(known.variance(r))));
    }

    /** The share of one line at which the limit binds, all other lines as written; empty if they alone pass it. */
    Optional<Ratio> limitingShare(FormulaLine line, Ratio own) {
        Reckoning<Ratio> r = Reckoning.plain();
        Ratio whole = tally.limit().isOfProduct() ? Ratio.ONE : tally.whole().share();
        Ratio others = tally.share(r, tally.limit().kind().harmful())
                .minus(own.times(line.fraction()).dividedBy(whole));
        Ratio left = tally.limit().share().fraction().minus(others);
        return left.signum() < 0
                ? Optional.empty()
                : Optional.of(left.times(whole).dividedBy(own));
    }

    /**
     * Whether it depends on the last digits of atomic masses what holds: a share that is at the limit as closely as anybody
     * can say. Where contents are unknown, what is known may be such a share; then that is told instead.
     */
    boolean isTie() {
        if (!assessable || !tally.isRounded() || !tally.hasWhole()) {
            return false;
        }
        Ratio limit = tally.limit().share().fraction();
        return isNear(limit) && decideAt(End.LOWEST, limit) != decideAt(End.HIGHEST, limit);
    }

    /**
     * Whether the share, or an end of its interval, is so near that atomic masses could matter. None is uncertain by a part in
     * a thousand, so that no factor is off by a part in a hundred; a guard band is looked at always.
     */
    private boolean isNear(Ratio limit) {
        Reckoning<Ratio> r = Reckoning.plain();
        Ratio hundredfold = limit.times(100);
        return rule.isGuardBand()
                || knownNumbers.highest(r).times(101).compareTo(hundredfold) >= 0
                        && knownNumbers.lowest(r).times(99).compareTo(hundredfold) <= 0;
    }

    private Conformity decideAt(End end, Ratio limit) {
        return rule.decide(Reckoning.plain(), tally.limit().kind(), limit, tally.evidenceAt(end));
    }

    /** What holds, as far as the rule by which the members are added was seen. */
    Conformity decide() {
        Conformity found = isTie() ? Conformity.NOT_SHOWN_WITHIN : decideAsAdded();
        boolean unseen = tally.limit().sumRule() == SumRule.PERHAPS_SUM;
        return unseen && found != Conformity.WITHIN && found != Conformity.PROHIBITED
                ? Conformity.NOT_ASSESSABLE
                : found;
    }

    /** What holds at both ends; a highest share that the known part alone exceeds is exceeded, whatever the rest. */
    private Conformity decideAsAdded() {
        if (!tally.hasWhole()) {
            return Conformity.NOT_ASSESSABLE;
        }
        boolean rounded = !assessable && tally.isRounded();
        Conformity first = decide(Reckoning.plain(), rounded ? tally.evidenceAt(End.LOWEST) : knownNumbers);
        if (tally.applicability() == Applicability.OUT_OF_SCOPE) {
            return first == Conformity.WITHIN && assessable ? Conformity.WITHIN : Conformity.PROHIBITED;
        }
        if (assessable || first == Conformity.EXCEEDS && isMonotone()) {
            return first;
        }
        boolean endsDecide = tally.isBounded() && (isMonotone() || tally.isUnknownInOneLine());
        return endsDecide
                        && decide(Reckoning.plain(), rounded ? tally.evidenceAt(End.HIGHEST) : possibleNumbers) == first
                ? first
                : Conformity.NOT_ASSESSABLE;
    }

    /**
     * Whether more of anything never speaks for the formula. A guard band grows with what is weighed: y is linear in the
     * contents and u is the length of a vector that is linear in them, so that no content moves u by more than the u_i of
     * its line alone. Where y_i ≥ k·u_i for every line of unknown content, y − k·u and y + k·u both rise with each content.
     * Where not, y + k·u is convex and y − k·u concave: the ends of one content decide for all between, but not of several.
     */
    private boolean isMonotone() {
        MadeMasses made = tally.whole().masses().orElse(null);
        return made == null
                || !rule.isGuardBand()
                || tally.unknownLines().stream().allMatch(line -> outweighsItsBand(made, line));
    }

    private boolean outweighsItsBand(MadeMasses made, FormulaLine line) {
        KnownShare alone = tally.evidenceOfUnknown(made, line);
        return rule.decide(Reckoning.plain(), LimitKind.MINIMUM, Ratio.ZERO, alone) == Conformity.WITHIN;
    }

    /** Where the share is sure to lie. */
    Bounds bounds() {
        Reckoning<Ratio> r = Reckoning.plain();
        if (!tally.hasWhole()) {
            return Bounds.atLeast(Ratio.ZERO);
        }
        Ratio lowest = knownNumbers.lowest(r);
        return tally.isBounded() ? Bounds.closed(lowest, possibleNumbers.highest(r)) : Bounds.atLeast(lowest);
    }

    /** How much of the limit is used up by what does the most harm: y/T, or T/y for a lowest share. */
    Ratio used() {
        UsageLimit limit = tally.limit();
        KnownShare harmful = limit.kind().isUpper() && tally.isBounded() ? possibleNumbers : knownNumbers;
        Ratio share = harmful.value(Reckoning.plain());
        Ratio part = limit.kind().isUpper() ? share : limit.share().fraction();
        Ratio whole = limit.kind().isUpper() ? limit.share().fraction() : share;
        return whole.isZero() ? Ratio.of(Long.MAX_VALUE) : part.dividedBy(whole);
    }
}
