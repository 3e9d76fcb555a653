/**
 * Acts that changed a dated table after it was made, and what they mean on a day: may it be placed on the market, may it
 * still be made available.
 *
 * <p><b>What comes in:</b> a table of known changes, each with its act, its dates, what it touches and how well its text was
 * seen. <b>What goes out:</b> the changes that touch an entry or a substance, and whether each binds on the day that somebody
 * gives. There is no day by default.
 *
 * <p>Reading order: {@link io.github.formulationmath.amendment.LegalChange}, {@link
 * io.github.formulationmath.amendment.AsOf}, {@link io.github.formulationmath.amendment.Amendments}.
 *
 * <p><b>Why it is right:</b> a change is found by the number of the entry, and by every name and CAS number that was seen of a
 * substance; a row tells how well its text was seen, and what was not seen is never filled in. The dates defer to the law in force.
 */
@NullMarked
package io.github.formulationmath.amendment;

import org.jspecify.annotations.NullMarked;
