package io.github.formulationmath.amendment;

import java.io.Serializable;
import java.time.LocalDate;
import java.util.Objects;

/**
 * The day as of which a check asks, and what is asked: may the product be placed on the market, may it still be made
 * available.
 *
 * <p>Example: {@code AsOf.placing(LocalDate.of(2026, 11, 25))}.
 *
 * @param day the day, as the caller gives it
 * @param dealing what is asked
 */
public record AsOf(LocalDate day, Dealing dealing) implements Serializable {

    /**
     * Checks.
     *
     * @param day the day
     * @param dealing what is asked
     */
    public AsOf {
        Objects.requireNonNull(day, "day");
        Objects.requireNonNull(dealing, "dealing");
    }

    /**
     * May it be placed on the market on this day?
     *
     * @param day the day
     * @return the question
     */
    public static AsOf placing(LocalDate day) {
        return new AsOf(day, Dealing.PLACING);
    }

    /**
     * May what was placed in time still be made available on this day?
     *
     * @param day the day
     * @return the question
     */
    public static AsOf makingAvailable(LocalDate day) {
        return new AsOf(day, Dealing.MAKING_AVAILABLE);
    }

    /**
     * Whether a product that does not comply with a change is too late on that day.
     *
     * @param amendment the change
     * @return true from the day after the last one on which such products are let through
     */
    public boolean isBoundBy(LegalChange amendment) {
        Objects.requireNonNull(amendment, "amendment");
        LocalDate last = dealing == Dealing.PLACING ? amendment.placedUntil() : amendment.availableUntil();
        return day.isAfter(last);
    }

    @Override
    public String toString() {
        return dealing + " on " + day;
    }

    /** What is asked of a product on a day: a maker places it on the market, a shop makes it available. */
    public enum Dealing {
        /** The first supply, as a maker does it. */
        PLACING("placing on the market"),
        /** Any later supply, as a shop does it, of what was placed in time. */
        MAKING_AVAILABLE("making available");

        private final String words;

        Dealing(String words) {
            this.words = words;
        }

        @Override
        public String toString() {
            return words;
        }
    }
}
