package io.github.formulationmath.document;

import io.github.formulationmath.document.Document.Column;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * HTML with MathML: no script, no picture, nothing fetched. The markup is well-formed XML too. All colours are the
 * reader's own, so that contrast is what the reader set, in the dark as well.
 */
final class HtmlWriter extends PageWriter {

    static final Map<Integer, String> ESCAPES =
            Map.of((int) '&', "&amp;", (int) '<', "&lt;", (int) '>', "&gt;", (int) '"', "&quot;", (int) '\'', "&#39;");

    /** A table of more columns can be moved sideways on a narrow screen. */
    private static final int NARROW = 4;

    private boolean inSection;

    /** Where attributes of the open section go, and whether it is one to be worked on, which is not parted by a page. */
    private int sectionAt;

    private boolean isTask;
    private boolean inList;
    private String section = "";
    private HtmlStyle style = HtmlStyle.of(List.of());

    static String escaped(String text) {
        return replaced(text, ESCAPES);
    }

    static Writer writer() {
        return new HtmlWriter();
    }

    @Override
    void title(Document document, int level) {
        style = HtmlStyle.of(document.blocks());
        out.append(style.isOfBench() ? "<article class=\"bench\" " : "<article ")
                .append(language(document))
                .append(">\n");
        section = document.title();
        element("h" + level, section);
    }

    @Override
    String page(String title, Document first, String documents) {
        return "<!DOCTYPE html>\n<html " + language(first) + ">\n<head>\n"
                + "<meta charset=\"utf-8\"/>\n"
                + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n"
                + "<title>" + escaped(title) + "</title>\n"
                + "<style>\n" + HtmlStyle.onPaper(title) + "</style>\n</head>\n<body>\n<main>\n"
                + documents
                + "</main>\n</body>\n</html>\n";
    }

    private static String language(Document document) {
        return "lang=\"" + escaped(document.language()) + (document.isRightToLeft() ? "\" dir=\"rtl\"" : "\"");
    }

    @Override
    String between() {
        return "";
    }

    @Override
    void heading(String text, int level) {
        endSection();
        inSection = true;
        isTask = false;
        sectionAt = out.append("<section").length();
        out.append(">\n");
        section = text;
        element("h" + Math.min(level, 6), text);
    }

    private void endSection() {
        endList();
        out.append(inSection ? "</section>\n" : "");
        inSection = false;
    }

    private void beginItem() {
        out.append(inList ? "" : "<ol>\n").append("<li>");
        inList = true;
    }

    private void endList() {
        out.append(inList ? "</ol>\n" : "");
        inList = false;
    }

    @Override
    void paragraph(String text) {
        endList();
        element("p", text);
    }

    @Override
    void caution(String text) {
        endSection();
        out.append("<p class=\"caution\">").append(escaped(text)).append("</p>\n");
    }

    @Override
    void facts(List<Block.Fact> facts) {
        endList();
        out.append("<dl>\n");
        for (Block.Fact fact : facts) {
            out.append("<div><dt>").append(escaped(fact.name())).append("</dt><dd>");
            out.append(escaped(fact.value())).append("</dd></div>\n");
        }
        out.append("</dl>\n");
    }

    @Override
    boolean hasRoom() {
        return true;
    }

    @Override
    void fields(Block.Fields fields) {
        endList();
        out.append("<div class=\"fields\">\n");
        fields.labels().forEach(label -> element("div", label));
        out.append("</div>\n");
    }

    @Override
    void table(Block.Table table) {
        endList();
        boolean wide = table.columns().size() > NARROW;
        String region =
                "<div class=\"scroll\" role=\"region\" tabindex=\"0\" aria-label=\"" + escaped(section) + "\">\n";
        out.append(wide ? region : "").append(opening(table)).append("<thead>\n<tr>");
        String more = details(
                table.columns(), table.columns().stream().map(Column::name).toList());
        for (Column column : table.columns()) {
            cell(column, "th", " scope=\"col\"" + (column.namesRow() ? more : ""), column.name());
        }
        out.append("</tr>\n</thead>\n<tbody>\n");
        table.rows().forEach(row -> row(table.columns(), row));
        out.append("</tbody>\n</table>\n").append(wide ? "</div>\n" : "");
    }

    /** The columns of a table to work with are as wide in each phase as in the others. */
    private String opening(Block.Table table) {
        if (!table.isWorkedWith()) {
            return "<table>\n";
        }
        StringBuilder start = new StringBuilder("<table class=\"work\">\n<colgroup>");
        for (Column column : table.columns()) {
            start.append(column.namesRow() ? "<col/>" : "<col " + useOf(column) + style.widthOf(column) + "/>");
        }
        return start.append("</colgroup>\n").toString();
    }

    private void row(List<Column> columns, Block.Row row) {
        out.append("<tr>");
        int first = row.value() == null ? 0 : 1;
        if (row.value() != null) {
            out.append("<td>").append(MathMl.narrow(row.value())).append("</td>");
        }
        for (int i = first; i < columns.size(); i++) {
            boolean names = columns.get(i).namesRow() && !row.cells().get(i).isBlank();
            cell(
                    columns.get(i),
                    names ? "th" : "td",
                    names ? " scope=\"row\"" + details(columns, row.cells()) : "",
                    row.cells().get(i));
        }
        out.append("</tr>\n");
    }

    /** What goes below the name of a row on a narrow page. */
    private static String details(List<Column> columns, List<String> cells) {
        String more = IntStream.range(0, columns.size())
                .filter(i -> columns.get(i).use() == Column.Use.DETAIL)
                .mapToObj(i -> cells.get(i).replace(' ', '\u00A0'))
                .collect(Collectors.joining(" · "));
        return more.isEmpty() ? "" : " data-more=\"" + escaped(more) + "\"";
    }

    private static String useOf(Column column) {
        return switch (column.use()) {
            case TEXT, NAME -> "";
            case NUMBER -> "class=\"number\"";
            case READING -> "class=\"number reading\"";
            case DETAIL -> "class=\"number detail\"";
            case TICK -> "class=\"tick\"";
            case ROOM -> "class=\"room\"";
        };
    }

    private void cell(Column column, String name, String attributes, String text) {
        String use = useOf(column);
        out.append('<')
                .append(name)
                .append(attributes)
                .append(use.isEmpty() ? "" : " ")
                .append(use)
                .append('>');
        boolean isBox = column.use() == Column.Use.TICK && name.equals("td");
        out.append(isBox ? "<span class=\"box\">☐</span>" : escaped(text))
                .append("</")
                .append(name)
                .append('>');
    }

    @Override
    void equations(Block.Equations equations) {
        if (equations.isStep()) {
            beginItem();
        } else {
            endList();
        }
        if (!equations.text().isEmpty()) {
            element("p", equations.text());
        }
        equations.lines().forEach(this::line);
        if (!equations.remark().isEmpty()) {
            element("p", equations.remark());
        }
        out.append(equations.isStep() ? "</li>\n" : "");
    }

    private void line(Expression line) {
        boolean goesOn = line instanceof ExpressionNode.Relation relation && relation.left() == null;
        String outcome = line instanceof ExpressionNode.Relation relation ? relation.outcome() : "";
        out.append(goesOn ? "<p class=\"line next\">" : "<p class=\"line\">");
        out.append(MathMl.of(line));
        out.append(outcome.isEmpty() ? "" : ": <strong>" + escaped(outcome) + "</strong>")
                .append("</p>\n");
    }

    @Override
    void note(Block.Note note) {
        beginItem();
        out.append("<p><strong>").append(escaped(note.lead())).append(":</strong> ");
        out.append(escaped(note.text())).append("</p></li>\n");
    }

    @Override
    void lines(List<String> labels) {
        endList();
        if (inSection && !isTask) {
            out.insert(sectionAt, " class=\"task\"");
            isTask = true;
        }
        out.append("<div class=\"write\">\n");
        labels.forEach(label -> element("div", label));
        out.append("</div>\n");
    }

    @Override
    void question(Block.Question question) {
        Expression symbol = question.symbol();
        if (symbol == null) {
            endList();
            if (!question.text().isEmpty()) {
                element("p", question.text());
            }
            choices(question, question.hasBoxes() ? "row boxes" : "");
            return;
        }
        beginItem();
        out.append("<p>").append(MathMl.of(symbol)).append(", ");
        out.append(escaped(question.text())).append("</p>\n");
        choices(question, question.isInRow() ? "row" : "");
        out.append("</li>\n");
    }

    private void choices(Block.Question question, String kind) {
        out.append(kind.isEmpty() ? "<ul>\n" : "<ul class=\"" + kind + "\">\n");
        for (Block.Choice choice : question.choices()) {
            String answer = escaped(choice.answer());
            out.append("<li>").append(choice.isRight() ? "<strong>" + answer + "</strong>" : answer);
            out.append(escaped(choice.rest())).append("</li>\n");
        }
        out.append("</ul>");
        out.append(question.symbol() == null ? "\n" : "");
    }

    @Override
    void end() {
        endSection();
        out.append("</article>\n");
    }

    private void element(String name, String text) {
        out.append('<').append(name).append('>').append(escaped(text));
        out.append("</").append(name).append(">\n");
    }
}
