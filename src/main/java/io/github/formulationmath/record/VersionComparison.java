package io.github.formulationmath.record;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Line;
import io.github.formulationmath.formula.Lines;
import io.github.formulationmath.formula.SubstanceName;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.pot.MadeLine;
import io.github.formulationmath.quantity.MassFraction;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/**
 * Two versions of a formula, or two batches, side by side: lines are matched by phase and ingredient name and compared by
 * their exact shares.
 *
 * <p>Example: {@code VersionComparison.of(firstFormula, secondFormula).changes()}.
 *
 * <p>Immutable and thread-safe.
 *
 * @param lines all lines: those of the first version in their order, then those that only the second has
 */
public record VersionComparison(List<LineDifference> lines) {

    private record Key(String normalPhase, String normalName) {

        static Key of(FormulaLine line) {
            return new Key(
                    SubstanceName.normalise(line.phase()), line.ingredient().normalName());
        }
    }

    private record Side(FormulaLine line, MassFraction share) {}

    /**
     * Copies the lines.
     *
     * @param lines all lines
     */
    public VersionComparison {
        lines = List.copyOf(lines);
    }

    private static VersionComparison of(Map<Key, Side> first, Map<Key, Side> second) {
        Map<Key, Side> asFirstWritten = new LinkedHashMap<>(first);
        second.forEach(asFirstWritten::putIfAbsent);
        List<LineDifference> all = new ArrayList<>();
        asFirstWritten.forEach((key, side) -> all.add(new LineDifference(
                all.size() + 1,
                side.line().phase(),
                side.line().name(),
                Optional.ofNullable(first.get(key)).map(Side::share),
                Optional.ofNullable(second.get(key)).map(Side::share))));
        return new VersionComparison(all);
    }

    /**
     * Compares two formulas.
     *
     * @param first the first version
     * @param second the second version
     * @return their lines side by side
     */
    public static VersionComparison of(Formula first, Formula second) {
        Objects.requireNonNull(first, "first");
        Objects.requireNonNull(second, "second");
        return of(shares(first, FormulaLine::share), shares(second, FormulaLine::share));
    }

    /**
     * Compares what two batches really contain.
     *
     * @param first the first batch
     * @param second the second batch
     * @return their lines side by side
     */
    public static VersionComparison of(MadeBatch first, MadeBatch second) {
        Objects.requireNonNull(first, "first");
        Objects.requireNonNull(second, "second");
        return of(shares(first, MadeLine::share), shares(second, MadeLine::share));
    }

    /**
     * Compares what two batches contained in the end.
     *
     * @param first the record of the first batch
     * @param second the record of the second batch
     * @return their lines side by side
     */
    public static VersionComparison of(BatchRecord first, BatchRecord second) {
        Objects.requireNonNull(second, "second");
        return of(Objects.requireNonNull(first, "first").made(), second.made());
    }

    private static <L extends Line> Map<Key, Side> shares(Lines<L> all, Function<L, MassFraction> share) {
        Map<Key, Side> shares = new LinkedHashMap<>();
        for (L line : all.lines()) {
            shares.put(Key.of(line.line()), new Side(line.line(), share.apply(line)));
        }
        return shares;
    }

    /**
     * The lines that are not the same in both.
     *
     * @return an unmodifiable list, empty if nothing changed
     */
    public List<LineDifference> changes() {
        return lines.stream()
                .filter(line -> line.change() != LineDifference.Change.SAME)
                .toList();
    }

    @Override
    public String toString() {
        return lines.toString();
    }
}
