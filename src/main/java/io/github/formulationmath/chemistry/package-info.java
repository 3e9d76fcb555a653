/**
 * Molar masses, and what a salt, ester or hydrate counts as when a figure is stated as another substance.
 *
 * <p><b>What comes in:</b> molecular formulas as text, and the atomic masses of a named edition. <b>What goes out:</b> molar masses,
 * and the factor by which a mass of one substance counts as another.
 *
 * <p>Reading order: {@link io.github.formulationmath.chemistry.MolecularFormula}, {@link
 * io.github.formulationmath.chemistry.AtomicMasses}, {@link io.github.formulationmath.chemistry.MolarMass}, {@link
 * io.github.formulationmath.chemistry.GravimetricFactor}.
 *
 * <p><b>Why it is right:</b> atoms are counted in exact numbers, half a water of crystallisation included; atomic masses are the decimals
 * as printed, and which edition they are of is always said. Substances are known by their composition only, not by a formula
 * of a product.
 */
@NullMarked
package io.github.formulationmath.chemistry;

import org.jspecify.annotations.NullMarked;
