/**
 * Somebody else's figures against ours: does each agree, agree as rounded, or disagree; does the total close; are limits
 * kept by their figures; and which one known slip would explain them all.
 *
 * <pre>
 * text, file --ClaimReader--&gt; Claim (formula, size, balance, a Figure for each line, total)
 *                               |
 *                               v
 *   Steps: how finely each ---&gt; Shown: FigureChecks by themselves, as sets in grams (FigureSet)
 *                               |                         |
 *                               v                         v
 *              Habits: which rounding gives all    Slip: Hypotheses --Fit--&gt; Cause (none if a habit does)
 *                               |                         |
 *                               +------&gt; Verification &lt;---+----&gt; Outcome, causes, report, limits
 * </pre>
 *
 * <p><b>What comes in:</b> somebody else's figures for a formula. <b>What goes out:</b> how each agrees, and the one slip that explains
 * them all, if there is one.
 *
 * <p>Reading order: {@link io.github.formulationmath.verification.Figure}, {@link
 * io.github.formulationmath.verification.Claim}, {@link io.github.formulationmath.verification.FigureCheck}, {@link
 * io.github.formulationmath.verification.Verification}, {@link io.github.formulationmath.verification.Slip}; then, hidden,
 * {@code Shown}, {@code FigureSet}, {@code Habits}, {@code Hypothesis}, {@code Fit}.
 *
 * <p>A new slip is a constant of {@link io.github.formulationmath.verification.Slip} with the ways in which it can have been
 * made, and its name in the wording under {@code slip.}: a way says which lines are times which factor, and {@code Hypothesis}
 * makes of it masses, with the q.s. line as it should be and as it would follow. A slip with an arithmetic of its own, like
 * {@code RestNotAdjusted}, has it in a file of its own. Nothing else in the library lists slips.
 *
 * <p><b>Why it is right, and a cause is not guessed:</b> a slip is told only if it reproduces every figure within its own rounding, and right
 * figures are never explained, since slips are asked for only where no habit of rounding gives them all.
 *
 * <p>It takes the molar masses of the alkalis from {@code chemistry}, their home, and {@code limit} checks limits on the figures as
 * claimed.
 */
@NullMarked
package io.github.formulationmath.verification;

import org.jspecify.annotations.NullMarked;
