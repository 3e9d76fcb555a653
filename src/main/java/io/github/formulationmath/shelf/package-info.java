/**
 * What stands on the shelf, and what can be made of it.
 *
 * <p><b>What comes in:</b> lots ({@link io.github.formulationmath.shelf.Lot}) with what is left of each, its price and its dates, together a
 * {@link io.github.formulationmath.shelf.Shelf}, and how one takes from it ({@link io.github.formulationmath.shelf.Picking}). <b>What goes
 * out:</b> the largest batch with everything that limits it and what more of that would open ({@link
 * io.github.formulationmath.shelf.LargestBatch}), which formulas can be made at all ({@link io.github.formulationmath.shelf.Makeable}), and
 * which lot goes into which line, in the order of use, with the exact cost and what is left afterwards ({@link
 * io.github.formulationmath.shelf.Taking}), noted with the readings so that it stays in the record.
 *
 * <p>Reading order: as named above.
 *
 * <p><b>Why it is right:</b> what a batch of mass M needs of an ingredient is M times the sum of its shares over all lines and phases. If
 * lots may be mixed, the largest batch is the least of what there is over that sum. If a line is to come from one lot, the lines of an
 * ingredient are dealt to its lots in every way there is, and the way counts whose fullest lot allows most. All in exact fractions.
 */
@NullMarked
package io.github.formulationmath.shelf;

import org.jspecify.annotations.NullMarked;
