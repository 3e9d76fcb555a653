package io.github.formulationmath.limit;

import io.github.formulationmath.formula.Substance;
import java.util.List;
import java.util.Objects;

/**
 * A substance of which a table speaks without counting it. If an entry allows a substance in other products only, that is
 * no finding like this one but a verdict, {@link Conformity#PROHIBITED}.
 *
 * @param substance the substance, or the material under its own name
 * @param why why it is not counted
 * @param limits the limits, for something else or of entries that only mention it; empty if the entries are not transcribed
 * @param entries the entries that are not transcribed; empty if there are limits
 */
public record Uncounted(Substance substance, Why why, List<UsageLimit> limits, List<OmittedEntry> entries) {

    /** Why a substance of which a table speaks is not counted. */
    public enum Why {
        /** The table does not transcribe the entries that speak of it. */
        NOT_TRANSCRIBED,
        /** Entries name it without counting it, for example to say that it is not meant, or not allowed. */
        MENTIONED,
        /** No limit of its entry covers the product. */
        OTHER_PRODUCTS,
        /** No limit of its entry covers the purpose that was stated for it. */
        OTHER_PURPOSE
    }

    /**
     * Copies.
     *
     * @param substance the substance
     * @param why why it is not counted
     * @param limits the limits
     * @param entries the entries
     */
    public Uncounted {
        Objects.requireNonNull(substance, "substance");
        Objects.requireNonNull(why, "why");
        limits = List.copyOf(Objects.requireNonNull(limits, "limits"));
        entries = List.copyOf(Objects.requireNonNull(entries, "entries"));
    }

    /**
     * Whether the limits were left out because of the purpose that was stated.
     *
     * @return false if it was for anything else
     */
    public boolean otherPurpose() {
        return why == Why.OTHER_PURPOSE;
    }

    /**
     * Whether the printed entry has to be read.
     *
     * @return false if it is for other products and has nothing to say of such a product
     */
    public boolean mustBeRead() {
        return why != Why.OTHER_PRODUCTS || limits.stream().anyMatch(limit -> limit.outside() != OutsideScope.NONE);
    }
}
