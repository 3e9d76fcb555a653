package io.github.formulationmath.benchmarks;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.simulation.MonteCarlo;
import io.github.formulationmath.weighing.Addition;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.ErrorModel;
import io.github.formulationmath.weighing.MadeMasses;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import javax.measure.quantity.Dimensionless;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * One trial of a Monte Carlo simulation of one line of a 20-line batch: 60 rectangular and 20 normal errors drawn, the
 * share worked out, and its part in sorting and in the intervals. The yardstick draws values of the same laws with the
 * JDK's own methods into an array, and does nothing with them.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class MonteCarloBenchmark {

    private static final int LINES = 20;
    private static final int TRIALS = 100_000;

    private MonteCarlo<Dimensionless> simulation;
    private long seed = 1;
    private double halfWidth = 0.05;

    /** Twenty lines from 1 g to 39 g on a display of 0.1 g. */
    @Setup
    public void plan() {
        Balance balance = Balance.of("0.1 g", "2 kg")
                .withErrors(
                        ErrorModel.readabilityOnly().withRepeatability("0.05 g").withLinearityOfNetReading("0.1 g"));
        List<Addition> additions = new ArrayList<>();
        for (int i = 0; i < LINES; i++) {
            Amount<javax.measure.quantity.Mass> mass = Amount.grams(Ratio.of(1 + 2L * i));
            additions.add(Addition.of("line " + i, mass, mass, balance));
        }
        // Four digits are never reached: the simulation runs to its bound, and the trials can be counted.
        simulation = MadeMasses.of(additions)
                .madeShare(3)
                .simulation()
                .withSignificantDigits(4)
                .withMostTrials(TRIALS);
    }

    /** The random numbers of a trial alone. */
    @Benchmark
    @OperationsPerInvocation(TRIALS)
    public double baselineDraws() {
        SplittableRandom random = new SplittableRandom(seed++);
        double[] values = new double[4 * LINES];
        double sum = 0;
        for (int trial = 0; trial < TRIALS; trial++) {
            for (int i = 0; i < 3 * LINES; i++) {
                values[i] = random.nextDouble(-halfWidth, halfWidth);
            }
            for (int i = 3 * LINES; i < values.length; i++) {
                values[i] = random.nextGaussian(0, halfWidth);
            }
            sum += values[trial % values.length];
        }
        return sum;
    }

    /** A whole trial, intervals included. */
    @Benchmark
    @OperationsPerInvocation(TRIALS)
    public MonteCarlo.Result<Dimensionless> trial() throws InterruptedException {
        return simulation.withSeed(seed++).run();
    }
}
