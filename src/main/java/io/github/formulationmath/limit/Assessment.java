package io.github.formulationmath.limit;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.working.Reckoning;
import org.jspecify.annotations.Nullable;

/**
 * What a rule says of a tally at both ends of what may be: of what is known alone, and of all that is possible. Where
 * everything is known, both are one.
 */
final class Assessment {

    private final Tally tally;
    private final DecisionRule rule;
    private final VerdictRelations known;
    private final VerdictRelations possible;
    private final @Nullable MadeShares masses;

    Assessment(Tally tally, DecisionRule rule, @Nullable MadeShares masses) {
        this.tally = tally;
        this.rule = rule;
        this.masses = masses;
        this.known = relations(masses, End.LOWEST);
        this.possible = tally.isAssessable() ? known : relations(masses, End.HIGHEST);
    }

    private VerdictRelations relations(@Nullable MadeShares masses, End end) {
        Evidence evidence =
                masses == null ? new WrittenEvidence(tally, end) : new MadeEvidence(masses.share(tally, end));
        return new VerdictRelations(tally, rule, evidence);
    }

    /** The end of what is known. */
    VerdictRelations known() {
        return known;
    }

    /** The end that does the most harm, as far as there is one. */
    VerdictRelations harmful() {
        return tally.slot().limit().kind().isUpper() && tally.isBounded() ? possible : known;
    }

    /** What holds at both ends; a highest share that the known part alone exceeds is exceeded, whatever the rest. */
    Conformity decide() {
        if (!tally.hasWhole()) {
            return Conformity.NOT_ASSESSABLE;
        }
        Conformity first = known.decide(Reckoning.plain());
        if (tally.slot().applicability() == Applicability.OUT_OF_SCOPE) {
            return first == Conformity.WITHIN ? Conformity.WITHIN : Conformity.PROHIBITED;
        }
        if (tally.isAssessable() || first == Conformity.EXCEEDS && isMonotone()) {
            return first;
        }
        boolean endsDecide = tally.isBounded() && (isMonotone() || tally.isUnknownInOneLine());
        return endsDecide && possible.decide(Reckoning.plain()) == first ? first : Conformity.NOT_ASSESSABLE;
    }

    /**
     * Whether more of anything never speaks for the formula. A guard band grows with what is weighed: y is linear in the
     * contents and u is the length of a vector that is linear in them, so that no content moves u by more than the u_i of
     * its line alone. Where y_i ≥ k·u_i for every line of unknown content, y − k·u and y + k·u both rise with each content.
     * Where not, y + k·u is convex and y − k·u concave: the ends of one content decide for all between, but not of several.
     */
    private boolean isMonotone() {
        MadeShares made = masses;
        return made == null
                || !rule.isGuardBand()
                || tally.unknownLines().stream().allMatch(line -> outweighsItsBand(made, line));
    }

    private boolean outweighsItsBand(MadeShares made, FormulaLine line) {
        Evidence alone = new MadeEvidence(made.unknownShare(tally, line));
        return rule.decide(Reckoning.plain(), LimitKind.MINIMUM, Ratio.ZERO, alone) == Conformity.WITHIN;
    }

    /** Where the share is sure to lie. */
    Bounds bounds() {
        Reckoning<Ratio> r = Reckoning.plain();
        if (!tally.hasWhole()) {
            return Bounds.atLeast(Ratio.ZERO);
        }
        Ratio lowest = known.evidence().lowest(r);
        return tally.isBounded() ? Bounds.closed(lowest, possible.evidence().highest(r)) : Bounds.atLeast(lowest);
    }

    /** How much of the limit is used up by what does the most harm: y/T, or T/y for a lowest share. */
    Ratio used() {
        UsageLimit limit = tally.slot().limit();
        Ratio share = harmful().value(Reckoning.plain());
        Ratio part = limit.kind().isUpper() ? share : limit.share().fraction();
        Ratio whole = limit.kind().isUpper() ? limit.share().fraction() : share;
        return whole.isZero() ? Ratio.of(Long.MAX_VALUE) : part.dividedBy(whole);
    }
}
