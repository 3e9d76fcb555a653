/**
 * Emulsifiers by hydrophile-lipophile balance (HLB): blends to a value, what an oil phase is said to require, trial blends.
 *
 * <p>The scale is an empirical one (IUPAC Gold Book, 15196): Griffin calculated many of its values instead of measuring them, and that
 * required values may be added up was never shown (Pasquali, Taurozzi, Bregni, Int. J. Pharm. 356 (2008) 44-51). Every answer
 * carries that sentence, no table of required values comes with the library, and how much emulsifier a cream needs is not told by it.
 */
@NullMarked
package io.github.formulationmath.emulsion;

import org.jspecify.annotations.NullMarked;
