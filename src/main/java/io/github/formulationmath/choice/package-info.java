/**
 * Which balance for which line, and what to do when none is fine enough.
 *
 * <p><b>What comes in:</b> a batch and several balances with their vessels ({@link io.github.formulationmath.weighing.WeighingStation}).
 * <b>What goes out:</b> the coarsest balance that serves each line ({@link io.github.formulationmath.choice.BalanceAssignment}), and a
 * weaker stock to weigh a small line from ({@link io.github.formulationmath.choice.Predilution}).
 *
 * <p>Reading order: {@link io.github.formulationmath.weighing.WeighingStation}, {@link io.github.formulationmath.choice.BalanceAssignment},
 * {@link io.github.formulationmath.choice.Predilution} and {@link io.github.formulationmath.choice.PredilutionPlan}.
 *
 * <p><b>Why it is right:</b> a line stays on a balance only if its reading is shown to keep the tolerance under the errors of that balance;
 * what is in the pot later is looked at as weighed on the balances it was weighed on.
 */
@NullMarked
package io.github.formulationmath.choice;

import org.jspecify.annotations.NullMarked;
