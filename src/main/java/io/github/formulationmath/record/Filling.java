package io.github.formulationmath.record;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.working.Explained;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Source;
import io.github.formulationmath.working.Symbol;
import io.github.formulationmath.working.Working;
import java.io.Serial;
import java.io.Serializable;
import java.math.RoundingMode;
import java.util.Objects;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * How far a batch goes: what is left after the residue fills {@code n = ⌊(Z − R)/f⌋} packs, and the last pack gets the rest.
 * The {@link #result()} is the number of full packs.
 *
 * <p>Example: 391 g made, 8 g stay in the beaker, packs of 50 g: 383 g fill 7 packs, and 33 g are left for an eighth. Of 8
 * packs planned, the yield is 383/400 = 95.75 %.
 *
 * <p>Immutable and thread-safe.
 */
public final class Filling implements Explained, Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private static final Symbol MADE = Symbol.of("Zfill", "mass-made", Kind.MASS);
    private static final Symbol RESIDUE = Symbol.of("res", "residue", Kind.MASS);
    private static final Symbol AVAILABLE = Symbol.of("F", "mass-to-fill", Kind.MASS);
    private static final Symbol PACKS = Symbol.of("n", "full-packs", Kind.NUMBER);
    private static final Symbol LAST = Symbol.of("last", "last-pack", Kind.MASS);
    private static final Symbol PLANNED = Symbol.of("nplan", "planned-packs", Kind.NUMBER);
    private static final Symbol OVERAGE = Symbol.of("over", "overage-reached", Kind.SHARE);
    private static final Rounding DOWN = Rounding.toDecimalPlaces(0).with(RoundingMode.FLOOR);

    private final Amount<Mass> made;
    private final Amount<Mass> residue;
    private final PackFill fill;
    private final Ratio packs;

    private Filling(Amount<Mass> made, Amount<Mass> residue, PackFill fill) {
        this.made = made;
        this.residue = residue;
        this.fill = fill;
        this.packs = derive(Reckoning.plain());
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
        Objects.requireNonNull(fill, "fill");
        Amount.requireNotNegative("made", made);
        if (Objects.requireNonNull(residue, "residue").signum() < 0 || residue.compareTo(made) > 0) {
            throw new IllegalArgumentException("residue is " + Excerpt.of(residue)
                    + ": it must lie between 0 and what was made, " + Excerpt.of(made));
        }
        Filling filling = new Filling(made, residue, fill);
        if (filling.packs.compareTo(Ratio.of(Integer.MAX_VALUE)) > 0) {
            throw new IllegalArgumentException("fill is " + Excerpt.of(fill) + ", which makes " + filling.packs
                    + " packs: look for a slip in the unit");
        }
        return filling;
    }

    /**
     * What was made.
     *
     * @return the mass as given
     */
    public Amount<Mass> made() {
        return made;
    }

    /**
     * What stayed behind.
     *
     * @return the mass as given
     */
    public Amount<Mass> residue() {
        return residue;
    }

    /**
     * What goes into each pack.
     *
     * @return the fill
     */
    public PackFill fill() {
        return fill;
    }

    /**
     * How many packs are filled to the full.
     *
     * @return n
     */
    public int fullPacks() {
        return (int) packs.toLongExact();
    }

    /**
     * What is left for one more pack.
     *
     * @return the rest in grams, at least 0 and below the fill
     */
    public Amount<Mass> lastPack() {
        return Amount.grams(last(Reckoning.plain()));
    }

    /**
     * How {@link #lastPack()} comes about.
     *
     * @return the working
     */
    public Working lastPackWorking() {
        return Working.of(Phrase.of("question.last-pack"), last(Reckoning.plain()), this::last);
    }

    /**
     * What there is beyond, or short of, a number of planned packs, relative to their contents.
     *
     * @param plannedPacks how many packs were planned, above 0
     * @return {@code (Z − R)/(n·f) − 1}; negative if the batch falls short
     * @throws IllegalArgumentException if the number is not above 0
     */
    public Ratio overage(int plannedPacks) {
        return overage(Reckoning.plain(), plannedPacks);
    }

    /**
     * How {@link #overage} comes about.
     *
     * @param plannedPacks how many packs were planned, above 0
     * @return the working
     * @throws IllegalArgumentException if the number is not above 0
     */
    public Working overageWorking(int plannedPacks) {
        return Working.of(Phrase.of("question.overage"), overage(plannedPacks), r -> overage(r, plannedPacks));
    }

    private <V> V overage(Reckoning<V> r, int plannedPacks) {
        if (plannedPacks <= 0) {
            throw new IllegalArgumentException("plannedPacks is " + plannedPacks + ": it must be above 0");
        }
        V planned = r.given(PLANNED, Ratio.of(plannedPacks), Source.user());
        V wanted = r.product(planned, r.known(fill));
        return r.named(OVERAGE, r.quotient(r.difference(available(r), wanted), wanted));
    }

    private <V> V available(Reckoning<V> r) {
        V there = r.given(MADE, made.in(FormulationUnits.GRAM), Source.written(made.toString()));
        V stays = r.given(RESIDUE, residue.in(FormulationUnits.GRAM), Source.written(residue.toString()));
        return r.named(AVAILABLE, r.difference(there, stays));
    }

    private <V> V last(Reckoning<V> r) {
        return r.named(LAST, r.difference(available(r), r.product(derive(r), r.known(fill))));
    }

    @Override
    public Phrase question() {
        return Phrase.of("question.full-packs");
    }

    @Override
    public Ratio result() {
        return packs;
    }

    @Override
    public <V> V derive(Reckoning<V> r) {
        return r.named(PACKS, r.rounded(r.quotient(available(r), r.known(fill)), DOWN));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Filling that
                && made.equals(that.made)
                && residue.equals(that.residue)
                && fill.equals(that.fill);
    }

    @Override
    public int hashCode() {
        return Objects.hash(made, residue, fill);
    }

    @Override
    public String toString() {
        return fullPacks() + " packs of " + fill + " and " + lastPack() + " left";
    }
}
