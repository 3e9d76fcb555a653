/**
 * As made: what the readings say went into the pot, and how sure that is.
 *
 * <pre>
 * Reading … Readings --&gt; MadeBatch --&gt; MadeLine --&gt; LineCheck     masses, shares, what the displays hide
 *                           |  ^
 *                           +--+-- Evaporation, LineAddition             what happened to it later
 * </pre>
 *
 * <p><b>What comes in:</b> readings of a plan, additions, a second weighing. <b>What goes out:</b> {@link
 * io.github.formulationmath.pot.MadeBatch}, the pot with the mass and the share of each line, each with its sure bounds.
 *
 * <p>Reading order: {@link io.github.formulationmath.pot.Reading} with each {@link io.github.formulationmath.pot.UsedLot}, {@link
 * io.github.formulationmath.pot.Readings}, {@code PotMass} (how each mass came about), {@code PotErrors} (where it
 * is sure to lie), {@link io.github.formulationmath.pot.MadeBatch}, {@link io.github.formulationmath.pot.Evaporation}.
 *
 * <p><b>Why it is right:</b> readings are checked against what a display can show, and a pot is never changed: an addition or a loss gives
 * the next one, which remembers what it came from.
 */
@NullMarked
package io.github.formulationmath.pot;

import org.jspecify.annotations.NullMarked;
