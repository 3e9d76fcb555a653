/**
 * The notebook: a batch as it was made, with its code, what was entered at the bench, and what was amended later.
 *
 * <pre>
 * Readings + BenchEntry + Filling + Amendment --&gt; BatchRecord, with its BatchCode
 * </pre>
 *
 * <p><b>What comes in:</b> readings with their lots, also of what was made up first, what happened at the bench, what was filled. <b>What goes out:</b> {@link
 * io.github.formulationmath.record.BatchRecord}, of which nothing is ever changed: an amendment stands beside what it amends. {@link
 * io.github.formulationmath.record.VersionComparison} tells what differs between two versions of a formula.
 *
 * <p>Reading order: {@link io.github.formulationmath.record.BatchCode}, {@link io.github.formulationmath.record.BenchEntry}, {@link
 * io.github.formulationmath.record.Amendment}, {@link io.github.formulationmath.record.BatchRecord}.
 *
 * <p><b>Why it is right:</b> what is written down is kept; what follows from it is worked out when it is asked for.
 */
@NullMarked
package io.github.formulationmath.record;

import org.jspecify.annotations.NullMarked;
