/**
 * What Annexes II and IV of the EU cosmetics regulation say of a substance: whether it is named among the prohibited ones,
 * and whether it is a colorant that is allowed, and in which field of use. Only the printed lists, of one day; no amounts.
 *
 * <p><b>Caution.</b> The lists are a dated transcription, never current law. Each finding defers to the law in force, to the
 * supplier's documents and to a qualified safety assessor. A substance that no list names is not thereby allowed.
 *
 * <p><b>What comes in:</b> a {@link io.github.formulationmath.formula.Substance}. <b>What goes out:</b> the entries that name it.
 *
 * <p>Reading order: {@link
 * io.github.formulationmath.annex.ProhibitedSubstances} with {@link io.github.formulationmath.annex.ProhibitedEntry}; {@link
 * io.github.formulationmath.annex.Colorants} with {@link io.github.formulationmath.annex.ColorantEntry}. Verdicts are made
 * of it in {@code limit}.
 *
 * <p><b>Why it is right:</b> a name is compared in one form, British and American spelling alike, and by every CAS number that an
 * entry prints; what an entry says of a group is told as "may be" and never as "is not". The sorted hashes that save the reading
 * of the lists only say that the lists have to be asked.
 */
@NullMarked
package io.github.formulationmath.annex;

import org.jspecify.annotations.NullMarked;
