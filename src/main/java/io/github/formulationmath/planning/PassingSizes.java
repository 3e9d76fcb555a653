package io.github.formulationmath.planning;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.BoundsSet;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.weighing.Balance;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Spliterator;
import java.util.Spliterators;
import java.util.function.Supplier;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import javax.measure.quantity.Mass;

/**
 * All batch sizes whose rounding to the display stays within tolerance, line by line ({@link
 * BatchCriterion#roundingWithin}): islands, closed intervals, and then everything from one size on.
 *
 * <p>One line at share w shows some whole n within tolerance exactly for M from {@code n·d/((1 + τ)·w)} to {@code n·d/((1
 * − τ)·w)}, n = 1, 2, …; both ends pass, whichever way the display breaks ties: it shows a nearest whole number, and when
 * any is within {@code τ·x} of x, so is the one shown. n = 0 never is, τ being below 1. The windows of one line touch from
 * {@code n ≥ (1 − τ)/(2τ)} on; all sizes pass from the largest such start of all lines on. The rule of thumb {@code M =
 * d/(2·τ·w)} of the smallest line lies a little above that, never below.
 *
 * <p>Example: 70/20/5/3/1.5/0.5 % on a display of 0.1 g within 5 %: 20 g passes, 22 to 38 g fail, so does 190 g, and from
 * 4000/21 g (190.48 g) on every batch passes.
 *
 * <p>Each question is answered by a search of its own, so the smallest size is found at once even where there are more
 * islands than anyone would list. Sizes are in grams.
 *
 * <p>Immutable and thread-safe.
 */
public final class PassingSizes {

    /** How many intervals {@link #all()} and {@link #within(Bounds)} list before they refuse. */
    public static final int MOST_INTERVALS = 10_000;

    private final RoundingRequirement requirement;
    private final SearchEffort effort;

    private PassingSizes(RoundingRequirement requirement, SearchEffort effort) {
        this.requirement = requirement;
        this.effort = effort;
    }

    /**
     * The passing sizes, with the standard {@link SearchEffort} for each question.
     *
     * @param formula the formula
     * @param balance the balance
     * @param tolerances how far each line may be off
     * @return the sizes
     * @throws IllegalArgumentException if the tolerances name a line or phase that the formula does not have
     */
    public static PassingSizes of(Formula formula, Balance balance, Tolerances tolerances) {
        return of(formula, balance, tolerances, SearchEffort.standard());
    }

    /**
     * The passing sizes.
     *
     * @param formula the formula
     * @param balance the balance
     * @param tolerances how far each line may be off
     * @param effort how much work each question may take
     * @return the sizes
     * @throws IllegalArgumentException if the tolerances name a line or phase that the formula does not have
     */
    public static PassingSizes of(Formula formula, Balance balance, Tolerances tolerances, SearchEffort effort) {
        return new PassingSizes(
                new RoundingRequirement(
                        Objects.requireNonNull(formula, "formula"),
                        Objects.requireNonNull(balance, "balance"),
                        Objects.requireNonNull(tolerances, "tolerances").checkedFor(formula)),
                Objects.requireNonNull(effort, "effort"));
    }

    /**
     * Whether a size passes.
     *
     * @param size a batch mass above 0
     * @return true if every line's rounding is within tolerance
     * @throws IllegalArgumentException if the size is not above 0
     */
    public boolean contains(Amount<Mass> size) {
        return requirement.bands().pass(divisions("size", size));
    }

    /**
     * Whether a size given as text passes.
     *
     * @param size a batch mass above 0, for example {@code "30 g"}
     * @return true if every line's rounding is within tolerance
     * @throws IllegalArgumentException if the text is no mass or not above 0
     */
    public boolean contains(String size) {
        return contains(Amount.mass(size));
    }

    /**
     * The smallest passing size.
     *
     * @return the size in grams; there always is one
     * @throws SearchLimitException if the search reaches its limit
     */
    public Amount<Mass> smallest() {
        return grams(requirement.bands().smallest(meter()).at());
    }

    /**
     * The smallest passing size that is not below another.
     *
     * @param size a batch mass above 0
     * @return the size in grams
     * @throws IllegalArgumentException if the size is not above 0
     * @throws SearchLimitException if the search reaches its limit
     */
    public Amount<Mass> atLeast(Amount<Mass> size) {
        return grams(
                requirement.bands().atLeast(divisions("size", size), meter()).at());
    }

    /**
     * The largest passing size that is not above another.
     *
     * @param size a batch mass above 0
     * @return the size in grams, or empty if every smaller size fails
     * @throws IllegalArgumentException if the size is not above 0
     * @throws SearchLimitException if the search reaches its limit
     */
    public Optional<Amount<Mass>> atMost(Amount<Mass> size) {
        return requirement.bands().atMost(divisions("size", size), meter()).map(found -> grams(found.at()));
    }

    /**
     * The smallest passing size that is a whole multiple of a step.
     *
     * @param step the step, for example 1 g, above 0
     * @return the size in grams
     * @throws IllegalArgumentException if the step is not above 0
     * @throws SearchLimitException if the search reaches its limit
     */
    public Amount<Mass> smallestMultipleOf(Amount<Mass> step) {
        Ratio asked = divisions("step", step);
        // Lines that must be exact pass at the multiples of a size; with those of the step they meet at a common
        // multiple.
        Ratio grid = requirement
                .bands()
                .period()
                .map(period -> CommonPeriod.ofSizes(List.of(asked, period)))
                .orElse(asked);
        SearchMeter meter = meter();
        Ratio size = requirement.bands().smallest(meter).at();
        while (!size.dividedBy(grid).isInteger()) {
            Ratio multiple = size.dividedBy(grid).ceil().times(grid);
            size = requirement.bands().atLeast(multiple, meter).at();
        }
        return grams(size);
    }

    /**
     * The passing size nearest to a wish; of two at the same distance, the smaller.
     *
     * @param wish the batch mass wished for, above 0
     * @return the size in grams
     * @throws IllegalArgumentException if the wish is not above 0
     * @throws SearchLimitException if the search reaches its limit
     */
    public Amount<Mass> nearest(Amount<Mass> wish) {
        Amount<Mass> above = atLeast(wish);
        return atMost(wish)
                .filter(below -> wish.minus(below).compareTo(above.minus(wish)) <= 0)
                .orElse(above);
    }

    /**
     * The passing size nearest to a wish given as text.
     *
     * @param wish the batch mass wished for, above 0, for example {@code "30 g"}
     * @return the size in grams
     * @throws IllegalArgumentException if the text is no mass or not above 0
     * @throws SearchLimitException if the search reaches its limit
     */
    public Amount<Mass> nearest(String wish) {
        return nearest(Amount.mass(wish));
    }

    /**
     * The size from which on every batch passes: the smallest such.
     *
     * @return the size in grams; empty if some tolerance is 0, for then gaps never end
     */
    public Optional<Amount<Mass>> allFrom() {
        return requirement.bands().allFrom().map(this::grams);
    }

    /**
     * The whole set, in grams: closed intervals and a final ray.
     *
     * @return the set
     * @throws SearchLimitException if it has more than {@value #MOST_INTERVALS} intervals (a tolerance of 0 makes them
     *     endless), or the search reaches its limit; ask {@link #within} for a part of it, or walk {@link #intervals}
     */
    public BoundsSet all() {
        SearchMeter meter = meter();
        return listed(intervalsFrom(requirement.bands().smallest(meter).at(), () -> meter));
    }

    /**
     * The part of the set in a range, in grams.
     *
     * @param range a range of batch masses in grams
     * @return the set
     * @throws SearchLimitException as {@link #all()}
     */
    public BoundsSet within(Bounds range) {
        Objects.requireNonNull(range, "range");
        SearchMeter meter = meter();
        Ratio from = range.lower()
                .filter(low -> low.signum() > 0)
                .map(low -> low.dividedBy(requirement.readability()))
                .orElseGet(() -> requirement.bands().smallest(meter).at());
        Stream<Bounds> met = intervalsFrom(from, () -> meter)
                .takeWhile(part -> range.upper()
                        .map(high -> part.lower().orElseThrow().compareTo(high) <= 0)
                        .orElse(true));
        return listed(met.flatMap(part -> part.intersection(range).stream()));
    }

    /**
     * The intervals in ascending order, each searched for when it is asked for, with the whole effort; the last one has no
     * upper end.
     *
     * @return a stream in grams, endless if some tolerance is 0
     */
    public Stream<Bounds> intervals() {
        return intervalsFrom(requirement.bands().smallest(meter()).at(), this::meter);
    }

    private Stream<Bounds> intervalsFrom(Ratio divisions, Supplier<SearchMeter> meters) {
        Iterator<Bounds> islands = new Islands(requirement.bands(), divisions, meters);
        return StreamSupport.stream(
                        Spliterators.spliteratorUnknownSize(islands, Spliterator.ORDERED | Spliterator.NONNULL), false)
                .map(part -> part.times(requirement.readability()));
    }

    private BoundsSet listed(Stream<Bounds> intervals) {
        List<Bounds> all = new ArrayList<>();
        intervals.limit(MOST_INTERVALS + 1L).forEach(all::add);
        if (all.size() > MOST_INTERVALS) {
            throw SearchLimitException.tooManyIntervals(MOST_INTERVALS);
        }
        return BoundsSet.of(all);
    }

    private SearchMeter meter() {
        return new SearchMeter(effort);
    }

    private Ratio divisions(String name, Amount<Mass> size) {
        return Amount.requirePositive(name, size).in(FormulationUnits.GRAM).dividedBy(requirement.readability());
    }

    /** The ends of the set; the islands between them are not counted. */
    @Override
    public String toString() {
        String ray = allFrom()
                .map(start -> "; all from " + BalanceUnit.text(start) + " on")
                .orElse("; gaps never end");
        return requirement.describe() + ": from " + least() + ray;
    }

    private String least() {
        try {
            return BalanceUnit.text(smallest());
        } catch (SearchLimitException e) {
            return "more than " + BalanceUnit.text(grams(e.reached()));
        }
    }

    private Amount<Mass> grams(Ratio divisions) {
        return Amount.grams(divisions.times(requirement.readability()));
    }
}
