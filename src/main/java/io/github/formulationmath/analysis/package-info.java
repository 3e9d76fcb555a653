/**
 * Analysis: what burette and balance say of a fat, a soap or a lye, and how well.
 *
 * <p><b>What comes in:</b> readings as {@link io.github.formulationmath.analysis.Estimate}s, a value with all that makes it uncertain; a
 * {@link io.github.formulationmath.analysis.Titrant} with its factor; a {@link io.github.formulationmath.analysis.Titration}, a {@link
 * io.github.formulationmath.analysis.BackTitration}, or the two end points of a {@link io.github.formulationmath.analysis.LyeAssay}.
 * <b>What goes out:</b> a {@link io.github.formulationmath.analysis.Determination}: the exact value with its working, its {@link
 * io.github.formulationmath.analysis.Budget}, and the value ± U as it belongs on a sheet.
 *
 * <p>Reading order: {@code Estimate}, {@code Titrant}, {@code Titration}, {@code Consumed}, {@code Relation}, {@code Sensitivities}, {@code
 * Budget}, {@code Expanded}.
 *
 * <p><b>Why it is right:</b> each formula is written once, against {@link io.github.formulationmath.reckoning.Reckoning}. Run plainly it
 * gives the value, recorded it gives the working, and run by {@code Sensitivities} it gives its own exact derivatives, so that no second
 * formula has to be kept in step. Variances and the effective degrees of freedom are exact; only the root of the variance and the
 * quantile of Student's law are rounded.
 */
@NullMarked
package io.github.formulationmath.analysis;

import org.jspecify.annotations.NullMarked;
