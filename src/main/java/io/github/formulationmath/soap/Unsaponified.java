package io.github.formulationmath.soap;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.MassFraction;
import java.io.Serializable;
import java.util.Objects;

/**
 * How much fat is to stay unsaponified. No standard defines the word that makers use for it, and it is used for two figures:
 * at "5 %" they differ by 0.25 % of the alkali, so that one has to be chosen.
 *
 * <p>Neither says which fat stays: alkali does not know names. A share of the equivalents is a share of the mass only if
 * all fats react alike.
 *
 * @param shortfall d, the share of the alkali that the fats could take and do not get: n = (1 − d) · n₀
 * @param convention as it was stated
 */
public record Unsaponified(MassFraction shortfall, Convention convention) implements Serializable {

    /** The two figures. */
    public enum Convention {
        /** The share d of the equivalents of alkali that is left out: n = (1 − d) · n₀. */
        ALKALI_SHORTFALL,
        /** The fat x over what the alkali takes, reckoned on the saponified fat: n = n₀ / (1 + x). */
        FAT_OVER_EQUIVALENCE
    }

    /**
     * Checks the share.
     *
     * @param shortfall d, below 1
     * @param convention as it was stated
     * @throws IllegalArgumentException if no alkali would be left
     */
    public Unsaponified {
        Objects.requireNonNull(convention, "convention");
        if (Objects.requireNonNull(shortfall, "shortfall").equals(MassFraction.WHOLE)) {
            throw new IllegalArgumentException(
                    "shortfall is 100 %: then there is no alkali and no soap; take less, such as 5 %");
        }
    }

    /**
     * By the alkali that is left out.
     *
     * @param share such as {@code "5 %"}, from 0 to below 100 %
     * @return the goal
     * @throws IllegalArgumentException if the share is negative: an excess of alkali is not planned here
     */
    public static Unsaponified alkaliShortfall(String share) {
        return new Unsaponified(MassFraction.parse(notNegative(share)), Convention.ALKALI_SHORTFALL);
    }

    /**
     * By the fat over what the alkali takes, d = x/(1 + x).
     *
     * @param share such as {@code "5 %"}, from 0 to below 100 %
     * @return the goal
     * @throws IllegalArgumentException if the share is negative, which would be an excess of alkali, or 100 % and more
     */
    public static Unsaponified fatOverEquivalence(String share) {
        Ratio x = MassFraction.parse(notNegative(share)).fraction();
        if (x.equals(Ratio.ONE)) {
            throw new IllegalArgumentException("share is 100 % of fat over equivalence: half of the fat would stay;"
                    + " take less, such as 5 %, or state it as alkaliShortfall(\"50 %\") if that is meant");
        }
        return new Unsaponified(MassFraction.of(x.dividedBy(x.plus(Ratio.ONE))), Convention.FAT_OVER_EQUIVALENCE);
    }

    private static String notNegative(String share) {
        if (Objects.requireNonNull(share, "share").strip().startsWith("-")) {
            throw new IllegalArgumentException("share is " + Excerpt.of(share)
                    + ": that would be an excess of alkali, which burns; it must be at least 0 %");
        }
        return share;
    }

    /**
     * The share as it was stated, in its own convention.
     *
     * @return d or x
     */
    public MassFraction stated() {
        Ratio d = shortfall.fraction();
        return convention == Convention.ALKALI_SHORTFALL ? shortfall : MassFraction.of(d.dividedBy(Ratio.ONE.minus(d)));
    }
}
