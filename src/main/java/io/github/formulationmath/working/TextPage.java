package io.github.formulationmath.working;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Plain text of at most 80 columns. */
final class TextPage extends RunningPage {

    private static final String INDENT = "  ";
    private static final int WIDEST_VALUE = 30;
    private static final int LONGEST_ROW = 76;

    private record Given(String value, String words) {}

    private final List<Given> givens = new ArrayList<>();

    TextPage() {
        super(1);
    }

    @Override
    public void given(Line value, String meaning, String origin) {
        String text = LinearNotation.write(value::writeTo);
        givens.add(new Given(text, origin.isEmpty() ? meaning : meaning + "; " + origin));
    }

    /** One column for the values, as wide as the widest that is not too wide, and one for the words. */
    @Override
    public void endGivens() {
        int widest = givens.stream()
                .mapToInt(given -> Columns.width(given.value()))
                .filter(width -> width <= WIDEST_VALUE)
                .max()
                .orElse(0);
        for (Given given : givens) {
            given(given, widest);
        }
        givens.clear();
    }

    private void given(Given given, int widest) {
        String margin = INDENT + " ".repeat(widest) + INDENT;
        int width = Columns.width(given.value());
        if (width <= widest) {
            String value = given.value().replace(LinearNotation.BREAK, ' ');
            Columns.fill(out, INDENT + value + " ".repeat(widest - width) + INDENT, margin, given.words(), ' ');
        } else {
            Columns.fill(out, INDENT, INDENT + INDENT + INDENT, given.value(), LinearNotation.BREAK);
            Columns.fill(out, margin, margin, given.words(), ' ');
        }
    }

    @Override
    public void note(String heading, String words) {
        Columns.fill(out, INDENT + heading + ": ", INDENT + INDENT, words, ' ');
    }

    @Override
    public void exercise(Step step, String meaning, List<Choice> choices) {
        paragraph(Words.clean(step.label()) + ", " + meaning);
        boolean inRow = choices.stream().allMatch(choice -> choice.verdict().isEmpty());
        String row = choices.stream().map(Choice::answer).collect(Collectors.joining("    "));
        if (inRow && Columns.width(row) <= LONGEST_ROW) {
            out.append(INDENT + INDENT).append(row).append('\n');
            return;
        }
        choices.forEach(choice ->
                Columns.fill(out, INDENT + INDENT, INDENT + INDENT + INDENT, choice.answer() + choice.comment(), ' '));
    }

    @Override
    public void aside(String words) {
        out.append('\n');
        Columns.fill(out, "", "", words, ' ');
    }

    @Override
    public String text() {
        return out.toString();
    }

    /** A blank line stands above every heading but the first. */
    @Override
    void heading(int depth, String words) {
        out.append(out.isEmpty() ? "" : "\n");
        Columns.fill(out, "", "", words, ' ');
    }

    @Override
    void paragraph(String words) {
        Columns.fill(out, INDENT, INDENT, words, ' ');
    }

    @Override
    void remark(String words) {
        Columns.fill(out, INDENT + INDENT, INDENT + INDENT + INDENT, words, ' ');
    }

    @Override
    void equations(List<Line> lines) {
        out.append(equations(INDENT + INDENT, lines));
    }

    /** Lines of arithmetic with their equals signs below one another; what is carried over stands further in. */
    static String equations(String indent, List<Line> lines) {
        StringBuilder out = new StringBuilder();
        int sign = 1;
        for (Line line : lines) {
            String text = LinearNotation.write(line::writeTo);
            if (!line.outcome().isEmpty()) {
                text += ":" + LinearNotation.BREAK + line.outcome().replace(' ', LinearNotation.BREAK);
            }
            String margin = indent;
            if (line.continuesLineAbove()) {
                margin += " ".repeat(sign);
            } else {
                int label = text.indexOf(LinearNotation.BREAK + line.sign() + " ");
                sign = label > 0 && label <= WIDEST_VALUE ? Columns.width(text.substring(0, label)) + 1 : 1;
            }
            String rest = indent + " ".repeat(sign + 2);
            Columns.fill(out, margin, rest, text, LinearNotation.BREAK);
        }
        return out.toString();
    }
}
