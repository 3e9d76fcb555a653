package io.github.formulationmath.solution;

import io.github.formulationmath.number.BlendProgram;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Mass;

/**
 * Two stocks blended to a strength between them, or one of them diluted with water: as much of the stronger as the target lies above
 * the weaker, to as much of the weaker as it lies below the stronger, {@code m_H : m_L = (T − L) : (H − T)} (alligation
 * alternate). The other way round, the strength of a blend is {@code Σ m · w / Σ m} (alligation medial).
 *
 * <p>Parts are parts by mass. Stated by volume they hold only for liquids that do not shrink, and never for alcohol.
 *
 * <p>Masses are reckoned with the middles of the ranges of the stocks; {@link #shareOfStronger()} tells what the ranges do to it.
 *
 * <p>Example, by hand: 95 % and 50 % to 70 % are 20 : 25, that is 4 : 5 parts.
 */
public final class Alligation {

    private static final Symbol STRENGTH = Symbol.of("w", "stock-strength", Kind.SHARE);
    private static final Symbol TARGET = Symbol.of("T", "target-strength", Kind.SHARE);
    private static final Symbol GIVEN = Symbol.of("m", "stock-mass", Kind.MASS);
    private static final Symbol WHOLE = Symbol.of("M", "blend-mass", Kind.MASS);
    private static final Symbol TAKEN = Symbol.of("x", "stock-mass", Kind.MASS);
    private static final Symbol BLENDED = Symbol.of("W", "blend-strength", Kind.SHARE);

    private final Stock stronger;
    private final Stock weaker;
    private final MassFraction target;

    private Alligation(Stock stronger, Stock weaker, MassFraction target) {
        this.stronger = stronger;
        this.weaker = weaker;
        this.target = target;
    }

    /**
     * Two stocks to a strength, in any order.
     *
     * @param one a stock, or {@link Stock#diluent water}
     * @param other the other
     * @param target the strength by mass, such as {@code "70 %"}
     * @return the rule
     * @throws IllegalArgumentException if both are of one strength, or the target does not lie between them
     */
    public static Alligation of(Stock one, Stock other, String target) {
        Objects.requireNonNull(one, "one");
        Objects.requireNonNull(other, "other");
        boolean ordered = one.middle().compareTo(other.middle()) >= 0;
        Stock high = ordered ? one : other;
        Stock low = ordered ? other : one;
        MassFraction wanted = MassFraction.parse(target);
        if (high.middle().equals(low.middle())) {
            throw new IllegalArgumentException(Excerpt.of(one.name()) + " and " + Excerpt.of(other.name())
                    + " are both of " + percent(high.middle()) + ": blending them changes nothing, take one of another"
                    + " strength");
        }
        requireBetween(high, low, wanted);
        return new Alligation(high, low, wanted);
    }

    private static void requireBetween(Stock high, Stock low, MassFraction target) {
        Ratio above = target.fraction().minus(high.middle());
        Ratio below = low.middle().minus(target.fraction());
        if (above.signum() > 0) {
            throw new IllegalArgumentException("target is " + target + ": " + percent(above)
                    + " above the stronger stock, "
                    + Excerpt.of(high.name()) + " of " + percent(high.middle()) + "; nothing is made stronger by"
                    + " blending, take a stock of at least " + target);
        }
        if (below.signum() > 0) {
            throw new IllegalArgumentException("target is " + target + ": " + percent(below)
                    + " below the weaker stock, "
                    + Excerpt.of(low.name()) + " of " + percent(low.middle()) + "; take a stock of at most " + target
                    + ", such as water");
        }
    }

    private static String percent(Ratio share) {
        return MassFraction.of(share).toString();
    }

    /**
     * The stronger stock.
     *
     * @return the one with the higher middle
     */
    public Stock stronger() {
        return stronger;
    }

    /**
     * The weaker stock.
     *
     * @return the one with the lower middle
     */
    public Stock weaker() {
        return weaker;
    }

    /**
     * The share of the stronger stock over the ranges of both: from {@code (T − L)/(H − L)} at the upper ends of L and H to that at their
     * lower ends.
     *
     * @return the least and the greatest share; empty if the target does not lie between the two for every strength within the ranges
     */
    public Optional<Interval<MassFraction>> shareOfStronger() {
        Interval<MassFraction> wanted = Interval.of(target, target);
        return BlendProgram.share(weaker.bounds(), stronger.bounds(), Stock.bounds(wanted))
                .map(Stock::strengths);
    }

    /**
     * Parts by mass of the stronger to parts of the weaker, in the lowest whole numbers.
     *
     * @return such as {@code "4 : 5"}
     */
    public String parts() {
        Ratio high = target.fraction().minus(weaker.middle());
        Ratio low = stronger.middle().minus(target.fraction());
        Ratio quotient = low.isZero() ? Ratio.ZERO : high.dividedBy(low);
        return low.isZero() ? "1 : 0" : quotient.numerator() + " : " + quotient.denominator();
    }

    /**
     * How much of the stronger stock is in a mass of the blend.
     *
     * @param blend the mass to make
     * @return its mass, with its working
     */
    public Amount<Mass> strongerIn(Amount<Mass> blend) {
        return new InBlend(this, Amount.requirePositive("blend", blend), stronger, weaker).mass();
    }

    /**
     * How much of the weaker stock, or water, is in a mass of the blend.
     *
     * @param blend the mass to make
     * @return its mass, with its working
     */
    public Amount<Mass> weakerIn(Amount<Mass> blend) {
        return new InBlend(this, Amount.requirePositive("blend", blend), weaker, stronger).mass();
    }

    /**
     * How much of the weaker stock, or water, goes to so much of the stronger.
     *
     * @param mass of the stronger stock
     * @return the mass of the weaker, with its working
     * @throws IllegalArgumentException if the target is that of the weaker, so that no amount is enough
     */
    public Amount<Mass> weakerTo(Amount<Mass> mass) {
        return new ToOther(this, Amount.requirePositive("mass", mass), stronger, weaker).mass();
    }

    /**
     * How much of the stronger stock goes to so much of the weaker.
     *
     * @param mass of the weaker stock
     * @return the mass of the stronger, with its working
     * @throws IllegalArgumentException if the target is that of the stronger, so that no amount is enough
     */
    public Amount<Mass> strongerTo(Amount<Mass> mass) {
        return new ToOther(this, Amount.requirePositive("mass", mass), weaker, stronger).mass();
    }

    private static <V> V strength(Reckoning<V> r, Stock stock) {
        return r.given(STRENGTH, Subject.of(stock.name(), stock.name()), stock.middle(), Source.user());
    }

    private <V> V target(Reckoning<V> r) {
        return r.given(TARGET, target.fraction(), Source.user());
    }

    /** One stock in a blend of known mass: x = M (T − b)/(a − b), whichever of the two is the stronger. */
    private record InBlend(Alligation rule, Amount<Mass> blend, Stock of, Stock other) {

        Amount<Mass> mass() {
            return Amount.grams(in(Reckoning.plain()))
                    .to(blend.getUnit())
                    .withWorking(InBlend::question, this, InBlend::in);
        }

        Phrase question() {
            return Phrase.of("question.stock-mass", of.name());
        }

        <V> V in(Reckoning<V> r) {
            V a = strength(r, of);
            V b = strength(r, other);
            V share = r.quotient(r.difference(rule.target(r), b), r.difference(a, b));
            V whole = r.given(WHOLE, blend, Source.user());
            return r.named(TAKEN, Subject.of(of.name(), of.name()), r.product(whole, share));
        }
    }

    /** So much of one to a known mass of the other: x = m (a − T)/(T − b). */
    private record ToOther(Alligation rule, Amount<Mass> known, Stock from, Stock wanted) {

        ToOther {
            if (wanted.middle().equals(rule.target.fraction())) {
                throw new IllegalArgumentException("target is " + rule.target + ", the strength of "
                        + Excerpt.of(wanted.name()) + ": no amount of it is enough; ask for another strength, or take "
                        + Excerpt.of(wanted.name()) + " alone");
            }
        }

        Amount<Mass> mass() {
            return Amount.grams(in(Reckoning.plain()))
                    .to(known.getUnit())
                    .withWorking(ToOther::question, this, ToOther::in);
        }

        Phrase question() {
            return Phrase.of("question.stock-mass", wanted.name());
        }

        <V> V in(Reckoning<V> r) {
            V t = rule.target(r);
            V parts = r.quotient(r.difference(strength(r, from), t), r.difference(t, strength(r, wanted)));
            V m = r.given(GIVEN, Subject.of(from.name(), from.name()), known, Source.user());
            return r.named(TAKEN, Subject.of(wanted.name(), wanted.name()), r.product(m, parts));
        }
    }

    /**
     * The strength of what is poured together (alligation medial), reckoned with the middles.
     *
     * @param masses how much of each stock, together above 0
     * @return the strength by mass, with its working
     * @throws IllegalArgumentException if a mass is below 0, or all are 0
     */
    public static MassFraction medial(Map<Stock, Amount<Mass>> masses) {
        Amount<Mass> all = Amount.grams(Ratio.ZERO);
        for (Map.Entry<Stock, Amount<Mass>> poured :
                Objects.requireNonNull(masses, "masses").entrySet()) {
            all = all.plus(
                    Amount.requireNotNegative("mass of " + poured.getKey().name(), poured.getValue()));
        }
        Amount.requirePositive("masses", all);
        Medial medial = new Medial(List.copyOf(masses.entrySet()));
        return MassFraction.of(medial.in(Reckoning.plain())).withWorking(Medial::question, medial, Medial::in);
    }

    private record Medial(List<Map.Entry<Stock, Amount<Mass>>> poured) {

        Phrase question() {
            return Phrase.of("question.blend-strength");
        }

        <V> V in(Reckoning<V> r) {
            List<V> substance = new ArrayList<>();
            List<V> all = new ArrayList<>();
            for (Map.Entry<Stock, Amount<Mass>> each : poured) {
                Stock stock = each.getKey();
                V mass = r.given(GIVEN, Subject.of(stock.name(), stock.name()), each.getValue(), Source.user());
                all.add(mass);
                substance.add(r.product(mass, strength(r, stock)));
            }
            return r.named(BLENDED, r.quotient(r.sum(substance), r.sum(all)));
        }
    }

    /** The parts by mass, for reading at a prompt. */
    @Override
    public String toString() {
        return stronger.name() + " to " + weaker.name() + " by mass " + parts() + ", for " + target;
    }
}
