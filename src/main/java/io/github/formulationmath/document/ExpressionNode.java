package io.github.formulationmath.document;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The kinds of expressions, as the writers see them. */
sealed interface ExpressionNode extends Expression {

    record Numeral(boolean isNegative, String digits, String below, String unit, boolean isBold)
            implements ExpressionNode {

        /** A line to write on: in type of ten characters to the inch it is 30 mm wide. */
        static final String LINE = "_".repeat(12);

        public Numeral {
            digits = Clean.text(digits, "digits");
            below = Clean.text(below, "below");
            unit = Clean.text(unit, "unit");
        }

        boolean isBlank() {
            return digits.equals(LINE);
        }

        boolean isFraction() {
            return !below.isEmpty();
        }

        /** Along the line: {@code −400/3 g}. */
        String text() {
            String number = (isNegative ? "−" : "") + digits + (isFraction() ? "/" + below : "");
            return unit.isEmpty() ? number : number + " " + unit;
        }
    }

    record Symbol(String letter, String subscript) implements ExpressionNode {
        public Symbol {
            letter = Clean.text(letter, "letter");
            subscript = Clean.text(subscript, "subscript");
        }

        /** What stands on the line: the letter without the mark behind its underscore. */
        String base() {
            int mark = letter.indexOf('_');
            return mark > 0 ? letter.substring(0, mark) : letter;
        }

        /** What stands below, in order: the mark of the letter, then the index. */
        List<String> below() {
            String mark = base().length() < letter.length() ? letter.substring(base().length() + 1) : "";
            return Stream.of(mark, subscript).filter(text -> !text.isEmpty()).toList();
        }

        /** Along the line: {@code φ_hi,3}. */
        String text() {
            return below().isEmpty() ? letter : base() + "_" + String.join(",", below());
        }
    }

    record Sum(List<Expression> terms) implements ExpressionNode {
        public Sum {
            terms = atLeastOne("terms", terms);
        }
    }

    record Minus(Expression term) implements ExpressionNode {
        public Minus {
            Objects.requireNonNull(term, "term");
        }
    }

    record Product(List<Expression> factors) implements ExpressionNode {
        public Product {
            factors = atLeastOne("factors", factors);
        }
    }

    record Quotient(Expression above, Expression below) implements ExpressionNode {
        public Quotient {
            Objects.requireNonNull(above, "above");
            Objects.requireNonNull(below, "below");
        }
    }

    record Absolute(Expression inside) implements ExpressionNode {
        public Absolute {
            Objects.requireNonNull(inside, "inside");
        }
    }

    record Root(Expression inside) implements ExpressionNode {
        public Root {
            Objects.requireNonNull(inside, "inside");
        }
    }

    record Call(String name, List<Expression> arguments, String words) implements ExpressionNode {
        public Call {
            name = Clean.text(name, "name");
            words = Clean.text(words, "words");
            arguments = atLeastOne("arguments", arguments);
        }
    }

    /** Without a left side it goes on from the line above. */
    record Relation(@Nullable Expression left, String sign, Expression right, String outcome)
            implements ExpressionNode {
        public Relation {
            Objects.requireNonNull(sign, "sign");
            Objects.requireNonNull(right, "right");
            outcome = Clean.text(outcome, "outcome");
        }
    }

    private static List<Expression> atLeastOne(String name, List<Expression> list) {
        if (Objects.requireNonNull(list, name).isEmpty()) {
            throw new IllegalArgumentException(name + " is empty: give at least one");
        }
        return List.copyOf(list);
    }
}
