package io.github.formulationmath.falsefine;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.mend.Correction;
import io.github.formulationmath.mend.CorrectionRules;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.pot.Reading;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.List;

/** Asks the library for the best that can still be done. Steps are of 1 g. */
final class BestJudge {

    private BestJudge() {}

    /** Nothing is wrong, or the best that is told is not. */
    static boolean callsFine(BestCase asked) {
        MadeBatch pot = pot(asked);
        List<FormulaLine> lines = pot.plan().batch().formula().lines();
        CorrectionRules rules = CorrectionRules.within(Tolerances.of("50 %"))
                .withCap(Substance.of("Glycerin"), cap(asked.capGlycerin()))
                .withCap(Substance.of("Preservative"), cap(asked.capPreservative()))
                .freezing(lines.get(0))
                .freezing(lines.get(1));
        Correction correction = Correction.smallest(pot, rules);
        if (correction.outcome() != Correction.Outcome.BEST_POSSIBLE) {
            return true;
        }
        Exact added = correction.additions().stream()
                .map(addition -> Answers.grams(addition.mass()))
                .reduce(Exact.ZERO, Exact::plus);
        return asked.isBeaten(added);
    }

    private static MassFraction cap(long cap) {
        return MassFraction.parse(Texts.percent(cap, 2));
    }

    private static MadeBatch pot(BestCase asked) {
        Ingredient preserved = Ingredient.blend("Preserved water")
                .part("Preservative", Texts.percent(asked.strength(), 2))
                .rest("Aqua");
        Formula formula = Formula.inMasses("Pot")
                .line("Water", asked.water() + " g")
                .line("Glycerin", asked.glycerin() + " g")
                .line(preserved, io.github.formulationmath.quantity.Amount.mass(asked.preserved() + " g"))
                .build();
        long total = asked.water() + asked.glycerin() + asked.preserved();
        WeighingPlan plan =
                WeighingPlan.of(Batch.of(formula, BatchSize.ofMass(total + " g")), Balance.of("1 g", "1000 kg"));
        List<FormulaLine> lines = formula.lines();
        return MadeBatch.of(Readings.of(
                plan,
                WeighingMethod.TARE_EACH,
                List.of(
                        Reading.of(lines.get(0), asked.water() + " g"),
                        Reading.of(lines.get(1), asked.glycerin() + " g"),
                        Reading.of(lines.get(2), asked.preserved() + " g"))));
    }
}
