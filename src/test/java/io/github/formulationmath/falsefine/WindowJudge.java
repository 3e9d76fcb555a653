package io.github.formulationmath.falsefine;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.size.BatchWindow;
import io.github.formulationmath.size.WindowOpening;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Vessel;
import java.util.Optional;
import java.util.stream.Stream;

/** Asks the library for a window, and tries what it says. */
final class WindowJudge {

    private WindowJudge() {}

    /** An end that is not good or cannot be planned, or an opening that opens nothing. */
    static boolean promisesFalsely(SizeCase asked) {
        BatchWindow window =
                BatchWindow.of(SizeJudge.formula(asked), SizeJudge.bench(asked), SizeJudge.criterion(asked));
        if (window instanceof BatchWindow.Feasible feasible) {
            return Stream.of(feasible.smallest(), feasible.largest())
                    .flatMap(Optional::stream)
                    .anyMatch(end -> !isGood(asked, feasible, end));
        }
        return ((BatchWindow.Empty) window).openings().stream().anyMatch(opening -> !opens(asked, opening));
    }

    private static boolean isGood(SizeCase asked, BatchWindow.Feasible window, BatchWindow.End end) {
        SizeCase size = asked.of(Answers.grams(end.mass()));
        return size.holds() && isPlanned(size, window, end);
    }

    /** The plan of that size is not refused, and its readings are within. */
    private static boolean isPlanned(SizeCase size, BatchWindow.Feasible window, BatchWindow.End end) {
        WeighingPlan plan;
        try {
            plan = window.plan(end.mass());
        } catch (IllegalArgumentException e) {
            return false;
        }
        Exact[] readings =
                plan.lines().stream().map(line -> Answers.grams(line.reading())).toArray(Exact[]::new);
        return size.areWithin(readings);
    }

    /** What an opening proposes is tried on the bench that it proposes. */
    private static boolean opens(SizeCase asked, WindowOpening opening) {
        Formula formula = SizeJudge.formula(asked);
        Bench bench = opened(asked, opening);
        return bench == null
                || BatchWindow.of(formula, bench, SizeJudge.criterion(asked)) instanceof BatchWindow.Feasible;
    }

    private static Bench opened(SizeCase asked, WindowOpening opening) {
        if (opening instanceof WindowOpening.FinerBalance finer) {
            return bench(asked, finer.readability() + "", asked.capacity() + " g", asked.vessel() + " g");
        }
        if (opening instanceof WindowOpening.HigherCapacity higher) {
            return bench(asked, "1 g", higher.capacity() + "", asked.vessel() + " g");
        }
        if (opening instanceof WindowOpening.LighterVessel lighter) {
            return bench(asked, "1 g", asked.capacity() + " g", lighter.mass() + "");
        }
        return null;
    }

    private static Bench bench(SizeCase asked, String step, String capacity, String vessel) {
        Bench bench = SizeJudge.closing(asked, Bench.of(Balance.of(step, capacity)));
        return vessel.startsWith("0 ") ? bench : bench.with(Vessel.of("beaker", vessel));
    }
}
