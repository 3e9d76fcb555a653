package io.github.formulationmath.record;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Source;
import io.github.formulationmath.working.Subject;
import io.github.formulationmath.working.Symbol;
import java.io.Serial;
import java.io.Serializable;
import java.util.Objects;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * What a pack of an ingredient costs. Money is a plain exact number in whatever currency the caller uses; one price list
 * uses one currency.
 *
 * <p>Example: {@code Offer.of("12.50", "250 g")} makes 0.05 a gram.
 *
 * <p>Immutable and thread-safe.
 */
public final class Offer implements Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private static final Symbol PRICE = Symbol.of("P", "pack-price", Kind.MONEY);
    private static final Symbol SIZE = Symbol.of("Q", "pack-size", Kind.MASS);

    private final Ratio price;
    private final Amount<Mass> packSize;

    private Offer(Ratio price, Amount<Mass> packSize) {
        this.price = price;
        this.packSize = packSize;
    }

    /**
     * An offer.
     *
     * @param price what one pack costs, at least 0
     * @param packSize what is in it, above 0
     * @return the offer
     * @throws IllegalArgumentException if the price is negative or the pack size not above 0
     */
    public static Offer of(Ratio price, Amount<Mass> packSize) {
        if (Objects.requireNonNull(price, "price").signum() < 0) {
            throw new IllegalArgumentException("price is " + Excerpt.of(price) + ": it must be at least 0");
        }
        return new Offer(price, Amount.requirePositive("packSize", packSize));
    }

    /**
     * An offer, as text.
     *
     * @param price what one pack costs, for example {@code "12.50"}
     * @param packSize what is in it, for example {@code "250 g"}
     * @return the offer
     * @throws IllegalArgumentException if a text cannot be read, or a number is out of range
     */
    public static Offer of(String price, String packSize) {
        return of(Ratio.parse(Objects.requireNonNull(price, "price")), Amount.mass(packSize));
    }

    /**
     * What one pack costs.
     *
     * @return the price, at least 0
     */
    public Ratio price() {
        return price;
    }

    /**
     * What is in a pack.
     *
     * @return its size, above 0
     */
    public Amount<Mass> packSize() {
        return packSize;
    }

    <V> V price(Reckoning<V> r, Subject ingredient) {
        return r.given(PRICE, ingredient, price, Source.user());
    }

    <V> V packSize(Reckoning<V> r, Subject ingredient) {
        return r.given(SIZE, ingredient, packSize.in(FormulationUnits.GRAM), Source.written(packSize.toString()));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Offer that && price.equals(that.price) && packSize.equals(that.packSize);
    }

    @Override
    public int hashCode() {
        return Objects.hash(price, packSize);
    }

    @Override
    public String toString() {
        return price + " for " + packSize;
    }
}
