package io.github.formulationmath.falsefine;

import org.junit.jupiter.api.Test;

/** No size, target, pot or stock is called enough that is not. */
class CapsFalseFineTest {

    static final Trial<WeighedLimitCase> SIZE = Trial.ofWrong(
            "a size that a corner of the errors breaks",
            21_000_000,
            800,
            WeighedLimitCase::passed,
            CapJudge::sizeIsKept);
    static final Trial<WeighedLimitCase> WINDOW =
            Trial.ofWrong("such a size in a window", 22_000_000, 400, WeighedLimitCase::passed, CapJudge::windowHolds);
    static final Trial<WeighedLimitCase> TARGET = Trial.ofWrong(
            "a target that a corner breaks", 23_000_000, 400, WeighedLimitCase::passed, CapJudge::mayAimAt);
    static final Trial<MendingCase> POT =
            Trial.ofWrong("a pot above its cap", 24_000_000, 500, MendingCase::exceeded, MendingJudge::callsFine);
    static final Trial<MendingCase> SOUND_POT =
            Trial.ofRight("a pot that needs nothing", 25_000_000, 300, MendingCase::kept, MendingJudge::callsFine);
    static final Trial<StockCase> STOCK =
            Trial.ofWrong("a stock that is too little", 26_000_000, 400, StockCase::tooLarge, StockJudge::reaches);
    static final Trial<StockCase> STOCK_WINDOW =
            Trial.ofWrong("a window beyond the stock", 27_000_000, 300, StockCase::tooLarge, StockJudge::windowReaches);
    static final Trial<StockCase> ENOUGH =
            Trial.ofRight("a stock that is enough", 28_000_000, 200, StockCase::enough, StockJudge::reaches);

    @Test
    void no_size_is_said_to_keep_a_cap_that_a_corner_breaks() {
        SIZE.demand();
    }

    @Test
    void no_window_holds_such_a_size() {
        WINDOW.demand();
    }

    @Test
    void no_target_is_told_that_a_corner_breaks() {
        TARGET.demand();
    }

    @Test
    void no_pot_above_its_cap_needs_nothing_or_is_mended_by_what_does_not_mend_it() {
        POT.demand();
    }

    @Test
    void a_pot_within_needs_nothing() {
        SOUND_POT.demand();
    }

    @Test
    void no_batch_needs_more_than_the_stock() {
        STOCK.demand();
    }

    @Test
    void no_window_needs_more_than_the_stock() {
        STOCK_WINDOW.demand();
    }

    @Test
    void a_stock_that_is_enough_reaches() {
        ENOUGH.demand();
    }
}
