package io.github.formulationmath.record;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.working.Explained;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Subject;
import io.github.formulationmath.working.Symbol;
import java.io.Serial;
import java.io.Serializable;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Mass;

/**
 * The packs of one ingredient that have to be bought for a batch: as many of one size as cover what all its lines need, of
 * the offer that is cheapest in all; of two equally cheap, the smaller amount. Mixed sizes are not tried.
 *
 * <p>Example: 12 g at 12.50 for 250 g or 1.90 for 10 g: two of 10 g cost 3.80, one of 250 g 12.50; two of 10 g are bought
 * and 8 g left over.
 *
 * <p>Immutable and thread-safe.
 */
public final class Purchase implements Explained, Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private static final Symbol COUNT = Symbol.of("N", "packs-to-buy", Kind.NUMBER);
    private static final Symbol COST = Symbol.of("B", "purchase-cost", Kind.MONEY);
    private static final Rounding UP = Rounding.toDecimalPlaces(0).with(RoundingMode.CEILING);

    private final Subject ingredient;
    private final List<Explained> masses;
    private final Offer offer;
    private final Ratio packs;

    Purchase(Subject ingredient, List<Explained> masses, Offer offer) {
        this.ingredient = ingredient;
        this.masses = List.copyOf(masses);
        this.offer = offer;
        this.packs = packs(Reckoning.plain());
    }

    /** The cheapest of several offers. */
    static Purchase cheapest(Subject ingredient, List<Explained> masses, List<Offer> offers) {
        Purchase best = new Purchase(ingredient, masses, offers.get(0));
        for (Offer offer : offers.subList(1, offers.size())) {
            Purchase other = new Purchase(ingredient, masses, offer);
            int order = other.result().compareTo(best.result());
            if (order < 0 || order == 0 && other.bought().compareTo(best.bought()) < 0) {
                best = other;
            }
        }
        return best;
    }

    /**
     * The ingredient.
     *
     * @return its name
     */
    public String ingredientName() {
        return ingredient.name();
    }

    /**
     * The offer that is taken.
     *
     * @return the offer
     */
    public Offer offer() {
        return offer;
    }

    /**
     * How many packs are bought.
     *
     * @return a whole number
     */
    public Ratio packs() {
        return packs;
    }

    /**
     * How much is bought.
     *
     * @return the contents of all packs
     */
    public Amount<Mass> bought() {
        return offer.packSize().times(packs);
    }

    /**
     * What is left over after the batch.
     *
     * @return bought minus needed, at least 0
     */
    public Amount<Mass> leftOver() {
        Ratio needed = masses.stream().map(Explained::result).reduce(Ratio.ZERO, Ratio::plus);
        return bought().minus(Amount.grams(needed));
    }

    @Override
    public Phrase question() {
        return Phrase.of("question.purchase-cost", ingredient.name());
    }

    /** The exact cost in the currency of the price list. */
    @Override
    public Ratio result() {
        return packs.times(offer.price());
    }

    @Override
    public <V> V derive(Reckoning<V> r) {
        return r.named(COST, ingredient, r.product(packs(r), offer.price(r, ingredient)));
    }

    private <V> V packs(Reckoning<V> r) {
        List<V> needed = new ArrayList<>();
        for (Explained mass : masses) {
            needed.add(r.known(mass));
        }
        V size = offer.packSize(r, ingredient);
        V sum = needed.size() == 1 ? needed.get(0) : r.sum(needed);
        return r.named(COUNT, ingredient, r.rounded(r.quotient(sum, size), UP));
    }

    @Override
    public String toString() {
        return packs + " × " + offer + " " + ingredient.name();
    }
}
