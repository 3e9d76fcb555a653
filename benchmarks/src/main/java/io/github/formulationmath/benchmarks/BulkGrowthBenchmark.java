package io.github.formulationmath.benchmarks;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.BulkPlanner;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
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

/** All of many formulas planned one after the other, exactly and with bare doubles: how the time grows with their number. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class BulkGrowthBenchmark {

    private static final int LINES = 20;

    /** How many formulas. */
    @Param({"100", "1000", "10000", "100000"})
    public int formulas;

    private final double[] divisions = new double[LINES];
    private double[][] shares = {};
    private double batchDouble = 250;
    private double stepDouble = 0.1;
    private Ratio batchDivisions = Ratio.of(2500);
    private BulkPlanner planner = BulkPlanner.of(List.of());

    /** Makes the formulas. */
    @Setup
    public void makeFormulas() {
        SplittableRandom random = new SplittableRandom(20);
        List<Formula> made = new ArrayList<>();
        shares = new double[formulas][];
        for (int i = 0; i < formulas; i++) {
            FormulaBuilder draft = Formula.inPercent("formula").quantitySufficient("line 0");
            for (int line = 1; line < LINES; line++) {
                draft.line("line " + line, Ratio.of(random.nextInt(1, 500), 100) + " %");
            }
            made.add(draft.build());
            shares[i] = made.get(i).lines().stream()
                    .map(FormulaLine::fraction)
                    .mapToDouble(Ratio::doubleValue)
                    .toArray();
        }
        planner = BulkPlanner.of(made);
    }

    /** Bare doubles; not exact. */
    @Benchmark
    public double baselineDouble() {
        double total = 0;
        for (double[] formula : shares) {
            for (int i = 0; i < LINES; i++) {
                double reading = Math.rint(formula[i] * batchDouble / stepDouble) * stepDouble;
                divisions[i] = reading;
                total += reading;
            }
        }
        return total;
    }

    /** The bulk path; exact. */
    @Benchmark
    public long bulk() {
        long total = 0;
        for (int i = 0; i < formulas; i++) {
            total += planner.plan(i, batchDivisions, divisions);
        }
        return total;
    }
}
