package io.github.formulationmath.record;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import java.io.Serial;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

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

    private record Key(String phase, String name) {}

    private VersionComparison(Map<Key, Ratio> first, Map<Key, Ratio> second) {
        Map<Key, Boolean> keys = new LinkedHashMap<>();
        first.keySet().forEach(key -> keys.put(key, true));
        second.keySet().forEach(key -> keys.put(key, true));
        List<LineDifference> all = new ArrayList<>();
        for (Key key : keys.keySet()) {
            all.add(new LineDifference(all.size() + 1, key.phase(), key.name(), first.get(key), second.get(key)));
        }
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

    private static Map<Key, Ratio> shares(Formula formula) {
        Map<Key, Ratio> shares = new LinkedHashMap<>();
        for (FormulaLine line : formula.lines()) {
            shares.put(new Key(line.phase(), line.name()), line.fraction());
        }
        return shares;
    }

    private static Map<Key, Ratio> shares(MadeBatch made) {
        Map<Key, Ratio> shares = new LinkedHashMap<>();
        for (MadeLine line : made.lines()) {
            shares.put(new Key(line.line().phase(), line.name()), line.share().fraction());
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
