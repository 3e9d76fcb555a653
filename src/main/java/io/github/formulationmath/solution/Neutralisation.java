package io.github.formulationmath.solution;

import io.github.formulationmath.chemistry.MolarMass;
import io.github.formulationmath.chemistry.MolecularFormula;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.NumberTextException;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Sentence;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassFraction;
import java.util.Objects;
import javax.measure.quantity.Mass;

/**
 * How much base an acid takes, mole by mole: fatty acids by their acid value, polyacrylic thickeners by their carboxyl content, a
 * substance by its molar mass.
 *
 * <p>Half neutralised is not half way in pH: neutralise to a measured pH, with these amounts as what to expect.
 *
 * <p>Immutable.
 */
public final class Neutralisation {

    private static final MolarMass CARBOXYL = MolarMass.of(MolecularFormula.parse("CHO2"));
    private static final MolarMass POTASSIUM_HYDROXIDE = MolarMass.of(MolecularFormula.parse("KOH"));
    private static final String ACID_VALUE_UNIT = "mg KOH/g";

    private final Interval<Ratio> molesPerGram;

    private Neutralisation(Interval<Ratio> molesPerGram) {
        this.molesPerGram = molesPerGram;
    }

    /**
     * Of an acid with an acid value: {@code AV / (1000 M_KOH)} mol/g.
     *
     * @param least such as {@code "194 mg KOH/g"}
     * @param greatest such as {@code "212 mg KOH/g"}
     * @return the neutralisation
     * @throws NumberTextException if a text is not a number and that unit, or is below 0
     * @throws IllegalArgumentException if they are exchanged
     */
    public static Neutralisation ofAcidValue(String least, String greatest) {
        return between("acid value", least, acidValue(least), greatest, acidValue(greatest));
    }

    private static Neutralisation between(String what, String least, Ratio low, String greatest, Ratio high) {
        if (low.compareTo(high) > 0) {
            throw new IllegalArgumentException(what + " is " + Excerpt.of(least) + " to " + Excerpt.of(greatest)
                    + ": the least must not be above the greatest, the two may have been exchanged");
        }
        return new Neutralisation(Interval.of(low, high));
    }

    private static Ratio acidValue(String text) {
        String plain = Objects.requireNonNull(text, "acid value").strip();
        Ratio value = plain.endsWith(ACID_VALUE_UNIT)
                ? Ratio.parse(plain.substring(0, plain.length() - ACID_VALUE_UNIT.length())
                        .strip())
                : Ratio.of(-1);
        if (value.signum() < 0) {
            throw new NumberTextException(
                    text,
                    Sentence.of(
                            "refusal.text.acid-value",
                            "an acid value is 0 or more and needs its unit, as in \"200 mg KOH/g\""));
        }
        return value.dividedBy(1000).dividedBy(POTASSIUM_HYDROXIDE.gramsPerMole());
    }

    /**
     * Of an acid with a content of carboxyl groups, COOH by mass: {@code w / 45.01744} mol/g.
     *
     * @param least such as {@code "56.0 %"}, of the acid as it is weighed
     * @param greatest such as {@code "68.0 %"}
     * @return the neutralisation
     * @throws IllegalArgumentException if they are exchanged, or no shares
     */
    public static Neutralisation ofCarboxyl(String least, String greatest) {
        return between(
                "carboxyl content",
                least,
                MassFraction.parse(least).fraction().dividedBy(CARBOXYL.gramsPerMole()),
                greatest,
                MassFraction.parse(greatest).fraction().dividedBy(CARBOXYL.gramsPerMole()));
    }

    /**
     * Of a substance: {@code protons / M} mol/g.
     *
     * @param acid its molar mass, water of crystals included
     * @param protons how many are to be taken from each molecule, at least 1
     * @return the neutralisation
     * @throws IllegalArgumentException if protons is below 1
     */
    public static Neutralisation of(MolarMass acid, int protons) {
        if (protons < 1) {
            throw new IllegalArgumentException("protons is " + protons + ": an acid has at least 1 to give");
        }
        Ratio moles =
                Ratio.of(protons).dividedBy(Objects.requireNonNull(acid, "acid").gramsPerMole());
        return new Neutralisation(Interval.of(moles, moles));
    }

    /**
     * How much base takes all protons.
     *
     * @param acid the mass of the acid, not below 0
     * @param base the molar mass of the base, as it is weighed
     * @param taken how many protons each of its molecules takes, 1 for NaOH and for triethanolamine
     * @return the least and the greatest mass
     * @throws IllegalArgumentException if taken is below 1 or the mass below 0
     */
    public Interval<Amount<Mass>> needs(Amount<Mass> acid, MolarMass base, int taken) {
        Objects.requireNonNull(base, "base");
        Amount.requireNotNegative("acid", acid);
        Ratio perMole = perMole(base, taken);
        return Interval.of(
                acid.times(molesPerGram.least().times(perMole)),
                acid.times(molesPerGram.greatest().times(perMole)));
    }

    /**
     * How much of the acid a mass of base neutralises, by mole.
     *
     * @param acid the mass of the acid, above 0
     * @param baseWeighed the mass of the base, not below 0
     * @param base the molar mass of the base, as it is weighed
     * @param taken how many protons each of its molecules takes
     * @return the least and the greatest share of the protons, the whole at most
     * @throws IllegalArgumentException if a mass or taken is out of range, or the acid may have no protons to give
     */
    public Interval<MassFraction> neutralised(Amount<Mass> acid, Amount<Mass> baseWeighed, MolarMass base, int taken) {
        Objects.requireNonNull(baseWeighed, "baseWeighed");
        Objects.requireNonNull(base, "base");
        Amount.requirePositive("acid", acid);
        Amount.requireNotNegative("base", baseWeighed);
        if (molesPerGram.least().isZero()) {
            throw new IllegalArgumentException(
                    "the acid may have no protons to give, so that no share of them can be told: raise its least value");
        }
        Ratio perGram = baseWeighed.ratioTo(acid).dividedBy(perMole(base, taken));
        return Interval.of(
                MassFraction.of(perGram.dividedBy(molesPerGram.greatest()).min(Ratio.ONE)),
                MassFraction.of(perGram.dividedBy(molesPerGram.least()).min(Ratio.ONE)));
    }

    private static Ratio perMole(MolarMass base, int taken) {
        if (taken < 1) {
            throw new IllegalArgumentException(
                    "taken is " + taken + " for " + Excerpt.of(base) + ": a base takes at least 1 proton");
        }
        return base.gramsPerMole().dividedBy(taken);
    }

    @Override
    public String toString() {
        return molesPerGram + " mol of protons per g";
    }
}
