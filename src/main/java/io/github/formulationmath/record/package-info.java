/**
 * As made: what the readings say went into the pot, how to mend it, what was lost, what it cost, and the entry in the
 * notebook.
 *
 * <p>May depend on {@code planning} and everything below it.
 */
@NullMarked
package io.github.formulationmath.record;

import org.jspecify.annotations.NullMarked;
