package io.github.formulationmath.working;

import io.github.formulationmath.number.Ratio;
import java.util.List;

/**
 * A wrong answer that somebody who makes a classic mistake comes to.
 *
 * @param mistake the mistake
 * @param value the wrong value, in the canonical unit
 * @param exchanged where one value was taken for another: the one taken, then the one that was meant; otherwise empty
 */
public record Distractor(Mistake mistake, Ratio value, List<Step> exchanged) {

    /**
     * Copies the list.
     *
     * @param mistake the mistake
     * @param value the wrong value, in the canonical unit
     * @param exchanged where one value was taken for another: the one taken, then the one that was meant; otherwise empty
     */
    public Distractor {
        exchanged = List.copyOf(exchanged);
    }
}
