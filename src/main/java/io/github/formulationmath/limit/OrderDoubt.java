package io.github.formulationmath.limit;

/**
 * Two neighbours of an ingredient list whose order the weighing does not settle.
 *
 * @param listed the one that stands first, having the larger share by its most likely value
 * @param next the one that may in truth have more
 */
public record OrderDoubt(ListedIngredient listed, ListedIngredient next) {}
