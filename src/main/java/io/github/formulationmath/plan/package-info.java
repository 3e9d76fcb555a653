/**
 * From a batch to the bench: what the display must read line by line, and what will really have been made.
 *
 * <pre>
 * Batch + Bench --Divisions--&gt; WeighingPlan = PlannedLine, PlannedLine, …   what the display must read
 * WeighingPlan + WeighingMethod --&gt; ExpectedProduct = ExpectedLine, …      what will really be in the pot
 * </pre>
 *
 * <p><b>What comes in:</b> a batch, and a {@link io.github.formulationmath.plan.Bench}: a balance, a vessel, and how the lines close to a
 * total ({@link io.github.formulationmath.plan.Closure}). <b>What goes out:</b> readings that the display can show, with what the
 * rounding does to each line, and the guaranteed shares under the whole error model.
 *
 * <p>Reading order: {@link io.github.formulationmath.plan.Bench}, {@link io.github.formulationmath.plan.WeighingPlan} and its {@link
 * io.github.formulationmath.plan.PlannedLine}, {@code Divisions} (the heart: whole numbers of steps under each closure), {@link
 * io.github.formulationmath.plan.Tolerances}, {@link io.github.formulationmath.plan.ExpectedProduct}; {@link
 * io.github.formulationmath.plan.BulkPlanner} makes very many plans as bare numbers.
 *
 * <p><b>Why it is right:</b> a target is counted in exact divisions; only the closure decides how they are rounded, and the largest
 * remainders are shared out by the one apportionment of the library.
 */
@NullMarked
package io.github.formulationmath.plan;

import org.jspecify.annotations.NullMarked;
