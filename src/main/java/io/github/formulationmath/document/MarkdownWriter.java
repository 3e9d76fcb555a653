package io.github.formulationmath.document;

import io.github.formulationmath.document.Document.Column;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Markdown as CommonMark describes it, with the tables of GitHub. Arithmetic stands in fenced blocks, lined up. */
final class MarkdownWriter extends PageWriter {

    private static final Pattern BACKTICKS = Pattern.compile("`+");
    private static final Map<Integer, String> ESCAPES = escapes();
    private static final String BOX = "☐\u00A0";

    /** CommonMark lets any ASCII punctuation mark follow a backslash. */
    private static Map<Integer, String> escapes() {
        Map<Integer, String> map = new HashMap<>(HtmlWriter.ESCAPES);
        "\\`*_{}[]()#+-.!|~$:@=\"'^".chars().forEach(c -> map.put(c, "\\" + (char) c));
        return Map.copyOf(map);
    }

    static String escaped(String text) {
        return replaced(text, ESCAPES);
    }

    static Writer writer() {
        return new MarkdownWriter();
    }

    @Override
    void heading(String text, int level) {
        out.append("#".repeat(level)).append(' ');
        paragraph(text);
    }

    @Override
    void paragraph(String text) {
        out.append(escaped(text.strip())).append("\n\n");
    }

    @Override
    void caution(String text) {
        out.append("> **!** ");
        paragraph(text);
    }

    @Override
    void facts(List<Block.Fact> facts) {
        facts.forEach(fact -> out.append("- **")
                .append(escaped(fact.name()))
                .append(":** ")
                .append(escaped(fact.value()))
                .append('\n'));
        out.append('\n');
    }

    @Override
    void table(Block.Table table) {
        row(table.columns().stream().map(Column::name).toList());
        table.columns().forEach(column -> out.append(column.isNumber() ? "| --: " : "| --- "));
        out.append("|\n");
        table.rows().forEach(row -> row(row.cells()));
        out.append('\n');
    }

    private void row(List<String> cells) {
        cells.forEach(cell -> out.append("| ").append(escaped(cell)).append(' '));
        out.append("|\n");
    }

    @Override
    void equations(Block.Equations equations) {
        if (!equations.text().isEmpty()) {
            paragraph(equations.text());
        }
        if (!equations.lines().isEmpty()) {
            fenced(Linear.lines("", equations.lines()));
        }
        if (!equations.remark().isEmpty()) {
            paragraph(equations.remark());
        }
    }

    /** The fence is longer than any row of backticks inside. */
    private void fenced(String content) {
        Matcher backticks = BACKTICKS.matcher(content);
        int longest = 2;
        while (backticks.find()) {
            longest = Math.max(longest, backticks.end() - backticks.start());
        }
        String fence = "`".repeat(longest + 1);
        out.append(fence).append("text\n").append(content).append(fence).append("\n\n");
    }

    @Override
    void note(Block.Note note) {
        out.append("> ");
        paragraph(note.lead() + ": " + note.text());
    }

    @Override
    void lines(List<String> labels) {
        for (String label : labels) {
            paragraph((label.isEmpty() ? "" : label + " ") + ExpressionNode.Numeral.LINE.repeat(3));
        }
    }

    @Override
    void question(Block.Question question) {
        Expression symbol = question.symbol();
        String asked = symbol == null ? question.text() : Linear.plain(symbol) + ", " + question.text();
        if (!asked.isEmpty()) {
            paragraph(asked);
        }
        String box = question.hasBoxes() ? BOX : "";
        String before = question.isInRow() ? "" : "- ";
        String between = question.isInRow() ? " &emsp; " : "\n- ";
        out.append(question.choices().stream()
                .map(choice -> box + choice(choice))
                .collect(Collectors.joining(between, before, "\n\n")));
    }

    private static String choice(Block.Choice choice) {
        String answer = escaped(choice.answer());
        return (choice.isRight() ? "**" + answer + "**" : answer) + escaped(choice.rest());
    }

    @Override
    void end() {
        out.setLength(out.length() - 1);
    }
}
