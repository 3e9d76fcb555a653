package io.github.formulationmath.verification;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * The figures under one slip.
 *
 * @param slip the slip
 * @param detail what exactly went wrong, in a name or a number; may be empty
 * @param grams the mass of each line of the formula, not rounded
 * @param display what the slip does to a number on its way to the display, as which a number may be shown
 */
record Hypothesis(Slip slip, String detail, List<Ratio> grams, Display display) {

    /** From the exact number to the one shown, for a display that moves by a step. */
    interface Display {

        /** Half a step either way: any rounding to the nearest, whatever it does with ties. */
        Display NEAREST =
                (exact, step, shown) -> shown.minus(exact).abs().times(2).compareTo(step) <= 0;

        /** Whether a display with this slip may show a number. */
        boolean mayShow(Ratio exact, Ratio step, Ratio shown);
    }

    Hypothesis {
        grams = List.copyOf(grams);
    }

    static Hypothesis of(Slip slip, String detail, List<Ratio> grams) {
        return new Hypothesis(slip, detail, grams, Display.NEAREST);
    }

    static Hypothesis scaled(Slip slip, String detail, List<Ratio> right, Ratio factor) {
        return of(slip, detail, mapped(right, grams -> grams.times(factor)));
    }

    /** One line wrong, and all others right. */
    static Hypothesis single(Slip slip, String detail, List<Ratio> right, FormulaLine line, Ratio grams) {
        List<Ratio> changed = new ArrayList<>(right);
        changed.set(line.position() - 1, grams);
        return of(slip, detail, changed);
    }

    static List<Ratio> mapped(List<Ratio> right, UnaryOperator<Ratio> change) {
        return right.stream().map(change).toList();
    }
}
