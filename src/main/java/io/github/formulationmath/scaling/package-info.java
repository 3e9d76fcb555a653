/**
 * From a formula to a batch: what fixes the size, and the exact mass of every line.
 *
 * <p>Reading order: {@link io.github.formulationmath.scaling.BatchSize}, {@link
 * io.github.formulationmath.scaling.Batch}, {@link io.github.formulationmath.scaling.BatchLine}. Nothing is rounded here;
 * what a display shows is the business of planning.
 *
 * <p>May depend on {@code formula}, {@code working}, {@code quantity} and {@code number}.
 */
@NullMarked
package io.github.formulationmath.scaling;

import org.jspecify.annotations.NullMarked;
