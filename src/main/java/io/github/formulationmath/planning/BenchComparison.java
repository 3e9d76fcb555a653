package io.github.formulationmath.planning;

import io.github.formulationmath.formula.Formula;
import java.io.Serial;
import java.io.Serializable;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What several balances and vessels can do for one formula: the {@link BatchWindow} of each bench, side by side.
 *
 * <p>Example: {@code BenchComparison.of(formula, List.of(kitchen, pocket), constraints).rows()}.
 *
 * <p>Immutable and thread-safe.
 */
public final class BenchComparison implements Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private final List<BatchWindow> rows;

    private BenchComparison(List<BatchWindow> rows) {
        this.rows = rows;
    }

    /**
     * Looks for the window of each bench.
     *
     * @param formula the formula
     * @param benches the balances with their vessels, at least one
     * @param constraints what a batch must meet on each
     * @return the comparison
     * @throws IllegalArgumentException if there is no bench, or a constraint names a line the formula does not have
     * @throws SearchLimitException if a search reaches its limit
     */
    public static BenchComparison of(Formula formula, List<Bench> benches, BatchConstraints constraints) {
        return of(formula, benches, constraints, SearchEffort.standard());
    }

    /**
     * Looks for the window of each bench.
     *
     * @param formula the formula
     * @param benches the balances with their vessels, at least one
     * @param constraints what a batch must meet on each
     * @param effort how much work may be done for each bench
     * @return the comparison
     * @throws IllegalArgumentException if there is no bench, or a constraint names a line the formula does not have
     * @throws SearchLimitException if a search reaches its limit
     */
    public static BenchComparison of(
            Formula formula, List<Bench> benches, BatchConstraints constraints, SearchEffort effort) {
        Objects.requireNonNull(formula, "formula");
        Objects.requireNonNull(constraints, "constraints");
        Objects.requireNonNull(effort, "effort");
        List<Bench> copy = Arguments.atLeastOne("benches", benches);
        return new BenchComparison(copy.stream()
                .map(bench -> BatchWindow.of(formula, bench, constraints, effort))
                .toList());
    }

    /**
     * The windows.
     *
     * @return one per bench, in their order
     */
    public List<BatchWindow> rows() {
        return rows;
    }

    /**
     * The windows that have something in them, the smallest possible batch first.
     *
     * @return an unmodifiable list
     */
    public List<FeasibleWindow> feasible() {
        return rows.stream()
                .filter(FeasibleWindow.class::isInstance)
                .map(FeasibleWindow.class::cast)
                .sorted(Comparator.comparing(window -> window.lowerEnd().result()))
                .toList();
    }

    /**
     * The window with the smallest possible batch.
     *
     * @return the window; empty if no bench will do
     */
    public Optional<FeasibleWindow> finest() {
        return feasible().stream().findFirst();
    }

    /** One line per bench. */
    @Override
    public String toString() {
        return String.join(
                "\n", rows.stream().map(row -> row.bench() + ": " + row).toList());
    }
}
