package io.github.formulationmath.limit;

/**
 * One thing a limit counts in a product: all members of its group together, or one of them alone.
 *
 * @param index the place among all slots of a checker
 * @param limit the limit
 * @param applicability whether it is meant for the product
 * @param counted the substances that are added, in words
 */
record Slot(int index, UsageLimit limit, Applicability applicability, String counted) {}
