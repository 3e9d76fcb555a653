package io.github.formulationmath.limit;

import io.github.formulationmath.number.Ratio;
import org.jspecify.annotations.Nullable;

/**
 * A substance counts towards a slot.
 *
 * @param slot what it counts towards
 * @param member which member of the group it is
 * @param conversion what one gram of it counts as
 * @param own its own single limit, by which its share is divided in a sum of ratios
 * @param formGuessed whether the member is the strictest of several forms, because none was stated
 */
record Hit(
        Slot slot,
        GroupMember member,
        Conversion conversion,
        @Nullable UsageLimit own,
        boolean formGuessed) {

    /** Whether it is known how much of the substance counts. */
    boolean isAssessable() {
        return conversion.isKnown() && hasDivisor();
    }

    /** Whether there is an own limit where the share has to be divided by one. */
    boolean hasDivisor() {
        return own != null || slot.limit().sumRule() != SumRule.SUM_OF_RATIOS;
    }

    /** The one by which more is counted, or less of what must be there; one that cannot be assessed goes before both. */
    static Hit stricterOf(Hit one, Hit other) {
        if (!one.isAssessable() || !other.isAssessable()) {
            return one.isAssessable() ? other : one;
        }
        int more = one.weight().compareTo(other.weight());
        return (one.slot().limit().kind().isUpper() ? more >= 0 : more <= 0) ? one : other;
    }

    private Ratio weight() {
        Ratio factor = conversion.factor();
        return own == null || own.share().fraction().isZero()
                ? factor
                : factor.dividedBy(own.share().fraction());
    }
}
