/**
 * What Annexes II and IV of the EU cosmetics regulation say of a substance: whether it is named among the prohibited ones,
 * and whether it is a colorant that is allowed, and in which field of use. Only the printed lists, of one day; no amounts.
 *
 * <p><b>Caution.</b> The lists are a dated transcription, never current law. Each finding defers to the law in force, to the
 * supplier's documents and to a qualified safety assessor. A substance that no list names is not thereby allowed.
 *
 * <p>In: a {@link io.github.formulationmath.formula.Substance}. Out: the entries that name it. Reading order: {@link
 * io.github.formulationmath.annex.ProhibitedSubstances} with {@link io.github.formulationmath.annex.ProhibitedEntry}; {@link
 * io.github.formulationmath.annex.Colorants} with {@link io.github.formulationmath.annex.ColorantEntry}. Verdicts are made
 * of it in {@code limit}.
 *
 * <p>May depend on {@code formula}, {@code csv} and what they lean on.
 */
@NullMarked
package io.github.formulationmath.annex;

import org.jspecify.annotations.NullMarked;
