package io.github.formulationmath.limit;

import io.github.formulationmath.formula.Substance;
import java.util.List;
import java.util.Objects;

/**
 * A substance that a table knows, but not for such a product: no limit of its entry covers the product. The entry may say
 * that the substance is then not allowed.
 *
 * @param substance the substance
 * @param limits the limits, all of them for other products
 */
public record OutOfScope(Substance substance, List<UsageLimit> limits) {

    /**
     * Copies.
     *
     * @param substance the substance
     * @param limits the limits
     */
    public OutOfScope {
        Objects.requireNonNull(substance, "substance");
        limits = List.copyOf(Objects.requireNonNull(limits, "limits"));
    }

    /**
     * Whether an entry allows the substance only in other products.
     *
     * @return true if it does; if false, the printed entry has to be read
     */
    public boolean isNotAllowed() {
        return limits.stream().anyMatch(limit -> limit.outsideScope() == OutsideScope.NOT_ALLOWED);
    }
}
