package io.github.formulationmath.working;

/**
 * Formulas in MathML Core, which browsers show without a script and screen readers speak. A short line is one formula
 * with drawn fractions. A long one is a row of small formulas, one up to each sign, since browsers break text between
 * formulas but never inside one.
 */
final class MathMlNotation implements Notation {

    private static final int LONG = 40;

    /** At least 25 mm wide when printed, also in a fraction, which is set in smaller type. */
    private static final String BLANK = "<mtext>" + "_".repeat(24) + "</mtext>";

    private final StringBuilder out = new StringBuilder();
    private final boolean isLong;
    private boolean started;
    private int roots;

    private MathMlNotation(boolean isLong) {
        this.isLong = isLong;
    }

    static String write(Line line) {
        return write(line, isLong(line));
    }

    /** A value for a narrow column: what comes after ≈ may go below. */
    static String writeNarrow(Line line) {
        return write(line, true);
    }

    /** A symbol with its index. */
    static String write(Step step) {
        MathMlNotation notation = new MathMlNotation(false);
        notation.label(step);
        return "<math>" + notation.out + "</math>";
    }

    private static String write(Line line, boolean isLong) {
        MathMlNotation notation = new MathMlNotation(isLong);
        notation.out.append("<math>");
        line.writeTo(notation);
        return notation.out.append("</math>").toString();
    }

    private static boolean isLong(Line line) {
        return Columns.width(LinearNotation.write(line::writeTo)) > LONG;
    }

    @Override
    public boolean drawsFractions() {
        return !isLong;
    }

    @Override
    public void label(Step step) {
        String subscript = Words.clean(step.subject().subscript());
        String letter = "<mi>" + Escape.html(Words.clean(step.symbol().letter())) + "</mi>";
        out.append(subscript.isEmpty() ? letter : "<msub>" + letter + subscript(subscript) + "</msub>");
        started = true;
    }

    private static String subscript(String text) {
        boolean number = text.chars().allMatch(c -> c >= '0' && c <= '9');
        return number ? "<mn>" + text + "</mn>" : "<mtext>" + Escape.html(text) + "</mtext>";
    }

    @Override
    public void number(Numeral numeral) {
        out.append(numeral.bold() ? "<mrow class=\"filled\">" : "<mrow>");
        out.append(numeral.negative() ? "<mo form=\"prefix\">−</mo>" : "");
        String digits = numeral.isBlank() ? BLANK : "<mn>" + Escape.html(numeral.digits()) + "</mn>";
        if (numeral.isFraction()) {
            out.append("<mfrac>")
                    .append(digits)
                    .append("<mn>")
                    .append(numeral.below())
                    .append("</mn></mfrac>");
        } else {
            out.append(digits);
        }
        if (!numeral.unit().isEmpty()) {
            out.append("<mtext>\u00A0").append(Escape.html(numeral.unit())).append("</mtext>");
        }
        out.append("</mrow>");
        started = true;
    }

    @Override
    public void operator(String sign) {
        carryOver();
        out.append("<mo form=\"infix\">").append(sign).append("</mo>");
    }

    @Override
    public void relation(String sign) {
        if (started) {
            carryOver();
        }
        out.append("<mo form=\"infix\">").append(Escape.html(sign)).append("</mo>");
        started = true;
    }

    private void carryOver() {
        out.append(isLong && roots == 0 ? "</math><wbr/><math>" : "");
    }

    private void open(String bracket) {
        out.append(isLong ? "<mo form=\"prefix\" stretchy=\"false\">" : "<mrow><mo form=\"prefix\">");
        out.append(bracket).append("</mo>");
    }

    private void close(String bracket) {
        out.append(isLong ? "<mo form=\"postfix\" stretchy=\"false\">" : "<mo form=\"postfix\">");
        out.append(bracket).append("</mo>").append(isLong ? "" : "</mrow>");
    }

    @Override
    public void openBracket() {
        open("(");
    }

    @Override
    public void closeBracket() {
        close(")");
    }

    @Override
    public void openBars() {
        open("|");
    }

    @Override
    public void closeBars() {
        close("|");
    }

    @Override
    public void openRoot() {
        out.append("<msqrt>");
        roots++;
    }

    @Override
    public void closeRoot() {
        out.append("</msqrt>");
        roots--;
    }

    @Override
    public void openFraction() {
        out.append("<mfrac><mrow>");
    }

    @Override
    public void fractionLine() {
        out.append("</mrow><mrow>");
    }

    @Override
    public void closeFraction() {
        out.append("</mrow></mfrac>");
    }

    @Override
    public void openCall(String name) {
        out.append("<mi>").append(Escape.html(name)).append("</mi>");
        open("(");
    }

    @Override
    public void separator() {
        out.append("<mo lspace=\"0em\" rspace=\"0.35em\">;</mo>");
        carryOver();
    }

    @Override
    public void closeCall() {
        close(")");
    }

    @Override
    public void closeRounding(String words) {
        if (isLong) {
            for (String word : words.split(" ", -1)) {
                carryOver();
                out.append("<mtext>\u00A0").append(Escape.html(word)).append("</mtext>");
            }
        } else {
            out.append("<mtext>\u00A0").append(Escape.html(words)).append("</mtext>");
        }
        close(")");
    }
}
