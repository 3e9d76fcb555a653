/**
 * Monte Carlo: any function of inputs with laws, drawn often enough that its figures are stable (JCGM 101).
 *
 * <p><b>What comes in:</b> inputs with their laws, a function, a seed. <b>What goes out:</b> {@link
 * io.github.formulationmath.simulation.MonteCarlo.Result} with its coverage interval. It knows no balance and no formula.
 *
 * <p>Reading order: {@link io.github.formulationmath.simulation.InputQuantity}, {@link io.github.formulationmath.simulation.MonteCarlo},
 * {@code NormalDraws}, {@code Stability}.
 *
 * <p><b>Why it is right:</b> the same seed gives the same draws on every machine; results are statistical and say so by being doubles.
 */
@NullMarked
package io.github.formulationmath.simulation;

import org.jspecify.annotations.NullMarked;
