package io.github.formulationmath.document;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** LaTeX: a document, or what stands between its begin and its end. */
final class LatexWriter extends PageWriter {

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

    private static final Map<Integer, String> ESCAPES = LatexCharacters.map();

    /** In a table of more columns than this no cell of words is carried over. */
    private static final int NARROW = 3;

    static String escaped(String text) {
        return replaced(text, ESCAPES);
    }

    @Override
    String page(String title, Document first, String documents) {
        return PREAMBLE + documents + "\\end{document}\n";
    }

    @Override
    String between() {
        return "\\newpage\n";
    }

    @Override
    void heading(String text, int level) {
        String command = HEADINGS.get(Math.min(level, HEADINGS.size()) - 1);
        out.append('\\').append(command).append("*{").append(escaped(text)).append("}\n\n");
    }

    @Override
    void paragraph(String text) {
        out.append(escaped(text.strip())).append("\n\n");
    }

    @Override
    void caution(String text) {
        out.append("\\textbf{! ").append(escaped(text)).append("}\n\n");
    }

    @Override
    void facts(List<Block.Fact> facts) {
        out.append("\\begin{description}\n");
        facts.forEach(fact -> out.append("\\item[{")
                .append(escaped(fact.name()))
                .append("}] ")
                .append(escaped(fact.value()))
                .append('\n'));
        out.append("\\end{description}\n\n");
    }

    @Override
    void table(Block.Table table) {
        boolean formulas = table.rows().stream().anyMatch(row -> row.value() != null);
        String words = table.columns().size() > NARROW ? "l" : ">{\\raggedright\\arraybackslash}p{0.3\\linewidth}";
        out.append("\\begin{longtable}{@{}");
        for (int i = 0; i < table.columns().size(); i++) {
            boolean formula = formulas && i == 0;
            out.append(formula ? "l" : table.columns().get(i).isNumber() ? "r" : words);
        }
        out.append("@{}}\n");
        row(table.columns().stream().map(column -> escaped(column.name())).toList());
        out.append("\\hline\n\\endhead\n");
        table.rows().forEach(this::row);
        out.append("\\end{longtable}\n");
    }

    private void row(Block.Row row) {
        List<String> cells = row.cells().stream().map(LatexWriter::escaped).collect(Collectors.toList());
        if (row.value() != null) {
            cells.set(0, "$" + Formula.line(row.value()).replace(" &", " ") + "$");
        }
        row(cells);
    }

    /** A bracket or star at the beginning of a row would be read as an option of the line end above. */
    private void row(List<String> cells) {
        out.append(cells.get(0).matches("[\\[*].*") ? "{}" : "");
        out.append(String.join(" & ", cells)).append(" \\\\\n");
    }

    @Override
    void equations(Block.Equations equations) {
        if (!equations.text().isEmpty()) {
            paragraph(equations.text());
        }
        out.append("\\begin{align*}\n");
        out.append(equations.lines().stream().map(Formula::line).collect(Collectors.joining(" \\\\\n")));
        out.append("\n\\end{align*}\n\n");
        if (!equations.remark().isEmpty()) {
            paragraph(equations.remark());
        }
    }

    @Override
    void note(Block.Note note) {
        out.append("\\textit{").append(escaped(note.lead())).append(":} ");
        paragraph(note.text());
    }

    @Override
    void question(Block.Question question) {
        out.append('$').append(Formula.line(question.symbol())).append("$, ");
        paragraph(question.text());
        if (question.isInRow()) {
            out.append(question.choices().stream()
                    .map(LatexWriter::choice)
                    .collect(Collectors.joining(" \\qquad\n", "", "\n\n")));
            return;
        }
        out.append("\\begin{itemize}\n");
        question.choices()
                .forEach(
                        choice -> out.append("\\item[] ").append(choice(choice)).append('\n'));
        out.append("\\end{itemize}\n\n");
    }

    private static String choice(Block.Choice choice) {
        String answer = escaped(choice.answer());
        return (choice.isRight() ? "\\textbf{" + answer + "}" : answer) + escaped(choice.rest());
    }

    /**
     * Formulas with amsmath. A short line is built up with fractions and growing brackets. A long one is written along the
     * line and carried over before a sign, since a fraction or a growing bracket cannot be carried over.
     */
    private static final class Formula extends Notation {

        private static final int LONG = 60;
        private static final int OPERAND = 12;
        private static final String ALIGN = " &";

        private final StringBuilder math = new StringBuilder();
        private final boolean isLong;
        private int column;
        private int roots;

        private Formula(boolean isLong) {
            super(!isLong);
            this.isLong = isLong;
        }

        static String line(Expression line) {
            Formula formula = new Formula(Linear.width(line) > LONG);
            formula.write(line);
            String outcome = line instanceof ExpressionNode.Relation relation ? relation.outcome() : "";
            return formula.math + (outcome.isEmpty() ? "" : " \\quad \\text{" + escaped(outcome) + "}");
        }

        @Override
        void symbol(ExpressionNode.Symbol symbol) {
            column += symbol.text().length();
            math.append(letters(symbol.letter()));
            if (!symbol.subscript().isEmpty()) {
                math.append("_{").append(letters(symbol.subscript())).append('}');
            }
        }

        /** One Latin letter or a number as it is; a word upright. */
        private static String letters(String text) {
            boolean simple = text.length() == 1 && Character.isLetterOrDigit(text.charAt(0)) && text.charAt(0) < 128
                    || text.chars().allMatch(c -> c >= '0' && c <= '9');
            return simple ? text : "\\text{" + escaped(text) + "}";
        }

        @Override
        void number(ExpressionNode.Numeral number) {
            column += number.text().length();
            math.append(number.isBold() ? "\\boldsymbol{" : "").append(number.isNegative() ? "-" : "");
            if (number.isFraction()) {
                math.append("\\tfrac{").append(digits(number.digits())).append("}{");
                math.append(digits(number.below())).append('}');
            } else {
                math.append(number.isBlank() ? "\\underline{\\hspace{25mm}}" : digits(number.digits()));
            }
            math.append(number.isBold() ? "}" : "");
            if (!number.unit().isEmpty()) {
                math.append("\\,\\text{").append(escaped(number.unit())).append('}');
            }
        }

        /** A comma in braces stands in a number, not between two. */
        private static String digits(String digits) {
            return digits.replace(",", "{,}");
        }

        @Override
        void operator(String sign) {
            carryOver(OPERAND);
            column += 3;
            math.append(sign.equals("·") ? " \\cdot " : sign.equals("−") ? " - " : " " + sign + " ");
        }

        @Override
        void relation(String sign) {
            boolean first = math.indexOf(ALIGN) < 0;
            math.append(first ? ALIGN : " ");
            math.append(
                    switch (sign) {
                        case "≈" -> "\\approx ";
                        case "≤" -> "\\le ";
                        case "≥" -> "\\ge ";
                        default -> sign + " ";
                    });
        }

        private void carryOver(int needed) {
            if (isLong && roots == 0 && column + needed > LONG) {
                math.append("\\\\\n").append(math.indexOf(ALIGN) < 0 ? "" : " &\\qquad {}");
                column = 0;
            }
        }

        @Override
        void open(String name, char bracket) {
            column += name.length();
            math.append(name.isEmpty() ? "" : "\\operatorname{\\text{" + escaped(name) + "}}");
            String mark = bracket == '|' ? "\\lvert " : "(";
            math.append(isLong ? mark : "\\left" + mark);
        }

        @Override
        void close(char bracket) {
            String mark = bracket == '|' ? "\\rvert " : ")";
            math.append(isLong ? mark : "\\right" + mark);
        }

        @Override
        void separator() {
            math.append(';');
            carryOver(OPERAND);
            math.append("\\ ");
        }

        @Override
        void words(String words) {
            for (String part : words.split("(?<=, )|(?= \\()", -1)) {
                carryOver(part.length());
                column += part.length();
                math.append("\\text{ ").append(escaped(part)).append('}');
            }
        }

        @Override
        void root(Expression inside) {
            math.append("\\sqrt{");
            roots++;
            write(inside);
            math.append('}');
            roots--;
        }

        @Override
        void fraction(Expression above, Expression below) {
            math.append("\\frac{");
            write(above);
            math.append("}{");
            write(below);
            math.append('}');
        }
    }
}
