/**
 * From a batch to the bench: what the display must read line by line.
 *
 * <p>Reading order: {@link io.github.formulationmath.planning.Bench} (balance, vessel, how the total is closed), {@link
 * io.github.formulationmath.planning.WeighingPlan}, {@link io.github.formulationmath.planning.PlannedLine}.
 *
 * <p>May depend on {@code scaling}, {@code weighing}, {@code limit} and what lies below them.
 */
@NullMarked
package io.github.formulationmath.planning;

import org.jspecify.annotations.NullMarked;
