/**
 * How small and how large a batch may be.
 *
 * <pre>
 * Criterion --on(formula, bench)--&gt; Sizes = parts, all of which must allow a size
 *                                     part = name + search + proof
 *                                            search: Bands | ClosedBands | Ray | Multiples | RestLeft
 * Sizes --smallest--&gt; MinimumBatch.Found (derives by the proof of the part that pushed last)
 * Sizes + ceilings of the bench --&gt; BatchWindow.Feasible | BatchWindow.Empty with openings
 * </pre>
 *
 * <p><b>What comes in:</b> a formula, a bench, and what must hold ({@link io.github.formulationmath.size.Criterion}). <b>What goes
 * out:</b> the set of sizes at which it holds, its smallest member with a proof, both ends of the window, and what would open an empty one.
 *
 * <p>Reading order: {@link io.github.formulationmath.size.Criterion}, {@link io.github.formulationmath.size.Sizes}, {@code SizeSearch}
 * and its kinds, {@link io.github.formulationmath.size.MinimumBatch}, {@link io.github.formulationmath.size.BatchConstraints}, {@link
 * io.github.formulationmath.size.BatchWindow}; {@link io.github.formulationmath.size.CapTarget} and {@link
 * io.github.formulationmath.size.CoarsestStep} turn the question round.
 *
 * <p><b>A new criterion</b> takes its record, which implements {@link io.github.formulationmath.size.Criterion#on} and holds the
 * relation that proves it ({@link io.github.formulationmath.size.Sizes#from} for least sizes of lines, {@link
 * io.github.formulationmath.size.Sizes#and} with what others ask), and the wording of its name in each language. From another package nothing else
 * is needed; here a factory in {@link io.github.formulationmath.size.Criterion} names it. Whatever is a weighted sum of the masses that
 * must not fall below 0 needs no relation of its own: it is a {@link io.github.formulationmath.size.Criterion.KeptSum}.
 *
 * <p><b>Why it ends and misses nothing:</b> all searches are one loop, {@code SizeSearch.next}: a size that fails pushes it on, and no search
 * ever pushes over a size that passes; the work it may do is bounded, and running out of it is an answer of its own.
 */
@NullMarked
package io.github.formulationmath.size;

import org.jspecify.annotations.NullMarked;
