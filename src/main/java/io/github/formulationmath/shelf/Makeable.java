package io.github.formulationmath.shelf;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.BalanceUnit;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.size.Sizes;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * Whether a shelf gives a formula at all, at a size that passes.
 *
 * <p>Immutable and thread-safe.
 */
public final class Makeable {

    private final Sizes sizes;
    private final Optional<Amount<Mass>> smallest;
    private final Optional<Amount<Mass>> largest;
    private final LargestBatch limit;

    private Makeable(Sizes sizes, Optional<Amount<Mass>> smallest, Optional<Amount<Mass>> largest, LargestBatch limit) {
        this.sizes = sizes;
        this.smallest = smallest;
        this.largest = largest;
        this.limit = limit;
    }

    static Makeable of(Sizes sizes, LargestBatch limit) {
        Optional<Amount<Mass>> smallest = sizes.smallest();
        Ratio most = limit.mass().canonical();
        Optional<Amount<Mass>> largest = smallest.filter(
                        least -> least.canonical().compareTo(most) <= 0)
                .flatMap(least -> sizes.atMost(limit.mass()));
        return new Makeable(sizes, smallest, largest, limit);
    }

    /**
     * The formula.
     *
     * @return what is to be made
     */
    public Formula formula() {
        return sizes.formula();
    }

    /**
     * The smallest passing size, whatever is on the shelf.
     *
     * @return the exact size; empty if none passes
     */
    public Optional<Amount<Mass>> smallest() {
        return smallest;
    }

    /**
     * The largest passing size that the shelf gives.
     *
     * @return the exact size; empty if it gives none
     */
    public Optional<Amount<Mass>> largest() {
        return largest;
    }

    /**
     * What the shelf gives, and what limits it.
     *
     * @return the largest batch, whether it passes or not
     */
    public LargestBatch limit() {
        return limit;
    }

    /**
     * Whether it can be made.
     *
     * @return true if the shelf gives a passing size
     */
    public boolean isMakeable() {
        return largest.isPresent();
    }

    /**
     * What is missing for the smallest passing size, ingredient by ingredient.
     *
     * @return an unmodifiable list; empty if it can be made, or no size passes at all
     */
    public List<LargestBatch.Shortage> missing() {
        return isMakeable() || smallest.isEmpty() ? List.of() : limit.shortFor(smallest.get());
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Makeable that
                && formula().equals(that.formula())
                && smallest.equals(that.smallest)
                && largest.equals(that.largest)
                && limit.equals(that.limit);
    }

    @Override
    public int hashCode() {
        return Objects.hash(formula(), smallest, largest, limit);
    }

    /** Up to which size, told as one that passes and that the shelf gives; or what is missing. */
    @Override
    public String toString() {
        if (largest.isPresent()) {
            return formula().name() + ": up to " + BalanceUnit.greatest(largest.get(), sizes::contains);
        }
        return formula().name() + ": not to be made"
                + missing().stream()
                        .map(LargestBatch.Shortage::toString)
                        .collect(Collectors.joining(", ", missing().isEmpty() ? "" : "; missing ", ""));
    }
}
