package io.github.formulationmath.architecture;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.document.Format;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.limit.DecisionRule;
import io.github.formulationmath.limit.LimitChecker;
import io.github.formulationmath.limit.LimitTable;
import io.github.formulationmath.limit.Product;
import io.github.formulationmath.mend.Correction;
import io.github.formulationmath.mend.CorrectionRules;
import io.github.formulationmath.plan.ExpectedProduct;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.pot.Reading;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.size.Criterion;
import io.github.formulationmath.size.MinimumBatch;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;

/**
 * The five jobs whose cost in types the figures of the house count; each runs in a virtual machine of its own, and stands in a
 * class of its own, so that what is checked when a class is loaded is counted for its own path only.
 */
final class FivePaths {

    private FivePaths() {}

    /** Runs the path named by the argument, from 1 to 5; 0 does nothing. */
    public static void main(String[] args) {
        switch (args[0]) {
            case "1" -> print(plan().line("Glycerin").reading());
            case "2" -> Smallest.run();
            case "3" -> Verdict.run();
            case "4" -> Repair.run();
            case "5" -> Page.run();
            default -> print("nothing");
        }
    }

    private static Formula lotion() {
        return Formula.inPercent("Oat lotion")
                .phase("water")
                .quantitySufficient("Aqua")
                .line("Glycerin", "3 %")
                .phase("oil")
                .line("Avena Sativa Kernel Oil", "12 %")
                .line("Phenoxyethanol", "0.9 %")
                .build();
    }

    private static WeighingPlan plan() {
        return WeighingPlan.of(Batch.of(lotion(), BatchSize.ofMass("180 g")), Balance.of("0.1 g", "2 kg"));
    }

    private static final class Smallest {

        static void run() {
            MinimumBatch.Found found = (MinimumBatch.Found)
                    MinimumBatch.of(lotion(), Balance.of("0.1 g", "2 kg"), Criterion.madeWithin(Tolerances.of("2 %")));
            print(found.mass());
            print(found.readings());
            found.working().check();
        }
    }

    private static final class Verdict {

        static void run() {
            LimitChecker checker = LimitChecker.of(
                    LimitTable.eu2024February(), Product.leaveOn().on("face"), DecisionRule.worstCase());
            print(checker.check(ExpectedProduct.of(plan(), WeighingMethod.TARE_EACH))
                    .binding());
        }
    }

    private static final class Repair {

        static void run() {
            WeighingPlan plan = plan();
            Formula formula = plan.batch().formula();
            Readings readings = Readings.of(
                    plan,
                    WeighingMethod.TARE_EACH,
                    java.util.List.of(
                            Reading.of(formula.line("Aqua"), Amount.mass("151.4 g")),
                            Reading.of(formula.line("Glycerin"), Amount.mass("7 g")),
                            Reading.of(formula.line("Avena Sativa Kernel Oil"), Amount.mass("21.6 g")),
                            Reading.of(formula.line("Phenoxyethanol"), Amount.mass("1.6 g"))));
            Correction correction =
                    Correction.smallest(MadeBatch.of(readings), CorrectionRules.within(Tolerances.of("5 %")));
            print(correction.onDisplay().additions());
        }
    }

    private static final class Page {

        static void run() {
            var working = plan().line("Glycerin").working();
            print(working.document().print(Format.HTML).length());
            print(working.document().print(Format.LATEX).length());
        }
    }

    private static void print(Object answer) {
        System.out.println(answer);
    }
}
