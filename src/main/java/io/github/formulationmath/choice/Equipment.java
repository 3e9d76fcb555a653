package io.github.formulationmath.choice;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.quantity.Money;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Vessel;
import java.io.Serializable;
import java.util.Objects;

/**
 * Something that could stand on the bench, and what it costs: a balance, a pot in which batches are made, or a boat from which
 * additions are poured over. What is there already costs 0.
 *
 * <p>Example: {@code Equipment.balance(Balance.of("0.01 g", "200 g").named("pocket"), "24.90 EUR")}.
 *
 * <p>Immutable and thread-safe.
 */
public sealed interface Equipment extends Serializable {

    /**
     * What it is called.
     *
     * @return its name; of a balance without one, its step and capacity
     */
    String name();

    /**
     * What it costs.
     *
     * @return the price, at least 0; 0 for what is there already
     */
    Money price();

    /**
     * Whether it is there already.
     *
     * @return true if the price is 0
     */
    default boolean isOwned() {
        return price().number().isZero();
    }

    /**
     * A balance.
     *
     * @param balance the balance
     * @param price what it costs, at least 0; 0 if it is there already
     */
    record OfBalance(Balance balance, Money price) implements Equipment {

        /**
         * Checks the price.
         *
         * @param balance the balance
         * @param price what it costs
         * @throws IllegalArgumentException if the price is negative
         */
        public OfBalance {
            Objects.requireNonNull(balance, "balance");
            requirePrice(price);
        }

        @Override
        public String name() {
            return balance.name().isEmpty()
                    ? "balance " + balance.readability() + " to " + balance.capacity()
                    : balance.name();
        }

        @Override
        public String toString() {
            return name() + ", " + price;
        }
    }

    /**
     * A pot in which a batch is made, with its mass and, where known, its volume.
     *
     * @param vessel the pot
     * @param price what it costs, at least 0; 0 if it is there already
     */
    record OfPot(Vessel vessel, Money price) implements Equipment {

        /**
         * Checks the price.
         *
         * @param vessel the pot
         * @param price what it costs
         * @throws IllegalArgumentException if the price is negative
         */
        public OfPot {
            Objects.requireNonNull(vessel, "vessel");
            requirePrice(price);
        }

        @Override
        public String name() {
            return vessel.name();
        }

        @Override
        public String toString() {
            return name() + ", " + price;
        }
    }

    /**
     * A boat in which single additions are weighed, one after another, and poured over into the pot. It is never the pot.
     *
     * @param vessel the boat
     * @param price what it costs, at least 0; 0 if it is there already
     */
    record OfBoat(Vessel vessel, Money price) implements Equipment {

        /**
         * Checks the price.
         *
         * @param vessel the boat
         * @param price what it costs
         * @throws IllegalArgumentException if the price is negative
         */
        public OfBoat {
            Objects.requireNonNull(vessel, "vessel");
            requirePrice(price);
        }

        @Override
        public String name() {
            return vessel.name();
        }

        @Override
        public String toString() {
            return name() + ", " + price;
        }
    }

    /**
     * A balance and its price.
     *
     * @param balance the balance
     * @param price for example {@code "24.90 EUR"}; 0 if it is there already
     * @return the balance with its price
     * @throws IllegalArgumentException if the text is no price, or it is negative
     */
    static Equipment balance(Balance balance, String price) {
        return new OfBalance(balance, Money.parse(Objects.requireNonNull(price, "price")));
    }

    /**
     * A pot and its price.
     *
     * @param vessel the pot
     * @param price for example {@code "6.50 EUR"}; 0 if it is there already
     * @return the pot with its price
     * @throws IllegalArgumentException if the text is no price, or it is negative
     */
    static Equipment pot(Vessel vessel, String price) {
        return new OfPot(vessel, Money.parse(Objects.requireNonNull(price, "price")));
    }

    /**
     * A boat and its price.
     *
     * @param vessel the boat
     * @param price for example {@code "1.20 EUR"}; 0 if it is there already
     * @return the boat with its price
     * @throws IllegalArgumentException if the text is no price, or it is negative
     */
    static Equipment boat(Vessel vessel, String price) {
        return new OfBoat(vessel, Money.parse(Objects.requireNonNull(price, "price")));
    }

    private static void requirePrice(Money price) {
        if (Objects.requireNonNull(price, "price").number().signum() < 0) {
            throw new IllegalArgumentException("price is " + Excerpt.of(price) + ": it must be at least 0");
        }
    }
}
