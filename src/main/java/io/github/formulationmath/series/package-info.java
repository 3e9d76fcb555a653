/**
 * A series of trials: several versions of one idea, made side by side out of as little as the bench allows.
 *
 * <p><b>What comes in:</b> versions of a formula, a bench, how much of each is wanted and how far a share may be off ({@link
 * io.github.formulationmath.series.TrialSeries}). <b>What goes out:</b> each version weighed by itself, all from one base that is made
 * once and portioned, or some from a base and some by themselves ({@link io.github.formulationmath.series.SeriesPlan}), each trial with its
 * guaranteed composition ({@link io.github.formulationmath.series.Trial}), which limits are checked against; the series while it is made, half-done
 * too ({@link io.github.formulationmath.series.SeriesReadings}); then what differs between two trials on purpose, and what by weighing ({@link
 * io.github.formulationmath.series.SeriesComparison}).
 *
 * <p>Reading order: as named above.
 *
 * <p><b>Why it is right:</b> a base can only hold lines whose shares keep their proportions over all versions made from it, and of the
 * q.s. line as much as all of them have; these sets are found exactly. Sizes are searched upwards on the grid of the display, every plan
 * that is tried is the plan that would be weighed, and a search ends only where no smaller total is left. A share of a version is
 * {@code (φ·P + a)/T}, straight in the share φ of the base and linear-fractional in the masses of the portion, so that its extremes, and
 * those of a difference of two versions from the same base, are attained at corners.
 */
@NullMarked
package io.github.formulationmath.series;

import org.jspecify.annotations.NullMarked;
