package io.github.formulationmath.benchmarks;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.BulkPlanner;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.weighing.Balance;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Mass;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/**
 * The same batch plan five ways: 20 lines, 250 g on a display of 0.1 g, scale, round to the display, total. Each call
 * takes the next of 256 formulas, so that nothing is constant.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class PlanBenchmark {

    private static final int LINES = 20;
    private static final int FORMULAS = 256;

    private final List<Formula> formulas = new ArrayList<>();
    private final double[][] doubles = new double[FORMULAS][LINES];
    private final BigDecimal[][] decimals = new BigDecimal[FORMULAS][LINES];
    private final List<List<Quantity<Dimensionless>>> quantities = new ArrayList<>();
    private final double[] shown = new double[LINES];
    private final BigDecimal[] shownDecimals = new BigDecimal[LINES];
    private final List<Quantity<Mass>> shownQuantities = new ArrayList<>();
    private final double[] divisions = new double[LINES];

    private int next;
    private double batchDouble = 250;
    private double stepDouble = 0.1;
    private BigDecimal batchDecimal = new BigDecimal("250");
    private BigDecimal stepDecimal = new BigDecimal("0.1");
    private Quantity<Mass> batchQuantity = Quantities.getQuantity(new BigDecimal("250"), Units.GRAM);
    private Quantity<Mass> stepQuantity = Quantities.getQuantity(new BigDecimal("0.1"), Units.GRAM);
    private BatchSize size = BatchSize.ofMass("250 g");
    private Balance balance = Balance.of("0.1 g", "2 kg");
    private Ratio batchDivisions = Ratio.of(2500);
    private BulkPlanner planner = BulkPlanner.of(List.of());

    /** Makes the formulas, the same in all representations. */
    @Setup
    public void makeFormulas() {
        SplittableRandom random = new SplittableRandom(20);
        for (int i = 0; i < FORMULAS; i++) {
            formulas.add(formula(random));
            List<Quantity<Dimensionless>> shares = new ArrayList<>();
            for (FormulaLine line : formulas.get(i).lines()) {
                int at = line.index();
                decimals[i][at] = line.fraction().toBigDecimal();
                doubles[i][at] = line.fraction().doubleValue();
                shares.add(Quantities.getQuantity(decimals[i][at], AbstractUnit.ONE));
            }
            quantities.add(shares);
        }
        planner = BulkPlanner.of(formulas);
    }

    private static Formula formula(SplittableRandom random) {
        FormulaBuilder draft = Formula.inPercent("formula").quantitySufficient("line 0");
        for (int line = 1; line < LINES; line++) {
            draft.line("line " + line, Ratio.of(random.nextInt(1, 500), 100) + " %");
        }
        return draft.build();
    }

    private int nextFormula() {
        next = next + 1 & FORMULAS - 1;
        return next;
    }

    /** (a) Bare doubles; not exact. */
    @Benchmark
    public double bareDouble() {
        double[] shares = doubles[nextFormula()];
        double total = 0;
        for (int i = 0; i < LINES; i++) {
            double reading = Math.rint(shares[i] * batchDouble / stepDouble) * stepDouble;
            shown[i] = reading;
            total += reading;
        }
        return total;
    }

    /** (b) BigDecimal. */
    @Benchmark
    public BigDecimal bigDecimal() {
        BigDecimal[] shares = decimals[nextFormula()];
        BigDecimal total = BigDecimal.ZERO;
        for (int i = 0; i < LINES; i++) {
            BigDecimal reading = shares[i]
                    .multiply(batchDecimal)
                    .divide(stepDecimal, 0, RoundingMode.HALF_EVEN)
                    .multiply(stepDecimal);
            shownDecimals[i] = reading;
            total = total.add(reading);
        }
        return total;
    }

    /** (c) Quantities of Indriya. */
    @Benchmark
    public Quantity<Mass> indriya() {
        shownQuantities.clear();
        Quantity<Mass> total = Quantities.getQuantity(0, Units.GRAM);
        for (Quantity<Dimensionless> share : quantities.get(nextFormula())) {
            Quantity<Mass> mass = batchQuantity.multiply(share).asType(Mass.class);
            Quantity<?> steps = mass.divide(stepQuantity);
            BigDecimal whole = new BigDecimal(steps.getValue().toString()).setScale(0, RoundingMode.HALF_EVEN);
            Quantity<Mass> reading = stepQuantity.multiply(whole);
            shownQuantities.add(reading);
            total = total.add(reading);
        }
        return total;
    }

    /** (d) This library, plain API: batch, plan, total, with all its objects. */
    @Benchmark
    public Object plainApi() {
        return WeighingPlan.of(Batch.of(formulas.get(nextFormula()), size), balance)
                .total();
    }

    /** (e) This library, bulk path; exact. */
    @Benchmark
    public long bulk() {
        return planner.plan(nextFormula(), batchDivisions, divisions);
    }
}
