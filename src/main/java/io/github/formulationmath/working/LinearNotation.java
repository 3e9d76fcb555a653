package io.github.formulationmath.working;

/**
 * Formulas as people type them: {@code m_3 = w_3 · M}. Before each sign stands a line end instead of a space: there the
 * formula may be broken.
 */
final class LinearNotation implements Notation {

    static final char BREAK = '\n';

    private final StringBuilder out = new StringBuilder();

    static String write(java.util.function.Consumer<Notation> formula) {
        LinearNotation notation = new LinearNotation();
        formula.accept(notation);
        return notation.out.toString();
    }

    @Override
    public boolean drawsFractions() {
        return false;
    }

    @Override
    public void label(Step step) {
        out.append(Words.clean(step.label()));
    }

    @Override
    public void number(Numeral numeral) {
        out.append(Words.plain(numeral));
    }

    @Override
    public void operator(String sign) {
        out.append(BREAK).append(sign).append(' ');
    }

    @Override
    public void relation(String sign) {
        out.append(out.isEmpty() ? "" : BREAK).append(sign).append(' ');
    }

    @Override
    public void openBracket() {
        out.append('(');
    }

    @Override
    public void closeBracket() {
        out.append(')');
    }

    @Override
    public void openBars() {
        out.append('|');
    }

    @Override
    public void closeBars() {
        out.append('|');
    }

    @Override
    public void openRoot() {
        out.append("√(");
    }

    @Override
    public void closeRoot() {
        out.append(')');
    }

    @Override
    public void openFraction() {
        openBracket();
    }

    @Override
    public void fractionLine() {
        operator("/");
    }

    @Override
    public void closeFraction() {
        closeBracket();
    }

    @Override
    public void openCall(String name) {
        out.append(name).append('(');
    }

    @Override
    public void separator() {
        out.append(';').append(BREAK);
    }

    @Override
    public void closeCall() {
        out.append(')');
    }

    @Override
    public void closeRounding(String words) {
        out.append(BREAK)
                .append(words.replace(' ', BREAK).replace(Words.UNBROKEN, ' '))
                .append(')');
    }
}
