package io.github.formulationmath.benchmarks;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Symbol;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What it costs that a number could show its working, as long as nobody asks: the same display target from bare ratios,
 * and from a relation in the plain reckoning.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class WorkingBenchmark {

    private static final Symbol SHARE = Symbol.of("w", "share", Kind.SHARE);
    private static final Symbol BATCH = Symbol.of("M", "batch-mass", Kind.MASS);
    private static final Symbol STEP = Symbol.of("d", "readability", Kind.MASS);
    private static final Symbol MASS = Symbol.of("m", "line-mass", Kind.MASS);
    private static final Symbol SHOWN = Symbol.of("n", "shown-divisions", Kind.NUMBER);
    private static final Symbol READING = Symbol.of("r", "reading", Kind.MASS);
    private static final Rounding NEAREST = Rounding.toDecimalPlaces(0);

    private Ratio share = Ratio.parse("0.0333");
    private Ratio batch = Ratio.parse("437.3");
    private Ratio step = Ratio.parse("0.1");

    /** Bare ratios. */
    @Benchmark
    public Ratio baselineRatios() {
        return share.times(batch).dividedBy(step).rounded(NEAREST).times(step);
    }

    /** The relation, nobody asking for the working. */
    @Benchmark
    public Ratio relation() {
        return reading(Reckoning.plain());
    }

    private <V> V reading(Reckoning<V> r) {
        V mass = r.named(MASS, r.product(r.given(SHARE, share, Source.user()), r.given(BATCH, batch, Source.user())));
        V d = r.given(STEP, step, Source.user());
        V shown = r.named(SHOWN, r.rounded(r.quotient(mass, d), NEAREST));
        return r.named(READING, r.product(shown, d));
    }
}
