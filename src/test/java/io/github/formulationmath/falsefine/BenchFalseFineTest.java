package io.github.formulationmath.falsefine;

import org.junit.jupiter.api.Test;

/** What was weighed on several balances may lie wherever the errors of each allow, and is never said to be elsewhere. */
class BenchFalseFineTest {

    static final Trial<BenchCase> BENCH = Trial.ofWrong(
            "what may come from several balances, called impossible",
            81_000_000,
            10_000,
            BenchCase::any,
            BenchJudge::excludes);

    @Test
    void bounds_hold_when_each_line_is_drawn_on_its_own_balance() {
        BENCH.demand();
    }
}
