package io.github.formulationmath.falsefine;

import org.junit.jupiter.api.Test;

/** Masses of another formula, arguments the wrong way round and words for a gram are not taken in silence. */
class SlipsFalseFineTest {

    static final Trial<ForeignCase> CHECKED =
            Trial.ofWrong("masses of another formula checked", 61_000_000, 300, ForeignCase::any, ForeignJudge::check);
    static final Trial<ForeignCase> LISTED =
            Trial.ofWrong("masses of another formula listed", 62_000_000, 100, ForeignCase::any, ForeignJudge::label);
    static final Trial<ForeignCase> READ =
            Trial.ofWrong("readings of another formula", 63_000_000, 100, ForeignCase::any, ForeignJudge::readings);
    static final Trial<SlipOfThePen> SLIPS =
            Trial.ofWrong("a slip of the pen", 64_000_000, 300, SlipOfThePen::any, SlipOfThePen::isTaken);

    @Test
    void masses_of_another_formula_pass_no_limit() {
        CHECKED.demandRefusal();
    }

    @Test
    void masses_of_another_formula_make_no_list() {
        LISTED.demandRefusal();
    }

    @Test
    void readings_of_another_formula_are_none_of_this() {
        READ.demandRefusal();
    }

    @Test
    void slips_of_the_pen_are_refused() {
        SLIPS.demandRefusal();
    }
}
