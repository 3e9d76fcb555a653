package io.github.formulationmath.choice;

import io.github.formulationmath.reckoning.Phrase;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * A demand that a set of equipment does not meet, why, and what would meet it, each opening tried by itself.
 *
 * <p>Immutable and thread-safe.
 *
 * @param demand what was asked for
 * @param reason why it is not met
 * @param openings what would meet it, with everything among the candidates; an unmodifiable list, empty if nothing that was tried
 *     does
 */
public record Unserved(Demand demand, Phrase reason, List<Phrase> openings) {

    /**
     * Keeps a copy.
     *
     * @param demand what was asked for
     * @param reason why it is not met
     * @param openings what would meet it
     */
    public Unserved {
        Objects.requireNonNull(demand, "demand");
        Objects.requireNonNull(reason, "reason");
        openings = List.copyOf(Objects.requireNonNull(openings, "openings"));
    }

    @Override
    public String toString() {
        return demand.formula().name() + ": " + reason
                + (openings.isEmpty()
                        ? ""
                        : openings.stream().map(Phrase::toString).collect(Collectors.joining("; or ", "; ", "")));
    }
}
