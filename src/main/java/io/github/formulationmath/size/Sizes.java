package io.github.formulationmath.size;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.BalanceUnit;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import javax.measure.quantity.Mass;

/**
 * All sizes at which a {@link Criterion} holds for a formula on a bench, or several of them do: a ray, islands and a ray,
 * certain whole numbers of divisions, the multiples of a size, and what such sets have in common.
 *
 * <p>Example, of {@link Criterion#roundingWithin} 5 %: 70/20/5/3/1.5/0.5 % on a display of 0.1 g; 20 g passes, 22 to 38 g
 * fail, so does 190 g, and from 4000/21 g (190.48 g) on every batch passes. The rule of thumb {@code M = d/(2·τ·w)} of the
 * smallest line lies a little above that, never below.
 *
 * <p>Each question is answered by a search of its own, so the smallest size is found at once even where there are more
 * islands than anyone would list. Each part of a conjunction only ever pushes a size on to the next that it allows, so going
 * round until none pushes ends at the next size that all allow. Sizes come in the unit of the balance. What the bench can
 * carry and hold is not asked here; a {@link BatchWindow} does.
 *
 * <p>Immutable and thread-safe.
 */
public final class Sizes {

    /** How many islands {@link #within} lists before it refuses. */
    public static final int MOST_ISLANDS = 10_000;

    private static final Symbol SIZE = Symbol.of("M", "size-asked", Kind.MASS);

    private final Formula formula;
    private final Bench bench;
    private final SearchEffort effort;
    private final List<Part> parts;
    private final Optional<Phrase> obstacle;

    /** What every size that all allow is a multiple of, if that is more than one of them says by itself; else 0. */
    private final Ratio common;

    /** The part that is named where only a common multiple remains. */
    private final Optional<Part> aligning;

    private Sizes(Formula formula, Bench bench, SearchEffort effort, List<Part> parts, Optional<Phrase> obstacle) {
        this.formula = formula;
        this.bench = bench;
        this.effort = effort;
        this.parts = List.copyOf(parts);
        this.obstacle = obstacle;
        // One part says by itself what it allows, and most questions have one.
        List<Part> periodic = parts.size() < 2
                ? List.of()
                : this.parts.stream()
                        .filter(part -> part.search().period().isPresent())
                        .toList();
        this.aligning = periodic.size() < 2
                ? Optional.empty()
                : periodic.stream()
                        .filter(part -> !(part.search() instanceof Bands))
                        .reduce((one, next) -> next);
        this.common = aligning.isEmpty()
                ? Ratio.ZERO
                : periodic.stream()
                        .map(part -> part.search().period().orElseThrow())
                        .reduce(Ratio::leastCommonMultiple)
                        .orElseThrow();
    }

    /** The least size that a line asks for, as one relation that finds it and explains it. */
    @FunctionalInterface
    public interface LineBound {

        /**
         * The least size for a line.
         *
         * @param r what is reckoned with
         * @param line the line
         * @param <V> what stands for a number there
         * @return the size in grams
         */
        <V> V of(Reckoning<V> r, FormulaLine line);
    }

    /**
     * All sizes from the largest of the lines' least sizes on.
     *
     * @param formula the formula
     * @param bench where it is weighed
     * @param name what is asked, in words
     * @param lines the lines that have a say, at least one, of the formula
     * @param bound the least size for each
     * @return the sizes
     * @throws IllegalArgumentException if there is no line
     */
    public static Sizes from(Formula formula, Bench bench, Phrase name, List<FormulaLine> lines, LineBound bound) {
        Objects.requireNonNull(name, "name");
        LineBounds bounds =
                new LineBounds(BatchConstraints.atLeastOne("lines", lines), Objects.requireNonNull(bound, "bound"));
        return of(formula, bench, new Part(() -> name, bounds.sizes(), bounds));
    }

    /**
     * No size at all.
     *
     * @param formula the formula
     * @param bench where it is weighed
     * @param reason why no size passes, and what would change that
     * @return an empty set
     */
    public static Sizes none(Formula formula, Bench bench, Phrase reason) {
        Objects.requireNonNull(reason, "reason");
        return new Sizes(
                Objects.requireNonNull(formula, "formula"),
                Objects.requireNonNull(bench, "bench"),
                SearchEffort.standard(),
                List.of(),
                Optional.of(reason));
    }

    static Sizes of(Formula formula, Bench bench, Part... parts) {
        return new Sizes(
                Objects.requireNonNull(formula, "formula"),
                Objects.requireNonNull(bench, "bench"),
                SearchEffort.standard(),
                List.of(parts),
                Optional.empty());
    }

    /**
     * The sizes that another set has too.
     *
     * @param other sizes of the same formula
     * @return those in both
     * @throws IllegalArgumentException if the other sizes are of another formula
     */
    public Sizes and(Sizes other) {
        if (!formula.equals(Objects.requireNonNull(other, "other").formula)) {
            throw new IllegalArgumentException("other is of \"" + Excerpt.of(other.formula.name()) + "\", not of \""
                    + Excerpt.of(formula.name()) + "\": a size is of one formula");
        }
        List<Part> all = new ArrayList<>(parts);
        other.parts.stream()
                .filter(part -> parts.stream().noneMatch(part::isLike))
                .forEach(all::add);
        return new Sizes(formula, bench, effort, all, obstacle.or(() -> other.obstacle));
    }

    /**
     * The sizes that are whole multiples of a step too.
     *
     * @param step the step, for example 1 g, above 0
     * @return those in both
     * @throws IllegalArgumentException if the step is not above 0
     */
    public Sizes inStepsOf(Amount<Mass> step) {
        return and(of(formula, bench, Wish.inStepsOf(Amount.requirePositive("step", step))));
    }

    /**
     * The same sizes, with a limit of one's own for each search.
     *
     * @param newEffort how much work each question may take
     * @return the sizes
     */
    public Sizes with(SearchEffort newEffort) {
        return new Sizes(formula, bench, Objects.requireNonNull(newEffort, "newEffort"), parts, obstacle);
    }

    /**
     * The formula.
     *
     * @return what is to be made
     */
    public Formula formula() {
        return formula;
    }

    /**
     * What is asked of a size.
     *
     * @return the names of the criteria in words, in their order; empty if no size passes
     */
    public List<Phrase> asked() {
        return parts.stream().map(Part::name).toList();
    }

    /**
     * Why no size whatever passes, and what would change that.
     *
     * @return the reason in words; empty if some sizes pass
     */
    public Optional<Phrase> obstacle() {
        return obstacle;
    }

    /**
     * Whether a size passes.
     *
     * @param size a batch mass above 0
     * @return true if everything asked holds there
     * @throws IllegalArgumentException if the size is not above 0
     */
    public boolean contains(Amount<Mass> size) {
        return passes(grams("size", size));
    }

    /**
     * Whether a size given as text passes.
     *
     * @param size a batch mass above 0, for example {@code "30 g"}
     * @return true if everything asked holds there
     * @throws IllegalArgumentException if the text is no mass or not above 0
     */
    public boolean contains(String size) {
        return contains(Amount.mass(size));
    }

    /**
     * The smallest passing size; {@link MinimumBatch} tells it with its proof.
     *
     * @return the size; empty if none passes
     * @throws SearchLimitException if the search reaches its limit
     */
    public Optional<Amount<Mass>> smallest() {
        return smallest(meter()).map(this::mass);
    }

    /**
     * The smallest passing size that is not below another.
     *
     * @param size a batch mass above 0
     * @return the size, which tells what pushed it up; empty if none passes
     * @throws IllegalArgumentException if the size is not above 0
     * @throws SearchLimitException if the search reaches its limit
     */
    public Optional<Amount<Mass>> atLeast(Amount<Mass> size) {
        return atLeast(grams("size", size), meter(), Optional.empty())
                .map(rest -> rest.by().isPresent()
                        ? mass(rest)
                                .withWorking(any -> Phrase.of("question.next-size", formula.name()), rest, Rest::grams)
                        : mass(rest).withWorking(Origin.given(SIZE, Subject.none(), rest.at(), Source.user())));
    }

    /**
     * The largest passing size that is not above another.
     *
     * @param size a batch mass above 0
     * @return the size; empty if every smaller size fails
     * @throws IllegalArgumentException if the size is not above 0
     * @throws SearchLimitException if the search reaches its limit
     */
    public Optional<Amount<Mass>> atMost(Amount<Mass> size) {
        return atMost(grams("size", size), meter()).map(this::mass);
    }

    /**
     * The passing size nearest to a wish; of two at the same distance, the smaller.
     *
     * @param wish the batch mass wished for, above 0
     * @return the size; empty if none passes
     * @throws IllegalArgumentException if the wish is not above 0
     * @throws SearchLimitException if the search reaches its limit
     */
    public Optional<Amount<Mass>> nearest(Amount<Mass> wish) {
        Optional<Amount<Mass>> above = atLeast(wish);
        return above.map(next -> atMost(wish)
                .filter(below -> wish.minus(below).compareTo(next.minus(wish)) <= 0)
                .orElse(next));
    }

    /**
     * The passing size nearest to a wish given as text.
     *
     * @param wish the batch mass wished for, above 0, for example {@code "30 g"}
     * @return the size; empty if none passes
     * @throws IllegalArgumentException if the text is no mass or not above 0
     * @throws SearchLimitException if the search reaches its limit
     */
    public Optional<Amount<Mass>> nearest(String wish) {
        return nearest(Amount.mass(wish));
    }

    /**
     * A size from which on, for certain, every size passes; of {@link Criterion#roundingWithin} and of line bounds the
     * smallest such, of {@link Criterion#madeWithin(Tolerances)} one from which on every whole number of divisions does.
     *
     * @return the size; empty if there is none, some line having to be exact or sizes standing apart
     */
    public Optional<Amount<Mass>> allFrom() {
        List<Ratio> starts =
                parts.stream().flatMap(part -> part.search().allFrom().stream()).toList();
        return starts.size() < Math.max(parts.size(), 1)
                ? Optional.empty()
                : Optional.of(mass(starts.stream().reduce(Ratio::max).orElseThrow()));
    }

    /**
     * The islands in ascending order, each searched for when it is asked for, with the whole effort: every size of an island
     * passes, and none between it and the next. From {@link #allFrom()} on, where there is such a size, all pass, and there
     * are no more.
     *
     * @return a stream, endless if some tolerance is 0 or sizes stand apart
     */
    public Stream<Interval<Amount<Mass>>> islands() {
        return StreamSupport.stream(new Islands(this, Optional.empty(), this::meter), false)
                .filter(island -> island.upper().isPresent())
                .map(this::masses);
    }

    /**
     * The sizes of a range that pass.
     *
     * @param range from one batch mass to another, the latter above 0
     * @return the islands in it and, cut at its ends, those that reach beyond, in ascending order; an unmodifiable list
     * @throws SearchLimitException if there are more than {@value #MOST_ISLANDS}, or the search reaches its limit; {@link
     *     #islands()} gives them one after the other
     */
    public List<Interval<Amount<Mass>>> within(Interval<Amount<Mass>> range) {
        Bounds grams = Bounds.closed(
                Objects.requireNonNull(range, "range").least().canonical(),
                range.greatest().canonical());
        SearchMeter meter = meter();
        Stream<Bounds> islands = StreamSupport.stream(
                new Islands(this, grams.lower().filter(low -> low.signum() > 0), () -> meter), false);
        List<Interval<Amount<Mass>>> met = islands.map(island -> island.intersection(grams))
                .takeWhile(Optional::isPresent)
                .limit(MOST_ISLANDS + 1L)
                .map(island -> masses(island.orElseThrow()))
                .toList();
        if (met.size() > MOST_ISLANDS) {
            throw SearchLimitException.tooManyIntervals(MOST_ISLANDS);
        }
        return met;
    }

    /**
     * The whole multiples of a step that pass in a range, both ends included: sizes that one would choose.
     *
     * <p>Example: {@code Criterion.oneDivision().on(formula, bench).within("50 g", "500 g", "10 g")}.
     *
     * @param least the least size looked at, at least 0, for example {@code "50 g"}
     * @param greatest the greatest size looked at, for example {@code "500 g"}
     * @param step the step, above 0, for example {@code "10 g"}
     * @return the sizes in ascending order, in the unit of the step; an unmodifiable list
     * @throws IllegalArgumentException if a text is no mass, a mass is out of range, or the range holds more than {@value
     *     #MOST_ISLANDS} steps
     */
    public List<Amount<Mass>> within(String least, String greatest, String step) {
        Amount<Mass> first = Amount.requireNotNegative("least", Amount.mass(Objects.requireNonNull(least, "least")));
        Interval<Amount<Mass>> range = Interval.of(first, Amount.mass(Objects.requireNonNull(greatest, "greatest")));
        Amount<Mass> every = Amount.requirePositive("step", Amount.mass(Objects.requireNonNull(step, "step")));
        Ratio from = range.least().ratioTo(every).ceil().max(Ratio.ONE);
        Ratio to = range.greatest().ratioTo(every).floor();
        if (to.minus(from).compareTo(Ratio.of(MOST_ISLANDS)) >= 0) {
            throw new IllegalArgumentException("step is " + Excerpt.of(every) + ", so that the range holds more than "
                    + MOST_ISLANDS + " sizes: take a larger step or a smaller range");
        }
        List<Amount<Mass>> passing = new ArrayList<>();
        for (Ratio n = from; n.compareTo(to) <= 0; n = n.plus(Ratio.ONE)) {
            Amount<Mass> size = every.times(n);
            if (passes(size.canonical())) {
                passing.add(size);
            }
        }
        return List.copyOf(passing);
    }

    private Interval<Amount<Mass>> masses(Bounds grams) {
        return Interval.of(mass(grams.lower().orElseThrow()), mass(grams.upper().orElseThrow()));
    }

    /** Where all parts let a search rest, and the part that pushed last; none if it rests where it began. */
    record Rest(Landing landing, Optional<Part> by) {

        static Rest resting(Ratio from) {
            return new Rest(Landing.resting(from), Optional.empty());
        }

        Ratio at() {
            return landing.at();
        }

        /** Why the search went on to there, if it was pushed. */
        private <V> V grams(Reckoning<V> r) {
            return by.orElseThrow().proof().edge(r, landing, true);
        }

        /** The line that pushed last. */
        Optional<FormulaLine> line(Formula formula) {
            return by.flatMap(part -> part.line(formula, landing));
        }
    }

    List<Part> parts() {
        return parts;
    }

    boolean passes(Ratio grams) {
        return obstacle.isEmpty()
                && parts.stream().allMatch(part -> part.search().passes(grams));
    }

    /** The smallest size that all allow. */
    Optional<Rest> smallest(SearchMeter meter) {
        return smallest(meter, Optional.empty());
    }

    /** The smallest size that all allow; empty if there is none up to a ceiling, or nothing is asked at all. */
    Optional<Rest> smallest(SearchMeter meter, Optional<Ratio> ceiling) {
        Rest start = Rest.resting(Ratio.ZERO);
        for (Part part : parts) {
            Landing own = part.search().smallest(meter);
            start = own.at().compareTo(start.at()) > 0 ? new Rest(own, Optional.of(part)) : start;
        }
        if (obstacle.isPresent() || start.by().isEmpty()) {
            return Optional.empty();
        }
        return parts.size() == 1 ? below(ceiling, start) : settled(start, true, meter, ceiling);
    }

    /** The smallest size from a size on, if there is one up to a ceiling. */
    Optional<Rest> atLeast(Ratio from, SearchMeter meter, Optional<Ratio> ceiling) {
        return settled(Rest.resting(from), true, meter, ceiling);
    }

    private static Optional<Rest> below(Optional<Ratio> ceiling, Rest rest) {
        boolean above = ceiling.filter(top -> rest.at().compareTo(top) > 0).isPresent();
        return above ? Optional.empty() : Optional.of(rest);
    }

    /** The largest size that all allow, from a size down. */
    Optional<Rest> atMost(Ratio from, SearchMeter meter) {
        return settled(Rest.resting(from), false, meter, Optional.empty());
    }

    /** Goes up or down from a size, round the parts, until none of them pushes on any more. */
    private Optional<Rest> settled(Rest from, boolean up, SearchMeter meter, Optional<Ratio> ceiling) {
        if (obstacle.isPresent()) {
            return Optional.empty();
        }
        Rest at = from;
        int calm = 0;
        for (int i = 0; calm < parts.size() && below(ceiling, at).isPresent(); i = (i + 1) % parts.size()) {
            Part part = parts.get(i);
            Optional<Landing> next = part.search().next(at.at(), up, meter);
            if (next.isEmpty()) {
                return Optional.empty();
            }
            boolean pushed = !next.get().at().equals(at.at());
            at = pushed ? new Rest(next.get(), Optional.of(part)) : at;
            Rest onGrid = aligned(at, up);
            if (onGrid.at().isZero()) {
                return Optional.empty();
            }
            calm = onGrid.equals(at) ? pushed ? 1 : calm + 1 : 0;
            at = onGrid;
            countTurn(meter, at);
        }
        return below(ceiling, at);
    }

    /** Going round costs too, where there is more than one to go round. */
    private void countTurn(SearchMeter meter, Rest at) {
        if (parts.size() > 1) {
            meter.count(at.at());
        }
    }

    /** The next multiple that all must meet in, up or down from a size that is none. */
    private Rest aligned(Rest rest, boolean up) {
        Ratio multiples = common.isZero() ? Ratio.ONE : rest.at().dividedBy(common);
        if (multiples.isInteger()) {
            return rest;
        }
        Ratio next = (up ? multiples.ceil() : multiples.floor()).times(common);
        return new Rest(Landing.resting(next), aligning);
    }

    /** The relation that leads to the smallest size of a single part; of several, to the size where the last one binds. */
    <V> V proveSmallest(Reckoning<V> r, Rest smallest) {
        Part.Proof proof = smallest.by().orElseThrow().proof();
        return parts.size() == 1 ? proof.smallest(r, smallest.landing()) : proof.edge(r, smallest.landing(), true);
    }

    /** Where the interval of sizes that all allow starts, around such a size. */
    Ratio startAround(Ratio passing) {
        return parts.stream()
                .map(part -> part.search().startAround(passing))
                .reduce(Ratio::max)
                .orElse(passing);
    }

    private SearchMeter meter() {
        return new SearchMeter(effort);
    }

    private static Ratio grams(String name, Amount<Mass> size) {
        return Amount.requirePositive(name, size).canonical();
    }

    private Amount<Mass> mass(Rest rest) {
        return mass(rest.landing().at());
    }

    Amount<Mass> mass(Ratio grams) {
        return Amount.grams(grams).inUnitOf(bench.balance().readability());
    }

    /** What is asked, and the ends of the set; the islands between them are not counted. */
    @Override
    public String toString() {
        String asked = asked().stream().map(Phrase::toString).collect(Collectors.joining(", "));
        return formula.name() + " on d = " + bench.balance().readability() + ", "
                + obstacle.map(Phrase::toString).orElseGet(() -> asked + ": from " + least() + ray());
    }

    private String least() {
        try {
            return BalanceUnit.least(smallest().orElseThrow(), this::contains);
        } catch (SearchLimitException e) {
            return "more than " + BalanceUnit.greatest(mass(e.reached()), size -> true);
        }
    }

    private String ray() {
        return allFrom()
                .map(start -> "; all from " + BalanceUnit.least(start, this::contains) + " on")
                .orElse("; gaps never end");
    }
}
