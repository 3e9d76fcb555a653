package io.github.formulationmath.working;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A short report of paragraphs and tables, printed as plain text of at most 80 columns, Markdown, or an HTML page. Names put
 * in are escaped for each format.
 *
 * <p>In plain text a table is a list: the first cell of a row as a heading, the others below it with the names of their
 * columns.
 *
 * <p>Immutable and thread-safe; each method returns a longer report.
 */
public final class Report {

    private final String title;
    private final List<Block> blocks;

    /** A part of a report. */
    private sealed interface Block {

        void text(StringBuilder out);

        void markdown(StringBuilder out);

        void html(StringBuilder out);
    }

    private Report(String title, List<Block> blocks) {
        this.title = title;
        this.blocks = List.copyOf(blocks);
    }

    /**
     * An empty report.
     *
     * @param title its title
     * @return the report
     */
    public static Report titled(String title) {
        return new Report(Words.clean(Objects.requireNonNull(title, "title")), List.of());
    }

    /**
     * The report with a heading behind it.
     *
     * @param words the heading
     * @return the longer report
     */
    public Report heading(String words) {
        return with(new Heading(Words.clean(words)));
    }

    /**
     * The report with a paragraph behind it.
     *
     * @param words the paragraph
     * @return the longer report
     */
    public Report paragraph(String words) {
        return with(new Paragraph(Words.clean(words)));
    }

    /**
     * The report with a table behind it.
     *
     * @param columns the names of the columns, at least one
     * @param rows the rows, each with as many cells as there are columns; the first names the row
     * @return the longer report
     * @throws IllegalArgumentException if a row has another number of cells
     */
    public Report table(List<String> columns, List<List<String>> rows) {
        for (List<String> row : rows) {
            if (row.size() != columns.size()) {
                throw new IllegalArgumentException(
                        "the row " + row + " has " + row.size() + " cells for " + columns.size() + " columns");
            }
        }
        List<List<String>> clean = rows.stream()
                .map(row -> row.stream().map(Words::clean).toList())
                .toList();
        return with(new Table(columns.stream().map(Words::clean).toList(), clean));
    }

    private Report with(Block block) {
        List<Block> more = new ArrayList<>(blocks);
        more.add(block);
        return new Report(title, more);
    }

    /**
     * Plain text.
     *
     * @return lines of at most 80 columns
     */
    public String text() {
        StringBuilder out = new StringBuilder();
        Columns.fill(out, "", "", title, ' ');
        blocks.forEach(block -> block.text(out));
        return out.toString();
    }

    /**
     * Markdown as CommonMark describes it, with tables.
     *
     * @return the text
     */
    public String markdown() {
        StringBuilder out = new StringBuilder("# " + Escape.markdown(title) + "\n");
        blocks.forEach(block -> block.markdown(out));
        return out.toString();
    }

    /**
     * A whole HTML page that needs nothing but itself.
     *
     * @param wording the words; they tell the language of the page
     * @return the page
     */
    public String html(Wording wording) {
        StringBuilder out = new StringBuilder();
        HtmlPage.open(out, wording.text(Phrase.of("language")), title);
        HtmlPage.element(out, "h1", title);
        blocks.forEach(block -> block.html(out));
        return out.append(HtmlPage.END).toString();
    }

    /** The report as plain text, for reading at a prompt. */
    @Override
    public String toString() {
        return text();
    }

    private record Heading(String words) implements Block {

        @Override
        public void text(StringBuilder out) {
            out.append('\n');
            Columns.fill(out, "", "", words, ' ');
        }

        @Override
        public void markdown(StringBuilder out) {
            out.append("\n## ").append(Escape.markdown(words)).append('\n');
        }

        @Override
        public void html(StringBuilder out) {
            HtmlPage.element(out, "h2", words);
        }
    }

    private record Paragraph(String words) implements Block {

        @Override
        public void text(StringBuilder out) {
            Columns.fill(out, "  ", "  ", words, ' ');
        }

        @Override
        public void markdown(StringBuilder out) {
            out.append('\n').append(Escape.markdown(words.strip())).append('\n');
        }

        @Override
        public void html(StringBuilder out) {
            HtmlPage.element(out, "p", words);
        }
    }

    private record Table(List<String> columns, List<List<String>> rows) implements Block {

        @Override
        public void text(StringBuilder out) {
            for (List<String> row : rows) {
                Columns.fill(out, "  ", "  ", row.get(0), ' ');
                for (int i = 1; i < row.size(); i++) {
                    Columns.fill(out, "    " + columns.get(i) + ": ", "      ", row.get(i), ' ');
                }
            }
        }

        @Override
        public void markdown(StringBuilder out) {
            out.append('\n');
            MarkdownPage.openTable(out, columns);
            rows.forEach(row -> MarkdownPage.row(out, row));
        }

        @Override
        public void html(StringBuilder out) {
            HtmlPage.openTable(out, columns);
            for (List<String> row : rows) {
                out.append("<tr><th scope=\"row\">")
                        .append(Escape.html(row.get(0)))
                        .append("</th>");
                row.subList(1, row.size())
                        .forEach(cell ->
                                out.append("<td>").append(Escape.html(cell)).append("</td>"));
                out.append("</tr>\n");
            }
            out.append(HtmlPage.TABLE_END);
        }
    }
}
