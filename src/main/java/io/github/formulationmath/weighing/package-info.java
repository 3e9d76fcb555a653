/**
 * Balances and vessels: what can be put on the pan, and how finely the display shows it.
 *
 * <p>Reading order: {@link io.github.formulationmath.weighing.Balance}, {@link
 * io.github.formulationmath.weighing.Vessel}.
 *
 * <p>Knows no formula. May depend on {@code working}, {@code quantity} and {@code number}.
 */
@NullMarked
package io.github.formulationmath.weighing;

import org.jspecify.annotations.NullMarked;
