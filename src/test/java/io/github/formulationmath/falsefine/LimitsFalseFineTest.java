package io.github.formulationmath.falsefine;

import org.junit.jupiter.api.Test;

/** No limit that is exceeded by construction is called kept, and none that is kept is accused. */
class LimitsFalseFineTest {

    static final Trial<LimitCase> EXCEEDED =
            Trial.ofWrong("a limit exceeded as written", 11_000_000, 2000, LimitCase::exceeded, LimitJudge::callsFine);
    static final Trial<LimitCase> KEPT =
            Trial.ofRight("a limit kept as written", 12_000_000, 500, LimitCase::kept, LimitJudge::callsFine);

    static final Trial<WeighedLimitCase> PASSED_AS_WEIGHED = Trial.ofWrong(
            "a limit that a corner of the errors passes",
            13_000_000,
            1000,
            WeighedLimitCase::passed,
            LimitJudge::callsFine);
    static final Trial<WeighedLimitCase> KEPT_AS_WEIGHED = Trial.ofRight(
            "a limit that every corner of the errors keeps",
            14_000_000,
            300,
            WeighedLimitCase::kept,
            LimitJudge::callsFine);

    static final Trial<LawCase> LAW =
            Trial.ofWrong("a printed limit exceeded", 15_000_000, 800, LawCase::exceeded, LawJudge::callsFine);
    static final Trial<LawCase> LAWFUL =
            Trial.ofRight("a printed limit kept", 16_000_000, 300, LawCase::kept, LawJudge::callsKept);

    @Test
    void a_printed_limit_that_is_exceeded_is_never_called_kept() {
        LAW.demand();
    }

    @Test
    void a_printed_limit_that_is_kept_is_not_accused() {
        LAWFUL.demand();
    }

    @Test
    void an_exceeded_limit_is_never_called_kept() {
        EXCEEDED.demand();
    }

    @Test
    void a_limit_that_is_kept_is_not_accused() {
        KEPT.demand();
    }

    @Test
    void what_the_balance_hides_never_passes_a_limit_that_is_called_kept() {
        PASSED_AS_WEIGHED.demand();
    }

    @Test
    void a_limit_that_every_corner_keeps_is_not_accused() {
        KEPT_AS_WEIGHED.demand();
    }
}
