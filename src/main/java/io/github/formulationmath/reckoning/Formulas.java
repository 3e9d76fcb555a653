package io.github.formulationmath.reckoning;

import io.github.formulationmath.document.Expression;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.reckoning.Operation.Arithmetic;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;

/** Terms as formulas: in symbols, or with the numbers put in. */
final class Formulas {

    private final Numerals numerals;
    private final Wording words;

    Formulas(Numerals numerals, Wording words) {
        this.numerals = numerals;
        this.words = words;
    }

    static Expression symbol(Step step) {
        return Expression.symbol(step.symbol().letter(), step.subject().subscript());
    }

    /** Steps are written as their symbols. */
    Expression symbols(Term term) {
        return write(term, false);
    }

    /** Steps are written as their values. */
    Expression numbers(Term term) {
        return write(term, true);
    }

    private Expression write(Term given, boolean numbers) {
        Term term = unwrapped(given);
        if (!(term instanceof Term.Applied applied)) {
            return term instanceof Step step && !numbers ? symbol(step) : numerals.inLine(term);
        }
        Deque<Term.Applied> links = new ArrayDeque<>();
        Term first = term;
        // A chain of sums, or of products and quotients: its left ends are collected in a loop, however long it is.
        while (first instanceof Term.Applied link && level(link) < 3 && level(link) == level(applied)) {
            links.push(link);
            first = unwrapped(link.inputs().get(0));
        }
        if (links.isEmpty()) {
            return enclosed(applied, numbers);
        }
        Expression begun = write(first, numbers);
        return level(applied) == 1 ? sum(begun, links, numbers) : product(begun, links, numbers);
    }

    private Expression sum(Expression first, Deque<Term.Applied> links, boolean numbers) {
        List<Expression> terms = new ArrayList<>(List.of(first));
        for (Term.Applied link : links) {
            UnaryOperator<Expression> sign =
                    link.operation() == Arithmetic.DIFFERENCE ? Expression::minus : UnaryOperator.identity();
            others(link).forEach(input -> terms.add(sign.apply(write(input, numbers))));
        }
        return Expression.sum(terms);
    }

    private Expression product(Expression first, Deque<Term.Applied> links, boolean numbers) {
        Expression all = first;
        for (Term.Applied link : links) {
            Expression other = write(others(link).get(0), numbers);
            all = link.operation() == Arithmetic.QUOTIENT
                    ? Expression.quotient(all, other)
                    : Expression.product(List.of(all, other));
        }
        return all;
    }

    private static List<Term> others(Term.Applied link) {
        return link.inputs().subList(1, link.inputs().size());
    }

    private Expression enclosed(Term.Applied applied, boolean numbers) {
        Term input = applied.inputs().get(0);
        if (applied.operation() == Arithmetic.ABSOLUTE) {
            return Expression.absolute(write(input, numbers));
        }
        if (applied.operation() instanceof Operation.Root) {
            return Expression.root(write(input, numbers));
        }
        if (applied.operation() instanceof Operation.Rounded rounding) {
            return Expression.call(
                    words.say("rounding.call"), List.of(write(input, numbers)), rounding(rounding.rounding(), input));
        }
        return Expression.call(
                name(applied.operation()),
                applied.inputs().stream().map(each -> write(each, numbers)).toList(),
                "");
    }

    private static String name(Operation operation) {
        if (operation instanceof Operation.Statistic function) {
            return function.function().symbol();
        }
        if (operation instanceof Operation.Power) {
            return "antilog";
        }
        return operation == Arithmetic.MINIMUM ? "min" : "max";
    }

    /** The grid and the mode of a rounding, as it acts on one value. */
    private String rounding(Rounding rounding, Term input) {
        Ratio step = rounding.stepFor(input.value());
        String grid = numerals.gridStep(step, input).replace(' ', '\u00A0');
        String mode = words.say("rounding.mode." + rounding.mode().name().toLowerCase(Locale.ROOT));
        if (rounding.stepFor(Ratio.ONE).equals(rounding.stepFor(Ratio.of(10)))) {
            return words.say("rounding.grid", grid, mode);
        }
        String finest = rounding.stepFor(Ratio.ONE).reciprocal().numerator().toString();
        return words.say("rounding.digits", numerals.text(Ratio.of(finest.length())), grid, mode);
    }

    /** 1 for sums, 2 for products and quotients, 3 for what holds together by itself. */
    private static int level(Term.Applied applied) {
        if (applied.operation() == Arithmetic.SUM || applied.operation() == Arithmetic.DIFFERENCE) {
            return 1;
        }
        return applied.operation() == Arithmetic.PRODUCT || applied.operation() == Arithmetic.QUOTIENT ? 2 : 3;
    }

    /** A sum of one term and a rounding that rounds nothing are not written; a sum of none is 0. */
    static Term unwrapped(Term given) {
        Term term = given;
        while (term instanceof Term.Applied applied) {
            if (applied.operation() == Arithmetic.SUM && applied.inputs().isEmpty()) {
                return new Term.Literal(applied.value());
            }
            boolean single =
                    applied.operation() == Arithmetic.SUM && applied.inputs().size() == 1;
            boolean unrounded = applied.operation() instanceof Operation.Rounded r
                    && r.rounding().stepFor(applied.value()).isZero();
            if (!single && !unrounded) {
                return term;
            }
            term = applied.inputs().get(0);
        }
        return term;
    }
}
