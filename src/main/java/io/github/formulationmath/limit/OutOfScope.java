package io.github.formulationmath.limit;

import io.github.formulationmath.formula.Substance;
import java.util.List;
import java.util.Objects;

/**
 * A substance that a table knows, but not for such a product: no limit of its entry covers the product, or the purpose
 * that was stated for the substance. If the entry allows the substance in other products only, that is no finding like
 * this one but a verdict, {@link Conformity#PROHIBITED}.
 *
 * @param substance the substance
 * @param limits the limits, all of them for something else
 * @param otherPurpose whether they were left out because of the purpose that was stated
 */
public record OutOfScope(Substance substance, List<UsageLimit> limits, boolean otherPurpose) {

    /**
     * Copies.
     *
     * @param substance the substance
     * @param limits the limits
     * @param otherPurpose whether they are for another purpose
     */
    public OutOfScope {
        Objects.requireNonNull(substance, "substance");
        limits = List.copyOf(Objects.requireNonNull(limits, "limits"));
    }

    /**
     * Whether the printed entry has to be read: it says something of other products, or the stated purpose left it out.
     *
     * @return false if the entry has nothing to say of such a product
     */
    public boolean mustBeRead() {
        return otherPurpose || limits.stream().anyMatch(limit -> limit.outsideScope() != OutsideScope.NONE);
    }
}
