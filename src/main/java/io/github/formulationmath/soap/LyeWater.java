package io.github.formulationmath.soap;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.MassFraction;
import java.io.Serializable;
import java.util.Objects;

/**
 * How much water the lye is made with. Three figures are in use, and each goes by the alkali in one of two ways: as pure
 * hydroxide or as it is weighed. They go over into one another only with the mass of the alkali, so that "water 33 % of the fats"
 * is another lye in every recipe.
 *
 * <p>The water is the water that is added. What comes with solid alkali (potassium hydroxide holds a tenth), with milk or aloe is
 * not in it. A stock lye is mostly water: reckoned by its pure hydroxide, c and q count the water in it, and what is added is the
 * rest of it; reckoned as weighed, and of the fats, the figure is of what is added to the stock lye.
 *
 * <p>Example, by hand: 300 g of a stock lye of 50 % hold 150 g of hydroxide and 150 g of water; for a lye of 30 % by its pure hydroxide
 * 350 g of water are wanted, so that 200 g are added.
 *
 * @param convention which figure
 * @param number its number: c, q or g
 * @param alkali what is meant by the alkali; of no matter for the water of the fats
 */
public record LyeWater(Convention convention, Ratio number, Of alkali) implements Serializable {

    /** The three figures. */
    public enum Convention {
        /** c = L/(L + W). */
        CONCENTRATION,
        /** q = W/L. */
        PER_ALKALI,
        /** g = W/Σm of the fats. */
        OF_FATS
    }

    /** What the alkali L is. */
    public enum Of {
        /** The hydroxide in it. */
        PURE_HYDROXIDE,
        /** The mass that is weighed. */
        ALKALI_AS_WEIGHED
    }

    private static final Ratio HALF = Ratio.of(1, 2);

    /**
     * Checks the figure.
     *
     * @param convention which figure
     * @param number its number
     * @param alkali what is meant by the alkali
     * @throws IllegalArgumentException if the lye would be stronger than 50 %, or there is no water
     */
    public LyeWater {
        Objects.requireNonNull(convention, "convention");
        Objects.requireNonNull(alkali, "alkali");
        if (Objects.requireNonNull(number, "number").signum() <= 0) {
            throw new IllegalArgumentException(
                    "water figure is " + Excerpt.of(number) + ": it must be above 0, alkali is never used dry");
        }
        boolean tooStrong = convention == Convention.CONCENTRATION && number.compareTo(HALF) > 0
                || convention == Convention.PER_ALKALI && number.compareTo(Ratio.ONE) < 0;
        if (tooStrong) {
            throw new IllegalArgumentException("water figure is " + Excerpt.of(number) + " ("
                    + (convention == Convention.CONCENTRATION ? "concentration" : "water per alkali")
                    + "): the lye would be stronger than 50 % and may not stay dissolved, it boils and spatters;"
                    + " were water and alkali exchanged?");
        }
    }

    /**
     * By the concentration of the lye, c = L/(L + W).
     *
     * @param concentration such as {@code "33 %"}, at most 50 %
     * @param alkali what L is
     * @return the figure
     */
    public static LyeWater concentration(String concentration, Of alkali) {
        return new LyeWater(
                Convention.CONCENTRATION, MassFraction.parse(concentration).fraction(), alkali);
    }

    /**
     * By the water for one part of alkali, q = W/L.
     *
     * @param parts such as {@code "2"} for two parts of water to one of alkali, at least 1
     * @param alkali what L is
     * @return the figure
     */
    public static LyeWater perAlkali(String parts, Of alkali) {
        return new LyeWater(Convention.PER_ALKALI, Ratio.parse(parts), alkali);
    }

    /**
     * By the mass of the fats, g = W/Σm.
     *
     * @param share such as {@code "33 %"}
     * @return the figure
     */
    public static LyeWater ofFats(String share) {
        return new LyeWater(Convention.OF_FATS, MassFraction.parse(share).fraction(), Of.PURE_HYDROXIDE);
    }

    /**
     * The water in grams.
     *
     * @param fats the mass of the fats in grams
     * @param pure the hydroxide in grams
     * @param asWeighed the alkali as weighed in grams
     * @param inStock the water that stock lyes bring, in grams
     * @throws IllegalArgumentException if the lye would be stronger than 50 %, or a stock lye is thinner already
     */
    Ratio water(Ratio fats, Ratio pure, Ratio asWeighed, Ratio inStock) {
        Ratio l = alkali == Of.PURE_HYDROXIDE ? pure : asWeighed;
        Ratio water = switch (convention) {
            case CONCENTRATION -> l.times(Ratio.ONE.minus(number)).dividedBy(number);
            case PER_ALKALI -> l.times(number);
            case OF_FATS -> fats.times(number);
        };
        if (countsStock()) {
            if (water.compareTo(inStock) < 0) {
                throw new IllegalArgumentException(
                        "water is " + AlkaliReport.down(water) + " g, and the stock lye brings "
                                + AlkaliReport.up(inStock)
                                + " g already: it is thinner than the lye wanted; ask for a thinner lye, or"
                                + " take a stronger stock or solid alkali");
            }
            water = water.minus(inStock);
        }
        if (pure.compareTo(water.plus(asWeighed).times(HALF)) > 0) {
            throw new IllegalArgumentException("water is " + Excerpt.of(NumberText.percentExactly(number))
                    + " of the fats, which makes a lye stronger than 50 %: it may not stay dissolved; take more water");
        }
        return water;
    }

    /** Whether the water of a stock lye is part of the figure. */
    private boolean countsStock() {
        return alkali == Of.PURE_HYDROXIDE && convention != Convention.OF_FATS;
    }
}
