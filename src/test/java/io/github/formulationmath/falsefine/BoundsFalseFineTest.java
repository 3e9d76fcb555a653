package io.github.formulationmath.falsefine;

import org.junit.jupiter.api.Test;

/** What the readings allow is never said to be surely otherwise. */
class BoundsFalseFineTest {

    static final Trial<MadeCase> MADE = Trial.ofWrong(
            "what may lie in the pot, called impossible", 41_000_000, 2000, MadeCase::any, MadeJudge::excludes);

    @Test
    void bounds_that_are_called_sure_hold_at_every_corner_of_the_errors() {
        MADE.demand();
    }
}
