package io.github.formulationmath.record;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Line;
import io.github.formulationmath.formula.Lines;
import io.github.formulationmath.formula.SubstanceName;
import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.pot.MadeLine;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
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
import java.util.stream.Stream;
import javax.measure.quantity.Dimensionless;
import org.jspecify.annotations.Nullable;

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

    /** A line in one version; of a batch also where its share is sure to lie. */
    private record Side(FormulaLine line, MassFraction share, Optional<Interval<MassFraction>> bounds) {

        static Side of(FormulaLine line) {
            return new Side(line, line.share(), Optional.empty());
        }

        static Side of(MadeLine line) {
            return new Side(line.line(), line.share(), Optional.of(line.shareBounds()));
        }
    }

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
                Optional.ofNullable(second.get(key)).map(Side::share),
                bounds(first.get(key), second.get(key)))));
        return new VersionComparison(all);
    }

    /** Two batches are weighed apart: the difference is least where the first is most and the second least. */
    private static Optional<Interval<Amount<Dimensionless>>> bounds(@Nullable Side first, @Nullable Side second) {
        boolean weighed = Stream.of(Optional.ofNullable(first), Optional.ofNullable(second))
                .anyMatch(side -> side.flatMap(Side::bounds).isPresent());
        return weighed
                ? Optional.of(Interval.of(
                        percent(least(second).minus(most(first))),
                        percent(most(second).minus(least(first)))))
                : Optional.empty();
    }

    private static Amount<Dimensionless> percent(Ratio share) {
        return Amount.percent(share.times(100));
    }

    private static Ratio least(@Nullable Side side) {
        return side == null ? Ratio.ZERO : side.bounds().orElseThrow().least().fraction();
    }

    private static Ratio most(@Nullable Side side) {
        return side == null
                ? Ratio.ZERO
                : side.bounds().orElseThrow().greatest().fraction();
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
        return of(sides(first, Side::of), sides(second, Side::of));
    }

    /**
     * Compares what two batches really contain, two of one version above all: which differences are surely there, and which
     * the errors of weighing may explain.
     *
     * @param first the first batch
     * @param second the second batch
     * @return their lines side by side
     */
    public static VersionComparison of(MadeBatch first, MadeBatch second) {
        Objects.requireNonNull(first, "first");
        Objects.requireNonNull(second, "second");
        return of(sides(first, Side::of), sides(second, Side::of));
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

    private static <L extends Line> Map<Key, Side> sides(Lines<L> all, Function<L, Side> side) {
        Map<Key, Side> sides = new LinkedHashMap<>();
        for (L line : all.lines()) {
            sides.put(Key.of(line.line()), side.apply(line));
        }
        return sides;
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
     * @param bounds between which ends the difference is sure to lie, in percent of the whole, if batches are compared
     */
    public record LineDifference(
            int number,
            String phase,
            String name,
            Optional<MassFraction> first,
            Optional<MassFraction> second,
            Optional<Interval<Amount<Dimensionless>>> bounds)
            implements Explained {

        private static final Symbol FIRST = Symbol.of("w_first", "share-in-first", Kind.SHARE);
        private static final Symbol SECOND = Symbol.of("w_second", "share-in-second", Kind.SHARE);
        private static final Symbol DIFFERENCE = Symbol.of("Δ_w", "share-difference", Kind.SHARE_DIFFERENCE);

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
         * @param bounds between which ends the difference is sure to lie
         */
        public LineDifference {
            Objects.requireNonNull(phase, "phase");
            Objects.requireNonNull(name, "name");
            Objects.requireNonNull(first, "first");
            Objects.requireNonNull(second, "second");
            Objects.requireNonNull(bounds, "bounds");
        }

        /**
         * Whether there is a difference that no errors of weighing explain.
         *
         * @return true if the shares are not the same and, of batches, 0 lies outside the {@link #bounds()}
         */
        public boolean isSure() {
            return change() != Change.SAME
                    && bounds.map(between -> between.least().signum() > 0
                                    || between.greatest().signum() < 0)
                            .orElse(true);
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
            return name
                    + switch (change()) {
                        case SAME -> " " + text(second) + " in both";
                        case CHANGED ->
                            " " + text(second) + " instead of " + text(first)
                                    + (isSure() ? "" : ", which the errors of weighing may explain");
                        case ADDED -> " " + text(second) + " instead of none";
                        case REMOVED -> " none instead of " + text(first);
                    };
        }

        private static String text(Optional<MassFraction> share) {
            return share.map(each -> NumberText.percent(each.fraction())).orElse("none");
        }
    }
}
