package io.github.formulationmath.soap;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.MassFraction;
import java.io.Serializable;
import java.util.Objects;

/**
 * How the alkali is divided between sodium and potassium hydroxide. "60 : 40" means three different things, by mole, by mass
 * of pure hydroxide and by mass as weighed, so that the basis has to be said. How much free alkali is left does not depend on it;
 * how hard the soap is does.
 *
 * @param sodium the share of sodium hydroxide
 * @param basis what it is a share of
 */
public record AlkaliMixture(MassFraction sodium, Basis basis) implements Serializable {

    /** What a share of an alkali is a share of. */
    public enum Basis {
        /** Of the moles of hydroxide. */
        MOLES,
        /** Of the mass of the two hydroxides, pure. */
        PURE_MASS,
        /** Of the mass of the two as they are weighed, impure. */
        MASS_AS_WEIGHED
    }

    /**
     * Checks that there are two.
     *
     * @param sodium the share of sodium hydroxide, above 0 and below 100 %
     * @param basis what it is a share of
     * @throws IllegalArgumentException if one of the two would be left out
     */
    public AlkaliMixture {
        Objects.requireNonNull(sodium, "sodium");
        Objects.requireNonNull(basis, "basis");
        if (sodium.equals(MassFraction.ZERO) || sodium.equals(MassFraction.WHOLE)) {
            throw new IllegalArgumentException("sodium is " + sodium
                    + ": then there is one alkali and nothing to divide;" + " give it with alkali(…)");
        }
    }

    /**
     * By mole, that is by equivalents.
     *
     * @param sodium the share of sodium hydroxide, such as {@code "60 %"}
     * @return the division
     */
    public static AlkaliMixture byMole(String sodium) {
        return new AlkaliMixture(MassFraction.parse(sodium), Basis.MOLES);
    }

    /**
     * By mass of the pure hydroxides.
     *
     * @param sodium the share of sodium hydroxide, such as {@code "60 %"}
     * @return the division
     */
    public static AlkaliMixture byPureMass(String sodium) {
        return new AlkaliMixture(MassFraction.parse(sodium), Basis.PURE_MASS);
    }

    /**
     * By mass as weighed, whatever the grades.
     *
     * @param sodium the share of sodium hydroxide, such as {@code "60 %"}
     * @return the division
     */
    public static AlkaliMixture asWeighed(String sodium) {
        return new AlkaliMixture(MassFraction.parse(sodium), Basis.MASS_AS_WEIGHED);
    }

    /**
     * The share of the moles that sodium hydroxide gives, for given grades.
     *
     * @param sodiumStrength the mass of pure hydroxide in a gram of the sodium hydroxide as weighed
     * @param potassiumStrength the same of the potassium hydroxide
     */
    Ratio moleShareOfSodium(Ratio sodiumStrength, Ratio potassiumStrength) {
        Ratio x = sodium.fraction();
        Ratio rest = Ratio.ONE.minus(x);
        boolean impure = basis == Basis.MASS_AS_WEIGHED;
        Ratio na = x.times(impure ? sodiumStrength : Ratio.ONE).dividedBy(Alkali.SODIUM_HYDROXIDE.gramsPerMole());
        Ratio k =
                rest.times(impure ? potassiumStrength : Ratio.ONE).dividedBy(Alkali.POTASSIUM_HYDROXIDE.gramsPerMole());
        return basis == Basis.MOLES ? x : na.dividedBy(na.plus(k));
    }
}
