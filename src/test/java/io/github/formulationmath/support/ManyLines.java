package io.github.formulationmath.support;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.plan.PlannedLine;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.pot.Reading;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.ArrayList;
import java.util.List;

/** Batches of very many lines, and their readings. */
public final class ManyLines {

    private static final Balance BALANCE = Balance.of("0.1 g", "10000 kg");

    private ManyLines() {}

    /** So many lines of one to seven parts. */
    public static Formula formula(int lines) {
        FormulaBuilder parts = Formula.inParts("many");
        for (int i = 0; i < lines; i++) {
            parts.line("line " + i, Integer.toString(1 + i % 7));
        }
        return parts.build();
    }

    /** The first half of them in a phase of oil. */
    public static Formula inTwoPhases(int lines) {
        FormulaBuilder parts = Formula.inParts("many").phase("Oil phase");
        for (int i = 0; i < lines; i++) {
            if (i == lines / 2) {
                parts.phase("Rest");
            }
            parts.line("line " + i, Integer.toString(1 + i % 7));
        }
        return parts.build();
    }

    /** 20 g a line on average. */
    public static WeighingPlan plan(int lines) {
        return WeighingPlan.of(Batch.of(formula(lines), BatchSize.ofMass(lines * 20 + " g")), BALANCE);
    }

    /** 50 g a line on average, each as it should be, tared once. */
    public static HandWeighed exactly(Formula formula) {
        return HandWeighed.exactly(formula, formula.lines().size() * 50 + " g", BALANCE, WeighingMethod.CUMULATIVE);
    }

    /** Cumulative readings of which only every so manyth was written down, the last one among them. */
    public static Readings cumulative(WeighingPlan plan, int every) {
        List<Reading> readings = new ArrayList<>();
        List<FormulaLine> lines = plan.batch().formula().lines();
        for (PlannedLine line : plan.lines()) {
            FormulaLine own = lines.get(readings.size());
            boolean written = (readings.size() + 1) % every == 0 || readings.size() == lines.size() - 1;
            readings.add(written ? Reading.of(own, line.cumulativeReading()) : Reading.notWrittenDown(own));
        }
        return Readings.of(plan, WeighingMethod.CUMULATIVE, readings);
    }
}
