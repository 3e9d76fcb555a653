package io.github.formulationmath.record;

import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.working.Phrase;
import java.io.Serial;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * What stands in the way of a correction.
 *
 * <p>Example: 12 g of an oil would be needed and 7 g are left: the kind is {@link Kind#STOCK_OUT}, short by 5 g.
 *
 * <p>Immutable and thread-safe.
 */
public final class Obstacle implements Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

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
        /** The line has to be brought up to its tolerance. */
        LINE_TOO_LITTLE("obstacle.line-too-little"),
        /** The line has to be brought down to its tolerance. */
        LINE_TOO_MUCH("obstacle.line-too-much");

        private final String key;

        Kind(String key) {
            this.key = key;
        }
    }

    private final Kind kind;
    private final String name;
    private final @Nullable Amount<Mass> shortBy;

    Obstacle(Kind kind, String name, @Nullable Amount<Mass> shortBy) {
        this.kind = kind;
        this.name = name;
        this.shortBy = shortBy;
    }

    /**
     * The kind.
     *
     * @return what stands in the way
     */
    public Kind kind() {
        return kind;
    }

    /**
     * Which line or substance it is.
     *
     * @return its name; empty for the vessel
     */
    public String name() {
        return name;
    }

    /**
     * How much more would be needed to restore the formula exactly.
     *
     * @return the missing mass, where it can be said
     */
    public Optional<Amount<Mass>> shortBy() {
        return Optional.ofNullable(shortBy);
    }

    /**
     * The obstacle in words.
     *
     * @return a phrase of the wording
     */
    public Phrase phrase() {
        return shortBy == null ? Phrase.of(kind.key, name) : Phrase.of(kind.key + "-by", name, shortBy.toString());
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Obstacle that
                && kind == that.kind
                && name.equals(that.name)
                && Objects.equals(shortBy, that.shortBy);
    }

    @Override
    public int hashCode() {
        return Objects.hash(kind, name, shortBy);
    }

    @Override
    public String toString() {
        return kind + (name.isEmpty() ? "" : " " + name) + (shortBy == null ? "" : ", short by " + shortBy);
    }
}
