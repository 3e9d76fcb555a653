package io.github.formulationmath.exercise;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Step;
import java.util.List;

/**
 * A wrong answer that somebody who makes a classic mistake comes to.
 *
 * @param mistake the mistake
 * @param value the wrong value, in the canonical unit
 * @param exchanged where one value was taken for another: the one taken, then the one that was meant; otherwise empty
 */
record Distractor(Mistake mistake, Ratio value, List<Step> exchanged) {

    Distractor {
        exchanged = List.copyOf(exchanged);
    }
}
