package io.github.formulationmath.falsefine;

import org.junit.jupiter.api.Test;

/** No claim that is wrong by construction holds, and every one that is a legitimate rounding does. */
class ClaimsFalseFineTest {

    static final Trial<ClaimCase> WRONG = Trial.ofWrong(
            "a figure that no rounding gives", 31_000_000, 1500, ClaimCase::wrongFigure, ClaimJudge::callsFine);
    static final Trial<ClaimCase> HABIT =
            Trial.ofWrong("figures by a habit, called ours", 32_000_000, 300, ClaimCase::habit, ClaimJudge::callsFine);
    static final Trial<ClaimCase> OUNCES = Trial.ofWrong(
            "a wrong fraction of an ounce", 33_000_000, 400, ClaimCase::wrongOunces, ClaimJudge::callsFine);
    static final Trial<ClaimCase> NOTHING =
            Trial.ofWrong("a line that shows nothing", 34_000_000, 400, ClaimCase::nothingShown, ClaimJudge::callsFine);
    static final Trial<ClaimCase> LEFT_OUT =
            Trial.ofWrong("a line without a figure", 35_000_000, 300, ClaimCase::leftOut, ClaimJudge::callsFine);
    static final Trial<ClaimCase> TOTAL =
            Trial.ofWrong("a wrong total", 36_000_000, 300, ClaimCase::wrongTotal, ClaimJudge::callsFine);
    static final Trial<ClaimCase> SOUND =
            Trial.ofRight("a legitimate rounding", 37_000_000, 500, ClaimCase::sound, ClaimJudge::callsFine);

    static final Trial<WrittenClaim> CONTRADICTED = Trial.ofWrong(
            "a file that contradicts itself, or raw figures that are wrong",
            38_000_000,
            300,
            WrittenClaim::wrong,
            claim -> ClaimJudge.callsFine(claim.text()));
    static final Trial<WrittenClaim> WRITTEN = Trial.ofRight(
            "a sound file", 39_000_000, 200, WrittenClaim::sound, claim -> ClaimJudge.callsFine(claim.text()));

    @Test
    void a_file_that_contradicts_itself_does_not_hold() {
        CONTRADICTED.demandNoneTaken();
    }

    @Test
    void a_sound_file_holds() {
        WRITTEN.demand();
    }

    @Test
    void figures_that_no_rounding_gives_do_not_hold() {
        WRONG.demand();
    }

    @Test
    void a_habit_is_told_apart() {
        HABIT.demand();
    }

    @Test
    void a_wrong_fraction_of_an_ounce_does_not_hold() {
        OUNCES.demand();
    }

    @Test
    void a_line_that_shows_nothing_does_not_hold() {
        NOTHING.demand();
    }

    @Test
    void a_claim_with_lines_left_out_does_not_hold() {
        LEFT_OUT.demand();
    }

    @Test
    void a_wrong_total_does_not_hold() {
        TOTAL.demand();
    }

    @Test
    void a_legitimate_rounding_holds() {
        SOUND.demand();
    }
}
