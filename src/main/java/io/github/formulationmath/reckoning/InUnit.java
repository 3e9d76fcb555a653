package io.github.formulationmath.reckoning;

import io.github.formulationmath.number.Ratio;

/** A quantity with the unit that somebody wrote it in: a working is told in the units of what it was given. */
public interface InUnit {

    /**
     * The quantity as a number.
     *
     * @return the exact number of the canonical unit of its {@link Kind}
     */
    Ratio canonical();

    /**
     * The unit as printed.
     *
     * @return its symbol
     */
    String symbol();

    /**
     * How large the unit is.
     *
     * @return the canonical units that make one, above 0
     */
    Ratio unitSize();
}
