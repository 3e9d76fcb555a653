package io.github.formulationmath.document;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;

/**
 * Writes a formula from left to right, with as few brackets as a careful reader needs. A format says how each mark looks.
 */
abstract class Notation {

    /** What stands to the left of a part; decides its brackets. */
    private enum Place {
        /** Nothing: the start of the formula or of a bracket. */
        START,
        AFTER_PLUS,
        AFTER_MINUS,
        FIRST_FACTOR,
        FACTOR,
        DIVISOR
    }

    /** Whether a quotient is drawn with a line and needs no brackets. */
    private final boolean drawsFractions;

    Notation(boolean drawsFractions) {
        this.drawsFractions = drawsFractions;
    }

    abstract void symbol(ExpressionNode.Symbol symbol);

    abstract void number(ExpressionNode.Numeral number);

    /** One of + − · / between two operands. */
    abstract void operator(String sign);

    /** One of = ≈ &lt; ≤ ≥ &gt;. */
    abstract void relation(String sign);

    /** The name of a function, mostly empty, and one of ( and |. */
    abstract void open(String name, char bracket);

    /** One of ) and |. */
    abstract void close(char bracket);

    /** Between two arguments. */
    abstract void separator();

    /** Words behind the last argument. */
    abstract void words(String words);

    abstract void root(Expression inside);

    /** Asked for only where fractions are drawn. */
    void fraction(Expression above, Expression below) {
        throw new AssertionError("this notation draws no fractions");
    }

    final void write(Expression expression) {
        write(expression, Place.START);
    }

    private void write(Expression expression, Place place) {
        if (needsBrackets(expression, place)) {
            open("", '(');
            inside(expression, Place.START);
            close(')');
        } else {
            inside(expression, place);
        }
    }

    private void inside(Expression expression, Place place) {
        if (expression instanceof ExpressionNode.Numeral number) {
            number(number);
        } else if (expression instanceof ExpressionNode.Symbol symbol) {
            symbol(symbol);
        } else if (expression instanceof ExpressionNode.Sum sum) {
            sum(sum, place);
        } else if (level(expression) == 2) {
            product(expression);
        } else if (expression instanceof ExpressionNode.Relation relation) {
            relation(relation);
        } else {
            enclosed(expression);
        }
    }

    /** What needs no brackets, because its own marks enclose it. */
    private void enclosed(Expression expression) {
        if (expression instanceof ExpressionNode.Quotient quotient) {
            fraction(quotient.above(), quotient.below());
        } else if (expression instanceof ExpressionNode.Root root) {
            root(root.inside());
        } else if (expression instanceof ExpressionNode.Absolute absolute) {
            open("", '|');
            write(absolute.inside());
            close('|');
        } else if (expression instanceof ExpressionNode.Call call) {
            call(call);
        } else if (expression instanceof ExpressionNode.Minus minus) {
            operator("−");
            write(minus.term(), Place.AFTER_MINUS);
        }
    }

    private void relation(ExpressionNode.Relation relation) {
        if (relation.left() != null) {
            write(relation.left());
        }
        relation(relation.sign());
        write(relation.right());
    }

    private void call(ExpressionNode.Call call) {
        open(call.name(), '(');
        for (int i = 0; i < call.arguments().size(); i++) {
            if (i > 0) {
                separator();
            }
            write(call.arguments().get(i));
        }
        if (!call.words().isEmpty()) {
            words(call.words());
        }
        close(')');
    }

    private void sum(ExpressionNode.Sum sum, Place place) {
        write(sum.terms().get(0), place);
        for (Expression term : sum.terms().subList(1, sum.terms().size())) {
            boolean minus = term instanceof ExpressionNode.Minus;
            operator(minus ? "−" : "+");
            write(
                    term instanceof ExpressionNode.Minus m ? m.term() : term,
                    minus ? Place.AFTER_MINUS : Place.AFTER_PLUS);
        }
    }

    /** a · b / c: the left ends are collected in a loop, however long the chain. */
    private void product(Expression last) {
        Deque<Expression> links = new ArrayDeque<>();
        Expression first = last;
        while (level(first) == 2) {
            links.push(first);
            first = first instanceof ExpressionNode.Product p
                    ? p.factors().get(0)
                    : ((ExpressionNode.Quotient) first).above();
        }
        write(first, Place.FIRST_FACTOR);
        for (Expression link : links) {
            if (link instanceof ExpressionNode.Quotient quotient) {
                operator("/");
                write(quotient.below(), Place.DIVISOR);
            } else if (link instanceof ExpressionNode.Product product) {
                List<Expression> factors = product.factors();
                for (Expression factor : factors.subList(1, factors.size())) {
                    operator("·");
                    write(factor, Place.FACTOR);
                }
            }
        }
    }

    /** 0 for relations, 1 for sums, 2 for products, 3 for what holds together by itself. */
    private int level(Expression expression) {
        if (expression instanceof ExpressionNode.Sum || expression instanceof ExpressionNode.Minus) {
            return 1;
        }
        boolean division = expression instanceof ExpressionNode.Quotient && !drawsFractions;
        return expression instanceof ExpressionNode.Product || division ? 2 : 3;
    }

    private boolean needsBrackets(Expression expression, Place place) {
        if (expression instanceof ExpressionNode.Numeral number) {
            return place != Place.START && numberNeedsBrackets(number, place);
        }
        return switch (place) {
            case START, AFTER_PLUS -> false;
            case AFTER_MINUS, FIRST_FACTOR -> level(expression) == 1;
            case FACTOR ->
                level(expression) == 1 || expression instanceof ExpressionNode.Quotient && level(expression) == 2;
            case DIVISOR -> level(expression) < 3;
        };
    }

    private boolean numberNeedsBrackets(ExpressionNode.Numeral number, Place place) {
        if (number.isNegative()) {
            return true;
        }
        boolean product = place == Place.FIRST_FACTOR || place == Place.FACTOR || place == Place.DIVISOR;
        boolean slash =
                number.isFraction() || place == Place.DIVISOR && number.unit().indexOf('/') >= 0;
        return !drawsFractions && product && slash;
    }
}
