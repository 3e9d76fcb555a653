/**
 * Showing the working: the arithmetic in which every relation of the library is written, and the record of it.
 *
 * <p><b>What comes in:</b> a relation of the library, and who asks. <b>What goes out:</b> its number, and its working.
 *
 * <p>A relation (say, line mass = share × batch mass) is written once, against {@link
 * io.github.formulationmath.reckoning.Reckoning}. Run with {@link
 * io.github.formulationmath.reckoning.Reckoning#plain()} it gives the bare number and records nothing; run by {@link
 * io.github.formulationmath.reckoning.Working#of} it gives the same number together with its {@link
 * io.github.formulationmath.reckoning.Working}: what was given, each step, each comparison, each assumption.
 *
 * <p><b>Why it is right:</b> there is no second formula to keep in step; {@code Working.of} refuses to explain another number than the
 * result, and {@code Recorder} a symbol that would stand for two values.
 *
 * <p>A working tells itself as a {@link io.github.formulationmath.document.Document}, in the {@link
 * io.github.formulationmath.reckoning.Style} that its reader asks for; that prints it. {@code Formulas} makes the terms into
 * expressions, {@code Numerals} their values into numbers with units, {@code WorkingDocument} puts the page together.
 *
 * <p>Reading order: {@link io.github.formulationmath.reckoning.Reckoning}, {@link
 * io.github.formulationmath.reckoning.Symbol}, {@link io.github.formulationmath.reckoning.Term} and its kinds, {@link
 * io.github.formulationmath.reckoning.Entry}, {@link io.github.formulationmath.reckoning.Working}, {@link
 * io.github.formulationmath.reckoning.Style}.
 */
@NullMarked
package io.github.formulationmath.reckoning;

import org.jspecify.annotations.NullMarked;
