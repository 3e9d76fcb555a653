package io.github.formulationmath.planning;

import io.github.formulationmath.number.Ratio;
import java.io.Serializable;

/**
 * Where a search came to rest.
 *
 * @param at the number, in the variable of the search
 * @param line the index of the line that pushed the search there last, or {@link #NO_LINE}
 */
record Landing(Ratio at, int line) implements Serializable {

    /** Nothing pushed: the search rests where it began. */
    static final int NO_LINE = -1;

    /** It was the total that pushed, no line by itself. */
    static final int TOTAL = -2;
}
