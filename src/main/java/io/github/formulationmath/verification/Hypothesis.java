package io.github.formulationmath.verification;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * The figures under one slip, made in one way.
 *
 * @param detail what exactly went wrong, in a name or a number; may be empty
 * @param grams the masses, not rounded, of the lines that the slip touches, by position; the others are right
 * @param display what the slip does to a number on its way to the display, as which a number may be shown
 * @param restFollows whether the q.s. line is among them only as what the others leave
 */
record Hypothesis(String detail, Map<Integer, Ratio> grams, Display display, boolean restFollows) {

    /** From the exact number to the one shown, for a display that moves by a step. */
    interface Display {

        /** Half a step either way: any rounding to the nearest, whatever it does with ties. */
        Display NEAREST = (exact, step, shown) -> {
            // The exact number may be long; it is only compared.
            Ratio half = step.dividedBy(2);
            return exact.compareTo(shown.minus(half)) >= 0 && exact.compareTo(shown.plus(half)) <= 0;
        };

        /** Whether a display with this slip may show a number. */
        boolean mayShow(Ratio exact, Ratio step, Ratio shown);
    }

    /** The right masses on a display that goes wrong. */
    static Hypothesis displayed(Shown shown, Display display) {
        return new Hypothesis("", masses(shown, shown.formula().lines(), line -> Ratio.ONE), display, false);
    }

    /** Every line times a factor. */
    static Stream<Hypothesis> scaled(Shown shown, String detail, Ratio factor) {
        return changed(shown, detail, shown.formula().lines(), line -> factor);
    }

    /** Some lines times a factor, and all others right. */
    static Hypothesis alone(
            Shown shown, String detail, Collection<FormulaLine> lines, Function<FormulaLine, Ratio> factor) {
        return new Hypothesis(detail, masses(shown, lines, factor), Display.NEAREST, false);
    }

    /** Each line of a kind by itself, if its figure may be wrong by that; then all of them together. */
    static Stream<Hypothesis> eachOrAll(Shown shown, Predicate<FormulaLine> kind, Function<FormulaLine, Ratio> factor) {
        List<FormulaLine> all = shown.formula().lines().stream().filter(kind).toList();
        Stream<Hypothesis> each = shown.suspects().stream()
                .map(FigureCheck::formulaLine)
                .filter(kind)
                .flatMap(line -> changed(shown, line.name(), List.of(line), factor));
        return all.size() < 2 ? each : Stream.concat(each, changed(shown, "", all, factor));
    }

    /** Some lines times a factor, and all others right; or the q.s. line, if it is none of them, taking what they leave. */
    static Stream<Hypothesis> changed(
            Shown shown, String detail, Collection<FormulaLine> lines, Function<FormulaLine, Ratio> factor) {
        Hypothesis alone = alone(shown, detail, lines, factor);
        Map<Integer, Ratio> filled = new HashMap<>(alone.grams);
        Optional<FormulaLine> rest = shown.rest()
                .filter(line -> !filled.containsKey(line.position()))
                .filter(shown::isWrong);
        if (rest.isEmpty()) {
            return Stream.of(alone);
        }
        Ratio left = shown.rightOf(rest.get());
        for (Map.Entry<Integer, Ratio> line : filled.entrySet()) {
            left = left.plus(shown.right().get(line.getKey() - 1)).minus(line.getValue());
        }
        if (left.signum() < 0) {
            return Stream.of(alone);
        }
        filled.put(rest.get().position(), left);
        return Stream.of(alone, new Hypothesis(detail, filled, Display.NEAREST, true));
    }

    private static Map<Integer, Ratio> masses(
            Shown shown, Collection<FormulaLine> lines, Function<FormulaLine, Ratio> factor) {
        Map<Integer, Ratio> grams = new HashMap<>();
        lines.forEach(line -> grams.put(line.position(), shown.rightOf(line).times(factor.apply(line))));
        return grams;
    }
}
