/**
 * What was lost, what goes into packs, and what it cost.
 *
 * <p><b>What comes in:</b> a pot, packs to fill ({@link io.github.formulationmath.packing.PackFill}), losses that are expected, prices with
 * their currency. <b>What goes out:</b> {@link io.github.formulationmath.packing.Filling}, the batch that fills so many packs, and
 * {@link io.github.formulationmath.packing.BatchCost}.
 *
 * <p>Reading order: {@link io.github.formulationmath.packing.PackFill}, {@link io.github.formulationmath.packing.ExpectedLoss}, {@link
 * io.github.formulationmath.packing.Filling}; {@link io.github.formulationmath.packing.PriceList}, {@link
 * io.github.formulationmath.packing.BatchCost}.
 *
 * <p><b>Why it is right:</b> masses and money are exact, and two currencies never meet.
 */
@NullMarked
package io.github.formulationmath.packing;

import org.jspecify.annotations.NullMarked;
