package io.github.formulationmath.size;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.BalanceUnit;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.reckoning.Working;
import io.github.formulationmath.weighing.Balance;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * Which batch sizes can be made on a bench: from the smallest that is large enough for the balance to the largest that
 * balance, vessel and stock allow, with what binds at each end; or none, with what would open the window.
 *
 * <p>Upper ends: the capacity of the balance less the vessel on it; the working volume of the vessel, if it and the
 * density of the product are known (without the density the volume limits nothing, and {@link #notConsidered()} says so);
 * the stock of an ingredient over its share. Balance and vessel count the exact masses or the readings of the plan under
 * the closure of the bench, whichever add up to more, so that both ends can be planned on it; where the readings of an
 * exact fit would be too much, the largest batch is a whole number of divisions (or of the steps asked for). A stock counts
 * the same way, whole divisions of the display of it: up to the largest batch no reading needs more than there is.
 *
 * <p>Both ends belong to the window. Sizes between them may fail, under criteria that leave gaps: ask {@link
 * #contains(Amount)}, {@link #nearest(Amount)} or {@link Feasible#everySizeFrom()}. An end rounded to fewer digits may
 * fail too; {@link BatchConstraints#inStepsOf} asks for ends in whole grams.
 *
 * <p>Example: 0.5 % as the smallest line, a display of 0.1 g and 2 kg, a beaker of 214 g, every line at least one
 * division: from 20 g to 1786 g. Several benches side by side are a stream: {@code benches.stream().map(bench ->
 * BatchWindow.of(formula, bench, constraints))}.
 */
public abstract sealed class BatchWindow {

    private static final Symbol LOWER = Symbol.of("M", "smallest-of-window", Kind.MASS);
    private static final Symbol UPPER = Symbol.of("M", "largest-of-window", Kind.MASS);

    private final WindowSearch search;
    private final Optional<End> smallest;
    private final Optional<End> largest;

    private BatchWindow(WindowSearch search, Optional<End> smallest, Optional<End> largest) {
        this.search = search;
        this.smallest = smallest;
        this.largest = largest;
    }

    /**
     * Looks for the window with the standard {@link SearchEffort}.
     *
     * @param formula the formula
     * @param bench where it is weighed
     * @param constraints what a batch must meet
     * @return the window
     * @throws IllegalArgumentException if a constraint names a line or phase that the formula does not have, or the vessel
     *     overloads the balance by itself
     * @throws SearchLimitException if the search reaches its limit
     */
    public static BatchWindow of(Formula formula, Bench bench, BatchConstraints constraints) {
        return of(formula, bench, constraints, SearchEffort.standard());
    }

    /**
     * Looks for the window on a balance without a vessel, under one criterion.
     *
     * @param formula the formula
     * @param balance what it is weighed on
     * @param criterion what makes a batch large enough
     * @return the window
     * @throws IllegalArgumentException if the criterion names a line or phase that the formula does not have
     * @throws SearchLimitException if the search reaches its limit
     */
    public static BatchWindow of(Formula formula, Balance balance, Criterion criterion) {
        return of(formula, Bench.of(balance), BatchConstraints.of(criterion));
    }

    /**
     * Looks for the window on a bench, under one criterion.
     *
     * @param formula the formula
     * @param bench where it is weighed
     * @param criterion what makes a batch large enough
     * @return the window
     * @throws IllegalArgumentException if the criterion names a line or phase that the formula does not have
     * @throws SearchLimitException if the search reaches its limit
     */
    public static BatchWindow of(Formula formula, Bench bench, Criterion criterion) {
        return of(formula, bench, BatchConstraints.of(criterion));
    }

    /**
     * Looks for the window.
     *
     * @param formula the formula
     * @param bench where it is weighed
     * @param constraints what a batch must meet
     * @param effort how much work may be done
     * @return the window
     * @throws IllegalArgumentException if a constraint names a line or phase that the formula does not have
     * @throws SearchLimitException if the search reaches its limit
     * @throws java.util.concurrent.CancellationException if the thread is interrupted while it searches
     */
    public static BatchWindow of(Formula formula, Bench bench, BatchConstraints constraints, SearchEffort effort) {
        Objects.requireNonNull(effort, "effort");
        return WindowSearch.of(
                        Objects.requireNonNull(formula, "formula"),
                        Objects.requireNonNull(bench, "bench"),
                        Objects.requireNonNull(constraints, "constraints"))
                .answer(new SearchMeter(effort));
    }

    /**
     * The formula.
     *
     * @return what is to be made
     */
    public Formula formula() {
        return search.formula();
    }

    /**
     * The bench.
     *
     * @return where it is weighed
     */
    public Bench bench() {
        return search.bench();
    }

    /**
     * The constraints.
     *
     * @return what a batch must meet
     */
    public BatchConstraints constraints() {
        return search.constraints();
    }

    /**
     * The smallest batch and what forbids less.
     *
     * @return the lower end; empty if no batch can be made
     */
    public final Optional<End> smallest() {
        return smallest;
    }

    /**
     * The largest batch and what forbids more. The batch and the readings of its plan, which may add up to more, fit the bench.
     *
     * @return the upper end; empty if no batch can be made
     */
    public final Optional<End> largest() {
        return largest;
    }

    /**
     * Whether a size lies in the window and meets every constraint.
     *
     * @param size a batch mass
     * @return true if it can be made
     */
    public final boolean contains(Amount<Mass> size) {
        Ratio grams = Objects.requireNonNull(size, "size").canonical();
        return smallest.filter(low -> grams.compareTo(low.grams()) >= 0).isPresent()
                && largest.filter(high -> grams.compareTo(high.grams()) <= 0).isPresent()
                && sizes().passes(grams);
    }

    /**
     * Whether a size, as text, lies in the window and meets every constraint.
     *
     * @param size a batch mass, for example {@code "30 g"}
     * @return true if it can be made
     * @throws IllegalArgumentException if the text is no mass
     */
    public final boolean contains(String size) {
        return contains(Amount.mass(size));
    }

    /**
     * The size in the window nearest to a wish; of two at the same distance, the smaller.
     *
     * @param wish the batch mass wished for
     * @return a size that can be made, in the unit of the balance; empty if there is none
     * @throws SearchLimitException if the search reaches its limit
     */
    public final Optional<Amount<Mass>> nearest(Amount<Mass> wish) {
        Ratio grams = Objects.requireNonNull(wish, "wish").canonical();
        return largest.map(End::grams).map(top -> {
            Ratio inside = grams.max(smallest.orElseThrow().grams()).min(top);
            Ratio above = sizes().atLeast(inside, SearchMeter.standard(), Optional.of(top))
                    .orElseThrow()
                    .at();
            Ratio below =
                    sizes().atMost(inside, SearchMeter.standard()).orElseThrow().at();
            boolean down = inside.minus(below).compareTo(above.minus(inside)) <= 0;
            return Amount.grams(down ? below : above).inUnitOf(bench().balance().readability());
        });
    }

    /**
     * The size in the window nearest to a wish given as text.
     *
     * @param wish the batch mass wished for, for example {@code "30 g"}
     * @return a size that can be made, in the unit of the balance; empty if there is none
     * @throws IllegalArgumentException if the text is no mass
     * @throws SearchLimitException if the search reaches its limit
     */
    public final Optional<Amount<Mass>> nearest(String wish) {
        return nearest(Amount.mass(wish));
    }

    /**
     * What could limit a batch but was not considered, because a figure is missing; see {@link Bench#notConsidered()}.
     *
     * @return an unmodifiable list, empty if everything given was considered
     */
    public final List<Phrase> notConsidered() {
        return bench().notConsidered();
    }

    /**
     * All sizes that are large enough, whatever the bench can carry and hold.
     *
     * @return what criteria, step and least size allow
     */
    public final Sizes sizes() {
        return search.sizes();
    }

    /**
     * The whole multiples of a step in a range that can be made: those of {@link Sizes#within(String, String, String)} that
     * the bench carries and holds.
     *
     * <p>Example: {@code BatchWindow.of(formula, bench, constraints).within("50 g", "500 g", "10 g")}.
     *
     * @param least the smallest batch wanted, for example {@code "50 g"}
     * @param greatest the largest
     * @param step the step, for example {@code "10 g"}
     * @return the sizes in ascending order, both ends counted in; an unmodifiable list
     * @throws IllegalArgumentException as {@link Sizes#within(String, String, String)}
     */
    public final List<Amount<Mass>> within(String least, String greatest, String step) {
        return sizes().within(least, greatest, step).stream()
                .filter(this::contains)
                .toList();
    }

    final WindowSearch search() {
        return search;
    }

    /** Equal if the same was asked and the same ends found. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof BatchWindow that
                && formula().equals(that.formula())
                && bench().equals(that.bench())
                && constraints().equals(that.constraints())
                && smallest().equals(that.smallest())
                && largest().equals(that.largest());
    }

    @Override
    public int hashCode() {
        return Objects.hash(formula(), bench(), constraints());
    }

    /** A window with something in it: its smallest and largest batch, both of which pass. */
    public static final class Feasible extends BatchWindow {

        Feasible(WindowSearch search, End smallest, End largest) {
            super(search, Optional.of(smallest), Optional.of(largest));
        }

        /**
         * The smallest batch and what forbids less, as {@link #smallest()}.
         *
         * @return the lower end
         */
        public End lowerEnd() {
            return smallest().orElseThrow();
        }

        /**
         * The largest batch and what forbids more, as {@link #largest()}.
         *
         * @return the upper end
         */
        public End upperEnd() {
            return largest().orElseThrow();
        }

        /**
         * The smallest size from which on every size up to the largest passes; below it there are gaps, unless it is the
         * smallest batch. Where the sizes stand apart, in steps for example, it is the largest.
         *
         * @return the mass in the unit of the balance, exact
         */
        public Amount<Mass> everySizeFrom() {
            Ratio start = sizes().startAround(upperEnd().grams()).max(lowerEnd().grams());
            return Amount.grams(start).inUnitOf(bench().balance().readability());
        }

        /**
         * The plan of a batch in the window, under the closure that shows what the criteria ask for: the readings that {@link
         * Criterion#madeWithin(Tolerances)} speaks of are within its tolerances, those of {@link
         * Criterion#roundingWithin} within its own, if both are asked the former. Without either it is the closure of the
         * bench, under which every size of the window can be planned in any case.
         *
         * @param size a batch mass
         * @return its plan
         * @throws IllegalArgumentException if {@link #contains(Amount)} is false of the size
         */
        public WeighingPlan plan(Amount<Mass> size) {
            if (!contains(size)) {
                throw new IllegalArgumentException(
                        "size is " + Excerpt.of(size) + ", which cannot be made: take one that the window"
                                + " contains, " + Excerpt.of(nearest(size).orElseThrow()) + " for example");
            }
            return WeighingPlan.of(
                    Batch.of(formula(), BatchSize.ofMass(size)), constraints().showing(bench()));
        }

        /**
         * The plan of a batch in the window, its size as text.
         *
         * @param size a batch mass, for example {@code "120 g"}
         * @return its plan
         * @throws IllegalArgumentException if the text is no mass, or {@link #contains(Amount)} is false of the size
         */
        public WeighingPlan plan(String size) {
            return plan(Amount.mass(size));
        }

        /** Both ends, where the gaps between them end, and what was not considered. */
        @Override
        public String toString() {
            return formula().name() + ": from " + BalanceUnit.least(lowerEnd().mass(), this::contains) + " to "
                    + BalanceUnit.greatest(upperEnd().mass(), this::contains) + gaps() + bench().unconsideredText();
        }

        private String gaps() {
            Amount<Mass> start = everySizeFrom();
            if (start.compareTo(lowerEnd().mass()) == 0) {
                return "";
            }
            return start.compareTo(upperEnd().mass()) == 0
                    ? ", with gaps between"
                    : ", with gaps below " + BalanceUnit.least(start, this::contains);
        }
    }

    /**
     * No batch can be made: what is large enough for the balance is too much for the bench, or nothing is ever large enough.
     */
    public static final class Empty extends BatchWindow {

        private final Optional<End> needed;
        private final List<WindowOpening> openings;

        Empty(WindowSearch search, Optional<End> needed, List<WindowOpening> openings) {
            super(search, Optional.empty(), Optional.empty());
            this.needed = needed;
            this.openings = List.copyOf(openings);
        }

        /**
         * The smallest batch that would be large enough, and what forbids less; the bench allows less than that.
         *
         * @return the end; empty if no size would do, or none within a million times the capacity
         */
        public Optional<End> smallestNeeded() {
            return needed;
        }

        /**
         * The ceiling that is lowest.
         *
         * @return the upper end as it would be
         */
        public End largestAllowed() {
            return search().ceilingAt(search().top());
        }

        /**
         * What would open the window, each by itself and each tried: applied to this question, it leaves a batch. Other ways
         * may open it too.
         *
         * @return an unmodifiable list; empty if nothing here would, see {@link #obstacle()}
         */
        public List<WindowOpening> openings() {
            return openings;
        }

        /**
         * Why no batch of whatever size would do.
         *
         * @return the reason in words; empty if some size would
         */
        public Optional<Phrase> obstacle() {
            return sizes().obstacle();
        }

        /** What would open it, and what was not considered. */
        @Override
        public String toString() {
            return formula().name() + ": no batch; "
                    + openings.stream().map(WindowOpening::phrase).toList() + bench().unconsideredText();
        }
    }

    /**
     * One end of a {@link BatchWindow}: the size, what forbids to go beyond, and the line or part concerned. Its working leads
     * from the given figures to the size by the relation that binds.
     *
     * <p>Immutable and thread-safe.
     */
    public static final class End implements Explained {

        private final WindowSearch search;
        private final boolean lower;
        private final Landing at;
        private final WindowBound bound;

        End(WindowSearch search, boolean lower, Landing at, WindowBound bound) {
            this.search = search;
            this.lower = lower;
            this.at = at;
            this.bound = bound;
        }

        /**
         * The size at this end; it belongs to the window.
         *
         * @return the mass in the unit of the balance
         */
        public Amount<Mass> mass() {
            return search.sizes().mass(at.at()).withWorking(End::question, this, End::size);
        }

        private Phrase question() {
            return Phrase.of(
                    lower ? "question.smallest-batch" : "question.largest-batch",
                    search.formula().name());
        }

        private <V> V size(Reckoning<V> r) {
            if (!lower) {
                search.bench().notConsidered().forEach(phrase -> r.note(() -> phrase));
            }
            V size = bound.shown(r, at, lower);
            return lower ? r.named(LOWER, Subject.of("low", ""), size) : r.named(UPPER, Subject.of("high", ""), size);
        }

        /** As {@link #mass()}. */
        @Override
        public Origin origin() {
            return mass().origin();
        }

        /** As that of {@link #mass()}, told in its unit. */
        @Override
        public Working working() {
            return mass().working();
        }

        Ratio grams() {
            return at.at();
        }

        /**
         * What forbids to go beyond.
         *
         * @return the criterion or the ceiling in words
         */
        public Phrase boundBy() {
            return bound.name();
        }

        /**
         * The line that forbids to go beyond.
         *
         * @return the line; empty if it is the total, or something that is no line
         */
        public Optional<FormulaLine> bindingLine() {
            return bound.line(search.formula(), at);
        }

        /** Equal if what is to be made, where, the size and what binds are. */
        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof End that
                    && lower == that.lower
                    && at.equals(that.at)
                    && search.formula().equals(that.search.formula())
                    && search.bench().equals(that.search.bench())
                    && boundBy().equals(that.boundBy());
        }

        @Override
        public int hashCode() {
            return Objects.hash(lower, at, search.formula());
        }

        @Override
        public String toString() {
            Sizes sizes = search.sizes();
            Amount<Mass> mass = sizes.mass(at.at());
            // Where the bench allows too little, its end is no size that passes.
            boolean passes = mass.signum() > 0 && sizes.contains(mass);
            return (lower
                            ? BalanceUnit.least(mass, size -> !passes || sizes.contains(size))
                            : BalanceUnit.greatest(mass, size -> !passes || sizes.contains(size)))
                    + " (" + boundBy() + ")";
        }
    }
}
