/**
 * Emulsifiers by hydrophile-lipophile balance (HLB): blends to a value, what an oil phase is said to require, trial blends.
 *
 * <p><b>What comes in:</b> {@link io.github.formulationmath.emulsion.Emulsifier}s with their values as ranges, oils with the values that
 * they are said to require. <b>What goes out:</b> {@link io.github.formulationmath.emulsion.EmulsifierBlend}, the one blend of two or
 * the family of more with its ends, and what an {@link io.github.formulationmath.emulsion.OilPhase} is said to require.
 *
 * <p>Reading order: {@link io.github.formulationmath.emulsion.Hlb}, {@link io.github.formulationmath.emulsion.Emulsifier}, {@link
 * io.github.formulationmath.emulsion.EmulsifierBlend}, {@link io.github.formulationmath.emulsion.OilPhase}, {@link
 * io.github.formulationmath.emulsion.DaviesGroup}.
 *
 * <p><b>Why it is right, as arithmetic:</b> blends are {@code BlendProgram}s of the room {@code number}, solved exactly with their proof.
 * The scale is an empirical one (IUPAC Gold Book, 15196): Griffin calculated many of its values instead of measuring them, and that
 * required values may be added up was never shown (Pasquali, Taurozzi, Bregni, Int. J. Pharm. 356 (2008) 44-51). Every answer
 * carries that sentence, no table of required values comes with the library, and how much emulsifier a cream needs is not told by it.
 */
@NullMarked
package io.github.formulationmath.emulsion;

import org.jspecify.annotations.NullMarked;
