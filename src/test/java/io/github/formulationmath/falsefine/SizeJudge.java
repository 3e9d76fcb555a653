package io.github.formulationmath.falsefine;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Closure;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.size.BatchWindow;
import io.github.formulationmath.size.Criterion;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Vessel;

/** Asks the library whether a size is good. Steps are of 1 g. */
final class SizeJudge {

    private SizeJudge() {}

    static boolean callsFine(SizeCase asked) {
        return window(asked).contains(Amount.mass(asked.size() + " g"));
    }

    private static BatchWindow window(SizeCase asked) {
        return BatchWindow.of(formula(asked), bench(asked), criterion(asked));
    }

    static Criterion criterion(SizeCase asked) {
        Tolerances tolerances = Tolerances.of(asked.percent() + " %");
        return asked.closed() ? Criterion.madeWithin(tolerances) : Criterion.roundingWithin(tolerances);
    }

    static Formula formula(SizeCase asked) {
        var builder = Formula.inPercent("Sized").quantitySufficient(ClaimText.name(0));
        for (int i = 1; i < asked.shares().length; i++) {
            builder.line(ClaimText.name(i), Texts.percent(asked.shares()[i], 2));
        }
        return builder.build();
    }

    static Bench bench(SizeCase asked) {
        Bench bench = closing(asked, Bench.of(Balance.of("1 g", asked.capacity() + " g")));
        return asked.vessel() == 0 ? bench : bench.with(Vessel.of("beaker", asked.vessel() + " g"));
    }

    /** The closure by which the criterion is met. */
    static Bench closing(SizeCase asked, Bench bench) {
        return asked.closed() ? criterion(asked).showing(bench).orElseThrow() : bench.closing(Closure.INDEPENDENT);
    }
}
