package io.github.formulationmath.falsefine;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.label.Label;
import io.github.formulationmath.label.LabelRule;
import io.github.formulationmath.limit.Conformity;
import io.github.formulationmath.limit.DecisionRule;
import io.github.formulationmath.limit.LimitChecker;
import io.github.formulationmath.limit.LimitKind;
import io.github.formulationmath.limit.LimitTable;
import io.github.formulationmath.limit.Product;
import io.github.formulationmath.limit.SubstanceGroup;
import io.github.formulationmath.limit.UsageLimit;
import io.github.formulationmath.plan.ExpectedProduct;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.pot.Reading;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.MadeMasses;
import io.github.formulationmath.weighing.Weighed;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.List;

/** Hands the library the masses of one formula for those of another. */
final class ForeignJudge {

    private ForeignJudge() {}

    static boolean check(ForeignCase asked) {
        MassFraction cap = MassFraction.parse(Texts.percent(asked.cap(), 2));
        UsageLimit limit = UsageLimit.of("HOUSE-1", SubstanceGroup.of("Phenoxyethanol"), LimitKind.MAXIMUM, cap);
        return LimitChecker.of(LimitTable.of("House", List.of(limit)), Product.leaveOn(), DecisionRule.worstCase())
                .check(foreign(asked))
                .verdicts()
                .stream()
                .noneMatch(verdict -> verdict.conformity() == Conformity.EXCEEDS);
    }

    /** Any list at all would be one of something else. */
    static boolean label(ForeignCase asked) {
        return !Label.of(LabelRule.eu()).list(foreign(asked)).all().isEmpty();
    }

    /** Readings of lines of the other formula, for a plan of this one. */
    static boolean readings(ForeignCase asked) {
        Formula own = own(asked);
        Formula other = other(asked);
        List<Reading> readings = List.of(
                Reading.of(other.lines().get(0), "900.0 g"),
                Reading.of(other.lines().get(1), "5.0 g"));
        return !Readings.of(plan(own), WeighingMethod.TARE_EACH, readings)
                .taken()
                .isEmpty();
    }

    private static Weighed foreign(ForeignCase asked) {
        Formula own = own(asked);
        MadeMasses masses =
                ExpectedProduct.of(plan(other(asked)), WeighingMethod.TARE_EACH).masses();
        return new Weighed() {
            @Override
            public Formula formula() {
                return own;
            }

            @Override
            public MadeMasses masses() {
                return masses;
            }
        };
    }

    private static Formula own(ForeignCase asked) {
        return formula("Aqua", "Phenoxyethanol", asked.own());
    }

    private static Formula other(ForeignCase asked) {
        return asked.sameNames()
                ? formula("Aqua", "Phenoxyethanol", asked.other())
                : formula("Oil", "Glycerin", asked.other());
    }

    private static Formula formula(String rest, String name, long share) {
        return Formula.inPercent("Cream")
                .quantitySufficient(rest)
                .line(name, Texts.percent(share, 2))
                .build();
    }

    private static WeighingPlan plan(Formula formula) {
        return WeighingPlan.of(Batch.of(formula, BatchSize.ofMass("1000 g")), Balance.of("0.1 g", "5 kg"));
    }
}
