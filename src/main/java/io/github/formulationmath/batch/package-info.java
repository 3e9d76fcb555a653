/**
 * From a formula to a batch: what fixes the size, and the exact mass of every line.
 *
 * <p>Reading order: {@link io.github.formulationmath.batch.BatchSize}, {@link
 * io.github.formulationmath.batch.Batch}, {@link io.github.formulationmath.batch.BatchLine}. Nothing is rounded here;
 * what a display shows is the business of planning.
 *
 * <p>May depend on {@code formula}, {@code reckoning}, {@code quantity} and {@code number}.
 */
@NullMarked
package io.github.formulationmath.batch;

import org.jspecify.annotations.NullMarked;
