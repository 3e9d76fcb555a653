package io.github.formulationmath.document;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** LaTeX: a document, or what stands between its begin and its end. */
final class LatexWriter extends PageWriter {

    private static final String PREAMBLE = """
            \\documentclass[a4paper,fleqn]{article}
            \\usepackage[margin=18mm]{geometry}
            \\usepackage{iftex}
            \\ifPDFTeX
              \\usepackage[T1]{fontenc}
              \\usepackage[utf8]{inputenc}
              \\usepackage{textcomp}
              \\IfFileExists{lmodern.sty}{\\usepackage{lmodern}}{}
            \\else
              \\usepackage{fontspec}
            \\fi
            \\usepackage{amsmath}
            \\usepackage{longtable}
            \\usepackage{array}
            \\setlength{\\parindent}{0pt}
            \\setlength{\\parskip}{\\medskipamount}
            \\setlength{\\emergencystretch}{3em}
            \\setlength{\\mathindent}{2em}
            \\setlength{\\tabcolsep}{4pt}
            \\setlength{\\LTleft}{0pt}
            \\allowdisplaybreaks
            \\begin{document}
            """;

    /** A square of about the height of a small letter. */
    private static final String BOX = "\\fbox{\\rule{0pt}{1ex}\\rule{1ex}{0pt}}~";

    private static final List<String> HEADINGS =
            List.of("section", "subsection", "subsubsection", "paragraph", "subparagraph");

    private static final Map<Integer, String> ESCAPES = LatexCharacters.map();

    /** In a table of more columns than this only cells with many words are carried over. */
    private static final int NARROW = 3;

    private static final int LONG_WORD = 24;

    /** Letters of a heading are larger. */
    private static final int LONG_WORD_OF_A_HEADING = 16;

    /** A column of values in which one is wider than this takes more of the line. */
    private static final int WIDE = 48;

    static String escaped(String text) {
        return replaced(text, ESCAPES);
    }

    static Writer writer() {
        return new LatexWriter();
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
        boolean isLong = Stream.of(text.split(" ")).anyMatch(word -> word.length() > LONG_WORD_OF_A_HEADING);
        String ragged = isLong ? "\\raggedright " : "";
        out.append('\\')
                .append(command)
                .append("*{")
                .append(ragged)
                .append(breakable(text, LONG_WORD_OF_A_HEADING))
                .append("}\n\n");
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
        out.append("\\begin{longtable}{@{}").append(columns(table)).append("@{}}\n");
        row(table.columns().stream().map(column -> escaped(column.name())).toList());
        out.append("\\hline\\noalign{\\vskip 2pt}\n\\endhead\n");
        table.rows().forEach(this::row);
        out.append("\\end{longtable}\n");
    }

    /** Columns of words share what the values leave of the line; among many columns only the names are carried over. */
    private static String columns(Block.Table table) {
        List<Expression> values = table.rows().stream()
                .map(Block.Row::value)
                .filter(Objects::nonNull)
                .toList();
        boolean wide = values.stream().anyMatch(value -> Linear.width(value) > WIDE);
        int many = table.columns().size();
        String words = values.isEmpty() ? cells("0.3") : many < NARROW ? cells("0.4") : cells(wide ? "0.2" : "0.27");
        StringBuilder kinds = new StringBuilder();
        for (int i = 0; i < many; i++) {
            Document.Column column = table.columns().get(i);
            String other = many > NARROW && !column.namesRow() && !isLong(table, i) ? "l" : words;
            boolean formula = !values.isEmpty() && i == 0;
            kinds.append(formula ? cells(wide ? "0.54" : "0.38") : column.isNumber() ? "r" : other);
        }
        return kinds.toString();
    }

    private static boolean isLong(Block.Table table, int column) {
        return table.rows().stream().anyMatch(row -> Columns.width(row.cells().get(column)) > LONG_WORD);
    }

    /** Cells as wide as this share of the line; words in them, and formulas at their signs, go on below. */
    private static String cells(String share) {
        return ">{\\raggedright\\arraybackslash}p{" + share + "\\linewidth}";
    }

    /** An address or a long fraction may go on below, behind a sign of it; names and dates are left alone. */
    private static String breakable(String cell) {
        return breakable(cell, LONG_WORD);
    }

    private static String breakable(String text, int longest) {
        return Stream.of(text.split(" ", -1))
                .map(word -> word.length() <= longest
                        ? escaped(word)
                        : Stream.of(word.split("(?<=[-/._])"))
                                .map(LatexWriter::escaped)
                                .collect(Collectors.joining("\\allowbreak{}")))
                .collect(Collectors.joining(" "));
    }

    private void row(Block.Row row) {
        List<String> cells = row.cells().stream().map(LatexWriter::breakable).collect(Collectors.toList());
        if (row.value() != null) {
            cells.set(0, "$" + Notated.inLine(row.value()) + "$");
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
        // No empty line before a display, which would begin a paragraph of its own; none within, which LaTeX refuses.
        if (!equations.text().isEmpty()) {
            out.append(escaped(equations.text().strip())).append('\n');
        }
        if (!equations.lines().isEmpty()) {
            out.append("\\begin{align*}\n");
            out.append(equations.lines().stream().map(Notated::line).collect(Collectors.joining(" \\\\\n")));
            out.append("\n\\end{align*}\n");
        }
        out.append('\n');
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
    void lines(List<String> labels) {
        for (String label : labels) {
            out.append("\\par\\nobreak\\parbox[b][8mm][b]{\\linewidth}{").append(escaped(label));
            out.append("\\hrulefill}\n");
        }
        out.append('\n');
    }

    @Override
    void question(Block.Question question) {
        Expression symbol = question.symbol();
        if (symbol != null) {
            out.append('$').append(Notated.inLine(symbol)).append("$, ");
        }
        if (!question.text().isEmpty()) {
            paragraph(question.text());
        }
        String box = question.hasBoxes() ? BOX : "";
        if (question.isInRow()) {
            out.append(question.choices().stream()
                    .map(choice -> box + choice(choice))
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
    private static final class Notated extends Notation {

        private static final int LONG = 60;
        private static final int OPERAND = 12;
        private static final String ALIGN = " &";

        private final StringBuilder math = new StringBuilder();
        private final boolean isLong;
        private final boolean isDisplay;
        private int column;
        private int roots;

        private Notated(boolean isLong, boolean isDisplay) {
            super(!isLong);
            this.isLong = isLong;
            this.isDisplay = isDisplay;
        }

        /** A line of a display, in line with the others at its first relation. */
        static String line(Expression line) {
            return written(line, true);
        }

        /** Among words, where LaTeX itself carries it over at a sign: a line end of ours would end the row of a table. */
        static String inLine(Expression formula) {
            return written(formula, false);
        }

        private static String written(Expression line, boolean isDisplay) {
            Notated formula = new Notated(Linear.width(line) > LONG, isDisplay);
            formula.write(line);
            String outcome = line instanceof ExpressionNode.Relation relation ? relation.outcome() : "";
            return formula.math + (outcome.isEmpty() ? "" : " \\quad " + LatexCharacters.inFormula(outcome));
        }

        @Override
        void symbol(ExpressionNode.Symbol symbol) {
            column += symbol.text().length();
            math.append(letters(symbol.base()));
            if (!symbol.below().isEmpty()) {
                math.append(symbol.below().stream().map(Notated::letters).collect(Collectors.joining(",", "_{", "}")));
            }
        }

        /** One Latin letter or a number as it is, with its primes; a word upright. */
        private static String letters(String text) {
            String bare = text.replace("′", "");
            boolean simple = bare.length() == 1 && Character.isLetterOrDigit(bare.charAt(0)) && bare.charAt(0) < 128
                    || !bare.isEmpty() && bare.chars().allMatch(c -> c >= '0' && c <= '9');
            return simple ? text.replace("′", "'") : LatexCharacters.inFormula(text);
        }

        @Override
        void number(ExpressionNode.Numeral number) {
            column += number.text().length();
            math.append(number.isBold() ? "\\mathbf{" : "").append(number.isNegative() ? "-" : "");
            if (number.isFraction()) {
                math.append("\\tfrac{").append(digits(number.digits())).append("}{");
                math.append(digits(number.below())).append('}');
            } else {
                math.append(number.isBlank() ? "\\underline{\\hspace{25mm}}" : digits(number.digits()));
            }
            math.append(number.isBold() ? "}" : "");
            if (!number.unit().isEmpty()) {
                math.append("\\,").append(LatexCharacters.inFormula(number.unit()));
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
            math.append(isDisplay && first ? ALIGN : " ");
            math.append(
                    switch (sign) {
                        case "≈" -> "\\approx ";
                        case "≤" -> "\\le ";
                        case "≥" -> "\\ge ";
                        default -> sign + " ";
                    });
        }

        private void carryOver(int needed) {
            if (isDisplay && isLong && roots == 0 && column + needed > LONG) {
                math.append("\\\\\n").append(math.indexOf(ALIGN) < 0 ? "" : " &\\qquad {}");
                column = 0;
            }
        }

        @Override
        void open(String name, char bracket) {
            column += name.length();
            math.append(name.isEmpty() ? "" : function(name));
            String mark = bracket == '|' ? "\\lvert " : "(";
            math.append(isLong ? mark : "\\left" + mark);
        }

        private static String function(String name) {
            boolean plain = name.chars().allMatch(c -> c < 128 && Character.isLetter(c));
            return "\\operatorname{" + (plain ? name : LatexCharacters.inFormula(name)) + "}";
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
            for (String part : words.split("(?<=,) | (?=\\()", -1)) {
                String spaced = " " + part;
                carryOver(spaced.length());
                column += spaced.length();
                math.append(LatexCharacters.inFormula(spaced));
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
