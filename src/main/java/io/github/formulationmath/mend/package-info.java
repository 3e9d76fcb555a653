/**
 * How to mend a pot: the least that has to be added so that it is what it should be.
 *
 * <pre>
 * MadeBatch + CorrectionRules, Condition --&gt; PotConstraint --&gt; linear program with its proof --&gt; Correction
 *                                                           --&gt; whole steps of the displays   --&gt; DisplayedAdditions
 * </pre>
 *
 * <p><b>What comes in:</b> a pot, and what must hold after mending: tolerances, caps, stocks, room, and {@link
 * io.github.formulationmath.mend.Condition conditions} of other packages, all linear and homogeneous in the masses. <b>What goes
 * out:</b> a {@link io.github.formulationmath.mend.Correction} with its proof, or the {@link
 * io.github.formulationmath.mend.Obstacle}s in the way.
 *
 * <p>Reading order: {@link io.github.formulationmath.mend.CorrectionRules}, {@code PotConstraint}, {@link
 * io.github.formulationmath.mend.Correction}, {@link io.github.formulationmath.mend.DisplayedAdditions}.
 *
 * <p><b>Why it is right:</b> the smallest total is a linear program whose dual multipliers are checked on every solve; where none is possible,
 * {@code Concessions} eases conditions and caps as little as can be, and then the worst line is made least. Whole steps are searched
 * under the very same constraints.
 */
@NullMarked
package io.github.formulationmath.mend;

import org.jspecify.annotations.NullMarked;
