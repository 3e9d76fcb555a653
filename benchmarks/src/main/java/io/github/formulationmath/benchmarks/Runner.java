package io.github.formulationmath.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;

/**
 * Runs every benchmark of this jar with the allocation profiler and writes the figures, with their ratios, as a Markdown
 * table.
 *
 * <p>Arguments: {@code [--quick] [--out FILE] [REGEX...]}. Without a pattern all benchmarks run; {@code --quick} takes
 * one fork and short iterations, to see that they work, not to be quoted.
 */
public final class Runner {

    private static final String DEFAULT_OUT = "docs/benchmarks.md";

    private Runner() {}

    /**
     * Runs the benchmarks.
     *
     * @param args see the class
     * @throws RunnerException if a benchmark fails
     * @throws IOException if the table cannot be written
     */
    public static void main(String[] args) throws RunnerException, IOException {
        ChainedOptionsBuilder options = new OptionsBuilder()
                .addProfiler(GCProfiler.class)
                // All alternatives on one core, the collector's work included.
                .jvmArgsAppend("-XX:+UseSerialGC")
                .shouldFailOnError(true)
                .timeUnit(TimeUnit.NANOSECONDS);
        Path out = Path.of(DEFAULT_OUT);
        for (int i = 0; i < args.length; i++) {
            switch (args[i]) {
                case "--quick" ->
                    options.forks(1)
                            .warmupIterations(2)
                            .warmupTime(TimeValue.milliseconds(300))
                            .measurementIterations(3)
                            .measurementTime(TimeValue.milliseconds(300));
                case "--out" -> out = Path.of(args[++i]);
                default -> options.include(args[i]);
            }
        }
        Collection<RunResult> results = new org.openjdk.jmh.runner.Runner(options.build()).run();
        Files.writeString(out, MarkdownTable.of(results));
        System.out.println("Written: " + out);
    }
}
