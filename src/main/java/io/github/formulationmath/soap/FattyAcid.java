package io.github.formulationmath.soap;

import io.github.formulationmath.chemistry.MolarMass;
import io.github.formulationmath.chemistry.MolecularFormula;
import io.github.formulationmath.number.Ratio;
import java.io.Serializable;
import java.util.Objects;

/**
 * A straight fatty acid by its carbon atoms and double bonds, written {@code C18:1} for oleic acid: C(n)H(2n−2d)O2.
 *
 * @param carbons how many carbon atoms, 4 to 30
 * @param doubleBonds how many double bonds, 0 to 6
 */
public record FattyAcid(int carbons, int doubleBonds) implements Comparable<FattyAcid>, Serializable {

    private static final int LEAST_CARBONS = 4;
    private static final int MOST_CARBONS = 30;
    private static final int MOST_DOUBLE_BONDS = 6;

    /**
     * Checks the counts.
     *
     * @param carbons how many carbon atoms, 4 to 30
     * @param doubleBonds how many double bonds, 0 to 6, and fewer than half the carbon atoms
     * @throws IllegalArgumentException if a count is out of range
     */
    public FattyAcid {
        if (carbons < LEAST_CARBONS || carbons > MOST_CARBONS) {
            throw new IllegalArgumentException(
                    "carbons is " + carbons + ": fatty acids of fats have " + LEAST_CARBONS + " to " + MOST_CARBONS);
        }
        if (doubleBonds < 0 || doubleBonds > MOST_DOUBLE_BONDS || 2 * doubleBonds >= carbons) {
            throw new IllegalArgumentException("doubleBonds is " + doubleBonds + " with " + carbons
                    + " carbon atoms: it must be 0 to " + MOST_DOUBLE_BONDS + ", and the two may have been exchanged");
        }
    }

    /**
     * Reads the short form of the trade.
     *
     * @param text such as {@code "C18:1"}
     * @return the acid
     * @throws IllegalArgumentException if the text is not of that form
     */
    public static FattyAcid parse(String text) {
        Objects.requireNonNull(text, "text");
        if (!text.matches("C[0-9]{1,2}:[0-9]")) {
            throw new IllegalArgumentException("fatty acid is \"" + text
                    + "\": write C, the carbon atoms, a colon and the double bonds, as in C18:1");
        }
        int colon = text.indexOf(':');
        return new FattyAcid(Integer.parseInt(text.substring(1, colon)), Integer.parseInt(text.substring(colon + 1)));
    }

    /**
     * The mass of a mole of the acid.
     *
     * @return the molar mass, from the atomic masses that come with the library
     */
    public MolarMass molarMass() {
        return MolarMass.of(MolecularFormula.parse("C" + carbons + "H" + 2 * (carbons - doubleBonds) + "O2"));
    }

    /** Grams per mole of the acid, or of its methyl ester, which has one CH2 more. */
    Ratio gramsPerMole(boolean asMethylEster) {
        return asMethylEster
                ? new FattyAcid(carbons + 1, doubleBonds).molarMass().gramsPerMole()
                : molarMass().gramsPerMole();
    }

    @Override
    public int compareTo(FattyAcid other) {
        int byCarbons = Integer.compare(carbons, other.carbons);
        return byCarbons != 0 ? byCarbons : Integer.compare(doubleBonds, other.doubleBonds);
    }

    /** The short form of the trade: {@code C18:1}. */
    @Override
    public String toString() {
        return "C" + carbons + ":" + doubleBonds;
    }
}
