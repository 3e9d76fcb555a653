/**
 * Balances and vessels: what can be put on the pan, how finely the display shows it, and how far what was really added may
 * be from what was wanted.
 *
 * <p><b>What comes in:</b> a balance with what is known of its errors, a vessel, additions as wanted and as read. <b>What goes out:</b> where
 * each mass and each share is sure to lie, and how uncertain it is.
 *
 * <p>Reading order: {@link io.github.formulationmath.weighing.Balance}, {@link
 * io.github.formulationmath.weighing.Vessel}; then {@link io.github.formulationmath.weighing.ErrorModel}, {@link
 * io.github.formulationmath.weighing.WeighingMethod}, {@link io.github.formulationmath.weighing.Addition}, {@link
 * io.github.formulationmath.weighing.AdditionError} (one addition), {@link io.github.formulationmath.weighing.MadeMasses}
 * and {@link io.github.formulationmath.weighing.MadeShare} (all of them together), {@link
 * io.github.formulationmath.weighing.Weighed} (with the formula whose lines they are).
 *
 * <p><b>Why it is right:</b> an error that lines share is one variable in all of them; masses are affine in those variables, so that the
 * extremes of a share are attained at corners, and {@code ShareExtreme} goes from corner to corner until none is beaten, in exact
 * arithmetic. Of a formula it knows only that masses are of its lines.
 */
@NullMarked
package io.github.formulationmath.weighing;

import org.jspecify.annotations.NullMarked;
