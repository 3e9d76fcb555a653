/**
 * Monte Carlo: any function of inputs with laws, drawn often enough that its figures are stable (JCGM 101).
 *
 * <p><b>What comes in:</b> inputs with their units and laws, a function of numbers, the unit of what it gives, a seed. <b>What goes out:</b>
 * {@link io.github.formulationmath.simulation.MonteCarlo.Result} with its estimate, uncertainty and coverage interval in that unit. It knows no
 * balance and no formula.
 *
 * <p>Reading order: {@link io.github.formulationmath.simulation.InputQuantity}, {@link io.github.formulationmath.simulation.MonteCarlo},
 * {@code NormalDraws}, {@code Stability}.
 *
 * <p><b>Why it is right:</b> the same seed gives the same draws on every machine; results are statistical: trials are
 * doubles, and no exact number depends on them.
 */
@NullMarked
package io.github.formulationmath.simulation;

import org.jspecify.annotations.NullMarked;
