/**
 * Usage limits one can trust: what a limit counts, tables of limits, whether a formula, a planned batch or a batch as
 * weighed is shown to keep them.
 *
 * <p><b>Caution.</b> Limits in a table are a dated transcription, never current law. Every verdict defers to the law in
 * force, to the supplier's documents and to a qualified safety assessor. A substance without a limit in a table is not
 * thereby safe.
 *
 * <p><b>What comes in:</b> a table of limits, a product, a rule of decision; a formula, or what was weighed. <b>What goes out:</b>
 * {@link io.github.formulationmath.limit.LimitReport}: a verdict for every limit that counts something, and all that the table does not
 * say.
 *
 * <pre>
 * LimitTable + Product + DecisionRule --&gt; LimitChecker       CheckIndex: what counts a substance in this product
 * Formula, or Weighed --check--&gt; LimitCheck --Tally--&gt; Verdict, Verdict, … --&gt; LimitReport
 * </pre>
 *
 * <p>Reading order: {@link io.github.formulationmath.limit.UsageLimit} with {@link
 * io.github.formulationmath.limit.SubstanceGroup}, {@link io.github.formulationmath.limit.LimitBasis} and {@link
 * io.github.formulationmath.limit.Scope}; {@link io.github.formulationmath.limit.LimitTable}; {@link
 * io.github.formulationmath.limit.Product}, {@link io.github.formulationmath.limit.DecisionRule} and {@link
 * io.github.formulationmath.limit.LimitChecker}; {@link io.github.formulationmath.limit.LimitReport} with its {@link
 * io.github.formulationmath.limit.Verdict}s.
 *
 * <p><b>Why it is right:</b> whatever a limit may count is counted, under every name and number of a substance, and what cannot be told
 * is reported and never taken for nothing; masses come with the formula that they are of; a share is held against its limit
 * with the errors that the rule of decision counts, in exact arithmetic.
 */
@NullMarked
package io.github.formulationmath.limit;

import org.jspecify.annotations.NullMarked;
