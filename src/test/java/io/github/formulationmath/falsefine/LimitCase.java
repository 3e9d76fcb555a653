package io.github.formulationmath.falsefine;

import io.github.formulationmath.falsefine.LimitCase.Asked;
import java.math.BigInteger;

/**
 * A formula against a limit of the house.
 *
 * @param recipe the formula
 * @param cap the largest share permitted, of 10⁸
 * @param name the substance as the limit names it
 * @param cas its number in the limit
 * @param asked what of the scope is asked and stated
 * @param within whether the cap is kept
 */
record LimitCase(Recipe recipe, long cap, String name, String cas, Asked asked, boolean within) implements Proven {

    /** What the limit asks of the product, and what is said of it. */
    enum Asked {
        NOTHING,
        LEAVE_ON,
        AREA_STATED,
        /** Nothing was said of the area: it may be this one. */
        AREA_LEFT_OUT,
        /** A word that is in no table. */
        AREA_MISSPELT,
        KIND_MISSPELT,
        FORM_MISSPELT,
        PURPOSE_LEFT_OUT,
        PURPOSE_MISSPELT,
        /** The purpose is one the table knows, but this limit does not speak of it. */
        PURPOSE_OTHER;

        /** Whether the limit applies, or may: a word that no table knows, or none at all, takes no limit away. */
        boolean mayApply() {
            return this != PURPOSE_OTHER;
        }
    }

    @Override
    public boolean holds() {
        BigInteger allowed = BigInteger.valueOf(cap).multiply(BigInteger.valueOf(Recipe.MATERIAL));
        return recipe.counted().compareTo(allowed) <= 0 == within;
    }

    /** A substance above its cap, by little or much. */
    static LimitCase exceeded(Dice dice) {
        long cap = cap(dice);
        long share = cap + (dice.oneIn(2) ? dice.between(1, 3) : dice.between(1, cap));
        return of(dice, cap, share, dice.of(Asked.values()), false);
    }

    /** A substance at its cap or below. */
    static LimitCase kept(Dice dice) {
        long cap = cap(dice);
        long share = cap - (dice.oneIn(2) ? dice.between(0, 3) : dice.between(0, cap - 10));
        Asked asked = dice.of(Asked.NOTHING, Asked.LEAVE_ON, Asked.AREA_STATED, Asked.PURPOSE_LEFT_OUT);
        return of(dice, cap, share, asked, true);
    }

    private static long cap(Dice dice) {
        return dice.between(10_000, 2_000_000);
    }

    private static LimitCase of(Dice dice, long cap, long share, Asked asked, boolean within) {
        Named named = Named.any(dice);
        Recipes recipes = new Recipes(dice, named.name(), named.cas());
        Recipe recipe = recipes.holding(recipes.pieces(share, dice.between(1, 3)), !dice.oneIn(4));
        return new LimitCase(recipe, cap, named.name(), named.cas(), asked, within);
    }

    /**
     * A substance that a limit may be set for.
     *
     * @param name its INCI name
     * @param cas its number
     */
    record Named(String name, String cas) {

        static Named any(Dice dice) {
            return dice.of(
                    new Named("Phenoxyethanol", "122-99-6"),
                    new Named("Benzyl Alcohol", "100-51-6"),
                    new Named("Salicylic Acid", "69-72-7"),
                    new Named("Ol\u00E9o R\u00E9sine", ""),
                    new Named("Potassium Sorbate", "24634-61-5"),
                    new Named("House Perfume No. 5", ""));
        }
    }
}
