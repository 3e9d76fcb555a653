package io.github.formulationmath.benchmarks;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.document.Format;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.limit.DecisionRule;
import io.github.formulationmath.limit.GroupMember;
import io.github.formulationmath.limit.LimitChecker;
import io.github.formulationmath.limit.LimitKind;
import io.github.formulationmath.limit.LimitReport;
import io.github.formulationmath.limit.LimitTable;
import io.github.formulationmath.limit.Product;
import io.github.formulationmath.limit.SubstanceGroup;
import io.github.formulationmath.limit.UsageLimit;
import io.github.formulationmath.plan.PlannedLine;
import io.github.formulationmath.plan.ToleranceVerdict;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.pot.LineCheck;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.pot.Reading;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.record.BatchCode;
import io.github.formulationmath.record.BatchRecord;
import io.github.formulationmath.sheet.RecordSheet;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javax.measure.quantity.Mass;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * One batch as made held against its tolerances and against as many limits as it has lines, and its record printed: how the
 * time grows with the number of lines.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class MadeGrowthBenchmark {

    /** How many lines. */
    @Param({"10", "100", "1000", "5000"})
    public int lines;

    /** How they were weighed; cumulative readings share errors. */
    @Param({"TARE_EACH", "CUMULATIVE"})
    public WeighingMethod method = WeighingMethod.TARE_EACH;

    private final Tolerances tolerances = Tolerances.of("1 %");
    private List<BatchRecord> records = List.of();
    private LimitChecker checker = checker(1);

    /** Weighs everything as planned. */
    @Setup
    public void weigh() {
        FormulaBuilder parts = Formula.inParts("many lines");
        for (int i = 0; i < lines; i++) {
            parts.line("line " + i, Integer.toString(1 + i % 97));
        }
        WeighingPlan plan =
                WeighingPlan.of(Batch.of(parts.build(), BatchSize.ofMass("100 kg")), Balance.of("0.1 g", "1000 kg"));
        List<Reading> readings = new ArrayList<>();
        Amount<Mass> soFar = Amount.mass("0 g");
        for (PlannedLine line : plan.lines()) {
            soFar = soFar.plus(line.reading());
            readings.add(Reading.of(
                    plan.batch().formula().lines().get(readings.size()),
                    method == WeighingMethod.CUMULATIVE ? soFar : line.reading()));
        }
        checker = checker(lines);
        BatchCode code = BatchCode.of("MANY", LocalDate.of(2026, 1, 1), 1);
        records = List.of(BatchRecord.of(code, Readings.of(plan, method, readings), tolerances));
    }

    /** From the readings to the verdict on every line. */
    @Benchmark
    public int check() {
        int within = 0;
        for (LineCheck check : MadeBatch.of(records.get(0).readings()).check(tolerances)) {
            within += check.verdict() == ToleranceVerdict.WITHIN ? 1 : 0;
        }
        return within;
    }

    /** A limit for every line by itself, and one for all of them. */
    private static LimitChecker checker(int lines) {
        List<UsageLimit> limits = new ArrayList<>();
        List<GroupMember> all = new ArrayList<>();
        for (int i = 0; i < lines; i++) {
            limits.add(limit("L" + i, SubstanceGroup.of("line " + i)));
            all.add(GroupMember.of(Substance.of("line " + i)));
        }
        limits.add(limit("ALL", SubstanceGroup.of("all", all)));
        return LimitChecker.of(LimitTable.of("house", limits), Product.leaveOn(), DecisionRule.worstCase());
    }

    private static UsageLimit limit(String id, SubstanceGroup group) {
        return UsageLimit.of(id, group, LimitKind.MAXIMUM, MassFraction.ofPercent("50"));
    }

    /** From the readings to the verdict of every limit. */
    @Benchmark
    public LimitReport limits() {
        return checker.check(MadeBatch.of(records.get(0).readings()));
    }

    /** From the record to its sheet. */
    @Benchmark
    public String sheet() {
        return RecordSheet.of(records.get(0)).print(Format.TEXT);
    }
}
