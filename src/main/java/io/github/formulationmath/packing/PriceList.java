package io.github.formulationmath.packing;

import io.github.formulationmath.formula.SubstanceName;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Money;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Mass;

/**
 * What ingredients cost, in one currency. An ingredient may be offered in several pack sizes; the first is the one that
 * the cost of what is used is reckoned with.
 *
 * <p>Example: {@code PriceList.empty().with("Glycerin", Offer.of("12.50 EUR", "250 g"))}.
 *
 * <p>Immutable and thread-safe.
 *
 * @param offers the offers by the name of their ingredient, normalised as {@link SubstanceName} does
 */
public record PriceList(Map<String, List<Offer>> offers) implements Serializable {

    /**
     * Normalises the names and checks that there is one currency.
     *
     * @param offers the offers by the name of their ingredient
     * @throws IllegalArgumentException if prices are in two currencies
     */
    public PriceList {
        Map<String, List<Offer>> all = new LinkedHashMap<>();
        Objects.requireNonNull(offers, "offers")
                .forEach((name, list) -> all.put(SubstanceName.normalise(name), List.copyOf(list)));
        List<String> currencies = all.values().stream()
                .flatMap(Collection::stream)
                .map(offer -> offer.price().currency())
                .distinct()
                .toList();
        if (currencies.size() > 1) {
            throw new IllegalArgumentException(
                    "offers has prices in " + currencies + ": give all in one currency, nothing is exchanged here");
        }
        offers = all;
    }

    /**
     * The offers.
     *
     * @return an unmodifiable map by the normalised name of the ingredient
     */
    @Override
    public Map<String, List<Offer>> offers() {
        return Collections.unmodifiableMap(offers);
    }

    /**
     * A list with no prices yet.
     *
     * @return the empty list
     */
    public static PriceList empty() {
        return new PriceList(Map.of());
    }

    /**
     * The same list with one more offer.
     *
     * @param ingredientName the name of the ingredient, in any spelling that {@link SubstanceName} forgives
     * @param offer what a pack of it costs
     * @return the list with the offer behind those of the same ingredient
     * @throws IllegalArgumentException if its price is in another currency than those before
     */
    public PriceList with(String ingredientName, Offer offer) {
        Map<String, List<Offer>> all = new LinkedHashMap<>(offers);
        List<Offer> of = new ArrayList<>(offersOf(ingredientName));
        of.add(Objects.requireNonNull(offer, "offer"));
        all.put(SubstanceName.normalise(ingredientName), of);
        return new PriceList(all);
    }

    /**
     * What an ingredient is offered at.
     *
     * @param ingredientName the name of the ingredient, in any spelling that {@link SubstanceName} forgives
     * @return the offers in the order given; empty if there is none
     */
    public List<Offer> offersOf(String ingredientName) {
        return offers.getOrDefault(
                SubstanceName.normalise(Objects.requireNonNull(ingredientName, "ingredientName")), List.of());
    }

    Optional<Offer> firstOf(String ingredientName) {
        return offersOf(ingredientName).stream().findFirst();
    }

    @Override
    public String toString() {
        return offers.toString();
    }

    /**
     * What a pack of an ingredient costs.
     *
     * <p>Example: {@code Offer.of("12.50 EUR", "250 g")}, 0.05 EUR a gram.
     *
     * <p>Immutable and thread-safe.
     *
     * @param price what one pack costs, at least 0
     * @param packSize what is in it, above 0
     */
    public record Offer(Money price, Amount<Mass> packSize) implements Serializable {

        private static final Symbol PRICE = Symbol.of("P", "pack-price", Kind.MONEY);
        private static final Symbol SIZE = Symbol.of("Q", "pack-size", Kind.MASS);

        /**
         * Checks price and size.
         *
         * @param price what one pack costs, at least 0
         * @param packSize what is in it, above 0
         * @throws IllegalArgumentException if the price is negative or the pack size not above 0
         */
        public Offer {
            if (Objects.requireNonNull(price, "price").number().signum() < 0) {
                throw new IllegalArgumentException("price is " + Excerpt.of(price) + ": it must be at least 0");
            }
            Amount.requirePositive("packSize", packSize);
        }

        /**
         * An offer, as text.
         *
         * @param price what one pack costs, for example {@code "12.50 EUR"}
         * @param packSize what is in it, for example {@code "250 g"}
         * @return the offer
         * @throws IllegalArgumentException if a text cannot be read, or a number is out of range
         */
        public static Offer of(String price, String packSize) {
            return new Offer(Money.parse(Objects.requireNonNull(price, "price")), Amount.mass(packSize));
        }

        <V> V price(Reckoning<V> r, Subject ingredient) {
            return r.given(PRICE, ingredient, price.number(), Source.user());
        }

        <V> V packSize(Reckoning<V> r, Subject ingredient) {
            return r.given(SIZE, ingredient, packSize, Source.written(packSize.toString()));
        }

        @Override
        public String toString() {
            return price + " for " + packSize;
        }
    }
}
