/**
 * Amounts with units, shares with their basis, density, and their texts.
 *
 * <p>Read in this order: {@link io.github.formulationmath.quantity.Amount} (an exact number with a unit, a JSR 385
 * quantity), {@link io.github.formulationmath.quantity.FormulationUnits} (the units of the bench and their legal
 * factors), {@link io.github.formulationmath.quantity.MassFraction} (w/w), {@link
 * io.github.formulationmath.quantity.VolumeFraction} (v/v) and {@link
 * io.github.formulationmath.quantity.MassConcentration} (w/v), {@link io.github.formulationmath.quantity.Density} (the
 * only way between grams and millilitres), {@link io.github.formulationmath.quantity.AmountFormat} (strict text).
 *
 * <p>This package depends on {@code number}, on JSR 385 and on its reference implementation, of which it uses units and
 * the exact steps of their converters: never its text parsing, number handling or equality.
 */
@NullMarked
package io.github.formulationmath.quantity;

import org.jspecify.annotations.NullMarked;
