/**
 * Exact numbers: the only arithmetic of the library.
 *
 * <p>Read in this order: {@link io.github.formulationmath.number.Ratio} (an exact rational number), {@link
 * io.github.formulationmath.number.Rounding} (the one way to lose digits, always named), {@link
 * io.github.formulationmath.number.Bounds} (a closed interval), {@link
 * io.github.formulationmath.number.Apportionment} (sharing out a total in whole steps), {@link
 * io.github.formulationmath.number.LinearProgram} (the smallest cost under linear conditions, with its proof) and {@link
 * io.github.formulationmath.number.StepProgram} (the same in whole steps).
 *
 * <p>A {@link io.github.formulationmath.number.Refusal} is what every exception of the library is besides its class, with a
 * {@link io.github.formulationmath.number.Sentence} that another language can say; it lives here since all rooms refuse.
 *
 * <p>This package depends on the JDK alone.
 */
@NullMarked
package io.github.formulationmath.number;

import org.jspecify.annotations.NullMarked;
