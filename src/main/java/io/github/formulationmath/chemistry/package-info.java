/**
 * Molar masses, and what a salt, ester or hydrate counts as when a figure is stated as another substance.
 *
 * <p>Reading order: {@link io.github.formulationmath.chemistry.MolecularFormula}, {@link
 * io.github.formulationmath.chemistry.AtomicMasses}, {@link io.github.formulationmath.chemistry.MolarMass}, {@link
 * io.github.formulationmath.chemistry.GravimetricFactor}. Knows substances by their composition only, no formula of a
 * product.
 *
 * <p>May depend on {@code reckoning}, {@code csv}, {@code quantity} and {@code number}.
 */
@NullMarked
package io.github.formulationmath.chemistry;

import org.jspecify.annotations.NullMarked;
