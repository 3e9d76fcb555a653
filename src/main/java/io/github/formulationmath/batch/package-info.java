/**
 * From a formula to a batch: what fixes the size, and the exact mass of every line.
 *
 * <p><b>What comes in:</b> a formula, and what fixes its size: a mass, packs, a stock, a volume. <b>What goes out:</b> {@link
 * io.github.formulationmath.batch.Batch}, the mass of the whole and of every line.
 *
 * <p>Reading order: {@link io.github.formulationmath.batch.BatchSize}, {@link
 * io.github.formulationmath.batch.Batch}, {@link io.github.formulationmath.batch.BatchLine}.
 *
 * <p><b>Why it is right:</b> nothing is rounded here, so that the lines add up to the batch because the shares add up to 1; what a
 * display shows is the business of {@code plan}.
 */
@NullMarked
package io.github.formulationmath.batch;

import org.jspecify.annotations.NullMarked;
