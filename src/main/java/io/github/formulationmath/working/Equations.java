package io.github.formulationmath.working;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Predicate;

/** Steps, comparisons and answers as lines of arithmetic: in symbols, with the numbers put in, the result. */
final class Equations {

    private final Numerals numerals;
    private final Words words;

    Equations(Numerals numerals, Words words) {
        this.numerals = numerals;
        this.words = words;
    }

    /** The value of a step in one line: {@code m_3 = 400/3 g ≈ 133.333 g}. */
    Line value(Step step) {
        return Line.first(out -> out.label(step), "=", result(step));
    }

    /** How a computed step came about. */
    List<Line> step(Step step) {
        // A sum of one term is that term, and its value is not printed twice.
        Term definition = FormulaWalk.unwrapped(step.definition().orElse(step));
        if (definition instanceof Literal || definition == step) {
            return List.of(value(step));
        }
        List<Line> lines = new ArrayList<>();
        lines.add(Line.first(out -> out.label(step), "=", symbols(definition)));
        if (definition instanceof Applied) {
            lines.add(Line.next("=", numbers(definition)));
        }
        lines.add(Line.next(sign(definition), result(step)));
        return lines;
    }

    List<Line> decision(Decision decision) {
        String sign = decision.comparison().sign();
        List<Line> lines = new ArrayList<>();
        lines.add(Line.first(symbols(decision.left()), sign, symbols(decision.right())));
        if (decision.left() instanceof Applied || decision.right() instanceof Applied) {
            lines.add(Line.first(numbers(decision.left()), sign, numbers(decision.right())));
        }
        if (anywhere(decision.left(), numerals::isBlanked) || anywhere(decision.right(), numerals::isBlanked)) {
            return lines;
        }
        String outcome = decision.holds() ? "decision.holds" : "decision.fails";
        lines.add(new Line(
                out -> out.number(numerals.exact(decision.left())),
                sign,
                out -> out.number(numerals.exact(decision.right())),
                words.say(outcome)));
        return lines;
    }

    List<Line> answer(Term answer) {
        if (answer instanceof Step step) {
            return List.of(value(step));
        }
        if (answer instanceof Literal) {
            return List.of(Line.next("=", result(answer)));
        }
        boolean giveAway = anywhere(answer, numerals::isBlanked);
        Consumer<Notation> result = giveAway ? out -> out.number(numerals.blank(answer)) : result(answer);
        return List.of(Line.first(symbols(answer), "=", numbers(answer)), Line.next(sign(answer), result));
    }

    private Consumer<Notation> symbols(Term term) {
        return out -> new FormulaWalk(out, numerals, words, false).write(term);
    }

    private Consumer<Notation> numbers(Term term) {
        return out -> new FormulaWalk(out, numerals, words, true).write(term);
    }

    private Consumer<Notation> result(Term term) {
        return out -> {
            out.number(numerals.exact(term));
            numerals.inFewDigits(term).ifPresent(few -> {
                out.relation("≈");
                out.number(few);
            });
        };
    }

    /** A root and a statistical function are not exact, and their results do not claim to be. */
    private static String sign(Term definition) {
        return anywhere(definition, Equations::isInexact) ? "≈" : "=";
    }

    private static boolean isInexact(Term term) {
        return term instanceof Applied applied
                && (applied.operation() instanceof RootOperation || applied.operation() instanceof FunctionOperation);
    }

    /** Whether a term or one written out in it will do; works off a list, since a chain of operations may be long. */
    private static boolean anywhere(Term whole, Predicate<Term> wanted) {
        Deque<Term> open = new ArrayDeque<>(List.of(whole));
        while (!open.isEmpty()) {
            Term term = open.pop();
            if (wanted.test(term)) {
                return true;
            }
            if (term instanceof Applied applied) {
                applied.inputs().forEach(open::push);
            }
        }
        return false;
    }
}
