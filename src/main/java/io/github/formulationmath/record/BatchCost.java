package io.github.formulationmath.record;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.scaling.Batch;
import io.github.formulationmath.scaling.BatchLine;
import io.github.formulationmath.working.Explained;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Source;
import io.github.formulationmath.working.Symbol;
import io.github.formulationmath.working.Working;
import java.io.Serial;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * What a batch costs: the exact cost of what is used, line by line and in all, per pack, and the cost of the packs that have
 * to be bought for it. Nothing is rounded until it is shown; {@link #shown} rounds as the caller says.
 *
 * <p>Example: 12 g at 12.50 for 250 g cost exactly 0.60; a third of a batch of 1.00 costs 1/3, shown as 0.33.
 *
 * <p>Immutable and thread-safe.
 */
public final class BatchCost implements Explained, Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private static final Symbol TOTAL = Symbol.of("K", "batch-cost", Kind.MONEY);
    private static final Symbol PACKS = Symbol.of("n", "packs", Kind.NUMBER);
    private static final Symbol PER_PACK = Symbol.of("k", "pack-cost", Kind.MONEY);
    private static final Symbol PURCHASES = Symbol.of("B", "purchases-cost", Kind.MONEY);

    private final List<LineCost> lines;
    private final List<Purchase> purchases;
    private final Rounding rounding;

    private BatchCost(List<LineCost> lines, List<Purchase> purchases, Rounding rounding) {
        this.lines = Collections.unmodifiableList(lines);
        this.purchases = Collections.unmodifiableList(purchases);
        this.rounding = rounding;
    }

    /**
     * The cost of a batch as planned.
     *
     * @param batch the batch
     * @param prices what its ingredients cost
     * @param rounding how amounts of money are rounded where they are shown, for example to two decimal places
     * @return the cost
     * @throws IllegalArgumentException if an ingredient has no price; give a price of 0 for what costs nothing
     */
    public static BatchCost of(Batch batch, PriceList prices, Rounding rounding) {
        Objects.requireNonNull(batch, "batch");
        List<Used> used = new ArrayList<>();
        for (BatchLine line : batch.lines()) {
            used.add(new Used(line, line.line()));
        }
        return of(used, prices, rounding);
    }

    /**
     * The cost of what was really put into the pot.
     *
     * @param made the batch as made
     * @param prices what its ingredients cost
     * @param rounding how amounts of money are rounded where they are shown
     * @return the cost
     * @throws IllegalArgumentException if an ingredient has no price
     */
    public static BatchCost of(MadeBatch made, PriceList prices, Rounding rounding) {
        Objects.requireNonNull(made, "made");
        List<Used> used = new ArrayList<>();
        for (MadeLine line : made.lines()) {
            used.add(new Used(line, line.line()));
        }
        return of(used, prices, rounding);
    }

    private record Used(Explained mass, FormulaLine line) {}

    private static BatchCost of(List<Used> used, PriceList prices, Rounding rounding) {
        Objects.requireNonNull(prices, "prices");
        Objects.requireNonNull(rounding, "rounding");
        List<LineCost> lines = new ArrayList<>();
        Map<String, List<Used>> byIngredient = new LinkedHashMap<>();
        for (Used each : used) {
            lines.add(new LineCost(each.mass(), each.line(), requireOffer(prices, each.line())));
            byIngredient
                    .computeIfAbsent(each.line().ingredient().normalName(), n -> new ArrayList<>())
                    .add(each);
        }
        List<Purchase> purchases = new ArrayList<>();
        byIngredient.forEach((name, group) -> purchases.add(Purchase.cheapest(
                group.get(0).line(), group.stream().map(Used::mass).toList(), prices.offersOf(name))));
        return new BatchCost(lines, purchases, rounding);
    }

    private static Offer requireOffer(PriceList prices, FormulaLine line) {
        return prices.firstOf(line.name())
                .orElseThrow(() -> new IllegalArgumentException("prices has no offer for " + Excerpt.of(line.name())
                        + ": add one, with a price of 0 if it costs nothing"));
    }

    /**
     * The cost of each line, in the order of the formula.
     *
     * @return an unmodifiable list of exact costs
     */
    public List<LineCost> lines() {
        return lines;
    }

    /**
     * The packs to buy, ingredient by ingredient.
     *
     * @return an unmodifiable list
     */
    public List<Purchase> purchases() {
        return purchases;
    }

    /**
     * How amounts of money are rounded where they are shown.
     *
     * @return the rounding as given
     */
    public Rounding rounding() {
        return rounding;
    }

    /**
     * An exact amount of money as it is shown.
     *
     * @param amount the exact amount
     * @return its text under {@link #rounding()}, with the zeros that belong to it
     */
    public String shown(Ratio amount) {
        return rounding.format(Objects.requireNonNull(amount, "amount"));
    }

    /**
     * The cost of one pack.
     *
     * @param packs into how many packs the batch goes, above 0
     * @return the exact cost
     * @throws IllegalArgumentException if the number is not above 0
     */
    public Ratio perPack(int packs) {
        return perPack(Reckoning.plain(), packs);
    }

    /**
     * How {@link #perPack} comes about.
     *
     * @param packs into how many packs the batch goes, above 0
     * @return the working
     * @throws IllegalArgumentException if the number is not above 0
     */
    public Working perPackWorking(int packs) {
        return Working.of(Phrase.of("question.pack-cost"), perPack(packs), r -> perPack(r, packs));
    }

    private <V> V perPack(Reckoning<V> r, int packs) {
        if (packs <= 0) {
            throw new IllegalArgumentException("packs is " + packs + ": it must be above 0");
        }
        V count = r.given(PACKS, Ratio.of(packs), Source.user());
        return r.named(PER_PACK, r.quotient(derive(r), count));
    }

    /**
     * What all packs to buy cost.
     *
     * @return the exact cost
     */
    public Ratio purchaseCost() {
        return purchaseCost(Reckoning.plain());
    }

    /**
     * How {@link #purchaseCost} comes about.
     *
     * @return the working
     */
    public Working purchaseCostWorking() {
        return Working.of(Phrase.of("question.purchases-cost"), purchaseCost(), this::purchaseCost);
    }

    private <V> V purchaseCost(Reckoning<V> r) {
        List<V> costs = new ArrayList<>();
        for (Purchase purchase : purchases) {
            costs.add(r.known(purchase));
        }
        return r.named(PURCHASES, r.sum(costs));
    }

    @Override
    public Phrase question() {
        return Phrase.of("question.batch-cost");
    }

    /** The exact cost of everything used, in the currency of the price list. */
    @Override
    public Ratio result() {
        return derive(Reckoning.plain());
    }

    @Override
    public <V> V derive(Reckoning<V> r) {
        List<V> costs = new ArrayList<>();
        for (LineCost line : lines) {
            costs.add(r.known(line));
        }
        return r.named(TOTAL, r.sum(costs));
    }

    @Override
    public String toString() {
        return "cost " + result() + ", to buy " + purchaseCost();
    }
}
