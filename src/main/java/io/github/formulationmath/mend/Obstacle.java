package io.github.formulationmath.mend;

import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Phrase;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Mass;

/**
 * What stands in the way of a correction.
 *
 * <p>Example: 12 g of an oil would be needed and 7 g are left: the kind is {@link Kind#STOCK_OUT}, short by 5 g.
 *
 * <p>Immutable and thread-safe.
 *
 * @param kind what stands in the way
 * @param name which line, substance or condition it is; empty for the vessel
 * @param shortBy how much more would be needed to restore the formula exactly, where it can be said
 */
public record Obstacle(Kind kind, String name, Optional<Amount<Mass>> shortBy) {

    /** The kinds of obstacles. */
    public enum Kind {

        /** Nothing can be added to the line any more. */
        LINE_FROZEN("obstacle.line-frozen"),

        /** Not enough of the ingredient is left. */
        STOCK_OUT("obstacle.stock-out"),

        /** The balance, the vessel or the pot holds no more. */
        VESSEL_FULL("obstacle.vessel-full"),

        /** The cap of a substance. */
        CAP("obstacle.cap"),

        /** A {@link Condition} of the rules. */
        CONDITION("obstacle.condition"),

        /** The line has to be brought up to its tolerance. */
        LINE_TOO_LITTLE("obstacle.line-too-little"),

        /** The line has to be brought down to its tolerance. */
        LINE_TOO_MUCH("obstacle.line-too-much");

        private final String key;

        Kind(String key) {
            this.key = key;
        }
    }

    /**
     * Refuses null.
     *
     * @param kind what stands in the way
     * @param name which line, substance or condition it is
     * @param shortBy how much more would be needed
     */
    public Obstacle {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(shortBy, "shortBy");
    }

    /**
     * The obstacle in words.
     *
     * @return a phrase of the wording
     */
    public Phrase phrase() {
        return shortBy.map(mass -> Phrase.of(kind.key + "-by", name, mass.told()))
                .orElseGet(() -> Phrase.of(kind.key, name));
    }

    @Override
    public String toString() {
        return kind
                + (name.isEmpty() ? "" : " " + name)
                + shortBy.map(mass -> ", short by " + mass.told()).orElse("");
    }
}
