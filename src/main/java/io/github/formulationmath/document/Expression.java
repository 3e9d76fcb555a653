package io.github.formulationmath.document;

import java.util.List;
import java.util.Objects;

/**
 * A formula: a tree of numbers with their units, symbols, operations and relations, in no format yet. A writer sets the
 * brackets that a careful reader needs.
 *
 * <p>Example: {@code relation(symbol("m", "3"), "=", product(List.of(number("400", "g"), symbol("w", "3"))))}, printed as
 * {@code m_3 = 400 g · w_3}.
 *
 * <p>Immutable and thread-safe; two are equal if they are built alike.
 */
public sealed interface Expression permits ExpressionNode {

    /**
     * A number as it is to be printed.
     *
     * @param digits a decimal; a minus before it is {@code -} or {@code −}
     * @param unit its unit; empty for none
     * @return the number
     */
    static Expression number(String digits, String unit) {
        return fraction(Objects.requireNonNull(digits, "digits"), "", unit);
    }

    /**
     * A fraction of two whole numbers.
     *
     * @param above what stands above the line; a minus before it is {@code -} or {@code −}
     * @param below what stands below it; empty for a plain number
     * @param unit the unit; empty for none
     * @return the number
     */
    static Expression fraction(String above, String below, String unit) {
        boolean negative = Objects.requireNonNull(above, "above").startsWith("-") || above.startsWith("−");
        return new ExpressionNode.Numeral(negative, negative ? above.substring(1) : above, below, unit, false);
    }

    /**
     * A line to write on, where a number was left out.
     *
     * @param unit the unit behind it; empty for none
     * @return the blank
     */
    static Expression blank(String unit) {
        return new ExpressionNode.Numeral(false, ExpressionNode.Numeral.LINE, "", unit, false);
    }

    /**
     * The same number in bold type, where the format has it.
     *
     * @return the number; what is no number stays as it is
     */
    default Expression bold() {
        return this instanceof ExpressionNode.Numeral n
                ? new ExpressionNode.Numeral(n.isNegative(), n.digits(), n.below(), n.unit(), true)
                : this;
    }

    /**
     * A letter or word that stands for a quantity.
     *
     * @param letter the letter
     * @param subscript the index below it; empty for none
     * @return the symbol
     */
    static Expression symbol(String letter, String subscript) {
        return new ExpressionNode.Symbol(letter, subscript);
    }

    /**
     * a + b − c …
     *
     * @param terms the terms, at least one; one to be taken away is {@link #minus}
     * @return the sum
     */
    static Expression sum(List<Expression> terms) {
        return new ExpressionNode.Sum(terms);
    }

    /**
     * A term to be taken away.
     *
     * @param term the term
     * @return the term with a minus, for {@link #sum}
     */
    static Expression minus(Expression term) {
        return new ExpressionNode.Minus(term);
    }

    /**
     * a · b …
     *
     * @param factors the factors, at least one
     * @return the product
     */
    static Expression product(List<Expression> factors) {
        return new ExpressionNode.Product(factors);
    }

    /**
     * a / b, with a line between where there is room.
     *
     * @param above the dividend
     * @param below the divisor
     * @return the quotient
     */
    static Expression quotient(Expression above, Expression below) {
        return new ExpressionNode.Quotient(above, below);
    }

    /**
     * |a|.
     *
     * @param inside the number of which the sign does not matter
     * @return its size
     */
    static Expression absolute(Expression inside) {
        return new ExpressionNode.Absolute(inside);
    }

    /**
     * √a.
     *
     * @param inside the number below the sign
     * @return the root
     */
    static Expression root(Expression inside) {
        return new ExpressionNode.Root(inside);
    }

    /**
     * A function of some arguments.
     *
     * @param name its name
     * @param arguments the arguments, at least one
     * @param words what is said behind the last argument, as the grid of a rounding; empty for nothing. A no-break space
     *     keeps a number and its unit together
     * @return the call
     */
    static Expression call(String name, List<Expression> arguments, String words) {
        return new ExpressionNode.Call(name, arguments, words);
    }

    /**
     * A line of arithmetic: left, sign, right.
     *
     * @param left what stands before the sign
     * @param sign one of = ≈ &lt; ≤ ≥ &gt;
     * @param right what stands after the sign; may be a relation that goes on from there
     * @return the line
     */
    static Expression relation(Expression left, String sign, Expression right) {
        return new ExpressionNode.Relation(Objects.requireNonNull(left, "left"), sign, right, "");
    }

    /**
     * A line that goes on from the one above: sign, right.
     *
     * @param sign one of = ≈ &lt; ≤ ≥ &gt;
     * @param right what stands after the sign
     * @return the line
     */
    static Expression continued(String sign, Expression right) {
        return new ExpressionNode.Relation(null, sign, right, "");
    }

    /**
     * The same relation with words behind it that say whether it holds.
     *
     * @param outcome the words
     * @return the relation; what is no relation stays as it is
     */
    default Expression judged(String outcome) {
        Objects.requireNonNull(outcome, "outcome");
        return this instanceof ExpressionNode.Relation r
                ? new ExpressionNode.Relation(r.left(), r.sign(), r.right(), outcome)
                : this;
    }
}
