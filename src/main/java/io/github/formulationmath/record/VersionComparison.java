package io.github.formulationmath.record;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Line;
import io.github.formulationmath.formula.Lines;
import io.github.formulationmath.formula.SubstanceName;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.pot.MadeLine;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import javax.measure.quantity.Dimensionless;

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

    /**
     * One line of a comparison: its share in either version, and the difference.
     *
     * <p>Example: 3 % before and 3.5 % after is a difference of 0.5 % of the whole.
     *
     * <p>Immutable and thread-safe.
     *
     * @param number the place of the line in the comparison, from 1
     * @param phase the name of the phase
     * @param name the name of the ingredient
     * @param first the share in the first version; empty if the line does not stand there
     * @param second the share in the second version; empty if the line does not stand there
     */
    public record LineDifference(
            int number, String phase, String name, Optional<MassFraction> first, Optional<MassFraction> second)
            implements Explained {

        private static final Symbol FIRST = Symbol.of("w_first", "share-in-first", Kind.SHARE);
        private static final Symbol SECOND = Symbol.of("w_second", "share-in-second", Kind.SHARE);
        private static final Symbol DIFFERENCE = Symbol.of("Δ_w", "share-difference", Kind.SHARE);

        /** What became of a line. */
        public enum Change {
            /** The share is the same, exactly. */
            SAME,
            /** The share is another. */
            CHANGED,
            /** The line stands in the second version only. */
            ADDED,
            /** The line stands in the first version only. */
            REMOVED
        }

        /**
         * Refuses null.
         *
         * @param number the place of the line in the comparison, from 1
         * @param phase the name of the phase
         * @param name the name of the ingredient
         * @param first the share in the first version
         * @param second the share in the second version
         */
        public LineDifference {
            Objects.requireNonNull(phase, "phase");
            Objects.requireNonNull(name, "name");
            Objects.requireNonNull(first, "first");
            Objects.requireNonNull(second, "second");
        }

        /**
         * What became of the line.
         *
         * @return the change, decided exactly
         */
        public Change change() {
            if (first.isEmpty()) {
                return Change.ADDED;
            }
            if (second.isEmpty()) {
                return Change.REMOVED;
            }
            return first.equals(second) ? Change.SAME : Change.CHANGED;
        }

        /**
         * How far the second share is from the first; a missing line counts as 0.
         *
         * @return second minus first in percent of the whole, with its working; negative if the second is less
         */
        public Amount<Dimensionless> difference() {
            return Amount.percent(difference(Reckoning.plain()).times(100))
                    .withWorking(
                            line -> Phrase.of("question.share-difference", line.name),
                            this,
                            LineDifference::difference);
        }

        /** Where the {@link #difference()} comes from. */
        @Override
        public Origin origin() {
            return difference().origin();
        }

        private <V> V difference(Reckoning<V> r) {
            Subject subject = Subject.of(Integer.toString(number), name);
            V after = r.given(SECOND, subject, share(second), Source.user());
            V before = r.given(FIRST, subject, share(first), Source.user());
            return r.named(DIFFERENCE, subject, r.difference(after, before));
        }

        private static Ratio share(Optional<MassFraction> share) {
            return share.map(MassFraction::fraction).orElse(Ratio.ZERO);
        }

        @Override
        public String toString() {
            return name + " " + change() + " " + text(first) + " -> " + text(second);
        }

        private static String text(Optional<MassFraction> share) {
            return share.map(MassFraction::toString).orElse("none");
        }
    }
}
