package io.github.formulationmath.working;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;

/** Walks a term and writes it as a formula, with as few brackets as a careful reader needs. */
final class FormulaWalk {

    /** What stands to the left of a term; decides its brackets. */
    private enum Place {
        /** Nothing: the start of the formula or of a bracket. */
        START,
        AFTER_PLUS,
        AFTER_MINUS,
        FIRST_FACTOR,
        FACTOR,
        DIVISOR
    }

    private final Notation out;
    private final Numerals numerals;
    private final Words words;
    private final boolean numbers;

    /** With {@code numbers}, steps are written as their values; without, as their symbols. */
    FormulaWalk(Notation out, Numerals numerals, Words words, boolean numbers) {
        this.out = out;
        this.numerals = numerals;
        this.words = words;
        this.numbers = numbers;
    }

    void write(Term term) {
        write(term, Place.START);
    }

    private void write(Term given, Place place) {
        Term term = unwrapped(given);
        if (needsBrackets(term, place)) {
            out.openBracket();
            inside(term, Place.START);
            out.closeBracket();
        } else {
            inside(term, place);
        }
    }

    private void inside(Term term, Place place) {
        if (term instanceof Applied applied) {
            operation(applied, place);
        } else if (term instanceof Step step && !numbers) {
            out.label(step);
        } else {
            out.number(numerals.exact(term));
        }
    }

    private void operation(Applied applied, Place place) {
        if (level(applied) < 3) {
            chain(applied, place);
        } else {
            enclosed(applied);
        }
    }

    /** What needs no brackets, because its own marks enclose it. */
    private void enclosed(Applied applied) {
        if (applied.operation() == Arithmetic.QUOTIENT) {
            out.openFraction();
            write(applied.inputs().get(0));
            out.fractionLine();
            write(applied.inputs().get(1));
            out.closeFraction();
        } else if (applied.operation() == Arithmetic.ABSOLUTE) {
            out.openBars();
            write(applied.inputs().get(0));
            out.closeBars();
        } else if (applied.operation() instanceof RootOperation) {
            out.openRoot();
            write(applied.inputs().get(0));
            out.closeRoot();
        } else if (applied.operation() instanceof RoundingOperation rounding) {
            Term input = applied.inputs().get(0);
            out.openCall(words.say("rounding.call"));
            write(input);
            out.closeRounding(words.rounding(rounding, input, numerals));
        } else {
            call(applied);
        }
    }

    private void call(Applied applied) {
        out.openCall(name(applied.operation()));
        for (int i = 0; i < applied.inputs().size(); i++) {
            if (i > 0) {
                out.separator();
            }
            write(applied.inputs().get(i));
        }
        out.closeCall();
    }

    private static String name(Operation operation) {
        if (operation instanceof FunctionOperation function) {
            return Words.clean(function.function().symbol());
        }
        return operation == Arithmetic.MINIMUM ? "min" : "max";
    }

    /** a + b − c or a · b / c: the left ends are collected in a loop, however long the chain. */
    private void chain(Applied last, Place place) {
        Deque<Applied> links = new ArrayDeque<>();
        Term first = last;
        while (first instanceof Applied link && level(link) == level(last)) {
            links.push(link);
            first = unwrapped(link.inputs().get(0));
        }
        write(first, level(last) == 1 ? place : Place.FIRST_FACTOR);
        for (Applied link : links) {
            rest(link);
        }
    }

    private void rest(Applied link) {
        List<Term> inputs = link.inputs();
        for (Term input : inputs.subList(1, inputs.size())) {
            if (link.operation() == Arithmetic.SUM) {
                out.operator("+");
                write(input, Place.AFTER_PLUS);
            } else if (link.operation() == Arithmetic.DIFFERENCE) {
                out.operator("−");
                write(input, Place.AFTER_MINUS);
            } else if (link.operation() == Arithmetic.PRODUCT) {
                out.operator("·");
                write(input, Place.FACTOR);
            } else {
                out.operator("/");
                write(input, Place.DIVISOR);
            }
        }
    }

    /** 1 for sums, 2 for products, 3 for what holds together by itself. */
    private int level(Term term) {
        if (!(term instanceof Applied applied)) {
            return 3;
        }
        if (applied.operation() == Arithmetic.SUM || applied.operation() == Arithmetic.DIFFERENCE) {
            return 1;
        }
        boolean division = applied.operation() == Arithmetic.QUOTIENT && !out.drawsFractions();
        return applied.operation() == Arithmetic.PRODUCT || division ? 2 : 3;
    }

    private boolean needsBrackets(Term term, Place place) {
        if (place == Place.START) {
            return false;
        }
        boolean isNumber = term instanceof Literal || numbers && term instanceof Step;
        if (isNumber) {
            return numberNeedsBrackets(numerals.exact(term), place);
        }
        return switch (place) {
            case START, AFTER_PLUS -> false;
            case AFTER_MINUS, FIRST_FACTOR -> level(term) == 1;
            case FACTOR -> level(term) == 1 || isDivision(term);
            case DIVISOR -> level(term) < 3;
        };
    }

    private boolean isDivision(Term term) {
        return level(term) == 2 && ((Applied) term).operation() == Arithmetic.QUOTIENT;
    }

    private boolean numberNeedsBrackets(Numeral numeral, Place place) {
        if (numeral.negative()) {
            return true;
        }
        boolean product = place == Place.FIRST_FACTOR || place == Place.FACTOR || place == Place.DIVISOR;
        boolean slash =
                numeral.isFraction() || place == Place.DIVISOR && numeral.unit().indexOf('/') >= 0;
        return !out.drawsFractions() && product && slash;
    }

    /** A sum of one term and a rounding that rounds nothing are not written; a sum of none is 0. */
    static Term unwrapped(Term given) {
        Term term = given;
        while (term instanceof Applied applied) {
            if (applied.operation() == Arithmetic.SUM && applied.inputs().isEmpty()) {
                return new Literal(applied.value());
            }
            boolean single =
                    applied.operation() == Arithmetic.SUM && applied.inputs().size() == 1;
            boolean unrounded = applied.operation() instanceof RoundingOperation r
                    && r.rounding().stepFor(applied.value()).isZero();
            if (!single && !unrounded) {
                return term;
            }
            term = applied.inputs().get(0);
        }
        return term;
    }
}
