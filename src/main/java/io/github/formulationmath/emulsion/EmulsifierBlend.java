package io.github.formulationmath.emulsion;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.LinearAnswer;
import io.github.formulationmath.number.LinearProgram;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.quantity.Money;
import io.github.formulationmath.reckoning.Phrase;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * A blend of emulsifiers to a value, {@code HLB = Σ w · HLB} over mass shares w of the emulsifiers, which is an assumption and not a law.
 *
 * <p>Two emulsifiers leave one blend, with {@code (T − L)/(H − L)} of the higher; three and more leave a family, of which {@link
 * #range} tells the ends. The target is reached if it lies between the lowest and the highest value, and by nothing else.
 *
 * <p>Example, by hand: 9 : 1 of 15.0 and 4.3 is 13.93.
 *
 * <p>Immutable.
 */
public final class EmulsifierBlend {

    private final Hlb target;
    private final List<Emulsifier> emulsifiers;

    private EmulsifierBlend(Hlb target, List<Emulsifier> emulsifiers) {
        this.target = target;
        this.emulsifiers = List.copyOf(emulsifiers);
        Set<String> names = new HashSet<>();
        this.emulsifiers.forEach(e -> {
            if (!names.add(e.name())) {
                throw new IllegalArgumentException(
                        "two emulsifiers are called " + Excerpt.of(e.name()) + ": give each grade a name of its own");
            }
        });
        if (this.emulsifiers.isEmpty()) {
            throw new IllegalArgumentException("emulsifiers is empty: give at least one");
        }
    }

    /**
     * A blend to a value.
     *
     * @param hlb the value wanted
     * @param emulsifiers what it is made from
     * @return the question
     * @throws IllegalArgumentException if there is no emulsifier, or two have one name
     */
    public static EmulsifierBlend to(Hlb hlb, List<Emulsifier> emulsifiers) {
        return new EmulsifierBlend(
                Objects.requireNonNull(hlb, "hlb"), Objects.requireNonNull(emulsifiers, "emulsifiers"));
    }

    /**
     * The value of a blend.
     *
     * @param shares the share of each emulsifier in all of them, together 100 %
     * @return the least and the greatest value over the ranges of the grades
     * @throws IllegalArgumentException if the shares do not make 100 %
     */
    public static Interval<Hlb> valueOf(Map<Emulsifier, MassFraction> shares) {
        Ratio whole = Ratio.ZERO;
        Ratio least = Ratio.ZERO;
        Ratio greatest = Ratio.ZERO;
        for (Map.Entry<Emulsifier, MassFraction> entry : shares.entrySet()) {
            Ratio share = entry.getValue().fraction();
            whole = whole.plus(share);
            least = least.plus(share.times(entry.getKey().hlb().least().value()));
            greatest = greatest.plus(share.times(entry.getKey().hlb().greatest().value()));
        }
        if (!whole.equals(Ratio.ONE)) {
            throw new IllegalArgumentException("shares make " + Excerpt.of(whole.times(100))
                    + " %: give shares of the emulsifiers alone, together 100 %, not of the cream");
        }
        return Interval.of(Hlb.of(least), Hlb.of(greatest));
    }

    /** What came out: a blend, or why there is none. */
    public sealed interface Answer {}

    /**
     * A blend.
     *
     * @param shares the share of each emulsifier in all of them, by its name
     * @param value the value over the ranges of the grades, the target inside
     * @param pricePerGram what a gram of the blend costs; empty if none has a price
     */
    public record Blended(Map<String, MassFraction> shares, Interval<Hlb> value, Optional<Money> pricePerGram)
            implements Answer {

        /**
         * Copies the shares.
         *
         * @param shares the share of each emulsifier
         * @param value the value over the ranges of the grades
         * @param pricePerGram what a gram of the blend costs
         */
        public Blended {
            shares = Collections.unmodifiableMap(new LinkedHashMap<>(shares));
            Objects.requireNonNull(value, "value");
            Objects.requireNonNull(pricePerGram, "pricePerGram");
        }
    }

    /**
     * No blend: the target lies outside of what the emulsifiers have.
     *
     * @param reachable the lowest and the highest value among them
     * @param needsHigher whether an emulsifier with a value at or above the target would open it; else one at or below
     */
    public record OutOfReach(Interval<Hlb> reachable, boolean needsHigher) implements Answer {

        /**
         * Checks presence.
         *
         * @param reachable the lowest and the highest value among them
         * @param needsHigher whether a higher one would open it
         */
        public OutOfReach {
            Objects.requireNonNull(reachable, "reachable");
        }
    }

    /**
     * The cheapest blend, reckoned with the middles of the ranges.
     *
     * @return the blend, or what would open it
     */
    public Answer cheapest() {
        List<Ratio> costs = emulsifiers.stream()
                .map(e -> e.price().map(Money::number).orElse(Ratio.ZERO))
                .toList();
        if (!(solve(costs) instanceof LinearAnswer.Optimal optimal)) {
            Hlb low = emulsifiers.stream()
                    .map(Emulsifier::middle)
                    .min(Hlb::compareTo)
                    .orElseThrow();
            Hlb high = emulsifiers.stream()
                    .map(Emulsifier::middle)
                    .max(Hlb::compareTo)
                    .orElseThrow();
            return new OutOfReach(Interval.of(low, high), target.compareTo(high) > 0);
        }
        Map<String, MassFraction> shares = new LinkedHashMap<>();
        Map<Emulsifier, MassFraction> byGrade = new LinkedHashMap<>();
        for (int i = 0; i < emulsifiers.size(); i++) {
            MassFraction share = MassFraction.of(optimal.values().get(i));
            shares.put(emulsifiers.get(i).name(), share);
            byGrade.put(emulsifiers.get(i), share);
        }
        Optional<String> currency = emulsifiers.stream()
                .flatMap(e -> e.price().stream())
                .map(Money::currency)
                .findFirst();
        return new Blended(shares, valueOf(byGrade), currency.map(c -> Money.of(optimal.cost(), c)));
    }

    /**
     * How much of an emulsifier there may be in any blend of that value.
     *
     * @param name the name of the grade
     * @return the least and the greatest share; empty if no blend has the value
     * @throws IllegalArgumentException if there is no such emulsifier
     */
    public Optional<Interval<MassFraction>> range(String name) {
        int wanted = emulsifiers.stream().map(Emulsifier::name).toList().indexOf(name);
        if (wanted < 0) {
            throw new IllegalArgumentException("no emulsifier is called " + Excerpt.of(name) + ": there are "
                    + Excerpt.of(emulsifiers.stream().map(Emulsifier::name).toList()));
        }
        return solve(costs(wanted, true)) instanceof LinearAnswer.Optimal low
                        && solve(costs(wanted, false)) instanceof LinearAnswer.Optimal rest
                ? Optional.of(Interval.of(MassFraction.of(low.cost()), MassFraction.of(Ratio.ONE.minus(rest.cost()))))
                : Optional.empty();
    }

    private List<Ratio> costs(int one, boolean itself) {
        List<Ratio> costs = new ArrayList<>(Collections.nCopies(emulsifiers.size(), itself ? Ratio.ZERO : Ratio.ONE));
        costs.set(one, itself ? Ratio.ONE : Ratio.ZERO);
        return costs;
    }

    private LinearAnswer solve(List<Ratio> costs) {
        List<Ratio> ones = Collections.nCopies(emulsifiers.size(), Ratio.ONE);
        List<Ratio> values = emulsifiers.stream().map(e -> e.middle().value()).toList();
        return new LinearProgram(
                        costs,
                        List.of(
                                new LinearProgram.Row(ones, Ratio.ONE),
                                new LinearProgram.Row(negated(ones), Ratio.ONE.unaryMinus()),
                                new LinearProgram.Row(values, target.value()),
                                new LinearProgram.Row(
                                        negated(values), target.value().unaryMinus())))
                .solve();
    }

    private static List<Ratio> negated(List<Ratio> numbers) {
        return numbers.stream().map(Ratio::unaryMinus).toList();
    }

    /**
     * Steps of trial blends from all of the one to all of the other, evenly apart: how the method is meant to be used.
     *
     * @param low the emulsifier with the lower value
     * @param high the emulsifier with the higher value
     * @param steps how many blends, at least 2
     * @return the share of the higher one in each
     * @throws IllegalArgumentException if there are fewer than two, or the values are the wrong way round
     */
    public static List<MassFraction> ladder(Emulsifier low, Emulsifier high, int steps) {
        if (steps < 2) {
            throw new IllegalArgumentException("steps is " + steps + ": a ladder has at least 2");
        }
        if (low.middle().compareTo(high.middle()) >= 0) {
            throw new IllegalArgumentException(
                    "low has " + low.middle() + " and high has " + high.middle() + ": the two may have been exchanged");
        }
        List<MassFraction> shares = new ArrayList<>();
        for (int i = 0; i < steps; i++) {
            shares.add(MassFraction.of(Ratio.of(i, steps - 1)));
        }
        return List.copyOf(shares);
    }

    /**
     * What every answer is to be printed with.
     *
     * @return the sentences
     */
    public List<Phrase> notCovered() {
        return List.of(Phrase.of("emulsion.approximate"));
    }
}
