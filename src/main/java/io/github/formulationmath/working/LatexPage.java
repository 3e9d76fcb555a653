package io.github.formulationmath.working;

import java.util.List;
import java.util.stream.Collectors;

/** LaTeX: a document, or what stands between its begin and its end. */
final class LatexPage extends RunningPage {

    private static final String PREAMBLE = """
            \\documentclass{article}
            \\usepackage{iftex}
            \\ifPDFTeX
              \\usepackage[T1]{fontenc}
              \\usepackage[utf8]{inputenc}
              \\usepackage{textcomp}
            \\else
              \\usepackage{fontspec}
            \\fi
            \\usepackage{amsmath}
            \\usepackage{longtable}
            \\usepackage{array}
            \\setlength{\\parindent}{0pt}
            \\setlength{\\parskip}{\\medskipamount}
            \\allowdisplaybreaks
            \\begin{document}
            """;
    private static final List<String> HEADINGS =
            List.of("section", "subsection", "subsubsection", "paragraph", "subparagraph");

    private final boolean document;
    private boolean withOrigin;

    LatexPage(boolean document, int level) {
        super(level);
        this.document = document;
    }

    @Override
    public void beginGivens(String heading, List<String> columns) {
        super.beginGivens(heading, columns);
        withOrigin = !columns.get(2).isEmpty();
        out.append("\\begin{longtable}{@{}l>{\\raggedright\\arraybackslash}p{0.3\\linewidth}");
        out.append(withOrigin ? ">{\\raggedright\\arraybackslash}p{0.3\\linewidth}" : "")
                .append("@{}}\n");
        row(List.of(columns.get(0), columns.get(1), columns.get(2)));
        out.append("\\hline\n\\endhead\n");
    }

    private void row(List<String> cells) {
        out.append(Escape.latex(cells.get(0)));
        rest(cells.get(1), cells.get(2));
    }

    private void rest(String meaning, String origin) {
        out.append(" & ").append(Escape.latex(meaning));
        out.append(withOrigin ? " & " + Escape.latex(origin) : "").append(" \\\\\n");
    }

    @Override
    public void given(Line value, String meaning, String origin) {
        out.append('$').append(LatexNotation.write(value).replace(" &", " ")).append('$');
        rest(meaning, origin);
    }

    @Override
    public void endGivens() {
        out.append("\\end{longtable}\n");
    }

    @Override
    public void note(String heading, String words) {
        out.append("\\textit{").append(Escape.latex(heading)).append(":} ");
        paragraph(words);
    }

    @Override
    public void exercise(Step step, String meaning, List<Choice> choices) {
        out.append(LatexNotation.write(step)).append(", ");
        paragraph(meaning);
        if (choices.stream().allMatch(choice -> choice.verdict().isEmpty())) {
            out.append(choices.stream().map(LatexPage::choice).collect(Collectors.joining(" \\qquad\n", "", "\n\n")));
            return;
        }
        out.append("\\begin{itemize}\n");
        choices.forEach(choice -> out.append("\\item[] ").append(choice(choice)).append('\n'));
        out.append("\\end{itemize}\n\n");
    }

    private static String choice(Choice choice) {
        String answer = Escape.latex(choice.answer());
        return (choice.right() ? "\\textbf{" + answer + "}" : answer) + Escape.latex(choice.comment());
    }

    @Override
    public String text() {
        return document ? whole(out.toString()) : out.toString();
    }

    /** A document around what stands between its begin and its end. */
    static String whole(String body) {
        return PREAMBLE + body + "\\end{document}\n";
    }

    @Override
    void heading(int depth, String words) {
        String command = HEADINGS.get(Math.min(depth, HEADINGS.size()) - 1);
        out.append('\\')
                .append(command)
                .append("*{")
                .append(Escape.latex(words))
                .append("}\n\n");
    }

    @Override
    void paragraph(String words) {
        out.append(Escape.latex(words.strip())).append("\n\n");
    }

    @Override
    void equations(List<Line> lines) {
        out.append("\\begin{align*}\n");
        for (int i = 0; i < lines.size(); i++) {
            out.append(LatexNotation.write(lines.get(i)));
            out.append(i < lines.size() - 1 ? " \\\\\n" : "\n");
        }
        out.append("\\end{align*}\n\n");
    }
}
