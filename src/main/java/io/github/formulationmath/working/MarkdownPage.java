package io.github.formulationmath.working;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Markdown as CommonMark describes it, with the tables of GitHub. Arithmetic stands in fenced blocks, lined up. */
final class MarkdownPage extends RunningPage {

    private static final Pattern BACKTICKS = Pattern.compile("`+");

    private boolean withOrigin;

    MarkdownPage(int level) {
        super(level);
    }

    @Override
    public void beginGivens(String heading, List<String> columns) {
        super.beginGivens(heading, columns);
        withOrigin = !columns.get(2).isEmpty();
        openTable(out, withOrigin ? columns : columns.subList(0, 2));
    }

    @Override
    public void given(Line value, String meaning, String origin) {
        String written = LinearNotation.write(value::writeTo).replace(LinearNotation.BREAK, ' ');
        row(out, withOrigin ? List.of(written, meaning, origin) : List.of(written, meaning));
    }

    /** The head of a table. */
    static void openTable(StringBuilder out, List<String> columns) {
        row(out, columns);
        out.append("| --- ".repeat(columns.size())).append("|\n");
    }

    static void row(StringBuilder out, List<String> cells) {
        cells.forEach(cell -> out.append("| ").append(Escape.markdown(cell)).append(' '));
        out.append("|\n");
    }

    @Override
    public void endGivens() {
        out.append('\n');
    }

    @Override
    public void note(String heading, String words) {
        out.append("> ");
        paragraph(heading + ": " + words);
    }

    @Override
    public void exercise(Step step, String meaning, List<Choice> choices) {
        paragraph(Words.clean(step.label()) + ", " + meaning);
        boolean inRow = choices.stream().allMatch(choice -> choice.verdict().isEmpty());
        String before = inRow ? "" : "- ";
        String between = inRow ? " &emsp; " : "\n- ";
        out.append(choices.stream().map(MarkdownPage::choice).collect(Collectors.joining(between, before, "\n\n")));
    }

    private static String choice(Choice choice) {
        String answer = Escape.markdown(choice.answer());
        return (choice.right() ? "**" + answer + "**" : answer) + Escape.markdown(choice.comment());
    }

    @Override
    public String text() {
        out.setLength(out.length() - 1);
        return out.toString();
    }

    @Override
    void heading(int depth, String words) {
        out.append("#".repeat(depth)).append(' ').append(Escape.markdown(words)).append("\n\n");
    }

    @Override
    void paragraph(String words) {
        out.append(Escape.markdown(words.strip())).append("\n\n");
    }

    /** The fence is longer than any row of backticks inside. */
    @Override
    void equations(List<Line> lines) {
        String content = TextPage.equations("", lines);
        Matcher backticks = BACKTICKS.matcher(content);
        int longest = 2;
        while (backticks.find()) {
            longest = Math.max(longest, backticks.end() - backticks.start());
        }
        String fence = "`".repeat(longest + 1);
        out.append(fence).append("text\n").append(content).append(fence).append("\n\n");
    }
}
