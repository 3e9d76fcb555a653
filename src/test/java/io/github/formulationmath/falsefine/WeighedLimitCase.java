package io.github.formulationmath.falsefine;

import io.github.formulationmath.falsefine.LimitCase.Asked;
import io.github.formulationmath.falsefine.LimitCase.Named;

/**
 * A formula that is weighed, against a cap so near to what the balance may hide that one corner of its errors decides.
 *
 * @param weighing the batch
 * @param written the limit, asked about the formula
 * @param within whether the cap is kept at every corner
 */
record WeighedLimitCase(Weighing weighing, LimitCase written, boolean within) implements Proven {

    @Override
    public boolean holds() {
        return worst(weighing).isAbove(Exact.of(written.cap(), Recipe.WHOLE)) != within;
    }

    private static Exact worst(Weighing weighing) {
        return Corners.largestShare(weighing.readings(), weighing.scale(), weighing.strengths());
    }

    static WeighedLimitCase passed(Dice dice) {
        return of(dice, false);
    }

    static WeighedLimitCase kept(Dice dice) {
        return of(dice, true);
    }

    private static WeighedLimitCase of(Dice dice, boolean within) {
        while (true) {
            Named named = Named.any(dice);
            Recipes recipes = new Recipes(dice, named.name(), named.cas());
            long share = dice.between(100_000, 4_000_000);
            Recipe recipe = recipes.holding(recipes.pieces(share, dice.between(1, 2)), !dice.oneIn(4));
            Weighing weighing = Weighing.of(dice, recipe, Corners.scale(dice));
            long worst = worst(weighing).times(Recipe.WHOLE).floor().longValueExact();
            // Where a corner is cut off because nothing weighs less than nothing, the extreme lies between corners.
            boolean known = !within || Corners.areAllPossible(weighing.readings(), weighing.scale());
            if (known && worst > 2 && worst < Recipe.WHOLE) {
                return new WeighedLimitCase(weighing, written(recipe, named, cap(dice, worst, within), within), within);
            }
        }
    }

    /** The greatest cap below the worst corner, or one not far above it, or farther below. */
    private static long cap(Dice dice, long worst, boolean within) {
        return within
                ? Math.min(worst + dice.between(1, 1000), Recipe.WHOLE)
                : worst - (dice.oneIn(2) ? 1 : dice.between(1, worst / 2));
    }

    private static LimitCase written(Recipe recipe, Named named, long cap, boolean within) {
        return new LimitCase(recipe, cap, named.name(), named.cas(), Asked.NOTHING, within);
    }
}
