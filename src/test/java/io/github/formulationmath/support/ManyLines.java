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

    /** So many lines of one to seven parts, 20 g each on average. */
    public static WeighingPlan plan(int lines) {
        FormulaBuilder parts = Formula.inParts("many");
        for (int i = 0; i < lines; i++) {
            parts.line("line " + i, Integer.toString(1 + i % 7));
        }
        return WeighingPlan.of(Batch.of(parts.build(), BatchSize.ofMass(lines * 20 + " g")), BALANCE);
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
