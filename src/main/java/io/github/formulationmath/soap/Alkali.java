package io.github.formulationmath.soap;

import io.github.formulationmath.chemistry.MolarMass;
import io.github.formulationmath.chemistry.MolecularFormula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Origin;

/** The two alkalis that make soap, with their carbonates. */
public enum Alkali {
    /** NaOH, caustic soda; makes bar soap. */
    SODIUM_HYDROXIDE("Sodium Hydroxide", "NaOH", "Na2CO3"),
    /** KOH, caustic potash; makes soft and liquid soap. */
    POTASSIUM_HYDROXIDE("Potassium Hydroxide", "KOH", "K2CO3");

    private final String inciName;
    private final MolarMass hydroxide;
    private final MolarMass carbonate;
    private final Ratio gramsPerMole;
    private final Ratio gramsOfCarbonate;
    private final Origin origin;

    Alkali(String inciName, String hydroxide, String carbonate) {
        this.inciName = inciName;
        this.hydroxide = MolarMass.of(MolecularFormula.parse(hydroxide));
        this.carbonate = MolarMass.of(MolecularFormula.parse(carbonate));
        this.origin = this.hydroxide.origin();
        this.gramsPerMole = origin.number();
        this.gramsOfCarbonate = this.carbonate.gramsPerMole();
    }

    /**
     * The INCI name.
     *
     * @return the name
     */
    public String inciName() {
        return inciName;
    }

    /**
     * The mass of one mole of the hydroxide.
     *
     * @return the molar mass, from the atomic masses that come with the library
     */
    public MolarMass molarMass() {
        return hydroxide;
    }

    /**
     * The mass of one mole of the carbonate that forms of it in air.
     *
     * @return the molar mass
     */
    public MolarMass carbonateMolarMass() {
        return carbonate;
    }

    /** The same as a number, added up once. */
    Ratio gramsPerMole() {
        return gramsPerMole;
    }

    /** Grams of this hydroxide that do what a gram of potassium hydroxide does, in which sums are kept. */
    Ratio gramsPerGramOfPotassiumHydroxide() {
        return gramsPerMole.dividedBy(POTASSIUM_HYDROXIDE.gramsPerMole);
    }

    Ratio gramsPerMoleOfCarbonate() {
        return gramsOfCarbonate;
    }

    /** The molar mass as relations take it up. */
    Explained known() {
        return () -> origin;
    }

    /** The formula of the hydroxide: {@code NaOH}. */
    @Override
    public String toString() {
        return hydroxide.formula().toString();
    }
}
