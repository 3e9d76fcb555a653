package io.github.formulationmath.solution;

import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.quantity.VolumeFraction;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import java.util.Objects;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;

/**
 * Alcohol diluted with water from one strength by volume to another, all volumes at the temperature of reference.
 *
 * <p>The ethanol stays: {@code V₂ = V₁ · q₁ / q₂}, exactly. The water does not follow from volumes, for the two shrink: with the mass of the ethanol
 * {@code E = V₁ · q₁ · ρ(1)} and the strengths by mass p it weighs {@code E/p₂ − E/p₁}, and the contraction is {@code V₁ + water/ρ(0) − V₂}.
 *
 * <p>Example: 1 L of 96 % vol to 70 % vol at 20 °C takes 407.06 g of water, becomes 1371.43 mL, and shrinks by 36.37 mL; water up to the
 * missing 371.43 mL would leave it too strong.
 */
public final class AlcoholDilution {

    private static final Source LAW = Source.published("Council Directive 76/766/EEC", "Annex");
    private static final Symbol VOLUME = Symbol.of("V", "alcohol-volume", Kind.VOLUME);
    private static final Symbol BY_VOLUME = Symbol.of("q", "strength-by-volume", Kind.SHARE);
    private static final Symbol BY_MASS = Symbol.of("p", "strength-by-mass", Kind.SHARE);
    private static final Symbol DENSITY = Symbol.of("ρ", "ethanol-density", Kind.DENSITY);
    private static final Symbol ETHANOL = Symbol.of("E", "ethanol-mass", Kind.MASS);
    private static final Symbol WATER = Symbol.of("W", "water-mass", Kind.MASS);
    private static final Symbol DILUTED = Symbol.of("D", "diluted-volume", Kind.VOLUME);
    private static final Subject BEFORE = Subject.of("1", "1");
    private static final Subject AFTER = Subject.of("2", "2");

    private final Amount<Volume> volume;
    private final VolumeFraction from;
    private final VolumeFraction to;
    private final EthanolWater.Reference reference;

    private AlcoholDilution(
            Amount<Volume> volume, VolumeFraction from, VolumeFraction to, EthanolWater.Reference reference) {
        this.volume = volume;
        this.from = from;
        this.to = to;
        this.reference = reference;
    }

    /**
     * So much of the stronger is diluted.
     *
     * @param volume of the stronger, at the temperature of reference
     * @param from its strength by volume, such as {@code "96 % v/v"}
     * @param to the strength by volume that is wanted
     * @param reference where "per cent by volume" is measured
     * @return the dilution
     * @throws IllegalArgumentException if it would take less than no water, or no amount of water is enough
     */
    public static AlcoholDilution of(Amount<Volume> volume, String from, String to, EthanolWater.Reference reference) {
        Amount.requirePositive("volume", volume);
        Objects.requireNonNull(reference, "reference");
        VolumeFraction strong = VolumeFraction.parse(from);
        VolumeFraction weak = VolumeFraction.parse(to);
        if (weak.fraction().isZero()) {
            throw new IllegalArgumentException(
                    "to is " + weak + ": no amount of water is enough; ask for a strength above 0 %");
        }
        if (weak.compareTo(strong) > 0) {
            throw new IllegalArgumentException("to is " + weak + " by volume, above the " + strong
                    + " that it is made from: water makes alcohol weaker; exchange the two, or take a stronger one");
        }
        return new AlcoholDilution(volume, strong, weak, reference);
    }

    /**
     * So much of the weaker is made.
     *
     * @param volume to be made, at the temperature of reference
     * @param from the strength by volume of what it is made from
     * @param to its strength by volume
     * @param reference where "per cent by volume" is measured
     * @return the dilution of as much of the stronger as that takes
     * @throws IllegalArgumentException as {@link #of}
     */
    public static AlcoholDilution making(
            Amount<Volume> volume, String from, String to, EthanolWater.Reference reference) {
        AlcoholDilution same = of(volume, from, to, reference);
        return new AlcoholDilution(
                volume.times(same.to.fraction()).dividedBy(same.from.fraction()), same.from, same.to, reference);
    }

    /**
     * The stronger that is poured.
     *
     * @return its volume
     */
    public Amount<Volume> poured() {
        return volume;
    }

    /**
     * What it becomes.
     *
     * @return its volume, with its working
     */
    public Amount<Volume> becomes() {
        return Amount.millilitres(diluted(Reckoning.plain()))
                .to(volume.getUnit())
                .withWorking(any -> Phrase.of("question.diluted-volume"), this, AlcoholDilution::diluted);
    }

    private <V> V diluted(Reckoning<V> r) {
        V pure = r.product(r.given(VOLUME, volume, Source.user()), byVolume(r, BEFORE, from));
        return r.named(DILUTED, r.quotient(pure, byVolume(r, AFTER, to)));
    }

    private static <V> V byVolume(Reckoning<V> r, Subject which, VolumeFraction strength) {
        return r.given(BY_VOLUME, which, strength.fraction(), Source.user());
    }

    /**
     * The water to add.
     *
     * @return its mass enclosed, each end with its working
     */
    public Interval<Amount<Mass>> water() {
        return Interval.of(end(false), end(true));
    }

    /** The water rises with the strength by mass of the stronger and falls with that of the weaker. */
    private Amount<Mass> end(boolean most) {
        Interval<MassFraction> strong = EthanolWater.byMass(from, reference);
        Interval<MassFraction> weak = EthanolWater.byMass(to, reference);
        End end = new End(this, most ? strong.greatest() : strong.least(), most ? weak.least() : weak.greatest());
        return Amount.grams(end.in(Reckoning.plain())).withWorking(End::question, end, End::in);
    }

    private record End(AlcoholDilution dilution, MassFraction strong, MassFraction weak) {

        Phrase question() {
            return Phrase.of("question.water-to-alcohol");
        }

        <V> V in(Reckoning<V> r) {
            V pure = r.product(r.given(VOLUME, dilution.volume, Source.user()), byVolume(r, BEFORE, dilution.from));
            V density = r.given(DENSITY, dilution.density(Ratio.ONE), LAW);
            V ethanol = r.named(ETHANOL, r.product(pure, density));
            V before = r.quotient(ethanol, r.given(BY_MASS, BEFORE, strong.fraction(), LAW));
            V after = r.quotient(ethanol, r.given(BY_MASS, AFTER, weak.fraction(), LAW));
            return r.named(WATER, r.difference(after, before));
        }
    }

    /** In g/mL at the temperature of reference. */
    private Ratio density(Ratio byMass) {
        return EthanolWater.kilogramsPerCubicMetre(byMass, reference.celsius()).dividedBy(1000);
    }

    /**
     * By how much the volumes poured shrink.
     *
     * @return the volume that is missing in the end, enclosed
     */
    public Interval<Amount<Volume>> contraction() {
        Interval<Amount<Mass>> water = water();
        return Interval.of(missing(water.least()), missing(water.greatest()));
    }

    private Amount<Volume> missing(Amount<Mass> water) {
        Ratio ofWater = water.canonical().dividedBy(density(Ratio.ZERO));
        Ratio left = volume.canonical().plus(ofWater).minus(diluted(Reckoning.plain()));
        return Amount.millilitres(left).to(volume.getUnit());
    }

    /** What is poured, what is added and what it becomes, shortened for reading at a prompt. */
    @Override
    public String toString() {
        Interval<Amount<Mass>> water = water();
        return volume + " of " + from + " with " + NumberText.of(water.least().canonical(), "g") + " of water becomes "
                + becomes().told() + " of " + to;
    }
}
