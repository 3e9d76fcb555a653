package io.github.formulationmath.solution;

import io.github.formulationmath.chemistry.MolarMass;
import io.github.formulationmath.chemistry.MolecularFormula;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.NumberTextException;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassConcentration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The pH of a watery solution of acids, bases and salts in the ideal model: the pH at which all charges add to nothing,
 *
 * <pre>{@literal
 * F(pH) = h − K_w/h + Σ C (cations + z − lost protons) = 0,  h = 10^(−pH)
 * }</pre>
 *
 * <p>F falls with the pH throughout, so that there is one root, and halving with a sign that is certain encloses it. The enclosure
 * covers the numbers given and not the model: activities, temperature and whatever else is in the product move a real pH by tenths.
 * Soaps, surfactants, proteins, and more than 5 % of alcohols or glycols are outside of it.
 *
 * <p>Each pK is a range, and the pH rises with every one of them. A concentration may be a range too: which of its ends makes the pH
 * greatest depends on the pH, for an acid salt, so that F takes at every pH the end that is worse there. Both ends of the answer
 * are so the exact ends over all the ranges. If all concentrations belong to one volume that is uncertain, give each its range: the
 * answer is then certain, and somewhat wide.
 *
 * <p>All constants hold at one temperature and one ionic strength; none is moved to another.
 *
 * <p>Immutable.
 */
public final class ChargeBalance {

    private static final Ratio LITRE = Ratio.of(1000);
    private static final long FINEST = 1_000_000_000L;
    private static final Ratio ACID_END = Ratio.ZERO;
    private static final Ratio ALKALINE_END = Ratio.of(14);

    private static final long LAST = 14 * FINEST;

    /** Metals whose ions keep their charge in water, with that charge. */
    private static final Map<String, Integer> STRONG_CATIONS =
            new TreeMap<>(Map.of("Li", 1, "Na", 1, "K", 1, "Mg", 2, "Ca", 2));

    /** 10^(−2^k billionths), for k from 0: together they reach beyond a pH of 14. */
    private static final List<Enclosure> STEPS = IntStream.range(0, 34)
            .mapToObj(k -> Enclosure.tenTo(Ratio.of(-(1L << k), FINEST)))
            .toList();

    private final AcidConstants water;
    private final List<Dissolved> dissolved;

    /** In mol/L, with the cations that one formula unit brings; without constants it is nothing but these. */
    private record Dissolved(@Nullable AcidConstants acid, Interval<Ratio> moles, int cations) {}

    private ChargeBalance(AcidConstants water, List<Dissolved> dissolved) {
        this.water = water;
        this.dissolved = List.copyOf(dissolved);
    }

    /**
     * Pure water.
     *
     * @param ionProduct pK_w and its source, as an acid of one step: 13.997 at 25 °C
     * @return water alone
     * @throws IllegalArgumentException if it has more than one step
     */
    public static ChargeBalance of(AcidConstants ionProduct) {
        if (Objects.requireNonNull(ionProduct, "ionProduct").protons() != 1) {
            throw new IllegalArgumentException("ionProduct has " + ionProduct.protons() + " steps: pK_w is one number");
        }
        return new ChargeBalance(ionProduct, List.of());
    }

    /**
     * With an acid, or with a base given as the ammonium ion that it becomes.
     *
     * @param acid its constants, at the temperature and ionic strength of the ion product
     * @param molarMass of what is dissolved
     * @param concentration of what is dissolved
     * @param cations how many charges of strong cations one formula unit brings: 0 for the acid itself and for a free base, 1 for
     *     the potassium salt of an acid, −1 for the hydrochloride of an amine
     * @return the solution with it
     * @throws IllegalArgumentException if the constants hold elsewhere than the ion product, or one formula unit cannot bring so
     *     many charges: a metal in its formula says otherwise, or the acid has not as many protons
     */
    public ChargeBalance with(AcidConstants acid, MolarMass molarMass, MassConcentration concentration, int cations) {
        Objects.requireNonNull(concentration, "concentration");
        return with(acid, molarMass, Interval.of(concentration, concentration), cations);
    }

    /**
     * With an acid, or with a base given as the ammonium ion that it becomes, so many moles of it to the litre.
     *
     * @param acid its constants, at the temperature and ionic strength of the ion product
     * @param molesPerLitre of what is dissolved, such as {@code "0.05 mol/L"}
     * @param cations how many charges of strong cations one formula unit brings: 0 for the acid itself and for a free base, 1 for
     *     the potassium salt of an acid, −1 for the hydrochloride of an amine
     * @return the solution with it
     * @throws NumberTextException if the text is not a number and mol/L, or is below 0
     * @throws IllegalArgumentException if the constants hold elsewhere than the ion product, or the acid has not as many protons
     */
    public ChargeBalance with(AcidConstants acid, String molesPerLitre, int cations) {
        requireBesideWater(Objects.requireNonNull(acid, "acid"));
        requireProtons(acid, cations);
        return plus(new Dissolved(acid, Molarity.parse(molesPerLitre), cations));
    }

    /**
     * With an acid whose concentration is a range.
     *
     * @param acid its constants, at the temperature and ionic strength of the ion product
     * @param molarMass of what is dissolved
     * @param concentration the least and the greatest concentration of what is dissolved
     * @param cations how many charges of strong cations one formula unit brings
     * @return the solution with it
     * @throws IllegalArgumentException as {@link #with(AcidConstants, MolarMass, MassConcentration, int)}
     */
    public ChargeBalance with(
            AcidConstants acid, MolarMass molarMass, Interval<MassConcentration> concentration, int cations) {
        Objects.requireNonNull(acid, "acid");
        Objects.requireNonNull(molarMass, "molarMass");
        Objects.requireNonNull(concentration, "concentration");
        requireBesideWater(acid);
        requireProtons(acid, cations);
        requireCationsOf(molarMass.formula(), cations);
        return plus(new Dissolved(acid, moles(molarMass, concentration), cations));
    }

    /** One formula unit between the acid with all its protons, balanced by strong anions, and the one that has lost them all. */
    private static void requireProtons(AcidConstants acid, int cations) {
        int least = -acid.charge();
        int most = acid.protons() - acid.charge();
        if (cations < least || cations > most) {
            throw new IllegalArgumentException("cations is " + cations + ", and " + Excerpt.of(acid.name()) + " has "
                    + acid.protons() + " pK from a charge of " + acid.charge() + ": one formula unit brings " + least
                    + " to " + most + "; add strong acid or base with withStrong(…), or give all steps of the acid");
        }
    }

    /** What is a salt by its formula is not to be counted as the free acid, or as another salt. */
    private static void requireCationsOf(MolecularFormula formula, int cations) {
        Ratio charges = Ratio.ZERO;
        for (Map.Entry<String, Integer> metal : STRONG_CATIONS.entrySet()) {
            Ratio atoms = formula.count(metal.getKey()).orElse(Ratio.ZERO);
            charges = charges.plus(atoms.times(metal.getValue()));
        }
        if (!charges.isZero() && !charges.equals(Ratio.of(cations))) {
            throw new IllegalArgumentException("cations is " + cations + ", and one formula unit of "
                    + Excerpt.of(formula) + " brings " + charges
                    + ": say so, or give the formula of the free acid if that is what is dissolved");
        }
    }

    private void requireBesideWater(AcidConstants acid) {
        if (!acid.holdsBeside(water)) {
            throw new IllegalArgumentException("the constants of " + Excerpt.of(acid.name()) + " hold at "
                    + acid.holdsAt() + ", the ion product at " + water.holdsAt()
                    + ": take the values that were measured at the same, for constants are not moved from one to"
                    + " another");
        }
    }

    /**
     * With a strong base, which is nothing but its cations.
     *
     * @param molarMass of what is dissolved, such as NaOH
     * @param concentration of what is dissolved
     * @param charges how many charges one formula unit brings, 1 for NaOH; negative for a strong acid
     * @return the solution with it
     */
    public ChargeBalance withStrong(MolarMass molarMass, MassConcentration concentration, int charges) {
        Objects.requireNonNull(concentration, "concentration");
        return withStrong(molarMass, Interval.of(concentration, concentration), charges);
    }

    /**
     * With a strong base whose concentration is a range.
     *
     * @param molarMass of what is dissolved, such as NaOH
     * @param concentration the least and the greatest concentration of what is dissolved
     * @param charges how many charges one formula unit brings, 1 for NaOH; negative for a strong acid
     * @return the solution with it
     */
    public ChargeBalance withStrong(MolarMass molarMass, Interval<MassConcentration> concentration, int charges) {
        Objects.requireNonNull(molarMass, "molarMass");
        Objects.requireNonNull(concentration, "concentration");
        return plus(new Dissolved(null, moles(molarMass, concentration), charges));
    }

    /**
     * With a strong base, so many moles of it to the litre.
     *
     * @param molesPerLitre of what is dissolved, such as {@code "0.01 mol/L"}
     * @param charges how many charges one formula unit brings, 1 for NaOH; negative for a strong acid
     * @return the solution with it
     * @throws NumberTextException if the text is not a number and mol/L, or is below 0
     */
    public ChargeBalance withStrong(String molesPerLitre, int charges) {
        return plus(new Dissolved(null, Molarity.parse(molesPerLitre), charges));
    }

    private ChargeBalance plus(Dissolved one) {
        List<Dissolved> more = new ArrayList<>(dissolved);
        more.add(one);
        return new ChargeBalance(water, more);
    }

    private static Interval<Ratio> moles(MolarMass molarMass, Interval<MassConcentration> concentration) {
        Ratio perGramPerMillilitre = LITRE.dividedBy(molarMass.gramsPerMole());
        return Interval.of(
                concentration.least().gramsPerMillilitre().times(perGramPerMillilitre),
                concentration.greatest().gramsPerMillilitre().times(perGramPerMillilitre));
    }

    /**
     * The pH of the ideal model.
     *
     * @return an interval that holds it for every value in the ranges given, each end less than 10⁻⁸ outside the exact one
     * @throws IllegalArgumentException if it may lie outside 0 to 14
     */
    public Interval<Ph> ph() {
        return Interval.of(
                root(new Corner(false)).least(), root(new Corner(true)).greatest());
    }

    /** One end of the ranges: the pH is built up from powers of two of a billionth, as long as F stays above zero. */
    private static Interval<Ph> root(Corner corner) {
        if (!corner.charge(Enclosure.tenTo(ACID_END.unaryMinus())).isPositive()
                || !corner.charge(Enclosure.tenTo(ALKALINE_END.unaryMinus())).isNegative()) {
            throw new IllegalArgumentException(
                    "the pH may lie outside 0 to 14: the model does not hold for solutions as strong; dilute, or look for"
                            + " a slip in a concentration");
        }
        long low = 0;
        Enclosure hydrogen = Enclosure.ONE;
        for (int k = STEPS.size() - 1; k >= 0; k--) {
            long next = low + (1L << k);
            if (next >= LAST) {
                continue;
            }
            Enclosure there = hydrogen.times(STEPS.get(k));
            Enclosure charge = corner.charge(there);
            if (charge.isPositive()) {
                low = next;
                hydrogen = there;
            } else if (!charge.isNegative()) {
                return around(corner, next);
            }
        }
        return Interval.of(at(low), at(low + 1));
    }

    /** So near a root that no sign is certain; to either side F changes by more than the enclosure is wide. */
    private static Interval<Ph> around(Corner corner, long billionths) {
        Ph here = at(billionths);
        return corner.charge(Enclosure.tenTo(here.value().unaryMinus())).isZero()
                ? Interval.of(here, here)
                : Interval.of(at(billionths - 1), at(billionths + 1));
    }

    private static Ph at(long billionths) {
        return Ph.of(Ratio.of(billionths, FINEST));
    }

    /** F with all constants and concentrations at the ends that make it least or greatest; their powers are reckoned once. */
    private final class Corner {

        private final boolean greatest;
        private final Enclosure ionProduct;
        private final List<List<Enclosure>> powers = new ArrayList<>();

        Corner(boolean greatest) {
            this.greatest = greatest;
            this.ionProduct = Enclosure.tenTo(water.end(greatest).get(0).unaryMinus());
            for (Dissolved each : dissolved) {
                powers.add(each.acid == null ? List.of() : Species.powers(each.acid.end(greatest)));
            }
        }

        /** At a concentration of hydrogen ions. */
        Enclosure charge(Enclosure hydrogen) {
            Enclosure tenToPh = Enclosure.ONE.dividedBy(hydrogen);
            Enclosure sum = hydrogen.minus(ionProduct.times(tenToPh));
            for (int i = 0; i < dissolved.size(); i++) {
                Dissolved each = dissolved.get(i);
                Enclosure perMole = perMole(each, tenToPh, powers.get(i));
                Enclosure little = perMole.times(Enclosure.of(each.moles.least()));
                Enclosure much = perMole.times(Enclosure.of(each.moles.greatest()));
                sum = sum.plus(greatest ? little.max(much) : little.min(much));
            }
            return sum;
        }

        private Enclosure perMole(Dissolved each, Enclosure tenToPh, List<Enclosure> itsPowers) {
            return each.acid == null
                    ? Enclosure.of(each.cations)
                    : Enclosure.of((long) each.cations + each.acid.charge())
                            .minus(Species.at(tenToPh, itsPowers).lostProtons());
        }
    }

    /**
     * How much of an acid, or of a base given as its ammonium ion, brings the solution to a pH: explicit, {@code C = F(pH) / (lost
     * protons − z − cations)}.
     *
     * @param target the pH wanted
     * @param acid the constants of what is added, at the temperature and ionic strength of the ion product
     * @param molarMass of what is added
     * @param addedCations how many charges of strong cations one formula unit of it brings: 0 for an acid and for a free base
     * @return the least and the most over the ranges of the constants and concentrations
     * @throws IllegalArgumentException if the pH lies outside 0 to 14, or the addition may move the pH away from the target, so that
     *     there is no such amount, and as {@link #with(AcidConstants, MolarMass, MassConcentration, int)}
     */
    public Interval<MassConcentration> toReach(
            String target, AcidConstants acid, MolarMass molarMass, int addedCations) {
        Objects.requireNonNull(acid, "acid");
        Objects.requireNonNull(molarMass, "molarMass");
        Ratio ph = target(target);
        requireBesideWater(acid);
        requireProtons(acid, addedCations);
        requireCationsOf(molarMass.formula(), addedCations);
        return reached(
                ph,
                acid.name(),
                molarMass,
                greatest -> Species.at(ph, acid.end(greatest))
                        .lostProtons()
                        .minus(Enclosure.of((long) acid.charge() + addedCations)));
    }

    /**
     * How much of a strong base, or of a strong acid, brings the solution to a pH: explicit, {@code C = −F(pH) / charges}.
     *
     * <p>Example: 3 g/L of citric acid take 1.2219 g/L of NaOH to pH 5.5.
     *
     * @param target the pH wanted
     * @param molarMass of what is added, such as NaOH
     * @param charges how many charges one formula unit brings, 1 for NaOH; negative for a strong acid
     * @return the least and the most over the ranges of the constants and concentrations
     * @throws IllegalArgumentException if the pH lies outside 0 to 14, the charges are none, or the addition may move the pH away from
     *     the target, so that there is no such amount
     */
    public Interval<MassConcentration> strongToReach(String target, MolarMass molarMass, int charges) {
        Objects.requireNonNull(molarMass, "molarMass");
        Ratio ph = target(target);
        return reached(ph, molarMass.formula().toString(), molarMass, greatest -> Enclosure.of(-(long) charges));
    }

    private static Ratio target(String target) {
        Ratio ph = Ph.parse(target).value();
        if (ph.compareTo(ACID_END) < 0 || ph.compareTo(ALKALINE_END) > 0) {
            throw new IllegalArgumentException("target is pH " + Excerpt.of(ph) + ": it must lie between 0 and 14");
        }
        return ph;
    }

    /** With the charges that a mole of the addition takes away at the pH, its constants at one end or the other. */
    private Interval<MassConcentration> reached(
            Ratio ph, String added, MolarMass molarMass, Function<Boolean, Enclosure> taken) {
        // As long as neither sign changes, the amount is monotone in every constant, so that both ends are corners.
        Enclosure one = needed(ph, added, taken.apply(false), false);
        Enclosure other = needed(ph, added, taken.apply(true), true);
        Enclosure least = one.min(other);
        if (least.low().signum() < 0) {
            throw new IllegalArgumentException("pH " + Excerpt.of(ph) + " is not reached for certain with "
                    + Excerpt.of(added)
                    + ": it moves the pH the other way, or the solution may be there already; add a base instead of an"
                    + " acid, or an acid instead of a base");
        }
        Ratio grams = molarMass.gramsPerMole().dividedBy(LITRE);
        return Interval.of(
                MassConcentration.ofGramsPerMillilitre(least.least().times(grams)),
                MassConcentration.ofGramsPerMillilitre(one.max(other).greatest().times(grams)));
    }

    private Enclosure needed(Ratio ph, String added, Enclosure taken, boolean greatest) {
        Enclosure charge = new Corner(greatest).charge(Enclosure.tenTo(ph.unaryMinus()));
        if (taken.isPositive()) {
            return charge.dividedBy(taken);
        }
        if (taken.isNegative()) {
            return charge.negated().dividedBy(taken.negated());
        }
        throw new IllegalArgumentException(Excerpt.of(added) + " neither gives nor takes protons at pH "
                + Excerpt.of(ph) + ": choose another acid or base");
    }

    @Override
    public String toString() {
        return "water with " + dissolved.size() + " dissolved, at " + water.holdsAt();
    }
}
