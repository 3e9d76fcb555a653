/**
 * Usage limits one can trust: what a limit counts, tables of limits, whether a formula, a planned batch or a batch as
 * weighed is shown to keep them.
 *
 * <p><b>Caution.</b> Limits in a table are a dated transcription, never current law. Every verdict defers to the law in
 * force, to the supplier's documents and to a qualified safety assessor. A substance without a limit in a table is not
 * thereby safe.
 *
 * <p>Reading order: {@link io.github.formulationmath.limit.UsageLimit} with {@link
 * io.github.formulationmath.limit.SubstanceGroup}, {@link io.github.formulationmath.limit.LimitBasis} and {@link
 * io.github.formulationmath.limit.Scope}; {@link io.github.formulationmath.limit.LimitTable}; {@link
 * io.github.formulationmath.limit.Product}, {@link io.github.formulationmath.limit.DecisionRule} and {@link
 * io.github.formulationmath.limit.LimitChecker}; {@link io.github.formulationmath.limit.LimitReport} with its {@link
 * io.github.formulationmath.limit.Verdict}s.
 *
 * <p>May depend on {@code batch}, {@code formula}, {@code weighing}, {@code chemistry}, {@code csv} and what they lean on.
 */
@NullMarked
package io.github.formulationmath.limit;

import org.jspecify.annotations.NullMarked;
