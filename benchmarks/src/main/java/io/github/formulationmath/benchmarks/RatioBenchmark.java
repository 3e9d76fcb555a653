package io.github.formulationmath.benchmarks;

import io.github.formulationmath.number.Ratio;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.concurrent.TimeUnit;
import org.apache.commons.math3.fraction.BigFraction;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** One product and one quotient, the step that every line of a batch takes: a share of a mass, per cent. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class RatioBenchmark {

    private double doubleShare = 2.5;
    private double doubleMass = 437.3;
    private BigDecimal decimalShare = new BigDecimal("2.5");
    private BigDecimal decimalMass = new BigDecimal("437.3");
    private Ratio share = Ratio.parse("2.5");
    private Ratio mass = Ratio.parse("437.3");
    private BigFraction fractionShare = new BigFraction(5, 2);
    private BigFraction fractionMass = new BigFraction(4373, 10);

    /** The yardstick, which is not exact. */
    @Benchmark
    public double baselineDouble() {
        return doubleShare * doubleMass / 100;
    }

    /** 34 digits. */
    @Benchmark
    public BigDecimal bigDecimal() {
        return decimalShare.multiply(decimalMass).divide(BigDecimal.valueOf(100), MathContext.DECIMAL128);
    }

    /** The general-purpose exact fraction. */
    @Benchmark
    public BigFraction bigFraction() {
        return fractionShare.multiply(fractionMass).divide(100);
    }

    /** This library's number. */
    @Benchmark
    public Ratio ratio() {
        return share.times(mass).dividedBy(100);
    }
}
