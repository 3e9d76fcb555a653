/**
 * Acts that changed a dated table after it was made, and what they mean on a day: may it be placed on the market, may it
 * still be made available.
 *
 * <p>What comes in: a table of known changes, each with its act, its dates, what it touches and how well its text was seen.
 * What goes out: the changes that touch an entry or a substance, and whether each binds on the day that somebody gives.
 * There is no day by default.
 *
 * <p>Reading order: {@link io.github.formulationmath.amendment.LegalChange}, {@link
 * io.github.formulationmath.amendment.AsOf}, {@link io.github.formulationmath.amendment.Amendments}.
 *
 * <p>May depend on {@code csv}, {@code formula}, {@code number}.
 */
@NullMarked
package io.github.formulationmath.amendment;

import org.jspecify.annotations.NullMarked;
