package io.github.formulationmath.support;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.choice.DilutedBatch;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.weighing.Balance;

/** A cream with too little colour to weigh: it comes as a stock in its water. */
public final class DilutedCream {

    public static final Formula CREAM = Formula.inPercent("Oat cream")
            .phase("water")
            .quantitySufficient("Aqua")
            .line("Glycerin", "5 %")
            .phase("oil")
            .line("Oil", "12 %")
            .line("Colour", "0.02 %")
            .build();

    public static final Balance BALANCE = Balance.of("0.1 g", "2 kg");

    private DilutedCream() {}

    public static DilutedBatch diluted(String mass, String tolerance) {
        return DilutedBatch.of(Batch.of(CREAM, BatchSize.ofMass(mass)))
                .diluting(CREAM.line("Colour"), CREAM.line("Aqua"), BALANCE, Tolerances.of(tolerance));
    }
}
