package io.github.formulationmath.exercise;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Step;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A wrong answer that somebody who makes a classic mistake comes to.
 *
 * @param mistake the mistake
 * @param value the wrong value, in the canonical unit
 * @param exchanged where one value was taken for another: the one taken, then the one that was meant; otherwise empty
 * @param from the earlier blank in which the mistake is made; null if it is made in the blank itself
 */
record Distractor(
        Mistake mistake,
        Ratio value,
        List<Step> exchanged,
        @Nullable Step from) {

    Distractor {
        exchanged = List.copyOf(exchanged);
    }

    Distractor(Mistake mistake, Ratio value, List<Step> exchanged) {
        this(mistake, value, exchanged, null);
    }

    /** What the mistake, made in an earlier blank, leads to in this one. */
    Distractor carriedFrom(Step earlier, Ratio outcome) {
        return new Distractor(mistake, outcome, exchanged, earlier);
    }
}
