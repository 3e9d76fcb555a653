package io.github.formulationmath.falsefine;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.size.BatchConstraints;
import io.github.formulationmath.size.BatchWindow;
import io.github.formulationmath.size.Criterion;
import io.github.formulationmath.weighing.Balance;

/** Asks the library how far a stock goes. */
final class StockJudge {

    private StockJudge() {}

    /** The batch that the stock makes is this one, or more. */
    static boolean reaches(StockCase asked) {
        Formula formula = formula(asked);
        int line = (int) (asked.stock() % asked.names().size()) + 1;
        BatchSize size = BatchSize.ofStock(formula.lines().get(line), Amount.mass(Texts.grams(asked.stock(), 3)));
        return !Answers.grams(Batch.of(formula, size).mass()).isBelow(Exact.of(asked.batch(), 1000));
    }

    /** The window of sizes goes as far. */
    static boolean windowReaches(StockCase asked) {
        BatchConstraints constraints = BatchConstraints.of(Criterion.oneDivision())
                .withStock(asked.names().get(0), Texts.grams(asked.stock(), 3));
        Bench bench = Bench.of(Balance.of("0.001 g", "1000 kg"));
        return BatchWindow.of(formula(asked), bench, constraints)
                .largest()
                .map(end -> !Answers.grams(end.mass()).isBelow(Exact.of(asked.batch(), 1000)))
                .orElse(false);
    }

    private static Formula formula(StockCase asked) {
        var builder = Formula.inPercent("Stocked").phase("first").quantitySufficient("Aqua");
        for (int i = 0; i < asked.names().size(); i++) {
            builder.phase("phase " + i).line(asked.names().get(i), Texts.percent(asked.shares()[i], 2));
        }
        return builder.build();
    }
}
