package io.github.formulationmath.document;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Formulas in MathML Core, which browsers show without a script and screen readers speak. A short line is one formula
 * with drawn fractions. A long one is a row of small formulas, one up to each sign, since browsers break text between
 * formulas but never inside one.
 */
final class MathMl extends Notation {

    private static final int LONG = 40;

    /** At least 25 mm wide when printed, also in a fraction, which is set in smaller type. */
    private static final String BLANK = "<mtext>" + "_".repeat(24) + "</mtext>";

    private final StringBuilder math = new StringBuilder("<math>");
    private final boolean isLong;
    private boolean started;
    private int roots;

    private MathMl(boolean isLong) {
        super(!isLong);
        this.isLong = isLong;
    }

    static String of(Expression formula) {
        return write(formula, Linear.width(formula) > LONG);
    }

    /** For a narrow column: what comes after ≈ may go below. */
    static String narrow(Expression formula) {
        return write(formula, true);
    }

    private static String write(Expression formula, boolean isLong) {
        MathMl mathMl = new MathMl(isLong);
        mathMl.write(formula);
        return mathMl.math.append("</math>").toString();
    }

    @Override
    void symbol(ExpressionNode.Symbol symbol) {
        String letter = "<mi>" + HtmlWriter.escaped(symbol.base()) + "</mi>";
        math.append(symbol.below().isEmpty() ? letter : "<msub>" + letter + below(symbol.below()) + "</msub>");
        started = true;
    }

    private static String below(List<String> texts) {
        String all = texts.stream().map(MathMl::below).collect(Collectors.joining("<mo>,</mo>"));
        return texts.size() == 1 ? all : "<mrow>" + all + "</mrow>";
    }

    private static String below(String text) {
        boolean number = text.chars().allMatch(c -> c >= '0' && c <= '9');
        return number ? "<mn>" + text + "</mn>" : "<mtext>" + HtmlWriter.escaped(text) + "</mtext>";
    }

    @Override
    void number(ExpressionNode.Numeral number) {
        math.append(number.isBold() ? "<mrow class=\"filled\">" : "<mrow>");
        math.append(number.isNegative() ? "<mo form=\"prefix\">−</mo>" : "");
        String digits = number.isBlank() ? BLANK : "<mn>" + HtmlWriter.escaped(number.digits()) + "</mn>";
        math.append(
                number.isFraction()
                        ? "<mfrac>" + digits + "<mn>" + HtmlWriter.escaped(number.below()) + "</mn></mfrac>"
                        : digits);
        if (!number.unit().isEmpty()) {
            math.append("<mtext>\u00A0")
                    .append(HtmlWriter.escaped(number.unit()))
                    .append("</mtext>");
        }
        math.append("</mrow>");
        started = true;
    }

    @Override
    void operator(String sign) {
        carryOver();
        math.append("<mo form=\"infix\">").append(sign).append("</mo>");
    }

    @Override
    void relation(String sign) {
        if (started) {
            carryOver();
        }
        math.append("<mo form=\"infix\">").append(HtmlWriter.escaped(sign)).append("</mo>");
        started = true;
    }

    private void carryOver() {
        math.append(isLong && roots == 0 ? "</math><wbr/><math>" : "");
    }

    @Override
    void open(String name, char bracket) {
        math.append(name.isEmpty() ? "" : "<mi>" + HtmlWriter.escaped(name) + "</mi>");
        math.append(isLong ? "<mo form=\"prefix\" stretchy=\"false\">" : "<mrow><mo form=\"prefix\">");
        math.append(bracket).append("</mo>");
    }

    @Override
    void close(char bracket) {
        math.append(isLong ? "<mo form=\"postfix\" stretchy=\"false\">" : "<mo form=\"postfix\">");
        math.append(bracket).append("</mo>").append(isLong ? "" : "</mrow>");
    }

    @Override
    void separator() {
        math.append("<mo lspace=\"0em\" rspace=\"0.35em\">;</mo>");
        carryOver();
    }

    @Override
    void words(String words) {
        List<String> parts = isLong ? List.of(words.split(" ", -1)) : List.of(words);
        for (String part : parts) {
            if (isLong) {
                carryOver();
            }
            math.append("<mtext>\u00A0").append(HtmlWriter.escaped(part)).append("</mtext>");
        }
    }

    @Override
    void root(Expression inside) {
        math.append("<msqrt>");
        roots++;
        write(inside);
        math.append("</msqrt>");
        roots--;
    }

    @Override
    void fraction(Expression above, Expression below) {
        math.append("<mfrac><mrow>");
        write(above);
        math.append("</mrow><mrow>");
        write(below);
        math.append("</mrow></mfrac>");
    }
}
