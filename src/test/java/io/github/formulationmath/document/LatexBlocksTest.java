package io.github.formulationmath.document;

import static io.github.formulationmath.document.Pages.below;
import static io.github.formulationmath.document.Pages.m;
import static io.github.formulationmath.document.Pages.page;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.document.Document.Column;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Each block as LaTeX, as the manuals of LaTeX, amsmath and longtable have it (from memory). */
class LatexBlocksTest {

    private static final String START = "\\section*{T}\n\n";
    private static final String HEAD_END = " \\\\\n\\hline\\noalign{\\vskip 2pt}\n\\endhead\n";

    private static Expression digits(int count) {
        return Expression.number("7".repeat(count), "");
    }

    /** What stands below the title. */
    private static String body(Document document) {
        return below(START, document.printPart(Format.LATEX, 1));
    }

    /** A column whose words are carried over, with this share of the line. */
    private static String words(String share) {
        return ">{\\raggedright\\arraybackslash}p{" + share + "\\linewidth}";
    }

    /** The kinds of the columns of a table. */
    private static String kinds(Document document) {
        String body = body(document);
        return body.substring(body.indexOf("@{}") + 3, body.indexOf("@{}}\n"));
    }

    @Test
    void headings_go_down_to_the_subparagraph_and_stay_there() {
        assertThat(body(page().heading("5 %"))).isEqualTo("\\subsection*{5 \\%}\n\n");
        assertThat(page().heading("A").printPart(Format.LATEX, 3))
                .isEqualTo("\\subsubsection*{T}\n\n\\paragraph*{A}\n\n");
        assertThat(page().heading("A").printPart(Format.LATEX, 5))
                .isEqualTo("\\subparagraph*{T}\n\n\\subparagraph*{A}\n\n");
    }

    @Test
    void a_heading_with_a_word_of_more_than_sixteen_letters_may_break_behind_its_signs() {
        assertThat(body(page().heading("of abcdefgh/jklmnop"))).isEqualTo("\\subsection*{of abcdefgh/jklmnop}\n\n");
        assertThat(body(page().heading("of abcdefgh/jklmnopq")))
                .isEqualTo("\\subsection*{\\raggedright of abcdefgh/\\allowbreak{}jklmnopq}\n\n");
    }

    @Test
    void words_are_escaped_in_every_block() {
        assertThat(body(page().paragraph(" 5 % of A & B "))).isEqualTo("5 \\% of A \\& B\n\n");
        assertThat(body(page().caution("Hot oil & steam"))).isEqualTo("\\textbf{! Hot oil \\& steam}\n\n");
        assertThat(body(page().note("Note & more", "5 %"))).isEqualTo("\\textit{Note \\& more:} 5 \\%\n\n");
    }

    @Test
    void facts_are_a_description_whose_names_may_hold_brackets() {
        assertThat(body(page().fact("Batch [A]", "400 g").fact("Loss", "1 %"))).isEqualTo("""
                        \\begin{description}
                        \\item[{Batch [A]}] 400 g
                        \\item[{Loss}] 1 \\%
                        \\end{description}

                        """);
    }

    @Test
    void fields_and_lines_are_left_to_write_on() {
        assertThat(body(page().fields(List.of("Made on", "By"))))
                .isEqualTo("Made on~" + "\\_".repeat(16) + " By~" + "\\_".repeat(16) + "\n\n");
        assertThat(body(page().writingLines(List.of("Answer in %", "")))).isEqualTo("""
                        \\par\\nobreak\\parbox[b][8mm][b]{\\linewidth}{Answer in \\%\\hrulefill}
                        \\par\\nobreak\\parbox[b][8mm][b]{\\linewidth}{\\hrulefill}

                        """);
    }

    @Test
    void a_table_repeats_its_head_on_each_page() {
        assertThat(body(page().table(
                                List.of(Column.name("line"), Column.number("mass in %")),
                                List.of(List.of("Wax & oil", "1.0"), List.of("Salt", "2.0")))))
                .isEqualTo("\\begin{longtable}{@{}" + words("0.3") + "r@{}}\n"
                        + "line & mass in \\%" + HEAD_END
                        + "Wax \\& oil & 1.0 \\\\\nSalt & 2.0 \\\\\n"
                        + "\\end{longtable}\n");
        assertThat(body(page().table(List.of(Column.text("a")), List.of())))
                .isEqualTo("\\begin{longtable}{@{}" + words("0.3") + "@{}}\na" + HEAD_END + "\\end{longtable}\n");
    }

    @Test
    void room_to_write_is_left_out_of_a_table() {
        assertThat(body(page().table(
                                List.of(Column.of("lot", Column.Use.ROOM), Column.name("line")),
                                List.of(List.of("", "Wax")))))
                .isEqualTo("\\begin{longtable}{@{}" + words("0.3") + "@{}}\nline" + HEAD_END
                        + "Wax \\\\\n\\end{longtable}\n");
    }

    @Test
    void up_to_three_columns_of_words_are_all_carried_over_and_of_more_only_names_and_long_ones() {
        List<Column> four = List.of(Column.text("a"), Column.name("b"), Column.number("c"), Column.text("d"));
        List<String> cells = List.of("x".repeat(24), "y", "1", "z".repeat(25));
        String all = words("0.3");
        assertThat(kinds(page().table(four.subList(0, 3), List.of(cells.subList(0, 3)))))
                .isEqualTo(all + all + "r");
        assertThat(kinds(page().table(four, List.of(List.of("", "", "", ""), cells))))
                .isEqualTo("l" + all + "r" + all);
    }

    @Test
    void beside_formulas_words_have_what_the_widest_formula_leaves() {
        List<Column> columns = List.of(Column.text("Value"), Column.name("Meaning"), Column.text("more"));
        List<Column> two = columns.subList(0, 2);
        assertThat(kinds(page().values(two, List.of(digits(48)), List.of(List.of("x")))))
                .isEqualTo(words("0.38") + words("0.4"));
        assertThat(kinds(page().values(two, List.of(m(), digits(49)), List.of(List.of("x"), List.of("y")))))
                .isEqualTo(words("0.54") + words("0.4"));
        assertThat(kinds(page().values(columns, List.of(digits(48)), List.of(List.of("x", "y")))))
                .isEqualTo(words("0.38") + words("0.27") + words("0.27"));
        assertThat(kinds(page().values(columns, List.of(digits(49)), List.of(List.of("x", "y")))))
                .isEqualTo(words("0.54") + words("0.2") + words("0.2"));
    }

    /** A line end of a display would end the row. */
    @Test
    void a_long_formula_in_a_table_is_carried_over_by_latex_itself() {
        Expression sum = Expression.relation(m(), "=", Expression.sum(List.of(digits(30), digits(30), digits(30))));
        String number = "7".repeat(30);
        assertThat(body(page().values(
                                List.of(Column.text("Value"), Column.name("Meaning")),
                                List.of(sum, Expression.quotient(m(), digits(1))),
                                List.of(List.of("5 %"), List.of("y")))))
                .endsWith("\\endhead\n$m = " + number + " + " + number + " + " + number + "$ & 5 \\% \\\\\n"
                        + "$\\frac{m}{7}$ & y \\\\\n\\end{longtable}\n");
    }

    @Test
    void a_row_that_begins_with_a_bracket_or_star_is_no_option_of_the_line_end_above() {
        assertThat(body(page().table(
                                List.of(Column.text("*"), Column.text("b")),
                                List.of(List.of("[ ]", "*"), List.of("x*", "[")))))
                .contains("}\n{}* & b \\\\\n", "\\endhead\n{}[ ] & * \\\\\nx* & [ \\\\\n");
    }

    @Test
    void a_word_of_more_than_24_letters_may_break_behind_a_sign_of_an_address() {
        assertThat(body(page().table(
                                List.of(Column.text("a")),
                                List.of(
                                        List.of("see abcdefgh/jklm.nop-qr_tuv"),
                                        List.of("see abcdefgh/jklm.nop-qr_tuvw")))))
                .contains(
                        "\\endhead\nsee abcdefgh/jklm.nop{-}qr\\_tuv \\\\\n",
                        "\nsee abcdefgh/\\allowbreak{}jklm.\\allowbreak{}nop{-}\\allowbreak{}qr\\_\\allowbreak{}tuvw"
                                + " \\\\\n");
    }

    @Test
    void equations_are_lined_up_below_their_words() {
        List<Expression> lines = List.of(Expression.relation(m(), "=", digits(1)), Expression.continued("=", m()));
        assertThat(body(page().step("mass in % ", lines, "5 %"))).isEqualTo("""
                        mass in \\%
                        \\begin{align*}
                        m &= 7 \\\\
                         &= m
                        \\end{align*}

                        5 \\%

                        """);
        assertThat(body(page().equations("", lines.subList(0, 1))))
                .isEqualTo("\\begin{align*}\nm &= 7\n\\end{align*}\n\n");
    }

    /** LaTeX refuses a display with an empty line in it. */
    @Test
    void without_lines_there_is_no_display() {
        assertThat(body(page().step("mass", List.of(), "5 %"))).isEqualTo("mass\n\n5 \\%\n\n");
    }

    @Test
    void answers_stand_in_a_row_unless_something_is_said_of_one() {
        assertThat(body(page().question(Expression.symbol("m", "3"), "mass in %")
                        .choice("1 %", false, "")
                        .choice("2 %", true, "")))
                .isEqualTo("$m_{3}$, mass in \\%\n\n1 \\% \\qquad\n\\textbf{2 \\%}\n\n");
        assertThat(body(page().question(m(), "mass")
                        .choice("1 %", true, "5 % off")
                        .choice("[2]", false, "")))
                .isEqualTo("""
                        $m$, mass

                        \\begin{itemize}
                        \\item[] \\textbf{1 \\%}: 5 \\% off
                        \\item[] [2]
                        \\end{itemize}

                        """);
    }

    @Test
    void a_question_in_words_has_boxes_to_tick() {
        String box = "\\fbox{\\rule{0pt}{1ex}\\rule{1ex}{0pt}}~";
        assertThat(body(page().question("Which?").choice("A", false, "").choice("B", true, "")))
                .isEqualTo("Which?\n\n" + box + "A \\qquad\n" + box + "\\textbf{B}\n\n");
        assertThat(body(page().question("").choice("A", false, ""))).isEqualTo(box + "A\n\n");
    }

    @Test
    void documents_begin_on_a_page_of_their_own() {
        List<Document> documents = new ArrayList<>(List.of(page().paragraph("a"), page().paragraph("b")));
        assertThat(Document.printAll("all", documents, Format.LATEX))
                .startsWith("\\documentclass[a4paper,fleqn]{article}\n")
                .endsWith("\\begin{document}\n" + START + "a\n\n\\newpage\n" + START + "b\n\n\\end{document}\n");
    }
}
