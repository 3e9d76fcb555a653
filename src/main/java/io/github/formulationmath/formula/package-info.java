/**
 * Formulas as written and as resolved: ingredients, phases, lines, shares, and the substances they come down to.
 *
 * <p>Reading order: {@link io.github.formulationmath.formula.Substance}, {@link
 * io.github.formulationmath.formula.Ingredient} (a supplied material, perhaps a blend), {@link
 * io.github.formulationmath.formula.FormulaLine}, {@link io.github.formulationmath.formula.Phase}, {@link
 * io.github.formulationmath.formula.Formula}, {@link io.github.formulationmath.formula.Composition}.
 *
 * <p>May depend on {@code working}, {@code quantity} and {@code number}.
 */
@NullMarked
package io.github.formulationmath.formula;

import org.jspecify.annotations.NullMarked;
