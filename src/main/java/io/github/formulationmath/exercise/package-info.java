/**
 * Exercises for teachers: worksheets made from workings.
 *
 * <pre>
 *   Working ── which steps? ── BlankChoice, Followers      no other value gives a blank away
 *      |
 *   for each: Mistake ── Plausible ── WrongAnswers         the wrong answers worth offering
 *      |
 *   Worksheet ── sheet(style), key(style) ── Document      blanks and numbers in bold are nodes of its formulas
 * </pre>
 *
 * <p><b>What comes in:</b> any {@link io.github.formulationmath.reckoning.Working}, labels or a count, and a seed. <b>What goes
 * out:</b> a document for the learner and one for the teacher, to be printed in any format.
 *
 * <p><b>Reading order:</b> {@link io.github.formulationmath.exercise.Worksheet}, {@link
 * io.github.formulationmath.exercise.Worksheet.Blank}, {@link io.github.formulationmath.exercise.Mistake}, {@code Plausible},
 * {@code WrongAnswers}, {@code Followers} and {@code BlankChoice}, {@code WorksheetDocument}.
 *
 * <p><b>Why it is right:</b> a wrong answer is worked out by the operations of the step itself with one of its parts
 * exchanged, so that it is what somebody who makes the mistake comes to; a blank takes with it every later value from which it
 * could be worked back in one go; the same working and seed give the same sheet.
 */
@NullMarked
package io.github.formulationmath.exercise;

import org.jspecify.annotations.NullMarked;
