/**
 * As made: what the readings say went into the pot, how to mend it, what was lost, what it cost, and the entry in the
 * notebook. Five stories, told in this order:
 *
 * <pre>{@code
 * Reading … Readings ──> MadeBatch ──> MadeLine ──> LineCheck           the pot: masses, shares, what the displays hide
 *                           │  ^
 *        CorrectionRules ───┤  └── Evaporation, LineAddition             what happened to it later
 *        Condition          v
 *                       Correction ──> DisplayedAdditions               mending: linear programs with their proof
 *
 * PackFill ──> Filling, ExpectedLoss      PriceList ──> BatchCost       packing: losses, packs, money
 *
 * Readings + BenchEntry + Filling + Amendment ──> BatchRecord           the notebook, with its BatchCode
 *                                                     │
 *                                                   Json                documents; the only one that needs Jackson
 * }</pre>
 *
 * <p><b>The pot.</b> {@code Readings} are checked against what a display can show; {@code PotMass} says how each mass came
 * about, {@code PotErrors} where it is sure to lie. A pot is never changed: an addition or a loss gives the next one.
 *
 * <p><b>Mending.</b> Everything that additions have to keep is a {@code PotConstraint}, linear and homogeneous: tolerances,
 * caps, the {@link io.github.formulationmath.record.Condition conditions} of other packages, stocks, room. The smallest total
 * is a linear program over them; where none is possible, {@code Concessions} eases conditions and caps as little as can be,
 * and then the worst line is made least. Whole steps of the displays are searched under the very same constraints.
 *
 * <p><b>What is written down</b> (readings, entries, rules, prices, losses, records) is serializable and goes into JSON; what
 * follows from it is worked out when it is asked for.
 *
 * <p>May depend on {@code planning} and everything below it.
 */
@NullMarked
package io.github.formulationmath.record;

import org.jspecify.annotations.NullMarked;
