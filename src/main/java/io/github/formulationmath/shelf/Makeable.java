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

/**
 * Whether a shelf gives a formula at all, at a size that passes.
 *
 * <p>Immutable and thread-safe.
 *
 * @param formula the formula
 * @param smallest the smallest passing size, whatever is on the shelf; empty if none passes
 * @param largest the largest passing size that the shelf gives; empty if it gives none
 * @param limit what the shelf gives, and what limits it
 */
public record Makeable(
        Formula formula, Optional<Amount<Mass>> smallest, Optional<Amount<Mass>> largest, LargestBatch limit) {

    /**
     * Refuses null.
     *
     * @param formula the formula
     * @param smallest the smallest passing size
     * @param largest the largest passing size that the shelf gives
     * @param limit what the shelf gives
     */
    public Makeable {
        Objects.requireNonNull(formula, "formula");
        Objects.requireNonNull(smallest, "smallest");
        Objects.requireNonNull(largest, "largest");
        Objects.requireNonNull(limit, "limit");
    }

    static Makeable of(Sizes sizes, LargestBatch limit) {
        Optional<Amount<Mass>> smallest = sizes.smallest();
        Ratio most = limit.mass().canonical();
        Optional<Amount<Mass>> largest = smallest.filter(
                        least -> least.canonical().compareTo(most) <= 0)
                .flatMap(least -> sizes.atMost(limit.mass()));
        return new Makeable(sizes.formula(), smallest, largest, limit);
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
    public String toString() {
        if (largest.isPresent()) {
            return formula.name() + ": up to " + BalanceUnit.text(largest.get());
        }
        return formula.name() + ": not to be made"
                + missing().stream()
                        .map(each -> each.ingredientName() + " " + BalanceUnit.text(each.missing()))
                        .collect(Collectors.joining(", ", missing().isEmpty() ? "" : "; missing ", ""));
    }
}
