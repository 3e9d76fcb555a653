/**
 * Exact numbers: the only arithmetic of the library.
 *
 * <p><b>What comes in:</b> decimals and fractions as text, whole numbers. <b>What goes out:</b> exact numbers, and what is worked out with
 * them alone: intervals, a total shared out, programs with their proof.
 *
 * <p>Reading order: {@link io.github.formulationmath.number.Ratio} (an exact rational number), {@link
 * io.github.formulationmath.number.Rounding} (the one way to lose digits, always named), {@link
 * io.github.formulationmath.number.Bounds} (a closed interval), {@link
 * io.github.formulationmath.number.Apportionment} (sharing out a total in whole steps), {@link
 * io.github.formulationmath.number.LinearProgram} (the smallest cost under linear conditions, with its proof) and {@link
 * io.github.formulationmath.number.StepProgram} (the same in whole steps).
 *
 * <p><b>Why it is right:</b> digits are lost by a {@code Rounding} alone; numbers that fit 64 bits are worked out in 64 bits with
 * exact arithmetic that notices an overflow, and all others in big integers; the answer of a linear program is held against its
 * multipliers each time. A root or a power that is irrational comes enclosed or correctly rounded.
 *
 * <p>A {@link io.github.formulationmath.number.Refusal} is what every exception of the library is besides its class, with a
 * {@link io.github.formulationmath.number.Sentence} that another language can say; it lives here since all rooms refuse.
 *
 * <p>This package depends on the JDK alone.
 */
@NullMarked
package io.github.formulationmath.number;

import org.jspecify.annotations.NullMarked;
