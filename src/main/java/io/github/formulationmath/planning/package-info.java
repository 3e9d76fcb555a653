/**
 * From a batch to the bench: what the display must read line by line, how small and how large a batch may be, and what the
 * bench would need.
 *
 * <p>Three rooms stand here wall to wall, each of which looks only at those before it.
 *
 * <ol>
 *   <li><b>Plan.</b> {@link io.github.formulationmath.planning.Bench} (balance, vessel, how the total is closed), {@link
 *       io.github.formulationmath.planning.WeighingPlan} with its {@link io.github.formulationmath.planning.PlannedLine
 *       lines}, {@link io.github.formulationmath.planning.ExpectedProduct} (what will really have been made), {@link
 *       io.github.formulationmath.planning.BulkPlanner} (very many plans as bare numbers).
 *   <li><b>Size.</b> A {@link io.github.formulationmath.planning.Criterion} gives the {@link
 *       io.github.formulationmath.planning.Sizes} at which it holds for a formula on a bench; {@link
 *       io.github.formulationmath.planning.MinimumBatch} is the smallest of them with its proof, {@link
 *       io.github.formulationmath.planning.BatchWindow} both ends under {@link
 *       io.github.formulationmath.planning.BatchConstraints} and the bench's own limits. {@link
 *       io.github.formulationmath.planning.CapTarget} and {@link io.github.formulationmath.planning.CoarsestStep} turn the
 *       question round.
 *   <li><b>Choice.</b> {@link io.github.formulationmath.planning.BalanceAssignment} (several balances) and {@link
 *       io.github.formulationmath.planning.Predilution}.
 * </ol>
 *
 * <pre>
 * Criterion --on(formula, bench)--&gt; Sizes = parts, all of which must allow a size
 *                                     part = name + search + proof
 *                                            search: Bands | ClosedBands | Ray | Multiples | RestLeft
 * Sizes --smallest--&gt; MinimumBatch.Found (derives by the proof of the part that pushed last)
 * Sizes + ceilings of the bench --&gt; BatchWindow.Feasible | BatchWindow.Empty with openings
 * </pre>
 *
 * <p><b>A new criterion</b> takes two files: its record, which implements {@link
 * io.github.formulationmath.planning.Criterion#on} and holds the relation that proves it ({@link
 * io.github.formulationmath.planning.Sizes#from} for least sizes of lines, {@link
 * io.github.formulationmath.planning.Sizes#and} with what others ask), and the wording of its name. From another package
 * nothing else is needed; here a factory in {@link io.github.formulationmath.planning.Criterion} names it. A new kind of
 * set, which none so far has needed, is one more search.
 *
 * <p>May depend on {@code scaling}, {@code weighing}, {@code limit} and what lies below them.
 */
@NullMarked
package io.github.formulationmath.planning;

import org.jspecify.annotations.NullMarked;
