package io.github.formulationmath.working;

/**
 * Formulas in LaTeX with amsmath. A short line is built up with fractions and growing brackets. A long one is written
 * along the line and carried over before a sign, since a fraction or a growing bracket cannot be carried over.
 */
final class LatexNotation implements Notation {

    private static final int LONG = 60;
    private static final int OPERAND = 12;
    private static final String ALIGN = " &";

    private final StringBuilder out = new StringBuilder();
    private final boolean isLong;
    private int column;
    private int roots;

    private LatexNotation(boolean isLong) {
        this.isLong = isLong;
    }

    static String write(Line line) {
        LatexNotation notation = new LatexNotation(isLong(line));
        line.writeTo(notation);
        if (!line.outcome().isEmpty()) {
            notation.out
                    .append(" \\quad \\text{")
                    .append(Escape.latex(line.outcome()))
                    .append('}');
        }
        return notation.out.toString();
    }

    /** A symbol with its index, between dollars. */
    static String write(Step step) {
        LatexNotation notation = new LatexNotation(false);
        notation.label(step);
        return "$" + notation.out + "$";
    }

    static boolean isLong(Line line) {
        return Columns.width(LinearNotation.write(line::writeTo)) > LONG;
    }

    @Override
    public boolean drawsFractions() {
        return !isLong;
    }

    @Override
    public void label(Step step) {
        column += step.label().length();
        out.append(letters(Words.clean(step.symbol().letter())));
        String subscript = Words.clean(step.subject().subscript());
        if (!subscript.isEmpty()) {
            out.append("_{").append(letters(subscript)).append('}');
        }
    }

    /** One Latin letter or a number as it is; a word upright. */
    private static String letters(String text) {
        boolean simple = text.length() == 1 && Character.isLetterOrDigit(text.charAt(0)) && text.charAt(0) < 128
                || text.chars().allMatch(c -> c >= '0' && c <= '9');
        return simple ? text : "\\text{" + Escape.latex(text) + "}";
    }

    @Override
    public void number(Numeral numeral) {
        column += Words.plain(numeral).length();
        out.append(numeral.bold() ? "\\boldsymbol{" : "").append(numeral.negative() ? "-" : "");
        if (numeral.isFraction()) {
            out.append("\\tfrac{").append(digits(numeral.digits())).append("}{");
            out.append(digits(numeral.below())).append('}');
        } else {
            out.append(numeral.isBlank() ? "\\underline{\\hspace{25mm}}" : digits(numeral.digits()));
        }
        out.append(numeral.bold() ? "}" : "");
        if (!numeral.unit().isEmpty()) {
            out.append("\\,\\text{").append(Escape.latex(numeral.unit())).append('}');
        }
    }

    /** A comma in braces stands in a number, not between two. */
    private static String digits(String digits) {
        return digits.replace(",", "{,}");
    }

    @Override
    public void operator(String sign) {
        carryOver(OPERAND);
        column += 3;
        out.append(sign.equals("·") ? " \\cdot " : sign.equals("−") ? " - " : " " + sign + " ");
    }

    @Override
    public void relation(String sign) {
        boolean first = out.indexOf(ALIGN) < 0;
        out.append(first ? ALIGN : " ");
        out.append(
                switch (sign) {
                    case "≈" -> "\\approx ";
                    case "≤" -> "\\le ";
                    case "≥" -> "\\ge ";
                    default -> sign + " ";
                });
    }

    private void carryOver(int needed) {
        if (isLong && roots == 0 && column + needed > LONG) {
            out.append("\\\\\n").append(out.indexOf(ALIGN) < 0 ? "" : " &\\qquad {}");
            column = 0;
        }
    }

    @Override
    public void openBracket() {
        out.append(isLong ? "(" : "\\left(");
    }

    @Override
    public void closeBracket() {
        out.append(isLong ? ")" : "\\right)");
    }

    @Override
    public void openBars() {
        out.append(isLong ? "\\lvert " : "\\left\\lvert ");
    }

    @Override
    public void closeBars() {
        out.append(isLong ? "\\rvert " : "\\right\\rvert ");
    }

    @Override
    public void openRoot() {
        out.append("\\sqrt{");
        roots++;
    }

    @Override
    public void closeRoot() {
        out.append('}');
        roots--;
    }

    @Override
    public void openFraction() {
        out.append("\\frac{");
    }

    @Override
    public void fractionLine() {
        out.append("}{");
    }

    @Override
    public void closeFraction() {
        out.append('}');
    }

    @Override
    public void openCall(String name) {
        column += name.length();
        out.append("\\operatorname{\\text{").append(Escape.latex(name)).append("}}");
        openBracket();
    }

    @Override
    public void separator() {
        out.append(';');
        carryOver(OPERAND);
        out.append("\\ ");
    }

    @Override
    public void closeCall() {
        closeBracket();
    }

    @Override
    public void closeRounding(String words) {
        for (String part : words.split("(?<=, )|(?= \\()", -1)) {
            carryOver(part.length());
            column += part.length();
            out.append("\\text{ ").append(Escape.latex(part)).append('}');
        }
        closeBracket();
    }
}
