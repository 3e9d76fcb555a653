package io.github.formulationmath.document;

import io.github.formulationmath.document.Document.Column;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * HTML with MathML: no script, no picture, nothing fetched. The markup is well-formed XML too. All colours are the
 * reader's own, so that contrast is what the reader set, in the dark as well.
 */
final class HtmlWriter extends PageWriter {

    private static final String STYLE = """
            body { font: 1rem/1.5 sans-serif; margin: 0 auto; max-width: 60rem; padding: 1rem; overflow-wrap: anywhere; }
            dl { display: grid; gap: 0.2rem 1rem; grid-template-columns: max-content 1fr; }
            dt { font-weight: bold; }
            dd { margin: 0; }
            table { border-collapse: collapse; width: 100%; }
            th, td { border-bottom: 1px solid; font-weight: normal; padding: 0.25rem 0.75rem 0.25rem 0; }
            th, td { text-align: start; vertical-align: top; }
            thead th { font-weight: bold; }
            .scroll { overflow-x: auto; }
            .number { font-variant-numeric: tabular-nums; text-align: end; white-space: nowrap; }
            .caution { border: 0.15rem solid; font-weight: bold; padding: 0.4rem 0.8rem; }
            ol { padding-left: 2rem; }
            li { margin: 0.75rem 0; break-inside: avoid; }
            ul { list-style: none; padding-left: 2rem; }
            li p { margin: 0.25rem 0; }
            .line { padding-left: 2rem; text-indent: -1rem; }
            .next { padding-left: 3rem; }
            ul.row li { display: inline-block; margin-right: 2rem; }
            .filled { font-weight: bold; }
            .write div { align-items: end; border-bottom: 1px solid; display: flex; height: 8mm; margin: 0; }
            .boxes li::before { border: 1px solid; content: ""; display: inline-block; }
            .boxes li::before { height: 0.8em; margin: 0 0.4em; width: 0.8em; }
            math { font-size: 1.1rem; overflow-wrap: normal; white-space: nowrap; }
            article + article { break-before: page; }
            @media print {
              body { font-size: 10pt; line-height: 1.2; max-width: none; padding: 0; }
              h1 { font-size: 1.4em; margin: 0 0 0.4em; }
              h2 { break-after: avoid; font-size: 1.15em; margin: 0.5em 0 0.2em; }
              p { margin: 0.3em 0; }
              th, td { padding: 0.1rem 0.75rem 0.1rem 0; }
              tr, .caution { break-inside: avoid; }
              ol, ul { margin: 0.2em 0; }
              li { margin: 0.2rem 0; }
              li p, li li { margin: 0.05rem 0; }
              .task { break-inside: avoid; }
              .task h2, .task p, .task li { margin-bottom: 0; margin-top: 0; }
              .task ul { margin: 0.3em 0 0.4em; padding: 0; }
            }
            """;

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

    static String escaped(String text) {
        return replaced(text, ESCAPES);
    }

    @Override
    void title(Document document, int level) {
        out.append("<article ").append(language(document)).append(">\n");
        section = document.title();
        element("h" + level, section);
    }

    @Override
    String page(String title, Document first, String documents) {
        return "<!DOCTYPE html>\n<html " + language(first) + ">\n<head>\n"
                + "<meta charset=\"utf-8\"/>\n"
                + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n"
                + "<title>" + escaped(title) + "</title>\n"
                + "<style>\n" + STYLE + "</style>\n</head>\n<body>\n<main>\n"
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
            out.append("<dt>").append(escaped(fact.name())).append("</dt><dd>");
            out.append(escaped(fact.value())).append("</dd>\n");
        }
        out.append("</dl>\n");
    }

    @Override
    void table(Block.Table table) {
        endList();
        boolean wide = table.columns().size() > NARROW;
        String region =
                "<div class=\"scroll\" role=\"region\" tabindex=\"0\" aria-label=\"" + escaped(section) + "\">\n";
        out.append(wide ? region : "").append("<table>\n<thead>\n<tr>");
        table.columns().forEach(column -> cell(column, "th", " scope=\"col\"", column.name()));
        out.append("</tr>\n</thead>\n<tbody>\n");
        table.rows().forEach(row -> row(table.columns(), row));
        out.append("</tbody>\n</table>\n").append(wide ? "</div>\n" : "");
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
                    names ? " scope=\"row\"" : "",
                    row.cells().get(i));
        }
        out.append("</tr>\n");
    }

    private void cell(Column column, String name, String attributes, String text) {
        out.append('<').append(name).append(attributes).append(column.isNumber() ? " class=\"number\">" : ">");
        out.append(escaped(text)).append("</").append(name).append('>');
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

    /**
     * Formulas in MathML Core, which browsers show without a script and screen readers speak. A short line is one formula
     * with drawn fractions. A long one is a row of small formulas, one up to each sign, since browsers break text between
     * formulas but never inside one.
     */
    private static final class MathMl extends Notation {

        private static final int LONG = 40;

        /** At least 25 mm wide when printed, also in a fraction, which is set in smaller type. */
        private static final String BLANK = "<mtext>" + "_".repeat(24) + "</mtext>";

        private final StringBuilder math = new StringBuilder("<math>");
        private final boolean isLong;
        private boolean started;
        private int roots;

        private MathMl(boolean isLong) {
            super(!isLong);
            this.isLong = isLong;
        }

        static String of(Expression formula) {
            return write(formula, Linear.width(formula) > LONG);
        }

        /** For a narrow column: what comes after ≈ may go below. */
        static String narrow(Expression formula) {
            return write(formula, true);
        }

        private static String write(Expression formula, boolean isLong) {
            MathMl mathMl = new MathMl(isLong);
            mathMl.write(formula);
            return mathMl.math.append("</math>").toString();
        }

        @Override
        void symbol(ExpressionNode.Symbol symbol) {
            String letter = "<mi>" + escaped(symbol.base()) + "</mi>";
            math.append(symbol.below().isEmpty() ? letter : "<msub>" + letter + below(symbol.below()) + "</msub>");
            started = true;
        }

        private static String below(List<String> texts) {
            String all = texts.stream().map(MathMl::below).collect(Collectors.joining("<mo>,</mo>"));
            return texts.size() == 1 ? all : "<mrow>" + all + "</mrow>";
        }

        private static String below(String text) {
            boolean number = text.chars().allMatch(c -> c >= '0' && c <= '9');
            return number ? "<mn>" + text + "</mn>" : "<mtext>" + escaped(text) + "</mtext>";
        }

        @Override
        void number(ExpressionNode.Numeral number) {
            math.append(number.isBold() ? "<mrow class=\"filled\">" : "<mrow>");
            math.append(number.isNegative() ? "<mo form=\"prefix\">−</mo>" : "");
            String digits = number.isBlank() ? BLANK : "<mn>" + escaped(number.digits()) + "</mn>";
            math.append(
                    number.isFraction()
                            ? "<mfrac>" + digits + "<mn>" + escaped(number.below()) + "</mn></mfrac>"
                            : digits);
            if (!number.unit().isEmpty()) {
                math.append("<mtext>\u00A0").append(escaped(number.unit())).append("</mtext>");
            }
            math.append("</mrow>");
            started = true;
        }

        @Override
        void operator(String sign) {
            carryOver();
            math.append("<mo form=\"infix\">").append(sign).append("</mo>");
        }

        @Override
        void relation(String sign) {
            if (started) {
                carryOver();
            }
            math.append("<mo form=\"infix\">").append(escaped(sign)).append("</mo>");
            started = true;
        }

        private void carryOver() {
            math.append(isLong && roots == 0 ? "</math><wbr/><math>" : "");
        }

        @Override
        void open(String name, char bracket) {
            math.append(name.isEmpty() ? "" : "<mi>" + escaped(name) + "</mi>");
            math.append(isLong ? "<mo form=\"prefix\" stretchy=\"false\">" : "<mrow><mo form=\"prefix\">");
            math.append(bracket).append("</mo>");
        }

        @Override
        void close(char bracket) {
            math.append(isLong ? "<mo form=\"postfix\" stretchy=\"false\">" : "<mo form=\"postfix\">");
            math.append(bracket).append("</mo>").append(isLong ? "" : "</mrow>");
        }

        @Override
        void separator() {
            math.append("<mo lspace=\"0em\" rspace=\"0.35em\">;</mo>");
            carryOver();
        }

        @Override
        void words(String words) {
            List<String> parts = isLong ? List.of(words.split(" ", -1)) : List.of(words);
            for (String part : parts) {
                if (isLong) {
                    carryOver();
                }
                math.append("<mtext>\u00A0").append(escaped(part)).append("</mtext>");
            }
        }

        @Override
        void root(Expression inside) {
            math.append("<msqrt>");
            roots++;
            write(inside);
            math.append("</msqrt>");
            roots--;
        }

        @Override
        void fraction(Expression above, Expression below) {
            math.append("<mfrac><mrow>");
            write(above);
            math.append("</mrow><mrow>");
            write(below);
            math.append("</mrow></mfrac>");
        }
    }
}
