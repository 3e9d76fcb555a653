package io.github.formulationmath.record;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.SubstanceName;
import io.github.formulationmath.number.Ratio;
import java.io.Serial;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Two versions of a formula, or two batches, side by side: lines are matched by phase and ingredient name and compared by
 * their exact shares.
 *
 * <p>Example: {@code VersionComparison.of(firstFormula, secondFormula).changes()}.
 *
 * <p>Immutable and thread-safe.
 */
public final class VersionComparison implements Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private final List<LineDifference> lines;

    private record Key(String normalPhase, String normalName) {

        static Key of(FormulaLine line) {
            return new Key(
                    SubstanceName.normalise(line.phase()), line.ingredient().normalName());
        }
    }

    private record Line(String phase, String name, Ratio share) {}

    private VersionComparison(Map<Key, Line> first, Map<Key, Line> second) {
        Map<Key, Line> asFirstWritten = new LinkedHashMap<>(first);
        second.forEach(asFirstWritten::putIfAbsent);
        List<LineDifference> all = new ArrayList<>();
        asFirstWritten.forEach((key, line) -> all.add(new LineDifference(
                all.size() + 1, line.phase(), line.name(), share(first.get(key)), share(second.get(key)))));
        this.lines = Collections.unmodifiableList(all);
    }

    /**
     * Compares two formulas.
     *
     * @param first the first version
     * @param second the second version
     * @return their lines side by side
     */
    public static VersionComparison of(Formula first, Formula second) {
        return new VersionComparison(
                shares(Objects.requireNonNull(first, "first")), shares(Objects.requireNonNull(second, "second")));
    }

    /**
     * Compares what two batches really contain.
     *
     * @param first the first batch
     * @param second the second batch
     * @return their lines side by side
     */
    public static VersionComparison of(MadeBatch first, MadeBatch second) {
        return new VersionComparison(
                shares(Objects.requireNonNull(first, "first")), shares(Objects.requireNonNull(second, "second")));
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

    private static @Nullable Ratio share(@Nullable Line line) {
        return line == null ? null : line.share();
    }

    private static Map<Key, Line> shares(Formula formula) {
        Map<Key, Line> shares = new LinkedHashMap<>();
        for (FormulaLine line : formula.lines()) {
            shares.put(Key.of(line), new Line(line.phase(), line.name(), line.fraction()));
        }
        return shares;
    }

    private static Map<Key, Line> shares(MadeBatch made) {
        Map<Key, Line> shares = new LinkedHashMap<>();
        for (MadeLine line : made.lines()) {
            shares.put(
                    Key.of(line.line()),
                    new Line(line.line().phase(), line.name(), line.share().fraction()));
        }
        return shares;
    }

    /**
     * All lines: those of the first version in their order, then those that only the second has.
     *
     * @return an unmodifiable list
     */
    public List<LineDifference> lines() {
        return lines;
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
