package io.github.formulationmath.size;

import io.github.formulationmath.number.Ratio;
import java.util.OptionalInt;

/**
 * Where a search came to rest.
 *
 * @param at the number, in the variable of the search
 * @param line the index of the line that pushed the search there last; empty if it rests where it began, or no line by
 *     itself pushed it
 */
record Landing(Ratio at, OptionalInt line) {

    /** Pushed there by no line. */
    static Landing resting(Ratio at) {
        return new Landing(at, OptionalInt.empty());
    }

    /** Pushed there by a line. */
    static Landing by(int line, Ratio at) {
        return new Landing(at, OptionalInt.of(line));
    }
}
