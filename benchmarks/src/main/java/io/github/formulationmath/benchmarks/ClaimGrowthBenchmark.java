package io.github.formulationmath.benchmarks;

import io.github.formulationmath.verification.Claim;
import io.github.formulationmath.verification.Verification;
import io.github.formulationmath.weighing.Balance;
import java.io.IOException;
import java.io.StringReader;
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

/** A claim with one wrong figure, read and diagnosed: how the time grows with its lines. Ten lines make a phase. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class ClaimGrowthBenchmark {

    /** How many lines. */
    @Param({"200", "500", "1000", "2000", "5000"})
    public int lines;

    private String table = "";
    private Claim claim = read("record,group,name,value,figure\nformula,,f,parts,\nsize,,mass,1 g,\nline,p,l,1,1 g\n");
    private Claim onBalance = claim;

    /**
     * Makes the claim: line n has 10 + n mod 90 parts, and so many grams, but the third has ten times as many.
     */
    @Setup
    public void makeClaim() {
        StringBuilder rows = new StringBuilder();
        long sum = 0;
        for (int i = 0; i < lines; i++) {
            int parts = 10 + i % 90;
            sum += parts;
            rows.append("line,p")
                    .append(i / 10)
                    .append(",l")
                    .append(i)
                    .append(',')
                    .append(parts)
                    .append(',');
            rows.append(i == 2 ? parts * 10 : parts).append(".0 g\n");
        }
        table = "record,group,name,value,figure\nformula,,long,parts,\nsize,,mass," + sum + " g,\n" + rows;
        claim = read(table);
        onBalance = claim.on(Balance.of("0.1 g", "1000 kg"));
    }

    private static Claim read(String text) {
        try {
            return Claim.read(new StringReader(text));
        } catch (IOException e) {
            throw new IllegalStateException("a string cannot fail to be read", e);
        }
    }

    /** From comma-separated values. */
    @Benchmark
    public Claim reading() {
        return read(table);
    }

    /** With the slip looked for. */
    @Benchmark
    public Verification oneWrong() {
        return Verification.of(claim);
    }

    /** With the slip looked for, the figures being those of a balance. */
    @Benchmark
    public Verification oneWrongOnBalance() {
        return Verification.of(onBalance);
    }
}
