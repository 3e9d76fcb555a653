package io.github.formulationmath.packing;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Money;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import java.io.Serializable;
import java.util.Objects;
import javax.measure.quantity.Mass;

/**
 * What a pack of an ingredient costs.
 *
 * <p>Example: {@code Offer.of("12.50 EUR", "250 g")} is 0.05 EUR a gram.
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
        return r.given(SIZE, ingredient, packSize.canonical(), Source.written(packSize.toString()));
    }

    @Override
    public String toString() {
        return price + " for " + packSize;
    }
}
