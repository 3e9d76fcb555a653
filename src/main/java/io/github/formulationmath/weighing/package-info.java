/**
 * Balances and vessels: what can be put on the pan, how finely the display shows it, and how far what was really added may
 * be from what was wanted.
 *
 * <p>Reading order: {@link io.github.formulationmath.weighing.Balance}, {@link
 * io.github.formulationmath.weighing.Vessel}; then {@link io.github.formulationmath.weighing.ErrorModel}, {@link
 * io.github.formulationmath.weighing.WeighingMethod}, {@link io.github.formulationmath.weighing.Addition}, {@link
 * io.github.formulationmath.weighing.AdditionError} (one addition), {@link io.github.formulationmath.weighing.MadeMasses}
 * and {@link io.github.formulationmath.weighing.MadeShare} (all of them together), {@link
 * io.github.formulationmath.weighing.Weighed} (with the formula whose lines they are).
 *
 * <p>Of a formula it knows only that masses are of its lines. May depend on {@code formula}, {@code reckoning}, {@code
 * quantity} and {@code number}.
 */
@NullMarked
package io.github.formulationmath.weighing;

import org.jspecify.annotations.NullMarked;
