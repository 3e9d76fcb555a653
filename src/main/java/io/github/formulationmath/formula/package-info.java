/**
 * Formulas as written and as resolved: ingredients, phases, lines, shares, and the substances they come down to.
 *
 * <p><b>What comes in:</b> text or amounts as an author wrote them. <b>What goes out:</b> exact shares that make up a whole:
 *
 * <pre>
 * "3 %" → FormulaBuilder → LineAmount → (Shares: w = a / A) → FormulaLine ─┬→ Formula → Composition → SubstanceShare
 *                          Ingredient → Substance ─────────────────────────┘
 * </pre>
 *
 * <p>Reading order: {@link io.github.formulationmath.formula.Substance}, {@link
 * io.github.formulationmath.formula.Ingredient} (a supplied material, perhaps a blend), {@link
 * io.github.formulationmath.formula.LineAmount}, {@link io.github.formulationmath.formula.FormulaBuilder}, {@link
 * io.github.formulationmath.formula.FormulaLine}, {@link io.github.formulationmath.formula.Formula}, {@link
 * io.github.formulationmath.formula.Composition}. {@link io.github.formulationmath.formula.Lines} is what a formula, its
 * batch, its plan and its pot have in common: one {@link io.github.formulationmath.formula.Line} for each line, found by
 * name, by phase, or by the line of the formula.
 *
 * <p><b>Why it is right:</b> {@code Shares} refuses a formula whose shares do not add up to 1 exactly, and nothing is normalised
 * unless the author asked for it; whether two names are one substance is decided in one place, {@code Sameness}.
 */
@NullMarked
package io.github.formulationmath.formula;

import org.jspecify.annotations.NullMarked;
