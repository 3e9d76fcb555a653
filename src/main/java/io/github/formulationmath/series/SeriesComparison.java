package io.github.formulationmath.series;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.weighing.MadeMasses;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import javax.measure.quantity.Dimensionless;
import org.jspecify.annotations.Nullable;

/**
 * Two trials of a series side by side: what differs on purpose, what by weighing, and whether the difference that was wanted is larger
 * than what weighing leaves open. Of a plan it tells what to expect, of batches that were made what there is.
 *
 * <p>Two trials from portions of one base have the errors of the base in common. So have two made batches; a base that was made twice
 * is compared as two.
 *
 * <p>Example: {@code SeriesComparison.of(seriesPlan).between("Oat lotion", "Oat lotion, second trial")}.
 *
 * <p>Immutable and thread-safe.
 */
public final class SeriesComparison {

    private final SeriesPlan plan;
    private final Map<Integer, Delivery> deliveries;

    private SeriesComparison(SeriesPlan plan, Map<Integer, Delivery> deliveries) {
        this.plan = plan;
        this.deliveries = deliveries;
    }

    /**
     * What a plan will deliver.
     *
     * @param plan the plan
     * @return the comparison of its trials
     */
    public static SeriesComparison of(SeriesPlan plan) {
        Map<Integer, Delivery> all = new LinkedHashMap<>();
        Objects.requireNonNull(plan, "plan").trials().forEach(trial -> all.put(all.size(), trial.delivery()));
        return new SeriesComparison(plan, all);
    }

    /**
     * What was made after a plan.
     *
     * @param plan the plan
     * @param made the base, if there is one, and two trials or more, each made after its plan in the series; in any order
     * @return the comparison of the trials that were made
     * @throws IllegalArgumentException if something was made after none of the plans or twice, the base is missing, or fewer than two
     *     trials are there
     */
    public static SeriesComparison of(SeriesPlan plan, List<MadeBatch> made) {
        List<MadeBatch> all = List.copyOf(Objects.requireNonNull(made, "made"));
        List<Trial> trials = Objects.requireNonNull(plan, "plan").trials();
        Optional<MadeMasses> base = base(plan, all);
        Map<Integer, Delivery> deliveries = new LinkedHashMap<>();
        for (int i = 0; i < trials.size(); i++) {
            Trial trial = trials.get(i);
            Optional<MadeBatch> own = after(trial.plan(), all);
            if (own.isPresent()) {
                if (trial.portion().hasBase() && base.isEmpty()) {
                    throw new IllegalArgumentException(
                            "made has "
                                    + Excerpt.of(trial.formula().name())
                                    + ", which is made from the base, but not the base: add the batch that was made after plan.base()");
                }
                deliveries.put(i, new Delivery(trial.portion(), own.get().masses(), base));
            }
        }
        int used = deliveries.size() + (base.isPresent() ? 1 : 0);
        if (used < all.size()) {
            throw new IllegalArgumentException("made has " + all.size() + " batches, of which only " + used
                    + " were made after a plan of this series: leave the others out, or make them after trial.plan()");
        }
        if (deliveries.size() < 2) {
            throw new IllegalArgumentException(
                    "made has " + deliveries.size() + " trials of this series: two are needed to compare them");
        }
        return new SeriesComparison(plan, deliveries);
    }

    private static Optional<MadeMasses> base(SeriesPlan plan, List<MadeBatch> made) {
        return plan.base().flatMap(base -> after(base, made)).map(MadeBatch::masses);
    }

    private static Optional<MadeBatch> after(Object plan, List<MadeBatch> made) {
        List<MadeBatch> own =
                made.stream().filter(batch -> batch.plan().equals(plan)).toList();
        if (own.size() > 1) {
            throw new IllegalArgumentException("made has "
                    + Excerpt.of(own.get(0).formula().name()) + " twice: say which of the two is to be compared");
        }
        return own.stream().findFirst();
    }

    /**
     * Two trials, line by line.
     *
     * @param first the name of the version from which it is told
     * @param second the name of the other
     * @return an unmodifiable list: the lines of the first in their order, then those that only the second has
     * @throws IllegalArgumentException if no version is called so, or its trial was not made
     */
    public List<Difference> between(String first, String second) {
        Side from = side("first", first);
        Side to = side("second", second);
        Set<LineKey> keys = new LinkedHashSet<>(from.lines().keySet());
        keys.addAll(to.lines().keySet());
        List<Difference> all = new ArrayList<>();
        for (LineKey key : keys) {
            all.add(new Difference(
                    all.size() + 1,
                    from.lines().get(key),
                    from.delivery(),
                    to.lines().get(key),
                    to.delivery()));
        }
        return List.copyOf(all);
    }

    /** A trial that is compared. */
    private record Side(Map<LineKey, FormulaLine> lines, Delivery delivery) {}

    private Side side(String name, String version) {
        Trial trial = plan.trial(Objects.requireNonNull(version, name));
        Delivery delivery = deliveries.get(plan.trials().indexOf(trial));
        if (delivery == null) {
            throw new IllegalArgumentException(
                    name + " is \"" + Excerpt.of(version) + "\", of which no batch was given: add what was made of it");
        }
        return new Side(LineKey.lines(trial.formula()), delivery);
    }

    @Override
    public String toString() {
        return "comparison of "
                + deliveries.keySet().stream()
                        .map(i -> plan.trials().get(i).formula().name())
                        .toList();
    }

    /** What the difference of a line comes to. */
    public enum Finding {
        /** None was wanted, and weighing leaves none to be sure of. */
        ALIKE,
        /** One was wanted, and there is one that way whatever the errors of weighing do. */
        SHOWN,
        /** One was wanted, and the errors of weighing may have hidden it. */
        NOT_SHOWN,
        /** None was wanted, and yet there is one whatever the errors do: it was weighed so. */
        BY_WEIGHING,
        /** One was wanted, and there is one the other way: it was weighed so. */
        OPPOSITE
    }

    /**
     * How a line of one trial differs from that of another, in percent of the whole: a difference of 1 % is one percentage point.
     *
     * <p>Immutable and thread-safe.
     */
    public static final class Difference implements Explained {

        private static final Rounding TWO_DIGITS = Rounding.toSignificantDigits(2);
        private static final Symbol WANTED = Symbol.of("w", "share-wanted", Kind.SHARE);
        private static final Symbol THERE = Symbol.of("s", "share-there", Kind.SHARE);
        private static final Symbol DIFFERENCE = Symbol.of("Δs", "difference-of-shares", Kind.SHARE_DIFFERENCE);
        private static final Symbol ON_PURPOSE = Symbol.of("Δw", "difference-on-purpose", Kind.SHARE_DIFFERENCE);
        private static final Symbol BY_WEIGHING = Symbol.of("ε", "difference-by-weighing", Kind.SHARE_DIFFERENCE);

        private final int number;
        private final @Nullable FormulaLine first;
        private final Delivery firstDelivery;
        private final @Nullable FormulaLine second;
        private final Delivery secondDelivery;
        private final Interval<Amount<Dimensionless>> bounds;

        Difference(
                int number,
                @Nullable FormulaLine first,
                Delivery firstDelivery,
                @Nullable FormulaLine second,
                Delivery secondDelivery) {
            this.number = number;
            this.first = first;
            this.firstDelivery = firstDelivery;
            this.second = second;
            this.secondDelivery = secondDelivery;
            this.bounds = secondDelivery.less(second, firstDelivery, first);
        }

        /**
         * The ingredient of the line.
         *
         * @return its name, as the first of the two versions that has it writes it
         */
        public String name() {
            return line().name();
        }

        /**
         * The phase of the line.
         *
         * @return its name
         */
        public String phase() {
            return line().phase();
        }

        private FormulaLine line() {
            return first == null ? Objects.requireNonNull(second) : first;
        }

        /**
         * What differs on purpose: share in the second formula less share in the first.
         *
         * @return the exact difference in percent of the whole, with its working
         */
        public Amount<Dimensionless> onPurpose() {
            return told("question.difference-on-purpose", Difference::onPurpose);
        }

        /**
         * What differs as read: share in the second trial less share in the first, every error at its middle.
         *
         * @return the difference in percent of the whole, with its working
         */
        public Amount<Dimensionless> made() {
            return told("question.difference-of-shares", Difference::made);
        }

        /**
         * What differs by weighing, as read: what was made less what was wanted.
         *
         * @return the difference in percent of the whole, with its working
         */
        public Amount<Dimensionless> byWeighing() {
            return told("question.difference-by-weighing", Difference::byWeighing);
        }

        /** As {@link #byWeighing()}. */
        @Override
        public Origin origin() {
            return byWeighing().origin();
        }

        /**
         * Where the difference is sure to lie, the errors of a common base counted once.
         *
         * @return the least and the greatest difference in percent of the whole; both can happen
         */
        public Interval<Amount<Dimensionless>> bounds() {
            return bounds;
        }

        /**
         * Whether the difference that was wanted is there.
         *
         * @return the finding, decided exactly
         */
        public Finding finding() {
            int wanted = onPurpose(Reckoning.plain()).signum();
            int least = bounds.least().signum();
            int greatest = bounds.greatest().signum();
            int sure = least > 0 ? 1 : greatest < 0 ? -1 : 0;
            if (wanted == 0) {
                return sure == 0 ? Finding.ALIKE : Finding.BY_WEIGHING;
            }
            return sure == 0 ? Finding.NOT_SHOWN : sure == wanted ? Finding.SHOWN : Finding.OPPOSITE;
        }

        private Amount<Dimensionless> told(String question, Origin.Figure<Difference> figure) {
            Ratio fraction = figure.in(this, Reckoning.plain());
            return Delivery.percent(fraction).withWorking(asked -> Phrase.of(question, asked.name()), this, figure);
        }

        private Subject subject(String side) {
            return Subject.of(side + "," + number, name());
        }

        private <V> V onPurpose(Reckoning<V> r) {
            V after = r.given(WANTED, subject("2"), second == null ? Ratio.ZERO : second.fraction(), Source.user());
            V before = r.given(WANTED, subject("1"), first == null ? Ratio.ZERO : first.fraction(), Source.user());
            return r.named(ON_PURPOSE, r.difference(after, before));
        }

        private <V> V made(Reckoning<V> r) {
            V after = r.given(THERE, subject("2"), there(second, secondDelivery), Source.user());
            V before = r.given(THERE, subject("1"), there(first, firstDelivery), Source.user());
            return r.named(DIFFERENCE, r.difference(after, before));
        }

        private static Ratio there(@Nullable FormulaLine line, Delivery delivery) {
            return line == null ? Ratio.ZERO : delivery.share(line).canonical();
        }

        private <V> V byWeighing(Reckoning<V> r) {
            return r.named(BY_WEIGHING, r.difference(made(r), onPurpose(r)));
        }

        /** The line, both parts of its difference, its bounds and the finding. */
        @Override
        public String toString() {
            return Phrase.of(
                            "difference." + finding().name(),
                            name(),
                            points(onPurpose()),
                            points(made()),
                            points(outwards(bounds.least(), RoundingMode.FLOOR)),
                            points(outwards(bounds.greatest(), RoundingMode.CEILING)))
                    .toString();
        }

        /** An end of the bounds with the digits that their width supports, never inside them. */
        private Amount<Dimensionless> outwards(Amount<Dimensionless> end, RoundingMode mode) {
            Ratio width = bounds.greatest().minus(bounds.least()).exactValue();
            return width.isZero()
                    ? end
                    : end.rounded(
                            Rounding.toMultipleOf(TWO_DIGITS.stepFor(width)).with(mode));
        }

        private static String points(Amount<Dimensionless> difference) {
            return NumberText.signed(difference.exactValue(), "");
        }
    }
}
