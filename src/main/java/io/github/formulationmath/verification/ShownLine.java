package io.github.formulationmath.verification;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;

/**
 * A figure beside the line it is for.
 *
 * @param line the line
 * @param figure what was shown
 * @param step how finely it was rounded, in its unit
 * @param exact what would be right, in its unit
 * @param distance how far it is from that, in steps
 */
record ShownLine(FormulaLine line, Figure figure, Ratio step, Ratio exact, Ratio distance) {

    static ShownLine of(FormulaLine line, Figure figure, Ratio step, Ratio grams) {
        Ratio exact = grams.dividedBy(gramsPerUnit(line, figure));
        return new ShownLine(line, figure, step, exact, distance(figure, step, exact));
    }

    static Ratio gramsPerUnit(FormulaLine line, Figure figure) {
        return figure.isVolume() ? figure.unitSize().times(Claim.densityOf(line)) : figure.unitSize();
    }

    private static Ratio distance(Figure figure, Ratio step, Ratio exact) {
        return figure.number().minus(exact).abs().dividedBy(step);
    }

    Ratio gramsPerUnit() {
        return gramsPerUnit(line, figure);
    }

    /** What the figure would be for a mass, not rounded. */
    Ratio numberFor(Ratio grams) {
        return grams.dividedBy(gramsPerUnit());
    }

    Ratio distanceTo(Ratio number) {
        return distance(figure, step, number);
    }

    /** Whether it is not ours to the nearest step. */
    boolean isWrong() {
        return !Hypothesis.Display.NEAREST.mayShow(exact, step, figure.number());
    }

    /** How many digits count, from the first that is not 0 to the step. */
    int digits() {
        Ratio steps = figure.number().dividedBy(step).floor();
        return steps.isZero() ? 0 : steps.numerator().toString().length();
    }
}
