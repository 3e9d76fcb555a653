package io.github.formulationmath.benchmarks;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.size.Criterion;
import io.github.formulationmath.size.MinimumBatch;
import io.github.formulationmath.weighing.Balance;
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

/**
 * The smallest batch by rounding and as made, as the lines of a formula and 1/τ grow. The smallest line is 0.05 %; the
 * others are of two decimals, as people write them.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class MinimumBatchBenchmark {

    /** How many lines the formula has. */
    @Param({"5", "20", "80"})
    public int lines;

    /** One over the tolerance. */
    @Param({"20", "100", "1000"})
    public int oneOverTolerance;

    private final Balance balance = Balance.of("0.1 g", "5 kg");
    private Formula formula;
    private Criterion rounding;
    private Criterion made;
    private Criterion madeWithError;

    /** Writes the formula and the criteria. */
    @Setup
    public void prepare() {
        FormulaBuilder builder =
                Formula.inPercent("benchmark").quantitySufficient("Aqua").line("Trace", "0.05 %");
        for (int i = 2; i < lines; i++) {
            // 0.10 % to 1.09 %, in an order without a pattern
            int hundredths = 10 + i * 37 % 100;
            builder.line("Material " + i, "0." + (hundredths < 100 ? hundredths : 99) + " %");
        }
        formula = builder.build();
        Tolerances tolerances = Tolerances.of(MassFraction.of(Ratio.of(1, oneOverTolerance)));
        rounding = Criterion.roundingWithin(tolerances);
        made = Criterion.madeWithin(tolerances);
        madeWithError = Criterion.madeWithin(tolerances, balance.readability());
    }

    /** Each line rounded by itself. */
    @Benchmark
    public MinimumBatch roundingWithin() {
        return MinimumBatch.of(formula, balance, rounding);
    }

    /** Readings that add up. */
    @Benchmark
    public MinimumBatch madeWithin() {
        return MinimumBatch.of(formula, balance, made);
    }

    /** Readings that add up, each off by up to one division. */
    @Benchmark
    public MinimumBatch madeWithinWithReadingError() {
        return MinimumBatch.of(formula, balance, madeWithError);
    }
}
