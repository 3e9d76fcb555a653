package io.github.formulationmath.falsefine;

import org.junit.jupiter.api.Test;

/** No size is called good whose readings are not, and nothing best that is not. */
class PlansFalseFineTest {

    static final Trial<SizeCase> BAD =
            Trial.ofWrong("a size that is not good", 51_000_000, 1000, SizeCase::bad, SizeJudge::callsFine);
    static final Trial<SizeCase> GOOD =
            Trial.ofRight("a size that is good", 52_000_000, 400, SizeCase::good, SizeJudge::callsFine);
    static final Trial<BestCase> BEST =
            Trial.ofWrong("a best that something beats", 53_000_000, 300, BestCase::any, BestJudge::callsFine);

    static final Trial<SizeCase> WINDOWS = Trial.ofWrong(
            "a window that promises falsely", 54_000_000, 600, SizeCase::bench, WindowJudge::promisesFalsely);

    @Test
    void what_a_window_promises_can_be_planned_and_opened() {
        WINDOWS.demand();
    }

    @Test
    void no_size_is_called_good_that_is_not() {
        BAD.demand();
    }

    @Test
    void a_good_size_is_not_refused() {
        GOOD.demand();
    }

    @Test
    void nothing_is_called_the_best_that_something_beats() {
        BEST.demand();
    }
}
