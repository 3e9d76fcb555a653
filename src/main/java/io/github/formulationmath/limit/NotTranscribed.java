package io.github.formulationmath.limit;

import io.github.formulationmath.formula.Substance;
import java.util.List;
import java.util.Objects;

/**
 * A substance of which entries speak that the table does not transcribe. They have to be read.
 *
 * @param substance the substance
 * @param entries the entries, at least one
 */
public record NotTranscribed(Substance substance, List<OmittedEntry> entries) {

    /**
     * Copies.
     *
     * @param substance the substance
     * @param entries the entries
     */
    public NotTranscribed {
        Objects.requireNonNull(substance, "substance");
        entries = List.copyOf(Objects.requireNonNull(entries, "entries"));
    }
}
