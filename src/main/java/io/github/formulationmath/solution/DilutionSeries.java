package io.github.formulationmath.solution;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import java.util.Objects;
import javax.measure.quantity.Mass;

/**
 * A stock diluted step by step, each step made from the one before: after k steps its strength is {@code w / f^k}.
 *
 * <p>"1 : 10" is read in two ways, as one part and ten parts of the diluent, which makes f = 11, and as one part in ten parts in all,
 * which makes f = 10. So it is not read at all: say {@link #onePartWith} or {@link #onePartIn}. Parts are parts by mass.
 *
 * <p>Example, by hand: 1 part of 50 % with 9 parts of water is 5 %, after two steps 0.5 %.
 */
public final class DilutionSeries {

    private static final Symbol START = Symbol.of("w", "stock-strength", Kind.SHARE);
    private static final Symbol FACTOR = Symbol.of("f", "dilution-step", Kind.NUMBER);
    private static final Symbol AFTER = Symbol.of("W", "step-strength", Kind.SHARE);
    private static final Symbol MADE = Symbol.of("M", "blend-mass", Kind.MASS);
    private static final Symbol TAKEN = Symbol.of("x", "step-mass", Kind.MASS);

    private final Stock stock;
    private final Ratio factor;

    private DilutionSeries(Stock stock, Ratio factor) {
        this.stock = Objects.requireNonNull(stock, "stock");
        this.factor = factor;
    }

    /**
     * Each step is one part of the one before with so many parts of the diluent: f = 1 + parts.
     *
     * @param stock what is diluted
     * @param partsOfDiluent such as {@code "9"}, above 0
     * @return the series
     * @throws IllegalArgumentException if there is no diluent
     */
    public static DilutionSeries onePartWith(Stock stock, String partsOfDiluent) {
        Ratio parts = Ratio.parse(partsOfDiluent);
        if (parts.signum() <= 0) {
            throw new IllegalArgumentException("partsOfDiluent is " + Excerpt.of(parts)
                    + ": it must be above 0, such as 9 for 1 part with 9 parts of water");
        }
        return new DilutionSeries(stock, parts.plus(Ratio.ONE));
    }

    /**
     * Each step is one part of the one before in so many parts in all: f = parts.
     *
     * @param stock what is diluted
     * @param partsInAll such as {@code "10"}, above 1
     * @return the series
     * @throws IllegalArgumentException if there is no diluent
     */
    public static DilutionSeries onePartIn(Stock stock, String partsInAll) {
        Ratio parts = Ratio.parse(partsInAll);
        if (parts.compareTo(Ratio.ONE) <= 0) {
            throw new IllegalArgumentException("partsInAll is " + Excerpt.of(parts)
                    + ": it must be above 1, such as 10 for 1 part and 9 parts of water");
        }
        return new DilutionSeries(stock, parts);
    }

    /**
     * The strength after so many steps, reckoned with the middle of that of the stock.
     *
     * @param step how many steps, from 0 to 100
     * @return the strength by mass, with its working
     * @throws IllegalArgumentException if the step lies outside
     */
    public MassFraction strengthAfter(int step) {
        if (step < 0 || step > 100) {
            throw new IllegalArgumentException(
                    "step is " + step + ": it must lie from 0 to 100, for beyond that hardly a molecule is left");
        }
        AfterStep after = new AfterStep(this, step);
        return MassFraction.of(after.in(Reckoning.plain())).withWorking(AfterStep::question, after, AfterStep::in);
    }

    private record AfterStep(DilutionSeries series, int step) {

        Phrase question() {
            return Phrase.of("question.step-strength", String.valueOf(step));
        }

        <V> V in(Reckoning<V> r) {
            String name = series.stock.name();
            V strength = r.given(START, Subject.of("", name), series.stock.middle(), Source.user());
            for (int k = 1; k <= step; k++) {
                strength = r.named(
                        AFTER,
                        Subject.of(String.valueOf(k), String.valueOf(k)),
                        r.quotient(strength, r.given(FACTOR, series.factor, Source.user())));
            }
            return strength;
        }
    }

    /**
     * How much of the step before goes into a step: {@code M / f}.
     *
     * @param made the mass of the step
     * @return its mass, with its working
     */
    public Amount<Mass> takenFor(Amount<Mass> made) {
        Taken taken = new Taken(this, Amount.requirePositive("made", made));
        return Amount.grams(taken.in(Reckoning.plain()))
                .to(made.getUnit())
                .withWorking(Taken::question, taken, Taken::in);
    }

    private record Taken(DilutionSeries series, Amount<Mass> made) {

        Phrase question() {
            return Phrase.of("question.step-mass");
        }

        <V> V in(Reckoning<V> r) {
            return r.named(
                    TAKEN,
                    r.quotient(r.given(MADE, made, Source.user()), r.given(FACTOR, series.factor, Source.user())));
        }
    }

    /**
     * How much of the diluent goes into a step: the rest.
     *
     * @param made the mass of the step
     * @return its mass
     */
    public Amount<Mass> diluentFor(Amount<Mass> made) {
        return made.minus(takenFor(made).withoutWorking());
    }

    /** The stock and the factor of a step, for reading at a prompt. */
    @Override
    public String toString() {
        return stock.name() + ", each step 1/" + factor + " as strong as the one before";
    }
}
