package io.github.formulationmath.verification;

import io.github.formulationmath.batch.BatchLine;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.verification.Verification.RoundingHabit;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Mass;

/**
 * One figure held against ours.
 *
 * <p>Example: 12 g expected and 12.4 g shown deviate by 0.4 g.
 *
 * @param line the line of our batch, with its right mass
 * @param figure what was shown
 * @param expected our mass, or volume, in the unit of the figure, exact
 * @param step how finely the figure was rounded
 * @param agreement how the figure stands to ours
 */
public record FigureCheck(BatchLine line, Figure figure, Amount<?> expected, Amount<?> step, Agreement agreement) {

    /**
     * Nothing may be missing.
     *
     * @param line the line of our batch, with its right mass
     * @param figure what was shown
     * @param expected our mass, or volume, in the unit of the figure, exact
     * @param step how finely the figure was rounded
     * @param agreement how the figure stands to ours
     */
    public FigureCheck {
        Objects.requireNonNull(line, "line");
        Objects.requireNonNull(figure, "figure");
        Objects.requireNonNull(expected, "expected");
        Objects.requireNonNull(step, "step");
        Objects.requireNonNull(agreement, "agreement");
    }

    private static final Symbol FIGURE = Symbol.of("F", "claimed-figure", Kind.MASS);
    private static final Symbol VOLUME = Symbol.of("F", "claimed-figure", Kind.VOLUME);
    private static final Symbol DENSITY = Symbol.of("ρ", "density", Kind.DENSITY);
    private static final Symbol DEVIATION = Symbol.of("Δ", "deviation", Kind.MASS);

    /** By itself, whatever habit the figures show; the step in the unit of the figure. */
    static FigureCheck of(BatchLine line, Figure figure, Ratio step) {
        Ratio expected = line.mass().canonical().dividedBy(figure.gramsPerUnit(line.line()));
        return new FigureCheck(
                line, figure, figure.inUnit(expected), figure.inUnit(step), Agreement.of(figure, expected, step));
    }

    /** The same where a habit gives all figures, if there is one. */
    FigureCheck under(Optional<RoundingHabit> habit) {
        return new FigureCheck(
                line,
                figure,
                expected,
                step,
                habit.map(by -> agreement.under(by, figure)).orElse(agreement));
    }

    FormulaLine formulaLine() {
        return line.line();
    }

    /** Whether it is not ours to the nearest step; asked before a habit is known. */
    boolean isWrong() {
        return agreement == Agreement.DISAGREES;
    }

    /** What the figure would be for a mass, not rounded. */
    Ratio numberFor(Ratio grams) {
        return grams.dividedBy(figure.gramsPerUnit(line.line()));
    }

    /** How far the figure is from ours, in steps. */
    Ratio distance() {
        return distanceTo(expected.exactValue());
    }

    /** How far the figure is from a number, in steps. */
    Ratio distanceTo(Ratio number) {
        return figure.number().minus(number).abs().dividedBy(step.exactValue());
    }

    /** How many digits count, from the first that is not 0 to the step. */
    int digits() {
        Ratio steps = figure.number().dividedBy(step.exactValue()).floor();
        return steps.isZero() ? 0 : steps.numerator().toString().length();
    }

    /**
     * By how much the figure is off.
     *
     * @return the figure less our mass, in the unit of the figure, or in grams if the figure is a volume
     */
    public Amount<Mass> deviation() {
        return figure.massInUnit(excess()).withWorking(FigureCheck::question, this, FigureCheck::deviationIn);
    }

    /** The deviation in grams. */
    Ratio excess() {
        return deviationIn(Reckoning.plain());
    }

    /** The mass that was shown, in grams. */
    Ratio claimed() {
        return claimed(Reckoning.plain());
    }

    private Phrase question() {
        return Phrase.of("question.deviation", line.name());
    }

    <V> V deviationIn(Reckoning<V> r) {
        return r.named(DEVIATION, line, r.difference(claimed(r), r.known(line)));
    }

    private <V> V claimed(Reckoning<V> r) {
        Source source = Source.written(figure.written());
        Ratio value = figure.number().times(figure.unitSize());
        return figure.isVolume()
                ? r.product(
                        r.given(VOLUME, line, value, source),
                        r.given(DENSITY, line, Figure.densityOf(line.line()), Source.user()))
                : r.given(FIGURE, line, value, source);
    }

    /** The name and the figure, and how it stands. */
    @Override
    public String toString() {
        return line.name() + " " + figure + ": "
                + agreement.name().toLowerCase(Locale.ROOT).replace('_', ' ') + ", ours " + expected.toldExactly();
    }

    /** How a figure stands to ours. */
    public enum Agreement {
        /** The same number exactly. */
        AGREES,
        /** Ours, rounded to the step of the figure, a tie either way. */
        AGREES_AS_ROUNDED,
        /** Ours, as a program prints a binary floating-point number: within half of 10<sup>−13</sup> of itself. */
        AGREES_AS_BINARY,
        /** Ours, with the divisions left over by rounding shared out so that the total closes. */
        AGREES_AS_CLOSED,
        /** Ours, by the habit of showing figures that {@link Verification#habit()} names. */
        AGREES_BY_HABIT,
        /** 0, where ours is more: no digit counts. As shown, the line would be left out. */
        SHOWS_NOTHING,
        /** Another number. */
        DISAGREES;

        /** Of a figure by itself, rounded to the nearest step. */
        static Agreement of(Figure figure, Ratio expected, Ratio step) {
            if (!Hypothesis.Display.NEAREST.mayShow(expected, step, figure.number())) {
                return DISAGREES;
            }
            if (figure.showsNothing()) {
                return SHOWS_NOTHING;
            }
            if (figure.number().equals(expected)) {
                return AGREES;
            }
            return figure.isBinary() && step.equals(figure.ownStep()) ? AGREES_AS_BINARY : AGREES_AS_ROUNDED;
        }

        /** Of the same figure where a habit gives it. */
        Agreement under(RoundingHabit habit, Figure figure) {
            if (this != DISAGREES) {
                return this;
            }
            if (figure.showsNothing()) {
                return SHOWS_NOTHING;
            }
            return habit.isPlainRounding() ? AGREES_AS_CLOSED : AGREES_BY_HABIT;
        }
    }
}
