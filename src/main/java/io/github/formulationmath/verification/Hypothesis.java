package io.github.formulationmath.verification;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * The figures under one slip.
 *
 * @param slip the slip
 * @param detail what exactly went wrong, in a name or a number; may be empty
 * @param grams the masses, not rounded, of the lines that the slip touches, by position; the others are right
 * @param display what the slip does to a number on its way to the display, as which a number may be shown
 * @param restFollows whether the q.s. line is among them only as what the others leave
 */
record Hypothesis(Slip slip, String detail, Map<Integer, Ratio> grams, Display display, boolean restFollows) {

    /** From the exact number to the one shown, for a display that moves by a step. */
    interface Display {

        /** Half a step either way: any rounding to the nearest, whatever it does with ties. */
        Display NEAREST =
                (exact, step, shown) -> shown.minus(exact).abs().times(2).compareTo(step) <= 0;

        /** Whether a display with this slip may show a number. */
        boolean mayShow(Ratio exact, Ratio step, Ratio shown);
    }

    static Hypothesis of(Slip slip, String detail, Map<Integer, Ratio> grams) {
        return new Hypothesis(slip, detail, grams, Display.NEAREST, false);
    }

    /** Every line, from its right mass. */
    static Hypothesis mapped(Slip slip, String detail, List<Ratio> right, UnaryOperator<Ratio> change) {
        return of(slip, detail, all(right.stream().map(change).toList()));
    }

    static Hypothesis scaled(Slip slip, String detail, List<Ratio> right, Ratio factor) {
        return mapped(slip, detail, right, grams -> grams.times(factor));
    }

    /** The right masses on a display that goes wrong. */
    static Hypothesis displayed(Slip slip, List<Ratio> right, Display display) {
        return new Hypothesis(slip, "", all(right), display, false);
    }

    /** Masses in the order of the formula. */
    static Map<Integer, Ratio> all(List<Ratio> masses) {
        Map<Integer, Ratio> grams = new HashMap<>();
        for (int i = 0; i < masses.size(); i++) {
            grams.put(i + 1, masses.get(i));
        }
        return grams;
    }

    /** One line wrong, and all others right; or the q.s. line taking what it leaves. */
    static Stream<Hypothesis> single(Slip slip, String detail, Shown shown, FormulaLine line, Ratio grams) {
        return bothWays(slip, detail, shown, Map.of(line.position(), grams));
    }

    /** Some lines wrong, and all others right; or the q.s. line, if it is none of them, taking what they leave. */
    static Stream<Hypothesis> bothWays(Slip slip, String detail, Shown shown, Map<Integer, Ratio> grams) {
        Hypothesis alone = of(slip, detail, grams);
        Optional<FormulaLine> rest =
                shown.rest().filter(line -> !grams.containsKey(line.position())).filter(shown::isWrong);
        if (rest.isEmpty()) {
            return Stream.of(alone);
        }
        Ratio left = shown.rightOf(rest.get());
        for (Map.Entry<Integer, Ratio> changed : grams.entrySet()) {
            left = left.plus(shown.right().get(changed.getKey() - 1)).minus(changed.getValue());
        }
        if (left.signum() < 0) {
            return Stream.of(alone);
        }
        Map<Integer, Ratio> filled = new HashMap<>(grams);
        filled.put(rest.get().position(), left);
        return Stream.of(alone, new Hypothesis(slip, detail, filled, Display.NEAREST, true));
    }
}
