package io.github.formulationmath.choice;

import io.github.formulationmath.quantity.Amount;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.measure.quantity.Mass;

/**
 * Part of the proof that no cheaper set does: with all candidates but these a demand is not met, so that one of them is needed. The
 * answer is the cheapest set that has something of every clause.
 *
 * <p>To check one: {@link EquipmentChoice#serving} of everything else leaves the demand unserved.
 *
 * <p>Immutable and thread-safe.
 *
 * @param demand the demand that is not met; empty if it is all of them together, under a total
 * @param totalBelow the total of all smallest batches that is not reached, of a clause about all of them
 * @param oneOf what is left out, at least one of which is needed; an unmodifiable list
 */
public record EquipmentClause(Optional<Demand> demand, Optional<Amount<Mass>> totalBelow, List<Equipment> oneOf) {

    /**
     * Keeps a copy.
     *
     * @param demand the demand that is not met
     * @param totalBelow the total that is not reached
     * @param oneOf what is left out
     */
    public EquipmentClause {
        Objects.requireNonNull(demand, "demand");
        Objects.requireNonNull(totalBelow, "totalBelow");
        oneOf = List.copyOf(Objects.requireNonNull(oneOf, "oneOf"));
    }

    @Override
    public String toString() {
        String who = demand.map(each -> each.formula().name() + " needs")
                .orElseGet(() -> totalBelow
                        .map(total -> "batches of less than " + total.toldExactly() + " together need")
                        .orElse("all need"));
        return who + oneOf.stream().map(Equipment::name).collect(Collectors.joining(", ", " one of {", "}"));
    }
}
