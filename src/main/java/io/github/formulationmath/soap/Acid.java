package io.github.formulationmath.soap;

import io.github.formulationmath.chemistry.MolarMass;
import io.github.formulationmath.chemistry.MolecularFormula;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassFraction;
import java.io.Serializable;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Pattern;

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

    /** What free acids of this trade are made of; a metal in the formula, or boron, makes it a salt or something else. */
    private static final Set<String> OF_FREE_ACIDS = Set.of("C", "H", "O", "N", "S", "P", "F", "Cl", "Br", "I");

    /** In an acid of carbon, hydrogen and oxygen each acid group has two of the oxygens. */
    private static final Set<String> ORGANIC = Set.of("C", "H", "O");

    /** How names of salts begin, in INCI and in trade. */
    private static final Pattern SALT = Pattern.compile("(?:[Dd]i|[Tt]ri|[Tt]etra)?"
            + "(?:[Ss]odium|[Pp]otassium|[Ll]ithium|[Cc]alcium|[Mm]agnesium|[Zz]inc|[Aa]luminum)\\b.*");

    /**
     * Checks the figures.
     *
     * @param name the name
     * @param molarMass of what is weighed
     * @param protons how many hydroxides one formula unit takes, 1 to 12
     * @param assay the share of the acid in what is weighed
     * @throws IllegalArgumentException if the name is blank or that of a salt, the protons are none or more than the formula has
     *     acid groups for, or the formula is that of a salt
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
        requireFreeAcid(name, molarMass.formula(), protons);
        if (SALT.matcher(name.strip()).matches()) {
            throw new IllegalArgumentException("name is " + Excerpt.of(name)
                    + ": a salt takes no alkali, declare it with neither(…); if it is the free acid, give its name, such as"
                    + " Lactic Acid");
        }
    }

    private static void requireFreeAcid(String name, MolecularFormula formula, int protons) {
        for (String element : formula.counts().keySet()) {
            if (!OF_FREE_ACIDS.contains(element)) {
                throw new IllegalArgumentException("formula of " + Excerpt.of(name) + " is " + Excerpt.of(formula)
                        + " with " + element + " in it: a salt takes no alkali, declare it with neither(…);"
                        + " of an acid give the free one, such as C6H8O7");
            }
        }
        Ratio hydrogen = formula.count("H").orElse(Ratio.ZERO);
        if (hydrogen.compareTo(Ratio.of(protons)) < 0) {
            throw new IllegalArgumentException(
                    "protons of " + Excerpt.of(name) + " is " + protons + ", and " + Excerpt.of(formula) + " has "
                            + hydrogen + " hydrogen atoms: count the acid groups, 3 in citric acid");
        }
        Ratio oxygen = formula.count("O").orElse(Ratio.ZERO);
        boolean organic = ORGANIC.containsAll(formula.counts().keySet())
                && formula.count("C").isPresent();
        if (organic && oxygen.compareTo(Ratio.of(2L * protons)) < 0) {
            throw new IllegalArgumentException(
                    "protons of " + Excerpt.of(name) + " is " + protons + ", and " + Excerpt.of(formula) + " has "
                            + oxygen + " oxygen atoms, two for each acid group: count these, 1 in lactic acid; hydroxyl"
                            + " groups take no alkali for certain");
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
     * @throws IllegalArgumentException if the formula is none or that of a salt, the protons are none or too many, or the ends are
     *     reversed
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
