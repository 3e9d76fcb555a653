package io.github.formulationmath.soap;

import io.github.formulationmath.chemistry.MolarMass;
import io.github.formulationmath.chemistry.MolecularFormula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.weighing.Weighed;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import javax.measure.quantity.Mass;

/**
 * What a soap consists of when all hydroxide has reacted: glycerol, water, soap, fatty matter. A balance of masses and nothing more: no
 * date at which it is ready, no pH, no hardness.
 *
 * <p>Of the hydroxide that the acids leave, n moles, the free fatty acids take theirs first and give water; the esters take the
 * rest, s, and three of them set one molecule of glycerol free: {@code s/3 · M(glycerol)}. Total fatty matter, as ISO 685 has it,
 * is the fatty matter that acid sets free again, fat left and unsaponifiable matter included: {@code Σ m(fat) − s/3 · (M(glycerol) − 3
 * M(water))}.
 *
 * <p>The ends of each interval are those of every input taken by itself, so that they are sure and, where inputs act on two figures
 * at once, wider than need be. Waxes set free no glycerol, and a soap with one is refused.
 *
 * <p>Example, by hand: 1000 g of neutral fat with 3.38647 mol of ester, wholly saponified, give 3.38647/3 · 92.09382 = 103.958 g of
 * glycerol.
 */
public final class SoapComposition {

    private static final Ratio GLYCEROL = mass("C3H8O3");
    static final Ratio WATER = mass("H2O");

    private final Soap soap;
    private final MassRange masses;
    private final Interval<Ratio> reacted;
    private final Interval<Ratio> acids;
    private final SoapMatter rest;

    private SoapComposition(Soap soap, MassRange masses, AlkaliBalance balance) {
        this.soap = soap;
        this.masses = masses;
        this.reacted = Interval.of(forFats(false), forFats(true));
        this.acids = Interval.of(freeAcids(false), freeAcids(true));
        this.rest = new SoapMatter(this, soap, masses, balance);
    }

    private static Ratio mass(String formula) {
        return MolarMass.of(MolecularFormula.parse(formula)).gramsPerMole();
    }

    /**
     * The composition of what was weighed, or is going to be.
     *
     * @param soap the formula with its lines declared
     * @param weighed the masses of that formula
     * @return the composition when all has reacted
     * @throws IllegalArgumentException if it is not shown that all hydroxide reacts, if there is a wax, or a fat whose acid value is
     *     not given, and as {@link AlkaliBalance#of}
     */
    public static SoapComposition of(Soap soap, Weighed weighed) {
        AlkaliBalance balance = AlkaliBalance.of(soap, weighed);
        soap.formula()
                .lines()
                .forEach(line -> soap.role(line.index()).ifPresent(role -> requireGlycerides(line, role)));
        if (balance.verdict() != HydroxideVerdict.NO_HYDROXIDE_LEFT) {
            throw new IllegalArgumentException("the judgement on hydroxide is " + balance.verdict()
                    + ": what a soap consists of is told only if all hydroxide is sure to react; take less alkali");
        }
        return new SoapComposition(soap, new WeighedRange(weighed.masses()), balance);
    }

    private static void requireGlycerides(FormulaLine line, SoapRole role) {
        if (!(role instanceof SoapRole.Takes takes)) {
            return;
        }
        Fat fat = takes.fat();
        if (fat.nature() == Fat.Nature.WAX || fat.nature() == Fat.Nature.WAX_THAT_REACTS) {
            throw new IllegalArgumentException(
                    Excerpt.of(line.name())
                            + " is a wax: it gives fatty alcohols and no glycerol, so that this balance does not hold; leave it out");
        }
        if (fat.nature() == Fat.Nature.TRIGLYCERIDES && fat.acidValue().isEmpty()) {
            throw new IllegalArgumentException("the acid value of " + Excerpt.of(line.name())
                    + " is not known, and free acids give no glycerol: state its range with withAcidValue(…)");
        }
    }

    /** Moles of hydroxide that the fats get: all of it, less what the acids take. */
    private Ratio forFats(boolean most) {
        Ratio koh = masses.sum(
                weights(role -> role instanceof SoapRole.Takes ? Ratio.ZERO : most ? role.most() : role.least()), most);
        return koh.dividedBy(SoapRole.KOH);
    }

    /** Moles of free fatty acids. */
    private Ratio freeAcids(boolean most) {
        return masses.sum(weights(role -> acid(role, most)), most);
    }

    private static Ratio acid(SoapRole role, boolean most) {
        if (!(role instanceof SoapRole.Takes takes)) {
            return Ratio.ZERO;
        }
        Interval<AlkaliNumber> value = takes.fat().nature() == Fat.Nature.FATTY_ACIDS
                ? takes.fat().saponification().range()
                : takes.fat().acidValue().orElseThrow();
        return (most ? value.greatest() : value.least()).molesPerGram();
    }

    interface PerGram {
        Ratio of(SoapRole role);
    }

    /** Moles of hydroxide that the fats get. */
    Interval<Ratio> reacted() {
        return reacted;
    }

    Map<Integer, Ratio> weights(PerGram perGram) {
        Map<Integer, Ratio> weights = new LinkedHashMap<>();
        soap.formula()
                .lines()
                .forEach(line -> soap.role(line.index())
                        .map(perGram::of)
                        .filter(weight -> !weight.isZero())
                        .ifPresent(weight -> weights.put(line.index(), weight)));
        return weights;
    }

    /** Moles of ester that react: what the free acids leave. */
    private Ratio esters(boolean most) {
        Ratio left =
                most ? reacted.greatest().minus(acids.least()) : reacted.least().minus(acids.greatest());
        return left.signum() < 0 ? Ratio.ZERO : left;
    }

    /**
     * The glycerol that is set free.
     *
     * @return the least and the most
     */
    public Interval<Amount<Mass>> glycerol() {
        return grams(esters(false), esters(true), GLYCEROL.dividedBy(3));
    }

    /**
     * The water that free fatty acids give when they are neutralised; that of other acids is not in it.
     *
     * @return the least and the most
     */
    public Interval<Amount<Mass>> waterFormed() {
        return grams(reacted.least().min(acids.least()), reacted.greatest().min(acids.greatest()), WATER);
    }

    /**
     * Fat that is left. Nobody knows which of the fats that is, so that the ends are those of the fat that takes most alkali and
     * of the one that takes least.
     *
     * @return the least and the most
     */
    public Interval<Amount<Mass>> fatLeft() {
        return rest.fatLeft();
    }

    /**
     * The soap itself, free of water, with the unsaponifiable matter of the fat that reacted: {@code fat reacted + hydroxide −
     * glycerol − water formed}, since nothing is lost.
     *
     * @return the least and the most
     */
    public Interval<Amount<Mass>> soap() {
        return rest.pure();
    }

    /**
     * The soap as a share of what there is at some mass, fresh, dried or diluted. If only water came or left, the soap is what it was.
     *
     * @param mass what all of this batch weighs now
     * @return the least and the greatest share, the greatest cut at 100 %
     * @throws IllegalArgumentException if that is less than the soap alone
     */
    public Interval<MassFraction> soap(Amount<Mass> mass) {
        return shareOf(mass, soap(), "soap");
    }

    /**
     * The water to dilute a soap with, W = soap/c − m.
     *
     * @param share the share of soap wanted, above 0
     * @param mass what all of this batch weighs now
     * @return the least and the most water; with the most the soap is at most the share wanted, whatever the lot
     * @throws IllegalArgumentException if the soap is sure to be thinner already, or the share is 0
     */
    public Interval<Amount<Mass>> waterToDilute(MassFraction share, Amount<Mass> mass) {
        if (Objects.requireNonNull(share, "share").fraction().isZero()) {
            throw new IllegalArgumentException(
                    "share is " + share + ": no water makes a soap of none; it must be above 0 %");
        }
        soap(mass);
        Ratio now = mass.canonical();
        Ratio most = soap().greatest().canonical().dividedBy(share.fraction()).minus(now);
        if (most.signum() < 0) {
            throw new IllegalArgumentException("share is " + share + ", and the soap is at most "
                    + AlkaliReport.atLeast(soap(mass).greatest()) + " of " + Excerpt.of(mass)
                    + ": it is thinner already; ask for a smaller share, or let water leave");
        }
        Ratio least = soap().least().canonical().dividedBy(share.fraction()).minus(now);
        return masses(least.max(Ratio.ZERO), most);
    }

    /**
     * The water in the fresh soap: that of the lye, what is neither hydroxide nor carbonate in the alkali, what free acids give when
     * they are neutralised, and water in the fats as far as it was stated. That of milk and the like is not in it.
     *
     * @return the least and the most
     */
    public Interval<Amount<Mass>> water() {
        return rest.water();
    }

    private Interval<Amount<Mass>> grams(Ratio least, Ratio most, Ratio each) {
        return masses(least.times(each), most.times(each));
    }

    /** Grams in the unit of the displays. */
    private Interval<Amount<Mass>> masses(Ratio least, Ratio most) {
        return Interval.of(
                Amount.grams(least).inUnitOf(masses.unit()), Amount.grams(most).inUnitOf(masses.unit()));
    }

    /**
     * Total fatty matter in the sense of ISO 685: fatty acids of the soap, fat that is left and unsaponifiable matter. Water and dirt in
     * the fats are taken for none at the upper end and for all that was stated at the lower one.
     *
     * @return the least and the most
     */
    public Interval<Amount<Mass>> totalFattyMatter() {
        Ratio lost = GLYCEROL.minus(WATER.times(3)).dividedBy(3);
        Ratio least = masses.sum(weights(role -> fatty(role, false)), false).minus(lost.times(esters(true)));
        Ratio most = masses.sum(weights(role -> fatty(role, true)), true).minus(lost.times(esters(false)));
        return masses(least, most);
    }

    static Ratio fatty(SoapRole role, boolean most) {
        if (!(role instanceof SoapRole.Takes takes)) {
            return Ratio.ZERO;
        }
        return most ? Ratio.ONE : Ratio.ONE.minus(takes.fat().inert().most().fraction());
    }

    /**
     * Total fatty matter as a share of the soap at some mass, fresh or dried. If only water left, the fatty matter is what it was.
     *
     * @param mass what the soap of this batch weighs now
     * @return the least and the greatest share, the greatest cut at 100 %
     * @throws IllegalArgumentException if that is less than the fatty matter alone
     */
    public Interval<MassFraction> totalFattyMatter(Amount<Mass> mass) {
        return shareOf(mass, totalFattyMatter(), "fatty matter");
    }

    private static Interval<MassFraction> shareOf(Amount<Mass> mass, Interval<Amount<Mass>> part, String name) {
        if (Amount.requirePositive("mass", mass).compareTo(part.least()) < 0) {
            throw new IllegalArgumentException(
                    "mass is " + Excerpt.of(mass) + ", less than the " + name + " of at least "
                            + AlkaliReport.down(part.least().canonical())
                            + " g: more than water has left, or it is not all of the batch");
        }
        Amount<Mass> most = part.greatest().compareTo(mass) > 0 ? mass : part.greatest();
        return Interval.of(MassFraction.of(part.least(), mass), MassFraction.of(Objects.requireNonNull(most), mass));
    }

    /** What the soap consists of, each end rounded outward, for reading at a prompt. */
    @Override
    public String toString() {
        return soap.formula().name() + ": glycerol " + AlkaliReport.between(glycerol()) + ", soap "
                + AlkaliReport.between(this.soap()) + ", fatty matter " + AlkaliReport.between(totalFattyMatter());
    }
}
