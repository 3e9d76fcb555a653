package io.github.formulationmath.working;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Markdown as CommonMark describes it, with the tables of GitHub. Arithmetic stands in fenced blocks, lined up. */
final class MarkdownPage implements Page {

    private static final Pattern BACKTICKS = Pattern.compile("`+");

    private final StringBuilder out = new StringBuilder();
    private final int level;
    private boolean withOrigin;

    MarkdownPage(int level) {
        this.level = level;
    }

    @Override
    public void question(String words) {
        heading(level, words);
    }

    @Override
    public void beginGivens(String heading, List<String> columns) {
        heading(level + 1, heading);
        withOrigin = !columns.get(2).isEmpty();
        List<String> shown = withOrigin ? columns : columns.subList(0, 2);
        shown.forEach(column -> out.append("| ").append(Escape.markdown(column)).append(' '));
        out.append("|\n").append("| --- ".repeat(shown.size())).append("|\n");
    }

    @Override
    public void given(Line value, String meaning, String origin) {
        cell(LinearNotation.write(value::writeTo).replace(LinearNotation.BREAK, ' '));
        cell(meaning);
        if (withOrigin) {
            cell(origin);
        }
        out.append("|\n");
    }

    private void cell(String text) {
        out.append("| ").append(Escape.markdown(text)).append(' ');
    }

    @Override
    public void endGivens() {
        out.append('\n');
    }

    @Override
    public void beginSteps(String heading) {
        heading(level + 1, heading);
    }

    @Override
    public void step(String meaning, List<Line> lines, String remark) {
        paragraph(meaning);
        fence(lines);
        if (!remark.isEmpty()) {
            paragraph(remark);
        }
    }

    @Override
    public void decision(String heading, List<Line> lines) {
        paragraph(heading);
        fence(lines);
    }

    @Override
    public void note(String heading, String words) {
        out.append("> ");
        paragraph(heading + ": " + words);
    }

    @Override
    public void endSteps() {
        // The next heading ends them.
    }

    @Override
    public void answer(String heading, String meaning, List<Line> lines) {
        heading(level + 1, heading);
        if (!meaning.isEmpty()) {
            paragraph(meaning);
        }
        fence(lines);
    }

    @Override
    public void beginExercises(String heading) {
        heading(level + 1, heading);
    }

    @Override
    public void exercise(String words, List<String> choices) {
        paragraph(words);
        choices.forEach(
                choice -> out.append("- ").append(Escape.markdown(choice)).append('\n'));
        out.append('\n');
    }

    @Override
    public void endExercises() {
        // Nothing follows.
    }

    @Override
    public String text() {
        out.setLength(out.length() - 1);
        return out.toString();
    }

    private void heading(int depth, String words) {
        out.append("#".repeat(depth)).append(' ').append(Escape.markdown(words)).append("\n\n");
    }

    private void paragraph(String words) {
        out.append(Escape.markdown(words.strip())).append("\n\n");
    }

    /** The fence is longer than any row of backticks inside. */
    private void fence(List<Line> lines) {
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
