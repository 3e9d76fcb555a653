package io.github.formulationmath.packing;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Symbol;
import java.math.RoundingMode;
import java.util.Objects;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Mass;

/**
 * How far a batch goes: what is left after the residue fills {@code n = ⌊(Z − R)/f⌋} packs, and the last pack gets the rest.
 * {@link #fullPacks()} is n.
 *
 * <p>Example: 391 g made, 8 g stay in the beaker, packs of 50 g: 383 g fill 7 packs, and 33 g are left for an eighth. Of 8
 * packs planned, the yield is 383/400 = 95.75 %.
 *
 * <p>Immutable and thread-safe.
 *
 * @param made the mass that was made, as given
 * @param residue what stays in vessel, stirrer and pump, as given
 * @param fill what goes into each pack
 */
public record Filling(Amount<Mass> made, Amount<Mass> residue, PackFill fill) implements Explained {

    private static final Symbol MADE = Symbol.of("Z_fill", "mass-made", Kind.MASS);
    private static final Symbol RESIDUE = Symbol.of("res", "residue", Kind.MASS);
    private static final Symbol AVAILABLE = Symbol.of("F", "mass-to-fill", Kind.MASS);
    private static final Symbol PACKS = Symbol.of("n", "full-packs", Kind.NUMBER);
    private static final Symbol LAST = Symbol.of("last", "last-pack", Kind.MASS);
    private static final Symbol PLANNED = Symbol.of("n_plan", "planned-packs", Kind.NUMBER);
    private static final Symbol OVERAGE = Symbol.of("over", "overage-reached", Kind.SHARE);
    private static final Rounding DOWN = Rounding.toDecimalPlaces(0).with(RoundingMode.FLOOR);

    /**
     * Checks the masses.
     *
     * @param made the mass that was made, at least 0
     * @param residue what stays in vessel, stirrer and pump, from 0 to the mass made
     * @param fill what goes into each pack
     * @throws IllegalArgumentException if a mass is out of range, or the packs are more than 2147483647
     */
    public Filling {
        Objects.requireNonNull(fill, "fill");
        Amount.requireNotNegative("made", made);
        if (Objects.requireNonNull(residue, "residue").signum() < 0 || residue.compareTo(made) > 0) {
            throw new IllegalArgumentException("residue is " + Excerpt.of(residue)
                    + ": it must lie between 0 and what was made, " + Excerpt.of(made));
        }
        Ratio most = made.minus(residue).ratioTo(fill.mass());
        if (most.compareTo(Ratio.of(Integer.MAX_VALUE).plus(Ratio.ONE)) >= 0) {
            throw new IllegalArgumentException("fill is " + Excerpt.of(fill) + ", which makes " + DOWN.apply(most)
                    + " packs: look for a slip in the unit");
        }
    }

    /**
     * Fills a batch into packs.
     *
     * @param made the mass that was made, at least 0
     * @param residue what stays in vessel, stirrer and pump, from 0 to the mass made
     * @param fill what goes into each pack
     * @return the filling
     * @throws IllegalArgumentException if a mass is out of range, or the packs are more than 2147483647
     */
    public static Filling of(Amount<Mass> made, Amount<Mass> residue, PackFill fill) {
        return new Filling(made, residue, fill);
    }

    /**
     * How many packs are filled to the full.
     *
     * @return n
     */
    public int fullPacks() {
        return (int) packs(Reckoning.plain()).toLongExact();
    }

    /**
     * What is left for one more pack.
     *
     * @return the rest in the unit of what was made, at least 0 and below the fill, with its working
     */
    public Amount<Mass> lastPack() {
        return Amount.grams(last(Reckoning.plain()))
                .withWorking(filling -> Phrase.of("question.last-pack"), this, Filling::last)
                .inUnitOf(made);
    }

    /**
     * What there is beyond, or short of, a number of planned packs, relative to their contents.
     *
     * @param plannedPacks how many packs were planned, above 0
     * @return {@code (Z − R)/(n·f) − 1} in percent, with its working; negative if the batch falls short
     * @throws IllegalArgumentException if the number is not above 0
     */
    public Amount<Dimensionless> overage(int plannedPacks) {
        if (plannedPacks <= 0) {
            throw new IllegalArgumentException("plannedPacks is " + plannedPacks + ": it must be above 0");
        }
        Plan plan = new Plan(this, plannedPacks);
        return Amount.percent(plan.overage(Reckoning.plain()).times(100))
                .withWorking(each -> Phrase.of("question.overage"), plan, Plan::overage);
    }

    private record Plan(Filling filling, int packs) {

        <V> V overage(Reckoning<V> r) {
            V planned = r.given(PLANNED, Ratio.of(packs), Source.user());
            V wanted = r.product(planned, r.known(filling.fill.mass()));
            return r.named(OVERAGE, r.quotient(r.difference(filling.available(r), wanted), wanted));
        }
    }

    /** Where the number of full packs comes from. */
    @Override
    public Origin origin() {
        return Origin.of(filling -> Phrase.of("question.full-packs"), packs(Reckoning.plain()), this, Filling::packs);
    }

    private <V> V available(Reckoning<V> r) {
        V there = r.given(MADE, made, Source.written(made.toString()));
        V stays = r.given(RESIDUE, residue, Source.written(residue.toString()));
        return r.named(AVAILABLE, r.difference(there, stays));
    }

    private <V> V last(Reckoning<V> r) {
        return r.named(LAST, r.difference(available(r), r.product(packs(r), r.known(fill.mass()))));
    }

    private <V> V packs(Reckoning<V> r) {
        return r.named(PACKS, r.rounded(r.quotient(available(r), r.known(fill.mass())), DOWN));
    }

    @Override
    public String toString() {
        return fullPacks() + " packs of " + fill + " and " + lastPack().told() + " left";
    }
}
