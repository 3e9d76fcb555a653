package io.github.formulationmath.falsefine;

import io.github.formulationmath.falsefine.Corners.Way;
import io.github.formulationmath.falsefine.LimitCase.Asked;
import io.github.formulationmath.falsefine.MadeCase.Event;
import io.github.formulationmath.plan.ExpectedProduct;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.weighing.WeighingMethod;
import java.math.BigInteger;
import java.util.Set;

/** Judges with defects that were there once, or might come. */
final class FaultyJudges {

    private static final Set<Asked> UNKNOWN = Set.of(
            Asked.AREA_MISSPELT, Asked.KIND_MISSPELT, Asked.FORM_MISSPELT, Asked.PURPOSE_MISSPELT, Asked.PURPOSE_OTHER);

    private FaultyJudges() {}

    /** Only what is written letter by letter as the limit writes it is counted. */
    static boolean limitByExactName(LimitCase asked) {
        Exact counted = Exact.ZERO;
        long[] strengths = byExactName(asked.recipe(), asked.name());
        for (int i = 0; i < strengths.length; i++) {
            counted = counted.plus(Exact.of(asked.recipe().shareOf(i)).times(strengths[i]));
        }
        return !counted.isAbove(Exact.of(asked.cap()).times(Recipe.MATERIAL));
    }

    private static long[] byExactName(Recipe recipe, String name) {
        return recipe.rows().stream()
                .mapToLong(row -> row.parts().stream()
                        .filter(part -> part.spelling().name().equals(name))
                        .mapToLong(Recipe.Part::share)
                        .sum())
                .toArray();
    }

    /** A word that is not known takes the limit away. */
    static boolean limitSettledByUnknownWord(LimitCase asked) {
        return UNKNOWN.contains(asked.asked());
    }

    /** What is weighed is what is written. */
    static boolean limitWithoutErrors(WeighedLimitCase asked) {
        return !new Exact(asked.weighing().recipe().counted(), BigInteger.ONE)
                .isAbove(Exact.of(asked.written().cap()).times(Recipe.MATERIAL));
    }

    /** As {@link #limitByExactName}, of what the balance may hide. */
    static boolean sizeByExactName(WeighedLimitCase asked) {
        Weighing weighing = asked.weighing();
        long[] strengths = byExactName(weighing.recipe(), asked.written().name());
        return !Corners.largestShare(weighing.readings(), weighing.scale(), strengths)
                .isAbove(Exact.of(asked.written().cap(), Recipe.WHOLE));
    }

    /** The masses of another formula are paired by position. */
    static boolean massesByPosition(ForeignCase asked) {
        return asked.other() <= asked.cap();
    }

    /** Ties go to the even digit, and nowhere else. */
    static boolean claimByHalfEven(ClaimCase asked) {
        Figures figures = asked.figures();
        for (int i = 1; i < figures.size(); i++) {
            BigInteger high = figures.target(i).nearest();
            boolean tie = figures.target(i).isNearest(high.subtract(BigInteger.ONE));
            BigInteger even = tie && high.testBit(0) ? high.subtract(BigInteger.ONE) : high;
            if (!even.equals(BigInteger.valueOf(figures.shown()[i]))) {
                return false;
            }
        }
        return figures.isRounding();
    }

    /** A figure ends at its first space: {@code 3 3/4 oz} is three ounces, to the nearest ounce. */
    static boolean figureCutAtSpace(ClaimCase asked) {
        for (int i = 0; i < asked.figures().size(); i++) {
            long shown = asked.figures().shown()[i];
            Exact quarters = asked.figures().target(i);
            boolean near = shown < 4
                    ? quarters.isNearest(BigInteger.valueOf(shown))
                    : quarters.over(Exact.of(4)).isNearest(BigInteger.valueOf(shown / 4));
            if (!near) {
                return false;
            }
        }
        return true;
    }

    /** A line without a figure is skipped. */
    static boolean claimSkipsMissing(ClaimCase asked) {
        return asked.figures().isRounding();
    }

    /** Nothing at all agrees with what is less than half a step. */
    static boolean nothingAgrees(ClaimCase asked) {
        return asked.figures().isRounding();
    }

    /** A reading hides two half steps, and the balance has no other error. */
    static boolean boundsByTwoHalfSteps(MadeCase asked) {
        if (asked.event() != Event.WRITTEN || asked.weighing().scale().way() != Way.EACH) {
            return false;
        }
        for (int i = 0; i < asked.truth().length; i++) {
            if (Math.abs(asked.truth()[i] - 2 * asked.readings()[i]) > 2) {
                return true;
            }
        }
        return false;
    }

    /** All lines of a plan have the errors of one balance, the second. */
    static boolean boundsOfOneBalance(BenchCase asked) {
        WeighingPlan plan = WeighingPlan.of(BenchJudge.batch(asked), BenchJudge.balance(asked, 1));
        return asked.event() == BenchCase.Event.PLANNED
                && BenchJudge.excludes(asked, ExpectedProduct.of(plan, WeighingMethod.TARE_EACH));
    }

    /** A stock is counted against one line alone. */
    static boolean stockByOneLine(StockCase asked) {
        return Exact.of(asked.stock() * 10_000, asked.shares()[0]).compareTo(Exact.of(asked.batch())) >= 0;
    }

    /** The best is where the greater excess, in percentage points, is least: where the two are alike. */
    static boolean bestByAbsoluteExcess(BestCase asked) {
        long total = asked.water() + asked.glycerin() + asked.preserved();
        long caps = asked.capGlycerin() - asked.capPreservative();
        long over = asked.glycerin() * 10_000 - asked.preserved() * asked.strength() - caps * total;
        Exact added = Exact.of(over, asked.strength() + caps);
        return asked.isBeaten(added.max(Exact.ZERO));
    }

    /** What rests on the pan is the target, not what is read. */
    static boolean loadByTarget(SizeCase asked) {
        boolean linesAreWithin = !asked.carrying(2 * asked.capacity()).holds();
        boolean carries = !asked.size().isAbove(Exact.of(asked.capacity() - asked.vessel()));
        return carries && linesAreWithin;
    }
}
