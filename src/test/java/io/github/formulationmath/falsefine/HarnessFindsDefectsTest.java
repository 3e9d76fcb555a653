package io.github.formulationmath.falsefine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Each judge with a defect is found out by the cases of the plain build. */
class HarnessFindsDefectsTest {

    static Stream<Arguments> defects() {
        return Stream.of(
                defect("identity by the exact name", LimitsFalseFineTest.EXCEEDED, FaultyJudges::limitByExactName),
                defect(
                        "an unknown word settles a limit",
                        LimitsFalseFineTest.EXCEEDED,
                        FaultyJudges::limitSettledByUnknownWord),
                defect(
                        "the balance has no errors",
                        LimitsFalseFineTest.PASSED_AS_WEIGHED,
                        FaultyJudges::limitWithoutErrors),
                defect("a cap by the exact name", CapsFalseFineTest.SIZE, FaultyJudges::sizeByExactName),
                defect("masses paired by position", SlipsFalseFineTest.CHECKED, FaultyJudges::massesByPosition),
                defect("ties to the even digit only", ClaimsFalseFineTest.SOUND, FaultyJudges::claimByHalfEven),
                defect("a figure ends at its first space", ClaimsFalseFineTest.OUNCES, FaultyJudges::figureCutAtSpace),
                defect("missing figures are skipped", ClaimsFalseFineTest.LEFT_OUT, FaultyJudges::claimSkipsMissing),
                defect("0 g agrees", ClaimsFalseFineTest.NOTHING, FaultyJudges::nothingAgrees),
                defect("two half steps are all", BoundsFalseFineTest.MADE, FaultyJudges::boundsByTwoHalfSteps),
                defect("one balance for all lines", BenchFalseFineTest.BENCH, FaultyJudges::boundsOfOneBalance),
                defect("a stock against one line", CapsFalseFineTest.STOCK, FaultyJudges::stockByOneLine),
                defect("the least absolute excess", PlansFalseFineTest.BEST, FaultyJudges::bestByAbsoluteExcess),
                defect("the load by the target", PlansFalseFineTest.BAD, FaultyJudges::loadByTarget));
    }

    private static <C extends Proven> Arguments defect(String name, Trial<C> trial, Judge<C> judge) {
        return Arguments.of(name, (java.util.function.Supplier<Trial.Result>) () -> trial.run(judge));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("defects")
    void every_defect_is_found(String name, java.util.function.Supplier<Trial.Result> run) {
        Trial.Result result = run.get();
        if (Boolean.getBoolean(Cases.PROPERTY + ".print")) {
            System.out.println(name + ": " + result.failures() + " of " + result.cases());
        }
        assertThat(result.failures()).as(name).isPositive();
    }

    @Test
    void a_judge_that_accuses_all_is_found_too() {
        assertThat(LimitsFalseFineTest.KEPT.run(asked -> false).failures()).isPositive();
        assertThat(CapsFalseFineTest.SOUND_POT.run(asked -> false).failures()).isPositive();
    }
}
