package io.github.formulationmath.benchmarks;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.openjdk.jmh.infra.BenchmarkParams;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;

/**
 * The results of a run as Markdown, one table per benchmark class.
 *
 * <p>The column "ratio" divides a time by that of the class's yardstick: the method whose name begins with {@code
 * baseline}, with the same parameters; without such a method, the first row. On a shared machine the ratios are what can
 * be compared, not the times.
 */
final class MarkdownTable {

    private static final String ALLOCATION = "gc.alloc.rate.norm";

    private MarkdownTable() {}

    static String of(Collection<RunResult> results) {
        Map<String, List<RunResult>> byClass = new TreeMap<>();
        for (RunResult result : results) {
            byClass.computeIfAbsent(className(result), name -> new ArrayList<>())
                    .add(result);
        }
        StringBuilder text = new StringBuilder("# Benchmarks\n\n")
                .append(
                        "Written by `mvn -f benchmarks/pom.xml -q package && java -jar benchmarks/target/benchmarks.jar`")
                .append(" after `mvn install`.\nJava ")
                .append(System.getProperty("java.version"))
                .append(", ")
                .append(Runtime.getRuntime().availableProcessors())
                .append(" processors. Compare ratios; the times belong to the machine they were taken on.\n")
                .append("The serial collector runs, so that everything happens on one core.\n");
        byClass.forEach((name, rows) -> appendClass(text, name, rows));
        return text.toString();
    }

    private static void appendClass(StringBuilder text, String name, List<RunResult> rows) {
        text.append("\n## ").append(name).append("\n\n");
        text.append("| benchmark | parameters | ns/op | ± (99.9 %) | ratio | B/op |\n|---|---|--:|--:|--:|--:|\n");
        for (RunResult row : rows) {
            double yardstick = yardstickFor(row, rows).getPrimaryResult().getScore();
            Result<?> time = row.getPrimaryResult();
            text.append("| ").append(methodName(row)).append(" | ").append(parameters(row));
            append(text, "%,.1f", time.getScore());
            append(text, "%,.1f", time.getScoreError());
            append(text, "%,.2f", time.getScore() / yardstick);
            append(text, "%,.0f", allocation(row));
            text.append(" |\n");
        }
    }

    private static RunResult yardstickFor(RunResult row, List<RunResult> rows) {
        return rows.stream()
                .filter(other -> methodName(other).startsWith("baseline"))
                .filter(other -> parameters(other).equals(parameters(row)))
                .findFirst()
                .orElse(rows.get(0));
    }

    private static double allocation(RunResult row) {
        Result<?> result = row.getSecondaryResults().get(ALLOCATION);
        return result == null ? Double.NaN : result.getScore();
    }

    private static String parameters(RunResult row) {
        BenchmarkParams params = row.getParams();
        List<String> parts = new ArrayList<>();
        for (String key : params.getParamsKeys()) {
            parts.add(key + "=" + params.getParam(key));
        }
        return String.join(", ", parts);
    }

    private static String className(RunResult row) {
        String[] parts = row.getParams().getBenchmark().split("\\.", -1);
        return parts[parts.length - 2];
    }

    private static String methodName(RunResult row) {
        String[] parts = row.getParams().getBenchmark().split("\\.", -1);
        return parts[parts.length - 1];
    }

    private static void append(StringBuilder text, String format, double value) {
        text.append(" | ").append(Double.isNaN(value) ? "–" : String.format(Locale.ROOT, format, value));
    }
}
