package io.github.formulationmath.packing;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Money;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Symbol;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import javax.measure.quantity.Mass;

/**
 * The packs of one ingredient that have to be bought for a batch: as many of one size as cover what all its lines need, of
 * the offer that is cheapest in all; of two equally cheap, the smaller amount. Mixed sizes are not tried.
 *
 * <p>Example: 12 g at 12.50 EUR for 250 g or 1.90 EUR for 10 g: two of 10 g cost 3.80 EUR, one of 250 g 12.50 EUR; two of
 * 10 g are bought and 8 g left over.
 *
 * <p>Immutable and thread-safe.
 *
 * @param line the first line of the ingredient
 * @param needed what each line of the ingredient needs, in the order of the formula
 * @param offer the offer that is taken
 */
public record Purchase(FormulaLine line, List<Amount<Mass>> needed, Offer offer) {

    private static final Symbol COUNT = Symbol.of("N", "packs-to-buy", Kind.NUMBER);
    private static final Symbol COST = Symbol.of("B", "purchase-cost", Kind.MONEY);
    private static final Rounding UP = Rounding.toDecimalPlaces(0).with(RoundingMode.CEILING);

    /**
     * Copies what is needed.
     *
     * @param line the first line of the ingredient
     * @param needed what each line of the ingredient needs
     * @param offer the offer that is taken
     */
    public Purchase {
        Objects.requireNonNull(line, "line");
        needed = List.copyOf(needed);
        Objects.requireNonNull(offer, "offer");
    }

    /** The cheapest of several offers. */
    static Purchase cheapest(FormulaLine line, List<Amount<Mass>> needed, List<Offer> offers) {
        return offers.stream()
                .map(offer -> new Purchase(line, needed, offer))
                .min(Comparator.comparing((Purchase each) -> each.cost()).thenComparing(Purchase::bought))
                .orElseThrow();
    }

    /**
     * The ingredient.
     *
     * @return its name
     */
    public String ingredientName() {
        return line.name();
    }

    /**
     * How many packs are bought.
     *
     * @return a whole number
     */
    public Ratio packs() {
        return packs(Reckoning.plain());
    }

    /**
     * How much is bought.
     *
     * @return the contents of all packs
     */
    public Amount<Mass> bought() {
        return offer.packSize().times(packs());
    }

    /**
     * What is left over after the batch.
     *
     * @return bought minus needed, at least 0
     */
    public Amount<Mass> leftOver() {
        Amount<Mass> left = bought();
        for (Amount<Mass> mass : needed) {
            left = left.minus(mass);
        }
        return left;
    }

    /**
     * What the packs cost.
     *
     * @return the exact cost in the currency of the price list, with its working
     */
    public Money cost() {
        return offer.price()
                .times(packs())
                .withWorking(bought -> Phrase.of("question.purchase-cost", bought.line.name()), this, Purchase::cost);
    }

    private <V> V cost(Reckoning<V> r) {
        return r.named(COST, line, r.product(packs(r), offer.price(r, line)));
    }

    private <V> V packs(Reckoning<V> r) {
        List<V> masses = new ArrayList<>();
        for (Amount<Mass> mass : needed) {
            masses.add(r.known(mass));
        }
        V size = offer.packSize(r, line);
        V sum = r.sum(masses);
        return r.named(COUNT, line, r.rounded(r.quotient(sum, size), UP));
    }

    @Override
    public String toString() {
        return packs() + " × " + offer + " " + line.name();
    }
}
