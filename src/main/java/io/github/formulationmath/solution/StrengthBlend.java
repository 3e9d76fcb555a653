package io.github.formulationmath.solution;

import io.github.formulationmath.number.Apportionment;
import io.github.formulationmath.number.BlendProgram;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.LinearProgram;
import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.StepProgram;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.quantity.Money;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.weighing.Balance;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javax.measure.quantity.Mass;

/**
 * Blending stocks of one substance to a strength: {@code Σ m = M} and {@code T_lo · M ≤ Σ m · w ≤ T_hi · M} for every strength w within
 * its range, with no more of a stock than there is.
 *
 * <p>Two stocks of known strength leave one answer, the rule of {@link Alligation}. Three and more leave a family of answers; {@link
 * #range} tells how much of each there may be in any of them, and the cheapest is one of them. So is the pairing of stocks as
 * it is taught in class ({@link #paired}): one member, and not "the" answer.
 *
 * <p>Solved in exact arithmetic, with the proof that a linear program gives.
 *
 * <p>Example, by hand: 500 g of 30 % from 50 % and water are 300 g and 200 g.
 */
public final class StrengthBlend {

    private final List<Stock> stocks;
    private final Interval<MassFraction> target;
    private final Amount<Mass> whole;
    private final BlendProgram program;

    private StrengthBlend(List<Stock> stocks, Interval<MassFraction> target, Amount<Mass> whole) {
        this.stocks = List.copyOf(stocks);
        this.target = target;
        this.whole = whole;
        Set<String> names = new HashSet<>();
        Set<String> currencies = new HashSet<>();
        for (Stock stock : this.stocks) {
            if (!names.add(stock.name())) {
                throw new IllegalArgumentException(
                        "two stocks are called " + Excerpt.of(stock.name()) + ": give each a name of its own");
            }
            stock.price().ifPresent(price -> currencies.add(price.currency()));
        }
        if (currencies.size() > 1) {
            throw new IllegalArgumentException(
                    "prices are in " + currencies + ": give all in one currency, nothing is exchanged here");
        }
        if (this.stocks.isEmpty()) {
            throw new IllegalArgumentException("stocks is empty: give at least one");
        }
        this.program = new BlendProgram(
                whole.canonical(), this.stocks.stream().map(StrengthBlend::part).toList(), Stock.bounds(target));
    }

    private static BlendProgram.Part part(Stock stock) {
        return new BlendProgram.Part(
                stock.bounds(),
                stock.available()
                        .map(mass -> Bounds.closed(Ratio.ZERO, mass.canonical()))
                        .orElse(Bounds.atLeast(Ratio.ZERO)));
    }

    /**
     * A blend of one strength.
     *
     * @param target the strength by mass, such as {@code "30 %"}
     * @param mass how much to make, above 0
     * @param stocks what it is made from
     * @return the question
     * @throws IllegalArgumentException if there is no stock, two have one name, or prices are in two currencies
     */
    public static StrengthBlend to(String target, Amount<Mass> mass, List<Stock> stocks) {
        MassFraction strength = MassFraction.parse(target);
        return between(strength, strength, mass, stocks);
    }

    /**
     * A blend whose strength may lie in a range.
     *
     * @param least the least strength by mass
     * @param greatest the greatest strength by mass
     * @param mass how much to make, above 0
     * @param stocks what it is made from
     * @return the question
     * @throws IllegalArgumentException as {@link #to}, or if the strengths are reversed
     */
    public static StrengthBlend between(
            MassFraction least, MassFraction greatest, Amount<Mass> mass, List<Stock> stocks) {
        return new StrengthBlend(
                Objects.requireNonNull(stocks, "stocks"),
                Interval.of(least, greatest),
                Amount.requirePositive("mass", mass));
    }

    /** What came out: a blend, or why there is none. */
    public sealed interface Answer {}

    /**
     * A blend.
     *
     * @param masses how much of each stock, by its name, in the order in which they were given
     * @param strength the strength by mass over the ranges of the stocks, within what was asked for
     * @param cost what it costs; empty if no stock has a price
     */
    public record Blended(Map<String, Amount<Mass>> masses, Interval<MassFraction> strength, Optional<Money> cost)
            implements Answer {

        /**
         * Copies the masses.
         *
         * @param masses how much of each stock
         * @param strength the strength over the ranges of the stocks
         * @param cost what it costs
         */
        public Blended {
            masses = Collections.unmodifiableMap(new LinkedHashMap<>(masses));
            Objects.requireNonNull(strength, "strength");
            Objects.requireNonNull(cost, "cost");
        }

        @Override
        public String toString() {
            String poured = masses.entrySet().stream()
                    .map(each -> each.getValue().toldExactly() + " " + each.getKey())
                    .collect(Collectors.joining(", "));
            return poured + ": "
                    + NumberText.percent(
                            strength.least().fraction(),
                            Bounds.closed(
                                    strength.least().fraction(),
                                    strength.greatest().fraction()))
                    + cost.map(price -> ", " + price).orElse("");
        }
    }

    /**
     * No blend: the strengths that the stocks can be blended to, in that mass, do not reach the target.
     *
     * @param reachable the strengths that can be made in that mass; empty if there is not enough of all stocks together
     * @param wouldHelp what would open it, in words
     */
    public record OutOfReach(Optional<Interval<MassFraction>> reachable, Phrase wouldHelp) implements Answer {

        /**
         * Checks presence.
         *
         * @param reachable the strengths that can be made
         * @param wouldHelp what would open it
         */
        public OutOfReach {
            Objects.requireNonNull(reachable, "reachable");
            Objects.requireNonNull(wouldHelp, "wouldHelp");
        }
    }

    /**
     * No blend that keeps the target whatever the strengths of the stocks are within their ranges, though there is one of their middles.
     *
     * @param wouldDo a target that the blend of the middles keeps for every strength; asking for it gives a blend
     */
    public record NotForEveryLot(Interval<MassFraction> wouldDo) implements Answer {

        /**
         * Checks presence.
         *
         * @param wouldDo a target that is kept
         */
        public NotForEveryLot {
            Objects.requireNonNull(wouldDo, "wouldDo");
        }
    }

    /**
     * The cheapest blend; where nothing has a price, one of those with the least of the stronger stocks.
     *
     * @return the blend, or what can be reached
     */
    public Answer cheapest() {
        return program.cheapest(costs()) instanceof LinearProgram.Answer.Optimal optimal
                ? blended(optimal.values())
                : whyNot();
    }

    private List<Ratio> costs() {
        boolean priced = stocks.stream().anyMatch(stock -> stock.price().isPresent());
        return stocks.stream()
                .map(stock -> priced ? stock.price().map(Money::number).orElse(Ratio.ZERO) : stock.middle())
                .toList();
    }

    private Answer whyNot() {
        BlendProgram middles = program.withMiddles();
        if (middles.cheapest(costs()) instanceof LinearProgram.Answer.Optimal optimal) {
            Interval<MassFraction> made = Stock.strengths(program.valueOf(optimal.values()));
            return new NotForEveryLot(
                    Interval.of(least(made.least(), target.least()), greatest(made.greatest(), target.greatest())));
        }
        Optional<Interval<MassFraction>> reachable = middles.reachable().map(Stock::strengths);
        return new OutOfReach(reachable, reachable.map(this::gap).orElse(Phrase.of("solution.not-enough")));
    }

    private static MassFraction least(MassFraction a, MassFraction b) {
        return a.compareTo(b) <= 0 ? a : b;
    }

    private static MassFraction greatest(MassFraction a, MassFraction b) {
        return a.compareTo(b) >= 0 ? a : b;
    }

    private Phrase gap(Interval<MassFraction> reachable) {
        return target.least().compareTo(reachable.greatest()) > 0
                ? gap("solution.needs-stronger", target.least(), reachable.greatest())
                : gap("solution.needs-weaker", reachable.least(), target.greatest());
    }

    private static Phrase gap(String key, MassFraction high, MassFraction low) {
        boolean stronger = key.equals("solution.needs-stronger");
        Ratio points = high.fraction().minus(low.fraction());
        return Phrase.of(
                key,
                (stronger ? low : high).toString(),
                MassFraction.of(points).toString(),
                (stronger ? high : low).toString());
    }

    private Blended blended(List<Ratio> grams) {
        Map<String, Amount<Mass>> masses = new LinkedHashMap<>();
        Optional<Money> cost = Optional.empty();
        for (int i = 0; i < stocks.size(); i++) {
            Ratio mass = grams.get(i);
            masses.put(stocks.get(i).name(), amount(mass));
            Optional<Money> own = stocks.get(i).price().map(price -> price.times(mass));
            cost = own.isEmpty() ? cost : Optional.of(cost.map(own.get()::plus).orElse(own.get()));
        }
        return new Blended(masses, Stock.strengths(program.valueOf(grams)), cost);
    }

    private Amount<Mass> amount(Ratio grams) {
        return Amount.grams(grams).to(whole.getUnit());
    }

    /**
     * How much of a stock there may be in any blend that keeps the target.
     *
     * @param name the name of the stock
     * @return the least and the most; empty if no blend keeps the target
     * @throws IllegalArgumentException if there is no such stock
     */
    public Optional<Interval<Amount<Mass>>> range(String name) {
        int wanted = stocks.stream().map(Stock::name).toList().indexOf(name);
        if (wanted < 0) {
            throw new IllegalArgumentException("no stock is called " + Excerpt.of(name) + ": there are "
                    + Excerpt.of(stocks.stream().map(Stock::name).toList()));
        }
        return program.range(wanted)
                .map(bounds -> Interval.of(
                        amount(bounds.lower().orElseThrow()),
                        amount(bounds.upper().orElseThrow())));
    }

    /**
     * The blend that the pairing of stocks gives as it is taught in class: the strongest with the weakest, the next with the next but one,
     * and whoever is left over with the last of the other side; of each pair as many parts as the target lies away from
     * the other. It is one member of the family and has nothing over the others.
     *
     * <p>Example, by hand: 50 %, 20 % and 5 % to 10 % are 1 : 1 : 10 parts.
     *
     * @return the blend; empty if the target is a range, no pair has it in between, or it takes more of a stock than there is
     */
    public Optional<Blended> paired() {
        if (!target.least().equals(target.greatest())) {
            return Optional.empty();
        }
        Ratio wanted = target.least().fraction();
        List<Integer> above = sorted(wanted, 1);
        List<Integer> below = sorted(wanted, -1);
        if (above.isEmpty() || below.isEmpty()) {
            return Optional.empty();
        }
        List<Ratio> parts = new ArrayList<>(Collections.nCopies(stocks.size(), Ratio.ZERO));
        for (int k = 0; k < Math.max(above.size(), below.size()); k++) {
            int high = above.get(Math.min(k, above.size() - 1));
            int low = below.get(Math.min(k, below.size() - 1));
            add(parts, high, wanted.minus(stocks.get(low).middle()));
            add(parts, low, stocks.get(high).middle().minus(wanted));
        }
        Ratio all = parts.stream().reduce(Ratio.ZERO, Ratio::plus);
        List<Ratio> grams = parts.stream()
                .map(part -> part.times(whole.canonical()).dividedBy(all))
                .toList();
        return program.withMiddles().isKeptBy(grams) ? Optional.of(blended(grams)) : Optional.empty();
    }

    private static void add(List<Ratio> parts, int stock, Ratio more) {
        parts.set(stock, parts.get(stock).plus(more));
    }

    /** The stocks on one side of the target, the furthest away first. */
    private List<Integer> sorted(Ratio wanted, int side) {
        List<Integer> found = new ArrayList<>();
        for (int i = 0; i < stocks.size(); i++) {
            if (stocks.get(i).middle().compareTo(wanted) == side) {
                found.add(i);
            }
        }
        found.sort(Comparator.comparing(
                (Integer i) -> stocks.get(i).middle().minus(wanted).abs(), Comparator.reverseOrder()));
        return found;
    }

    /**
     * The blend in whole steps of a display, the readings taken as they are. The cheapest blend is shared out over the steps first; if
     * that leaves the target, another is searched for, whatever it costs.
     *
     * @param balance on which every stock is weighed
     * @return the readings, or why there are none
     * @throws IllegalArgumentException if the mass to make is no whole number of steps, or more than the balance carries
     */
    public InSteps inSteps(Balance balance) {
        Objects.requireNonNull(balance, "balance");
        Ratio step = balance.readability().canonical();
        if (!whole.canonical().dividedBy(step).isInteger()) {
            throw new IllegalArgumentException("mass is " + Excerpt.of(whole) + ": it is no whole number of steps of "
                    + balance.readability() + "; make a mass that the balance can show");
        }
        if (!balance.carries(whole)) {
            throw new IllegalArgumentException("mass is " + Excerpt.of(whole) + ": the balance carries "
                    + balance.capacity() + "; make less, or take one that carries more");
        }
        BlendProgram askable = cheapest() instanceof Blended ? program : program.withMiddles();
        if (!(askable.cheapest(costs()) instanceof LinearProgram.Answer.Optimal optimal)) {
            return new InSteps(Optional.empty(), true);
        }
        List<Ratio> nearest =
                Apportionment.largestRemainder(optimal.values().stream()
                                .map(x -> x.dividedBy(step))
                                .toList())
                        .stream()
                        .map(step::times)
                        .toList();
        if (program.isKeptBy(nearest)) {
            return new InSteps(Optional.of(blended(nearest)), true);
        }
        StepProgram.Answer found = program.inSteps(step);
        return new InSteps(found.values().map(this::blended), found.isCertain());
    }

    /**
     * A blend in whole steps.
     *
     * @param blend the readings; empty if none keeps the target, in which case a range of strengths is what to ask for
     * @param isCertain whether that there is none was settled; if not, the search was broken off
     */
    public record InSteps(Optional<Blended> blend, boolean isCertain) {

        /**
         * Checks presence.
         *
         * @param blend the readings
         * @param isCertain whether that there is none was settled
         */
        public InSteps {
            Objects.requireNonNull(blend, "blend");
        }
    }

    /** The question in a line, for reading at a prompt. */
    @Override
    public String toString() {
        return whole + " of " + (target.least().equals(target.greatest()) ? target.least() : target) + " from "
                + stocks.stream().map(Stock::name).collect(Collectors.joining(", "));
    }
}
