package io.github.formulationmath.emulsion;

import io.github.formulationmath.number.BlendProgram;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.LinearProgram;
import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.quantity.Money;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.weighing.Balance;
import java.util.ArrayList;
import java.util.Collections;
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

    private static final Symbol MASS = Symbol.of("m", "emulsifier-mass", Kind.MASS);
    private static final Symbol OWN = Symbol.of("h", "emulsifier-value", Kind.NUMBER);
    private static final Symbol BLENDED = Symbol.of("H", "blend-value", Kind.NUMBER);

    private final Hlb target;
    private final List<Emulsifier> emulsifiers;
    private final Map<String, Interval<MassFraction>> taken;
    private final BlendProgram program;

    private EmulsifierBlend(Hlb target, List<Emulsifier> emulsifiers, Map<String, Interval<MassFraction>> taken) {
        this.target = target;
        this.emulsifiers = List.copyOf(emulsifiers);
        this.taken = taken;
        Set<String> names = new HashSet<>();
        Set<String> currencies = new HashSet<>();
        this.emulsifiers.forEach(e -> {
            if (!names.add(e.name())) {
                throw new IllegalArgumentException(
                        "two emulsifiers are called " + Excerpt.of(e.name()) + ": give each grade a name of its own");
            }
            e.price().ifPresent(price -> currencies.add(price.currency()));
        });
        if (this.emulsifiers.isEmpty()) {
            throw new IllegalArgumentException("emulsifiers is empty: give at least one");
        }
        if (currencies.size() > 1) {
            throw new IllegalArgumentException(
                    "prices are in " + currencies + ": give all in one currency, nothing is exchanged here");
        }
        this.program = new BlendProgram(
                Ratio.ONE, this.emulsifiers.stream().map(this::part).toList(), Bounds.point(target.value()));
    }

    private BlendProgram.Part part(Emulsifier emulsifier) {
        Interval<MassFraction> share = taken.get(emulsifier.name());
        return new BlendProgram.Part(
                Bounds.point(emulsifier.middle().value()),
                share == null
                        ? Bounds.atLeast(Ratio.ZERO)
                        : Bounds.closed(
                                share.least().fraction(), share.greatest().fraction()));
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
                Objects.requireNonNull(hlb, "hlb"), Objects.requireNonNull(emulsifiers, "emulsifiers"), Map.of());
    }

    /**
     * The same question with bounds for one emulsifier. Of three emulsifiers that have a family of blends, one share given leaves one member.
     *
     * @param name the name of the grade
     * @param least its least share in all emulsifiers
     * @param greatest its greatest share; the same for exactly that share
     * @return the question with the bounds
     * @throws IllegalArgumentException if there is no such emulsifier, or the shares are reversed
     */
    public EmulsifierBlend with(String name, MassFraction least, MassFraction greatest) {
        index(name);
        Map<String, Interval<MassFraction>> more = new LinkedHashMap<>(taken);
        more.put(name, Interval.of(least, greatest));
        return new EmulsifierBlend(target, emulsifiers, more);
    }

    private int index(String name) {
        int found = emulsifiers.stream().map(Emulsifier::name).toList().indexOf(name);
        if (found < 0) {
            throw new IllegalArgumentException("no emulsifier is called " + Excerpt.of(name) + ": there are "
                    + Excerpt.of(emulsifiers.stream().map(Emulsifier::name).toList()));
        }
        return found;
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
        for (Map.Entry<Emulsifier, MassFraction> entry :
                Objects.requireNonNull(shares, "shares").entrySet()) {
            Ratio share = entry.getValue().fraction();
            whole = whole.plus(share);
            least = least.plus(share.times(entry.getKey().hlb().least().value()));
            greatest = greatest.plus(share.times(entry.getKey().hlb().greatest().value()));
        }
        if (!whole.equals(Ratio.ONE)) {
            throw new IllegalArgumentException("shares make " + Excerpt.of(NumberText.percentExactly(whole))
                    + ": give shares of the emulsifiers alone, together 100 %, not of the cream");
        }
        return Interval.of(Hlb.of(least), Hlb.of(greatest));
    }

    /**
     * The value of what is poured together, reckoned with the middles of the ranges: {@code Σ m · h / Σ m} over the emulsifiers alone.
     *
     * @param masses how much of each emulsifier, together above 0; water and oils do not belong to them
     * @return the value with its working
     * @throws IllegalArgumentException if a mass is below 0, or all are 0
     */
    public static Hlb valueOfMasses(Map<Emulsifier, Amount<Mass>> masses) {
        Objects.requireNonNull(masses, "masses");
        Amount<Mass> all = Amount.grams(Ratio.ZERO);
        for (Map.Entry<Emulsifier, Amount<Mass>> each : masses.entrySet()) {
            all = all.plus(Amount.requireNotNegative("mass of " + each.getKey().name(), each.getValue()));
        }
        Amount.requirePositive("masses", all);
        Medial medial = new Medial(List.copyOf(masses.entrySet()));
        return Hlb.of(medial.in(Reckoning.plain()))
                .withWorking(any -> Phrase.of("question.blend-value"), medial, Medial::in);
    }

    private record Medial(List<Map.Entry<Emulsifier, Amount<Mass>>> poured) {

        <V> V in(Reckoning<V> r) {
            List<V> values = new ArrayList<>();
            List<V> masses = new ArrayList<>();
            for (Map.Entry<Emulsifier, Amount<Mass>> each : poured) {
                Emulsifier emulsifier = each.getKey();
                Subject subject = Subject.of(emulsifier.name(), emulsifier.name());
                V mass = r.given(MASS, subject, each.getValue(), Source.user());
                V own = r.given(OWN, subject, Hlb.middle(emulsifier.hlb()).value(), emulsifier.source());
                masses.add(mass);
                values.add(r.product(mass, own));
            }
            return r.named(BLENDED, r.quotient(r.sum(values), r.sum(masses)));
        }
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
     * No blend: the target lies outside of what the emulsifiers can be blended to.
     *
     * @param reachable the lowest and the highest value of their blends; empty if the bounds of the shares do not make a whole
     * @param wouldHelp what would open it, in words
     */
    public record OutOfReach(Optional<Interval<Hlb>> reachable, Phrase wouldHelp) implements Answer {

        /**
         * Checks presence.
         *
         * @param reachable the lowest and the highest value of their blends
         * @param wouldHelp what would open it
         */
        public OutOfReach {
            Objects.requireNonNull(reachable, "reachable");
            Objects.requireNonNull(wouldHelp, "wouldHelp");
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
        if (!(program.cheapest(costs) instanceof LinearProgram.Answer.Optimal optimal)) {
            Optional<Interval<Hlb>> reachable = program.reachable()
                    .map(bounds -> Interval.of(
                            Hlb.of(bounds.lower().orElseThrow()),
                            Hlb.of(bounds.upper().orElseThrow())));
            return new OutOfReach(
                    reachable, reachable.map(this::wouldHelp).orElse(Phrase.of("emulsion.shares-make-no-whole")));
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

    private Phrase wouldHelp(Interval<Hlb> reachable) {
        boolean needsHigher = target.compareTo(reachable.greatest()) > 0;
        Hlb nearest = needsHigher ? reachable.greatest() : reachable.least();
        return Phrase.of(
                needsHigher ? "emulsion.needs-higher" : "emulsion.needs-lower",
                nearest.toString(),
                target.value().minus(nearest.value()).abs().toString(),
                target.toString());
    }

    /**
     * How much of an emulsifier there may be in any blend of that value.
     *
     * @param name the name of the grade
     * @return the least and the greatest share; empty if no blend has the value
     * @throws IllegalArgumentException if there is no such emulsifier
     */
    public Optional<Interval<MassFraction>> range(String name) {
        return program.range(index(name)).map(EmulsifierBlend::shares);
    }

    private static Interval<MassFraction> shares(Bounds bounds) {
        return Interval.of(
                MassFraction.of(bounds.lower().orElseThrow()),
                MassFraction.of(bounds.upper().orElseThrow()));
    }

    /**
     * The share of the higher of two emulsifiers over the ranges of both grades and of the target.
     *
     * @param low the grade with the lower value
     * @param high the grade with the higher value
     * @param target the value wanted, as a range
     * @return the least and the greatest share; empty if some target is not reachable for every value within the ranges
     */
    public static Optional<Interval<MassFraction>> shareOfHigher(
            Emulsifier low, Emulsifier high, Interval<Hlb> target) {
        return BlendProgram.share(
                        bounds(Objects.requireNonNull(low, "low").hlb()),
                        bounds(Objects.requireNonNull(high, "high").hlb()),
                        bounds(Objects.requireNonNull(target, "target")))
                .map(EmulsifierBlend::shares);
    }

    private static Bounds bounds(Interval<Hlb> range) {
        return Bounds.closed(range.least().value(), range.greatest().value());
    }

    /**
     * One trial of a ladder, as it is weighed.
     *
     * @param low the mass of the lower emulsifier
     * @param high the mass of the higher one
     * @param value the value of the blend over the ranges of the grades, at the masses as weighed
     */
    public record Trial(Amount<Mass> low, Amount<Mass> high, Interval<Hlb> value) {

        /**
         * Checks presence.
         *
         * @param low the mass of the lower emulsifier
         * @param high the mass of the higher one
         * @param value the value of the blend
         */
        public Trial {
            Objects.requireNonNull(low, "low");
            Objects.requireNonNull(high, "high");
            Objects.requireNonNull(value, "value");
        }
    }

    /**
     * Trial blends from all of the one to all of the other, evenly apart but for the steps of the display: how the method is meant to be used.
     *
     * @param low the emulsifier with the lower value
     * @param high the emulsifier with the higher value
     * @param trials how many blends, at least 2
     * @param each the mass of both emulsifiers in a trial, a whole number of steps
     * @param balance on which they are weighed
     * @return the trials, from the lowest value to the highest
     * @throws IllegalArgumentException if there are fewer than two, the values are the wrong way round, or the display is too coarse to tell the
     *     trials apart
     */
    public static List<Trial> ladder(Emulsifier low, Emulsifier high, int trials, Amount<Mass> each, Balance balance) {
        if (trials < 2) {
            throw new IllegalArgumentException("trials is " + trials + ": a ladder has at least 2");
        }
        if (low.middle().compareTo(high.middle()) >= 0) {
            throw new IllegalArgumentException(
                    "low has " + low.middle() + " and high has " + high.middle() + ": the two may have been exchanged");
        }
        Ratio step = balance.readability().canonical();
        Ratio whole = Amount.requirePositive("each", each).canonical();
        if (!whole.dividedBy(step).isInteger() || whole.compareTo(step.times(trials - 1L)) < 0) {
            throw new IllegalArgumentException(
                    "each is " + Excerpt.of(each) + ": " + trials + " trials on a display of "
                            + balance.readability() + " need a whole number of steps and at least "
                            + balance.readability().times(trials - 1L) + "; weigh more, or try fewer");
        }
        Rounding toSteps = Rounding.toMultipleOf(step);
        List<Trial> ladder = new ArrayList<>();
        for (int i = 0; i < trials; i++) {
            Ratio ofHigh = whole.times(i).dividedBy(trials - 1L).rounded(toSteps);
            ladder.add(trial(low, high, each, ofHigh));
        }
        return List.copyOf(ladder);
    }

    private static Trial trial(Emulsifier low, Emulsifier high, Amount<Mass> each, Ratio ofHigh) {
        MassFraction share = MassFraction.of(ofHigh.dividedBy(each.canonical()));
        Amount<Mass> weighed = Amount.grams(ofHigh).to(each.getUnit());
        Map<Emulsifier, MassFraction> shares = new LinkedHashMap<>();
        shares.put(low, MassFraction.of(Ratio.ONE.minus(share.fraction())));
        shares.put(high, share);
        return new Trial(each.minus(weighed), weighed, valueOf(shares));
    }

    /**
     * What every answer is to be printed with.
     *
     * @return the sentences
     */
    public List<Phrase> notCovered() {
        return List.of(Phrase.of("emulsion.approximate"));
    }

    /** The question in a line, for reading at a prompt. */
    @Override
    public String toString() {
        return "HLB " + target + " from "
                + emulsifiers.stream().map(Emulsifier::name).collect(Collectors.joining(", "));
    }
}
