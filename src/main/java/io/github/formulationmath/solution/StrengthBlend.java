package io.github.formulationmath.solution;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.LinearAnswer;
import io.github.formulationmath.number.LinearProgram;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.quantity.Money;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import javax.measure.quantity.Mass;

/**
 * Blending stocks of one substance to a strength: {@code Σ m = M} and {@code T_lo · M ≤ Σ m · w ≤ T_hi · M}, with no more of a
 * stock than there is.
 *
 * <p>Two stocks leave one answer, the rule of alligation: as much of the stronger as the target lies above the weaker, to as much of the
 * weaker as it lies below the stronger. Three and more leave a family of answers; {@link #range} tells how much of each there
 * may be in any of them, and the cheapest is one of them. A pairing of stocks as it is taught in class gives another one, not
 * "the" answer.
 *
 * <p>Solved in exact arithmetic, with the proof that a linear program gives.
 *
 * <p>Example, by hand: 500 g of 30 % from 50 % and water are 300 g and 200 g.
 */
public final class StrengthBlend {

    private final List<Stock> stocks;
    private final Interval<MassFraction> target;
    private final Amount<Mass> whole;

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
     * @param cost what it costs; empty if no stock has a price
     */
    public record Blended(Map<String, Amount<Mass>> masses, Optional<Money> cost) implements Answer {

        /**
         * Copies the masses.
         *
         * @param masses how much of each stock
         * @param cost what it costs
         */
        public Blended {
            masses = Collections.unmodifiableMap(new LinkedHashMap<>(masses));
            Objects.requireNonNull(cost, "cost");
        }
    }

    /**
     * No blend: the strengths that the stocks can be blended to, in that mass, do not reach the target.
     *
     * @param reachable the strengths that can be made in that mass; empty if there is not enough of all stocks together
     */
    public record OutOfReach(Optional<Interval<MassFraction>> reachable) implements Answer {

        /**
         * Checks presence.
         *
         * @param reachable the strengths that can be made
         */
        public OutOfReach {
            Objects.requireNonNull(reachable, "reachable");
        }
    }

    /**
     * The cheapest blend; where nothing has a price, one of those with the least of the stronger stocks.
     *
     * @return the blend, or what can be reached
     */
    public Answer cheapest() {
        boolean priced = stocks.stream().anyMatch(stock -> stock.price().isPresent());
        List<Ratio> costs = stocks.stream()
                .map(stock -> priced
                        ? stock.price().map(Money::number).orElse(Ratio.ZERO)
                        : stock.strength().fraction())
                .toList();
        if (!(solve(costs, target) instanceof LinearAnswer.Optimal optimal)) {
            return new OutOfReach(reachable());
        }
        Map<String, Amount<Mass>> masses = new LinkedHashMap<>();
        for (int i = 0; i < stocks.size(); i++) {
            masses.put(stocks.get(i).name(), amount(optimal.values().get(i)));
        }
        return new Blended(masses, currency().map(currency -> Money.of(optimal.cost(), currency)));
    }

    private Optional<String> currency() {
        return stocks.stream()
                .flatMap(stock -> stock.price().stream())
                .map(Money::currency)
                .findFirst();
    }

    private Amount<Mass> amount(Ratio grams) {
        return Amount.<Mass>grams(grams).to(whole.getUnit());
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
        LinearAnswer least = solve(costs(wanted, true), target);
        LinearAnswer others = solve(costs(wanted, false), target);
        return least instanceof LinearAnswer.Optimal low && others instanceof LinearAnswer.Optimal rest
                ? Optional.of(
                        Interval.of(amount(low.cost()), amount(whole.canonical().minus(rest.cost()))))
                : Optional.empty();
    }

    /** Costs that count one stock, or all but that one. */
    private List<Ratio> costs(int stock, boolean itself) {
        List<Ratio> costs = new ArrayList<>(Collections.nCopies(stocks.size(), itself ? Ratio.ZERO : Ratio.ONE));
        costs.set(stock, itself ? Ratio.ONE : Ratio.ZERO);
        return costs;
    }

    private Optional<Interval<MassFraction>> reachable() {
        Interval<MassFraction> any = Interval.of(MassFraction.ZERO, MassFraction.WHOLE);
        List<Ratio> strength =
                stocks.stream().map(stock -> stock.strength().fraction()).toList();
        List<Ratio> weakness = strength.stream().map(Ratio.ONE::minus).toList();
        return solve(strength, any) instanceof LinearAnswer.Optimal low
                        && solve(weakness, any) instanceof LinearAnswer.Optimal high
                ? Optional.of(Interval.of(
                        MassFraction.of(low.cost().dividedBy(whole.canonical())),
                        MassFraction.of(Ratio.ONE.minus(high.cost().dividedBy(whole.canonical())))))
                : Optional.empty();
    }

    private LinearAnswer solve(List<Ratio> costs, Interval<MassFraction> strengths) {
        Ratio grams = whole.canonical();
        List<Ratio> ones = Collections.nCopies(stocks.size(), Ratio.ONE);
        List<Ratio> substance =
                stocks.stream().map(stock -> stock.strength().fraction()).toList();
        List<LinearProgram.Row> rows = new ArrayList<>();
        rows.add(new LinearProgram.Row(ones, grams));
        rows.add(new LinearProgram.Row(negated(ones), grams.unaryMinus()));
        rows.add(new LinearProgram.Row(substance, strengths.least().fraction().times(grams)));
        rows.add(new LinearProgram.Row(
                negated(substance), strengths.greatest().fraction().times(grams).unaryMinus()));
        for (int i = 0; i < stocks.size(); i++) {
            List<Ratio> one = negated(costs(i, true));
            stocks.get(i)
                    .available()
                    .ifPresent(mass ->
                            rows.add(new LinearProgram.Row(one, mass.canonical().unaryMinus())));
        }
        return new LinearProgram(costs, rows).solve();
    }

    private static List<Ratio> negated(List<Ratio> numbers) {
        return numbers.stream().map(Ratio::unaryMinus).toList();
    }
}
