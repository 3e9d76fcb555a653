package io.github.formulationmath.soap;

import io.github.formulationmath.chemistry.MolarMass;
import io.github.formulationmath.chemistry.MolecularFormula;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassFraction;
import java.io.Serializable;
import java.util.Objects;

/**
 * A free acid in a soap: it takes its alkali before any fat does, and takes all of it. Its salts, citrates or lactates, take
 * none and are no acids here.
 *
 * <p>The molecular formula tells a hydrate from the anhydrous acid: citric acid is C6H8O7, its monohydrate C6H8O7·H2O, and ten grams
 * of the one take half a gram of sodium hydroxide more than ten of the other.
 *
 * <p>Example: a gram of anhydrous citric acid takes {@code 3 · 39.997/192.124 = 0.62455} g of NaOH.
 *
 * @param name the INCI name, or what it is called in the formula
 * @param molarMass of what is weighed, water of crystallisation included
 * @param protons how many hydroxides one formula unit takes
 * @param assay the share of the acid in what is weighed
 */
public record Acid(String name, MolarMass molarMass, int protons, Interval<MassFraction> assay)
        implements Serializable {

    private static final int MOST_PROTONS = 12;

    /**
     * Checks the figures.
     *
     * @param name the name
     * @param molarMass of what is weighed
     * @param protons how many hydroxides one formula unit takes, 1 to 12
     * @param assay the share of the acid in what is weighed
     * @throws IllegalArgumentException if the name is blank or the protons are none
     */
    public Acid {
        if (Objects.requireNonNull(name, "name").isBlank()) {
            throw new IllegalArgumentException("name is blank: name the acid as its line in the formula");
        }
        Objects.requireNonNull(molarMass, "molarMass");
        Objects.requireNonNull(assay, "assay");
        if (protons < 1 || protons > MOST_PROTONS) {
            throw new IllegalArgumentException("protons of " + Excerpt.of(name) + " is " + protons
                    + ": it must be 1 to " + MOST_PROTONS + "; a salt is no acid and takes no alkali");
        }
    }

    /**
     * An acid of some purity.
     *
     * @param name the name
     * @param formula the molecular formula of what is weighed, with its water of crystallisation: {@code C6H8O7·H2O}
     * @param protons how many hydroxides one formula unit takes: 3 for citric acid
     * @param leastAssay such as {@code "99.5 %"}
     * @param greatestAssay such as {@code "100 %"}
     * @return the acid
     * @throws IllegalArgumentException if the formula is none, the protons are none, or the ends are reversed
     */
    public static Acid of(String name, String formula, int protons, String leastAssay, String greatestAssay) {
        return new Acid(
                name,
                MolarMass.of(MolecularFormula.parse(formula)),
                protons,
                Interval.of(MassFraction.parse(leastAssay), MassFraction.parse(greatestAssay)));
    }

    /** Moles of hydroxide that one gram as weighed takes, at least. */
    Ratio leastDemand() {
        return demand(assay.least());
    }

    /** Moles of hydroxide that one gram as weighed takes, at most. */
    Ratio greatestDemand() {
        return demand(assay.greatest());
    }

    private Ratio demand(MassFraction share) {
        return share.fraction().times(protons).dividedBy(molarMass.gramsPerMole());
    }
}
