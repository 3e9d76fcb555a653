package io.github.formulationmath.document;

import java.util.List;

/**
 * Formulas along the line, in plain characters. Where a line may be carried over stands {@link #BREAK}, to be printed as a
 * space or as the beginning of the next line.
 */
final class Linear extends Notation {

    static final char BREAK = '\n';

    /** Keeps a number and its unit on one line. */
    static final char UNBROKEN = '\u00A0';

    /** A left side wider than this does not set the place of the signs below. */
    private static final int WIDEST_LEFT = 30;

    private final StringBuilder out = new StringBuilder();

    private Linear() {
        super(false);
    }

    /** The formula with {@link #BREAK} where it may be carried over. */
    static String breakable(Expression formula) {
        Linear linear = new Linear();
        linear.write(formula);
        return linear.out.toString();
    }

    /** The formula on one line. */
    static String plain(Expression formula) {
        return breakable(formula).replace(BREAK, ' ');
    }

    static int width(Expression formula) {
        return Columns.width(breakable(formula));
    }

    /** Lines of arithmetic with their equals signs below one another; what is carried over stands further in. */
    static String lines(String indent, List<Expression> lines) {
        StringBuilder out = new StringBuilder();
        int sign = 1;
        for (Expression line : lines) {
            String text = breakable(line);
            String margin = indent;
            if (line instanceof ExpressionNode.Relation relation && relation.left() == null) {
                margin += " ".repeat(sign);
            } else {
                int left = line instanceof ExpressionNode.Relation relation
                        ? text.indexOf(BREAK + relation.sign() + " ")
                        : 0;
                sign = left > 0 && left <= WIDEST_LEFT ? Columns.width(text.substring(0, left)) + 1 : 1;
            }
            String outcome = line instanceof ExpressionNode.Relation relation ? relation.outcome() : "";
            text += outcome.isEmpty() ? "" : ":" + BREAK + outcome.replace(' ', BREAK);
            Columns.fill(out, margin, indent + " ".repeat(sign + 2), text, BREAK);
        }
        return out.toString();
    }

    @Override
    void symbol(ExpressionNode.Symbol symbol) {
        out.append(symbol.text());
    }

    @Override
    void number(ExpressionNode.Numeral number) {
        out.append(number.text());
    }

    @Override
    void operator(String sign) {
        out.append(BREAK).append(sign).append(' ');
    }

    @Override
    void relation(String sign) {
        out.append(out.isEmpty() ? "" : BREAK).append(sign).append(' ');
    }

    @Override
    void open(String name, char bracket) {
        out.append(name).append(bracket);
    }

    @Override
    void close(char bracket) {
        out.append(bracket);
    }

    @Override
    void separator() {
        out.append(';').append(BREAK);
    }

    @Override
    void words(String words) {
        out.append(BREAK).append(words.replace(' ', BREAK).replace(UNBROKEN, ' '));
    }

    @Override
    void root(Expression inside) {
        out.append("√(");
        write(inside);
        out.append(')');
    }
}
