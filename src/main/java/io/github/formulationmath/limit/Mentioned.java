package io.github.formulationmath.limit;

import io.github.formulationmath.formula.Substance;
import java.util.List;
import java.util.Objects;

/**
 * A substance that entries of the table name without counting it, for example to say that it is not meant, or not
 * allowed. They have to be read.
 *
 * @param substance the substance
 * @param limits the limits of those entries, at least one
 */
public record Mentioned(Substance substance, List<UsageLimit> limits) {

    /**
     * Copies.
     *
     * @param substance the substance
     * @param limits the limits
     */
    public Mentioned {
        Objects.requireNonNull(substance, "substance");
        limits = List.copyOf(Objects.requireNonNull(limits, "limits"));
    }
}
