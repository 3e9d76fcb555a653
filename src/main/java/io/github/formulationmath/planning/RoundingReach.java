package io.github.formulationmath.planning;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;

/**
 * How far a reading may be from its target, in divisions, before any size is known. Rounded by itself: a half. Closed by the
 * largest remainder: one. Where a q.s. line takes the rest of k lines: a half, and k/2 for that line, a half from each of
 * the others and from the total. Within a tolerance: w/2 + max(1, (k − 1)/2). The w/2 is what rounding the total does to a
 * target; and a line that is more than one division too high only takes what others have less than half a division too
 * little of, for one of them would be better off with a division back.
 */
final class RoundingReach {

    private RoundingReach() {}

    static Ratio of(Closure closure, FormulaLine line, int lines) {
        return switch (closure) {
            case INDEPENDENT -> Ratio.of(1, 2);
            case CLOSED -> Ratio.ONE;
            case QS_TAKES_REST -> Ratio.of(line.isQuantitySufficient() ? lines : 1, 2);
            case WITHIN_TOLERANCE -> line.fraction().dividedBy(2).plus(Ratio.ONE.max(Ratio.of(lines - 1L, 2)));
        };
    }
}
