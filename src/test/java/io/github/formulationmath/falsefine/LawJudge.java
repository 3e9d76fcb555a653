package io.github.formulationmath.falsefine;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.limit.DecisionRule;
import io.github.formulationmath.limit.LimitChecker;
import io.github.formulationmath.limit.LimitOutcome;
import io.github.formulationmath.limit.LimitReport;
import io.github.formulationmath.limit.LimitTable;
import io.github.formulationmath.limit.Product;

/** Asks the table in the jar. */
final class LawJudge {

    private static final LimitTable TABLE = LimitTable.eu2024February();

    private LawJudge() {}

    /** Nothing exceeds, or what binds is milder. */
    static boolean callsFine(LawCase asked) {
        LimitReport report = report(asked);
        return report.outcome().compareTo(LimitOutcome.EXCEEDS) < 0
                || report.binding()
                        .map(verdict -> switch (verdict.conformity()) {
                            case EXCEEDS, PROHIBITED -> false;
                            default -> true;
                        })
                        .orElse(true);
    }

    /** Nothing is said to exceed. */
    static boolean callsKept(LawCase asked) {
        return report(asked).outcome().compareTo(LimitOutcome.CANNOT_BE_ASSESSED) < 0;
    }

    private static LimitReport report(LawCase asked) {
        var builder = Formula.inPercent("Under the law").quantitySufficient("Aqua");
        for (int i = 0; i < asked.shares().length; i++) {
            builder.line(asked.disguised().get(i), Texts.percent(asked.shares()[i], 6));
        }
        Product product = asked.entry().isLeaveOn() ? Product.leaveOn() : Product.rinseOff();
        Product stated = asked.word().isEmpty() ? product : product.on(asked.word());
        return LimitChecker.of(TABLE, stated, DecisionRule.worstCase()).check(builder.build());
    }
}
