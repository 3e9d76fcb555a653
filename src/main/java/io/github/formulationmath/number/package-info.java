/** Exact rational numbers, rounding to a grid, closed intervals and apportionment. Depends on the JDK only. */
@NullMarked
package io.github.formulationmath.number;

import org.jspecify.annotations.NullMarked;
