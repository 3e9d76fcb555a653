package io.github.formulationmath.document;

import io.github.formulationmath.document.Document.Column;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * Plain text of at most 80 columns, but for tables of numbers. Headings and paragraphs begin at the margin, what belongs to a
 * step further in; a blank line stands above every block but those of a step and what follows a heading.
 */
final class TextWriter extends PageWriter {

    private static final String INDENT = "  ";
    private static final int WIDEST_VALUE = 30;
    private static final int LONGEST_ROW = 76;
    private static final int SHORTEST_LINE = 20;
    private static final String BOX = "[ ] ";

    /** Tables with the same columns are set to the same widths, so that the eye runs down the page. */
    private final Map<List<Column>, int[]> widths = new HashMap<>();

    private boolean afterHeading;

    static Writer writer() {
        return new TextWriter();
    }

    @Override
    void title(Document document, int level) {
        widths.clear();
        afterHeading = false;
        for (Block block : document.blocks()) {
            if (block instanceof Block.Table table && table.hasNumbers()) {
                widen(table.written());
            }
        }
        fill("", "", document.title());
    }

    @Override
    void heading(String text, int level) {
        out.append('\n');
        fill("", "", text);
        afterHeading = true;
    }

    /** The blank line above a block. */
    private void begin() {
        out.append(afterHeading ? "" : "\n");
        afterHeading = false;
    }

    @Override
    void paragraph(String text) {
        begin();
        fill("", "", text);
    }

    @Override
    void caution(String text) {
        begin();
        fill("! ", INDENT, text);
    }

    @Override
    void facts(List<Block.Fact> facts) {
        begin();
        int widest = facts.stream().mapToInt(f -> Columns.width(f.name())).max().orElse(0);
        facts.forEach(f -> line(padRight(f.name(), widest) + INDENT + f.value()));
    }

    @Override
    void table(Block.Table table) {
        begin();
        if (table.rows().stream().anyMatch(row -> row.value() != null)) {
            values(table.rows());
        } else if (table.hasNumbers()) {
            grid(table);
        } else {
            table.rows().forEach(row -> record(table.columns(), row.cells()));
        }
    }

    /** One column for the values, as wide as the widest that is not too wide, and one for the words. */
    private void values(List<Block.Row> rows) {
        int widest = rows.stream()
                .mapToInt(row -> Columns.width(row.cells().get(0)))
                .filter(width -> width <= WIDEST_VALUE)
                .max()
                .orElse(0);
        String margin = INDENT + " ".repeat(widest) + INDENT;
        for (Block.Row row : rows) {
            String value = row.cells().get(0);
            String words =
                    row.cells().stream().skip(1).filter(cell -> !cell.isEmpty()).collect(Collectors.joining("; "));
            if (Columns.width(value) <= widest) {
                fill(INDENT + padRight(value, widest) + INDENT, margin, words);
            } else {
                String breakable = Linear.breakable(Objects.requireNonNull(row.value()));
                Columns.fill(out, INDENT, INDENT + INDENT + INDENT, breakable, Linear.BREAK);
                fill(margin, margin, words);
            }
        }
    }

    /** A row of words: its name, and below it the other cells with the names of their columns. */
    private void record(List<Column> columns, List<String> cells) {
        int name = 0;
        for (int i = 0; i < cells.size(); i++) {
            name = columns.get(i).namesRow() ? i : name;
        }
        fill(INDENT, INDENT, cells.get(name));
        for (int i = 0; i < cells.size(); i++) {
            if (i != name && !cells.get(i).isEmpty()) {
                fill(INDENT + INDENT + columns.get(i).name() + ": ", INDENT + INDENT + INDENT, cells.get(i));
            }
        }
    }

    private void grid(Block.Table table) {
        int[] wide = Objects.requireNonNull(widths.get(table.columns()));
        row(table.columns(), table.columns().stream().map(Column::name).toList(), wide);
        row(table.columns(), Arrays.stream(wide).mapToObj("-"::repeat).toList(), wide);
        table.rows().forEach(row -> row(table.columns(), row.cells(), wide));
    }

    private void widen(Block.Table table) {
        int[] wide = widths.computeIfAbsent(
                table.columns(),
                columns -> columns.stream()
                        .mapToInt(column -> Columns.width(column.name()))
                        .toArray());
        for (Block.Row row : table.rows()) {
            for (int i = 0; i < wide.length; i++) {
                wide[i] = Math.max(wide[i], Columns.width(row.cells().get(i)));
            }
        }
    }

    private void row(List<Column> columns, List<String> cells, int[] wide) {
        StringBuilder row = new StringBuilder();
        for (int i = 0; i < wide.length; i++) {
            String cell = cells.get(i);
            String space = " ".repeat(wide[i] - Columns.width(cell));
            row.append(i == 0 ? "" : INDENT).append(columns.get(i).isNumber() ? space + cell : cell + space);
        }
        line(row.toString().stripTrailing());
    }

    @Override
    void equations(Block.Equations equations) {
        afterHeading = false;
        if (!equations.text().isEmpty()) {
            fill(INDENT, INDENT, equations.text());
        }
        out.append(Linear.lines(INDENT + INDENT, equations.lines()));
        if (!equations.remark().isEmpty()) {
            fill(INDENT + INDENT, INDENT + INDENT + INDENT, equations.remark());
        }
    }

    @Override
    void note(Block.Note note) {
        afterHeading = false;
        fill(INDENT + note.lead() + ": ", INDENT + INDENT, note.text());
    }

    @Override
    void lines(List<String> labels) {
        for (String label : labels) {
            begin();
            String start = label.isEmpty() ? "" : label + " ";
            line(start + "_".repeat(Math.max(SHORTEST_LINE, Columns.PAGE - Columns.width(start))));
        }
    }

    @Override
    void question(Block.Question question) {
        afterHeading = false;
        Expression symbol = question.symbol();
        String asked = symbol == null ? question.text() : Linear.plain(symbol) + ", " + question.text();
        if (!asked.isEmpty()) {
            fill(INDENT, INDENT, asked);
        }
        String box = question.hasBoxes() ? BOX : "";
        String row =
                question.choices().stream().map(choice -> box + choice.answer()).collect(Collectors.joining("    "));
        if (question.isInRow() && Columns.width(row) <= LONGEST_ROW) {
            line(INDENT + INDENT + row);
            return;
        }
        question.choices()
                .forEach(choice ->
                        fill(INDENT + INDENT, INDENT + INDENT + INDENT, box + choice.answer() + choice.rest()));
    }

    private void fill(String first, String rest, String words) {
        Columns.fill(out, first, rest, words, ' ');
    }

    private void line(String text) {
        out.append(text).append('\n');
    }

    private static String padRight(String text, int width) {
        return text + " ".repeat(width - Columns.width(text));
    }
}
