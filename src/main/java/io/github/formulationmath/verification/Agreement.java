package io.github.formulationmath.verification;

import io.github.formulationmath.number.Ratio;

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
