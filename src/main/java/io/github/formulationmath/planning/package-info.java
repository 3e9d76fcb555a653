/**
 * From a batch to the bench: what the display must read line by line, how small and how large a batch may be, and what the
 * bench would need.
 *
 * <p>Reading order: {@link io.github.formulationmath.planning.Bench} (balance, vessel, how the total is closed), {@link
 * io.github.formulationmath.planning.WeighingPlan}, {@link io.github.formulationmath.planning.PlannedLine}. Sizes: {@link
 * io.github.formulationmath.planning.BatchCriterion} (what makes a batch large enough), {@link
 * io.github.formulationmath.planning.MinimumBatch}, {@link io.github.formulationmath.planning.PassingSizes} (all sizes that
 * round within tolerance), {@link io.github.formulationmath.planning.BatchWindow} (both ends at once), {@link
 * io.github.formulationmath.planning.CapTarget}. The bench: {@link
 * io.github.formulationmath.planning.CoarsestStep} (how coarse the display may be), {@link
 * io.github.formulationmath.planning.Bench#leastCapacity} (how much the balance must carry), {@link
 * io.github.formulationmath.planning.BalanceAssignment} (several balances), {@link io.github.formulationmath.planning.Predilution}.
 *
 * <p>May depend on {@code scaling}, {@code weighing}, {@code limit} and what lies below them.
 */
@NullMarked
package io.github.formulationmath.planning;

import org.jspecify.annotations.NullMarked;
