/**
 * Amounts with units, shares with their basis, density, and their texts.
 *
 * <p><b>What comes in:</b> numbers with units as text, and JSR 385 quantities of others. <b>What goes out:</b> exact amounts, shares with
 * their basis, intervals, money; amounts, shares and money can explain themselves.
 *
 * <p>Reading order: {@link io.github.formulationmath.quantity.Amount} (an exact number with a unit, a JSR 385
 * quantity), {@link io.github.formulationmath.quantity.FormulationUnits} (the units of the bench and their legal
 * factors), {@link io.github.formulationmath.quantity.MassFraction} (w/w), {@link
 * io.github.formulationmath.quantity.VolumeFraction} (v/v) and {@link
 * io.github.formulationmath.quantity.MassConcentration} (w/v), {@link io.github.formulationmath.quantity.Density} (the
 * only way between grams and millilitres), {@link io.github.formulationmath.quantity.AmountFormat} (strict text).
 *
 * <p><b>Why it is right:</b> factors between units are the legal ones, exact; of the reference implementation of JSR 385 this room uses
 * units and the exact steps of their converters, never its text parsing, number handling or equality.
 */
@NullMarked
package io.github.formulationmath.quantity;

import org.jspecify.annotations.NullMarked;
