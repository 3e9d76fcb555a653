package io.github.formulationmath.working;

import java.util.List;

/**
 * HTML with MathML: no script, no picture, nothing fetched. The markup is well-formed XML too. All colours are the
 * reader's own, so that contrast is what the reader set, in the dark as well.
 */
final class HtmlPage implements Page {

    private static final String STYLE = """
            body { font: 1rem/1.5 sans-serif; margin: 0 auto; max-width: 48rem; padding: 1rem; overflow-wrap: anywhere; }
            table { border-collapse: collapse; width: 100%; }
            th, td { border-bottom: 1px solid; font-weight: normal; padding: 0.25rem 0.75rem 0.25rem 0; }
            th, td { text-align: start; vertical-align: top; }
            thead th { font-weight: bold; }
            ol { padding-left: 2rem; }
            li { margin: 0.75rem 0; break-inside: avoid; }
            ul { list-style: none; padding-left: 2rem; }
            li p { margin: 0.25rem 0; }
            .line { padding-left: 2rem; text-indent: -1rem; }
            .next { padding-left: 3rem; }
            ul.row li { display: inline-block; margin-right: 2rem; }
            .filled { font-weight: bold; }
            math { font-size: 1.1rem; overflow-wrap: normal; white-space: nowrap; }
            article + article { break-before: page; }
            @media print {
              body { font-size: 10pt; line-height: 1.2; max-width: none; padding: 0; }
              h1 { font-size: 1.4em; margin: 0 0 0.4em; }
              h2 { font-size: 1.15em; margin: 0.5em 0 0.2em; }
              p { margin: 0.3em 0; }
              th, td { padding: 0.1rem 0.75rem 0.1rem 0; }
              ol, ul { margin: 0.2em 0; }
              li { margin: 0.2rem 0; }
              li p, li li { margin: 0.05rem 0; }
            }
            """;

    static final String TABLE_END = "</tbody>\n</table>\n";
    static final String END = "</main>\n</body>\n</html>\n";

    private final StringBuilder out = new StringBuilder();
    private final Words words;
    private final boolean wholePage;
    private final int level;
    private boolean withOrigin;

    HtmlPage(Words words, boolean wholePage, int level) {
        this.words = words;
        this.wholePage = wholePage;
        this.level = level;
    }

    /** Everything up to the first words of a page. */
    static void open(StringBuilder out, String language, String title) {
        out.append("<!DOCTYPE html>\n<html lang=\"")
                .append(Escape.html(language))
                .append("\">\n<head>\n");
        out.append("<meta charset=\"utf-8\"/>\n");
        out.append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n");
        out.append("<title>").append(Escape.html(title)).append("</title>\n");
        out.append("<style>\n").append(STYLE).append("</style>\n</head>\n<body>\n<main>\n");
    }

    /** A page around its articles. */
    static String whole(String language, String title, String articles) {
        StringBuilder out = new StringBuilder();
        open(out, language, title);
        return out.append(articles).append(END).toString();
    }

    /** The head of a table, up to its first row. */
    static void openTable(StringBuilder out, List<String> columns) {
        out.append("<table>\n<thead>\n<tr>");
        columns.forEach(column ->
                out.append("<th scope=\"col\">").append(Escape.html(column)).append("</th>"));
        out.append("</tr>\n</thead>\n<tbody>\n");
    }

    @Override
    public void question(String question) {
        String language = Escape.html(words.say("language"));
        if (wholePage) {
            open(out, words.say("language"), question);
        }
        out.append("<article")
                .append(wholePage ? "" : " lang=\"" + language + "\"")
                .append(">\n");
        heading(level, question);
    }

    @Override
    public void beginGivens(String heading, List<String> columns) {
        out.append("<section>\n");
        heading(level + 1, heading);
        withOrigin = !columns.get(2).isEmpty();
        openTable(out, withOrigin ? columns : columns.subList(0, 2));
    }

    @Override
    public void given(Line value, String meaning, String origin) {
        out.append("<tr><td>").append(MathMlNotation.writeNarrow(value)).append("</td>");
        out.append("<th scope=\"row\">").append(Escape.html(meaning)).append("</th>");
        out.append(withOrigin ? "<td>" + Escape.html(origin) + "</td>" : "").append("</tr>\n");
    }

    @Override
    public void endGivens() {
        out.append(TABLE_END).append("</section>\n");
    }

    @Override
    public void beginSteps(String heading) {
        out.append("<section>\n");
        heading(level + 1, heading);
        out.append("<ol>\n");
    }

    @Override
    public void step(String meaning, List<Line> lines, String remark) {
        out.append("<li>");
        element("p", meaning);
        equations(lines);
        if (!remark.isEmpty()) {
            element("p", remark);
        }
        out.append("</li>\n");
    }

    @Override
    public void decision(String heading, List<Line> lines) {
        out.append("<li>");
        element("p", heading);
        equations(lines);
        out.append("</li>\n");
    }

    @Override
    public void note(String heading, String note) {
        out.append("<li><p><strong>").append(Escape.html(heading)).append(":</strong> ");
        out.append(Escape.html(note)).append("</p></li>\n");
    }

    @Override
    public void endSteps() {
        out.append("</ol>\n</section>\n");
    }

    @Override
    public void answer(String heading, String meaning, List<Line> lines) {
        out.append("<section>\n");
        heading(level + 1, heading);
        if (!meaning.isEmpty()) {
            element("p", meaning);
        }
        equations(lines);
        out.append("</section>\n");
    }

    @Override
    public void beginExercises(String heading) {
        beginSteps(heading);
    }

    @Override
    public void exercise(Step step, String meaning, List<Choice> choices) {
        out.append("<li><p>").append(MathMlNotation.write(step)).append(", ");
        out.append(Escape.html(meaning)).append("</p>\n");
        boolean inRow = choices.stream().allMatch(choice -> choice.verdict().isEmpty());
        out.append(inRow ? "<ul class=\"row\">\n" : "<ul>\n");
        for (Choice choice : choices) {
            String answer = Escape.html(choice.answer());
            out.append("<li>").append(choice.right() ? "<strong>" + answer + "</strong>" : answer);
            out.append(Escape.html(choice.comment())).append("</li>\n");
        }
        out.append("</ul></li>\n");
    }

    @Override
    public void aside(String aside) {
        element("p", aside);
    }

    @Override
    public void endExercises() {
        endSteps();
    }

    @Override
    public String text() {
        out.append("</article>\n").append(wholePage ? END : "");
        return out.toString();
    }

    private void heading(int depth, String text) {
        element("h" + Math.min(depth, 6), text);
    }

    private void element(String name, String text) {
        element(out, name, text);
    }

    /** A text between its tags. */
    static void element(StringBuilder out, String name, String text) {
        out.append('<').append(name).append('>').append(Escape.html(text));
        out.append("</").append(name).append(">\n");
    }

    private void equations(List<Line> lines) {
        for (Line line : lines) {
            out.append(line.continuesLineAbove() ? "<p class=\"line next\">" : "<p class=\"line\">");
            out.append(MathMlNotation.write(line));
            out.append(line.outcome().isEmpty() ? "" : ": <strong>" + Escape.html(line.outcome()) + "</strong>");
            out.append("</p>\n");
        }
    }
}
