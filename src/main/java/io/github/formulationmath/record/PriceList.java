package io.github.formulationmath.record;

import io.github.formulationmath.formula.SubstanceName;
import java.io.Serial;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What ingredients cost, in one currency. An ingredient may be offered in several pack sizes; the first is the one that
 * the cost of what is used is reckoned with.
 *
 * <p>Example: {@code PriceList.empty().with("Glycerin", Offer.of("12.50", "250 g"))}.
 *
 * <p>Immutable and thread-safe.
 */
public final class PriceList implements Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private final Map<String, List<Offer>> offers;

    private PriceList(Map<String, List<Offer>> offers) {
        this.offers = new LinkedHashMap<>(offers);
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
     */
    public PriceList with(String ingredientName, Offer offer) {
        Map<String, List<Offer>> all = new LinkedHashMap<>(offers);
        List<Offer> of = new ArrayList<>(offersOf(ingredientName));
        of.add(Objects.requireNonNull(offer, "offer"));
        all.put(SubstanceName.normalise(ingredientName), List.copyOf(of));
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
    public boolean equals(@Nullable Object other) {
        return other instanceof PriceList that && offers.equals(that.offers);
    }

    @Override
    public int hashCode() {
        return offers.hashCode();
    }

    @Override
    public String toString() {
        return offers.toString();
    }
}
