package io.github.formulationmath.packing;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchLine;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Line;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.packing.PriceList.Offer;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.pot.MadeLine;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Money;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Symbol;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.measure.quantity.Mass;

/**
 * What a batch costs: the exact cost of what is used, line by line and in all, per pack, and the cost of the packs that have
 * to be bought for it. Nothing is rounded until it is shown; {@link #shown} rounds as the caller says.
 *
 * <p>Example: 12 g at 12.50 EUR for 250 g cost exactly 0.60 EUR; a third of a batch of 1 EUR costs 1/3 EUR, shown as 0.33 EUR.
 *
 * <p>Immutable and thread-safe.
 *
 * @param lines the cost of each line, in the order of the formula
 * @param purchases the packs to buy, ingredient by ingredient
 * @param rounding how amounts of money are rounded where they are shown
 */
public record BatchCost(List<LineCost> lines, List<Purchase> purchases, Rounding rounding) implements Explained {

    private static final Symbol TOTAL = Symbol.of("K", "batch-cost", Kind.MONEY);
    private static final Symbol PACKS = Symbol.of("n", "packs", Kind.NUMBER);
    private static final Symbol PER_PACK = Symbol.of("k", "pack-cost", Kind.MONEY);
    private static final Symbol PURCHASES = Symbol.of("B", "purchases-cost", Kind.MONEY);

    /**
     * Copies the lists.
     *
     * @param lines the cost of each line, at least one
     * @param purchases the packs to buy
     * @param rounding how amounts of money are rounded where they are shown
     * @throws IllegalArgumentException if there is no line
     */
    public BatchCost {
        lines = List.copyOf(lines);
        purchases = List.copyOf(purchases);
        Objects.requireNonNull(rounding, "rounding");
        if (lines.isEmpty()) {
            throw new IllegalArgumentException("lines is empty: a batch has at least one line");
        }
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
        return of(batch.lines(), BatchLine::mass, prices, rounding);
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
        return of(made.lines(), MadeLine::mass, prices, rounding);
    }

    private static <L extends Line> BatchCost of(
            List<L> used, Function<L, Amount<Mass>> mass, PriceList prices, Rounding rounding) {
        Objects.requireNonNull(prices, "prices");
        Objects.requireNonNull(rounding, "rounding");
        List<LineCost> lines = used.stream()
                .map(each -> new LineCost(each.line(), mass.apply(each), requireOffer(prices, each.line())))
                .toList();
        Map<String, List<LineCost>> byIngredient = lines.stream()
                .collect(Collectors.groupingBy(
                        each -> each.line().ingredient().normalName(), LinkedHashMap::new, Collectors.toList()));
        List<Purchase> purchases = new ArrayList<>();
        byIngredient.forEach((name, group) -> purchases.add(Purchase.cheapest(
                group.get(0).line(), group.stream().map(LineCost::mass).toList(), prices.offersOf(name))));
        return new BatchCost(lines, purchases, rounding);
    }

    private static Offer requireOffer(PriceList prices, FormulaLine line) {
        return prices.firstOf(line.name())
                .orElseThrow(() -> new IllegalArgumentException("prices has no offer for " + Excerpt.of(line.name())
                        + ": add one, with a price of 0 if it costs nothing"));
    }

    /**
     * The cost of everything used.
     *
     * @return the exact cost in the currency of the price list, with its working
     */
    public Money total() {
        return money(total(Reckoning.plain()))
                .withWorking(cost -> Phrase.of("question.batch-cost"), this, BatchCost::total);
    }

    private <V> V total(Reckoning<V> r) {
        List<V> costs = new ArrayList<>();
        for (LineCost line : lines) {
            costs.add(r.known(line.cost()));
        }
        return r.named(TOTAL, r.sum(costs));
    }

    /** Where the {@link #total()} comes from. */
    @Override
    public Origin origin() {
        return total().origin();
    }

    /**
     * An exact amount of money as it is shown.
     *
     * @param amount the exact amount
     * @return its text under {@link #rounding()}, with the zeros that belong to it, and its currency
     */
    public String shown(Money amount) {
        return rounding.format(amount.number()) + " " + amount.currency();
    }

    /**
     * The cost of one pack.
     *
     * @param packs into how many packs the batch goes, above 0
     * @return the exact cost, with its working
     * @throws IllegalArgumentException if the number is not above 0
     */
    public Money perPack(int packs) {
        if (packs <= 0) {
            throw new IllegalArgumentException("packs is " + packs + ": it must be above 0");
        }
        Part part = new Part(this, packs);
        return money(part.cost(Reckoning.plain()))
                .withWorking(each -> Phrase.of("question.pack-cost"), part, Part::cost);
    }

    private record Part(BatchCost all, int packs) {

        <V> V cost(Reckoning<V> r) {
            V count = r.given(PACKS, Ratio.of(packs), Source.user());
            return r.named(PER_PACK, r.quotient(all.total(r), count));
        }
    }

    /**
     * What all packs to buy cost.
     *
     * @return the exact cost, with its working
     */
    public Money purchaseCost() {
        return money(purchaseCost(Reckoning.plain()))
                .withWorking(cost -> Phrase.of("question.purchases-cost"), this, BatchCost::purchaseCost);
    }

    private <V> V purchaseCost(Reckoning<V> r) {
        List<V> costs = new ArrayList<>();
        for (Purchase purchase : purchases) {
            costs.add(r.known(purchase.cost()));
        }
        return r.named(PURCHASES, r.sum(costs));
    }

    private Money money(Ratio number) {
        return Money.of(number, lines.get(0).offer().price().currency());
    }

    @Override
    public String toString() {
        return "cost " + shown(total()) + ", to buy " + shown(purchaseCost());
    }

    /**
     * What one line costs: its mass times the price of a pack over what is in it.
     *
     * <p>Example: 12 g at 12.50 EUR for 250 g cost 0.60 EUR.
     *
     * <p>Immutable and thread-safe.
     *
     * @param line the line of the formula
     * @param mass how much of it is used
     * @param offer the offer it is reckoned with, the first of the ingredient
     */
    public record LineCost(FormulaLine line, Amount<Mass> mass, Offer offer) {

        private static final Symbol COST = Symbol.of("K", "line-cost", Kind.MONEY);

        /**
         * Refuses null.
         *
         * @param line the line of the formula
         * @param mass how much of it is used
         * @param offer the offer it is reckoned with
         */
        public LineCost {
            Objects.requireNonNull(line, "line");
            Objects.requireNonNull(mass, "mass");
            Objects.requireNonNull(offer, "offer");
        }

        /**
         * The cost.
         *
         * @return the exact cost in the currency of the price list, with its working
         */
        public Money cost() {
            return Money.of(cost(Reckoning.plain()), offer.price().currency())
                    .withWorking(line -> Phrase.of("question.line-cost", line.line.name()), this, LineCost::cost);
        }

        private <V> V cost(Reckoning<V> r) {
            V price = offer.price(r, line);
            V size = offer.packSize(r, line);
            return r.named(COST, line, r.quotient(r.product(r.known(mass), price), size));
        }

        @Override
        public String toString() {
            return line.name() + " " + cost().toldExactly();
        }
    }

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
            needed = List.copyOf(Objects.requireNonNull(needed, "needed"));
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
                    .withWorking(
                            bought -> Phrase.of("question.purchase-cost", bought.line.name()), this, Purchase::cost);
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
}
