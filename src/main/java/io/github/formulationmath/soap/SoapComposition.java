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
    private static final Ratio WATER = mass("H2O");

    private final Soap soap;
    private final MassRange masses;
    private final Interval<Ratio> reacted;
    private final Interval<Ratio> acids;

    private SoapComposition(Soap soap, MassRange masses) {
        this.soap = soap;
        this.masses = masses;
        this.reacted = Interval.of(forFats(false), forFats(true));
        this.acids = Interval.of(freeAcids(false), freeAcids(true));
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
        if (balance.verdict() != HydroxideVerdict.NO_HYDROXIDE_LEFT) {
            throw new IllegalArgumentException("the judgement on hydroxide is " + balance.verdict()
                    + ": what a soap consists of is told only if all hydroxide is sure to react; take less alkali");
        }
        soap.formula()
                .lines()
                .forEach(line -> soap.role(line.index()).ifPresent(role -> requireGlycerides(line, role)));
        return new SoapComposition(soap, new WeighedRange(weighed.masses()));
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
        return masses.sum(
                weights(role -> role instanceof SoapRole.Takes ? Ratio.ZERO : most ? role.most() : role.least()), most);
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

    private interface PerGram {
        Ratio of(SoapRole role);
    }

    private Map<Integer, Ratio> weights(PerGram perGram) {
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

    private static Interval<Amount<Mass>> grams(Ratio least, Ratio most, Ratio each) {
        return Interval.of(Amount.grams(least.times(each)), Amount.grams(most.times(each)));
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
        return Interval.of(Amount.grams(least), Amount.grams(most));
    }

    private static Ratio fatty(SoapRole role, boolean most) {
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
        Interval<Amount<Mass>> matter = totalFattyMatter();
        if (Amount.requirePositive("mass", mass).compareTo(matter.least()) < 0) {
            throw new IllegalArgumentException(
                    "mass is " + Excerpt.of(mass) + ", less than the fatty matter of at least "
                            + Excerpt.of(matter.least().canonical())
                            + " g: more than water has left, or it is not all of the batch");
        }
        Amount<Mass> most = matter.greatest().compareTo(mass) > 0 ? mass : matter.greatest();
        return Interval.of(MassFraction.of(matter.least(), mass), MassFraction.of(Objects.requireNonNull(most), mass));
    }
}
