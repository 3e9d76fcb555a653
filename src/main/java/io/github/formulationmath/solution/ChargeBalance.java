package io.github.formulationmath.solution;

import io.github.formulationmath.chemistry.MolarMass;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.PowerOfTen;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassConcentration;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * The pH of a watery solution of acids, bases and salts in the ideal model: the pH at which all charges add to nothing,
 *
 * <pre>{@literal
 * F(pH) = cations − anions + h − K_w/h + Σ C (z − lost protons) = 0,  h = 10^(−pH)
 * }</pre>
 *
 * <p>F falls with the pH throughout, so that there is one root, and halving with a sign that is certain encloses it. The enclosure
 * covers the numbers given and not the model: activities, temperature and whatever else is in the product move a real pH by tenths.
 * Soaps, surfactants, proteins, and more than 5 % of alcohols or glycols are outside of it.
 *
 * <p>Each pK is a range: the pH rises with every one of them, so that both ends are corners. Concentrations are taken as given.
 *
 * <p>Immutable.
 */
public final class ChargeBalance {

    private static final Ratio LITRE = Ratio.of(1000);
    private static final Ratio FINEST = Ratio.parse("1e-9");

    private final Interval<Ph> water;
    private final List<Dissolved> acids;
    private final Ratio cations;

    /** An acid in whatever form, in mol/L. */
    private record Dissolved(AcidConstants acid, Ratio molesPerLitre) implements Serializable {}

    private ChargeBalance(Interval<Ph> water, List<Dissolved> acids, Ratio cations) {
        this.water = water;
        this.acids = List.copyOf(acids);
        this.cations = cations;
    }

    /**
     * Pure water.
     *
     * @param ionProduct pK_w and its source, as an acid of one step: 13.997 at 25 °C
     * @return water alone
     * @throws IllegalArgumentException if it has more than one step
     */
    public static ChargeBalance of(AcidConstants ionProduct) {
        if (ionProduct.protons() != 1) {
            throw new IllegalArgumentException("ionProduct has " + ionProduct.protons() + " steps: pK_w is one number");
        }
        return new ChargeBalance(ionProduct.steps().get(0), List.of(), Ratio.ZERO);
    }

    /**
     * With an acid, or with a base given as the ammonium ion that it becomes.
     *
     * @param acid its constants
     * @param molarMass of what is dissolved
     * @param concentration of what is dissolved
     * @param cations how many charges of strong cations one formula unit brings: 0 for the acid itself, 1 for its potassium salt; −1
     *     for the hydrochloride of an amine, and minus its charge for a free base
     * @return the solution with it
     */
    public ChargeBalance with(AcidConstants acid, MolarMass molarMass, MassConcentration concentration, int cations) {
        Ratio moles = moles(molarMass, concentration);
        List<Dissolved> more = new ArrayList<>(acids);
        more.add(new Dissolved(Objects.requireNonNull(acid, "acid"), moles));
        return new ChargeBalance(water, more, this.cations.plus(moles.times(cations)));
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
        return new ChargeBalance(
                water, acids, cations.plus(moles(molarMass, concentration).times(charges)));
    }

    private static Ratio moles(MolarMass molarMass, MassConcentration concentration) {
        return Objects.requireNonNull(concentration, "concentration")
                .gramsPerMillilitre()
                .times(LITRE)
                .dividedBy(Objects.requireNonNull(molarMass, "molarMass").gramsPerMole());
    }

    /**
     * The pH of the ideal model.
     *
     * @return an interval that holds it for every pK in its range, its ends certain
     */
    public Interval<Ph> ph() {
        return Interval.of(Ph.of(root(false, false)), Ph.of(root(true, true)));
    }

    /** An end of the enclosure, all pK at one of their ends. */
    private Ratio root(boolean weaker, boolean upper) {
        Ratio low = Ratio.of(-2);
        Ratio high = Ratio.of(16);
        while (high.minus(low).compareTo(FINEST) > 0) {
            Ratio middle = low.plus(high).dividedBy(2);
            Bounds charge = charge(middle, weaker);
            if (charge.lower().orElseThrow().signum() > 0) {
                low = middle;
            } else if (charge.upper().orElseThrow().signum() < 0) {
                high = middle;
            } else {
                break;
            }
        }
        return upper ? high : low;
    }

    /** F(pH): both ends, for powers of ten are irrational. */
    private Bounds charge(Ratio ph, boolean weaker) {
        Ratio pkw = (weaker ? water.greatest() : water.least()).value();
        Bounds h = PowerOfTen.of(ph.unaryMinus());
        Bounds oh = PowerOfTen.of(ph.minus(pkw));
        Ratio least = cations.plus(low(h)).minus(high(oh));
        Ratio most = cations.plus(high(h)).minus(low(oh));
        for (Dissolved d : acids) {
            Bounds lost = Species.at(ph, d.acid().end(weaker)).lostProtons();
            Ratio charge = Ratio.of(d.acid().charge());
            least = least.plus(d.molesPerLitre().times(charge.minus(high(lost))));
            most = most.plus(d.molesPerLitre().times(charge.minus(low(lost))));
        }
        return Bounds.closed(least, most);
    }

    private static Ratio low(Bounds bounds) {
        return bounds.lower().orElseThrow();
    }

    private static Ratio high(Bounds bounds) {
        return bounds.upper().orElseThrow();
    }

    /**
     * How much of an acid, or of a base given as its ammonium ion, brings the solution to a pH: explicit, {@code C = F(pH) / (lost
     * protons − z)}, with its cations.
     *
     * @param target the pH wanted
     * @param acid the constants of what is added
     * @param molarMass of what is added
     * @param addedCations how many charges of strong cations one formula unit of it brings
     * @return the least and the most over the ranges of the constants
     * @throws IllegalArgumentException if it moves the pH away from the target, so that there is no such amount
     */
    public Interval<MassConcentration> toReach(
            String target, AcidConstants acid, MolarMass molarMass, int addedCations) {
        Ratio ph = Ph.parse(target).value();
        Bounds strong = needed(ph, acid, addedCations, false);
        Bounds weak = needed(ph, acid, addedCations, true);
        Ratio least = low(strong).min(low(weak));
        Ratio most = high(strong).max(high(weak));
        if (least.signum() < 0) {
            throw new IllegalArgumentException("pH " + target + " is not reached with " + Excerpt.of(acid.name())
                    + ": it moves the pH the other way, or the solution is there already; add a base instead of an acid, or"
                    + " an acid instead of a base");
        }
        Ratio grams = molarMass.gramsPerMole().dividedBy(LITRE);
        return Interval.of(
                MassConcentration.ofGramsPerMillilitre(least.times(grams)),
                MassConcentration.ofGramsPerMillilitre(most.times(grams)));
    }

    private Bounds needed(Ratio ph, AcidConstants acid, int addedCations, boolean weaker) {
        Bounds charge = charge(ph, weaker);
        Bounds lost = Species.at(ph, acid.end(weaker)).lostProtons();
        Ratio own = Ratio.of(acid.charge()).plus(Ratio.of(addedCations));
        Ratio leastTaken = low(lost).minus(own);
        Ratio mostTaken = high(lost).minus(own);
        if (leastTaken.signum() * mostTaken.signum() <= 0) {
            throw new IllegalArgumentException(Excerpt.of(acid.name())
                    + " neither gives nor takes protons at that pH: choose another acid or base");
        }
        List<Ratio> corners = List.of(
                low(charge).dividedBy(leastTaken),
                low(charge).dividedBy(mostTaken),
                high(charge).dividedBy(leastTaken),
                high(charge).dividedBy(mostTaken));
        return Bounds.closed(
                corners.stream().reduce(Ratio::min).orElseThrow(),
                corners.stream().reduce(Ratio::max).orElseThrow());
    }
}
