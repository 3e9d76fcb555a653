package io.github.formulationmath.pot;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Vessel;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Mass;

/** The product that the tests of this chapter make: a scenario of our own. */
public final class Lotion {

    public static final Ingredient PRESERVATIVE = Ingredient.blend("Preservative blend")
            .part("Phenoxyethanol", "90 %")
            .rest("Ethylhexylglycerin");

    public static final Formula FORMULA = Formula.inPercent("Oat lotion")
            .phase("water")
            .quantitySufficient("Aqua")
            .line("Glycerin", "3.00 %")
            .phase("oil")
            .line("Avena Sativa Kernel Oil", "12 %")
            .line("Glyceryl Stearate SE", "5 %")
            .phase("cool-down")
            .line(PRESERVATIVE, "1 %")
            .build();

    public static final Balance BALANCE = Balance.of("0.1 g", "2 kg");

    public static final Bench BENCH = Bench.of(BALANCE).with(Vessel.of("beaker", "214 g"));

    public static final WeighingPlan PLAN = WeighingPlan.of(Batch.of(FORMULA, BatchSize.ofMass("400 g")), BENCH);

    private Lotion() {}

    public static FormulaLine line(String name) {
        return FORMULA.line(name);
    }

    /** Tared readings in grams, in the order of the formula. */
    public static Readings tared(String... grams) {
        return readings(PLAN, WeighingMethod.TARE_EACH, grams);
    }

    public static Readings readings(WeighingPlan plan, WeighingMethod method, String... grams) {
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < grams.length; i++) {
            readings.add(Reading.of(plan.batch().formula().lines().get(i), grams[i] + " g"));
        }
        return Readings.of(plan, method, readings);
    }

    public static MadeBatch made(String... grams) {
        return MadeBatch.of(tared(grams));
    }

    public static Amount<Mass> g(String grams) {
        return Amount.mass(grams + " g");
    }
}
