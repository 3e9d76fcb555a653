package io.github.formulationmath.limit;

import java.util.Objects;

/**
 * Two neighbours of an ingredient list whose order the weighing does not settle.
 *
 * @param listed the one that stands first, having the larger share by its most likely value
 * @param next the one that may in truth have more
 */
public record OrderDoubt(ListedIngredient listed, ListedIngredient next) {

    /**
     * Checks.
     *
     * @param listed the one that stands first
     * @param next the one after it
     */
    public OrderDoubt {
        Objects.requireNonNull(listed, "listed");
        Objects.requireNonNull(next, "next");
    }
}
