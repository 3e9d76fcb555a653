package io.github.formulationmath.document;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.document.Document.Column;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Every kind of block as LaTeX, and how the columns of a table share the line. */
class LatexBlocksTest {

    private static final String TITLE = "\\section*{T}\n\n";

    private static Document titled() {
        return Document.titled("T", "en");
    }

    private static Expression m() {
        return Expression.symbol("m", "");
    }

    private static String body(Document document) {
        String page = document.printPart(Format.LATEX, 1);
        assertThat(page).startsWith(TITLE);
        return page.substring(TITLE.length());
    }

    private static String words(String share) {
        return ">{\\raggedright\\arraybackslash}p{" + share + "\\linewidth}";
    }

    /** The kinds of the columns of a table with one row. */
    private static String kinds(List<Column> columns, List<String> cells) {
        return kindsOf(titled().table(columns, List.of(cells)));
    }

    private static String kindsOf(Document document) {
        String page = body(document);
        String begin = "\\begin{longtable}{@{}";
        return page.substring(page.indexOf(begin) + begin.length(), page.indexOf("@{}}\n"));
    }

    @Test
    void a_table_repeats_its_head_on_each_page() {
        assertThat(body(titled().table(
                                List.of(Column.name("a & b"), Column.number("mass")),
                                List.of(List.of("Wax", "40 %"), List.of("* Oil", "1 g")))))
                .isEqualTo("\\begin{longtable}{@{}" + words("0.3") + "r@{}}\na \\& b & mass \\\\\n"
                        + "\\hline\\noalign{\\vskip 2pt}\n\\endhead\nWax & 40 \\% \\\\\n{}* Oil & 1 g \\\\\n"
                        + "\\end{longtable}\n");
    }

    @Test
    void among_more_than_three_columns_only_names_and_long_cells_are_carried_over() {
        Column text = Column.text("a");
        List<String> row = List.of("Wax", "1 g", "x".repeat(24), "y".repeat(25));
        assertThat(kinds(List.of(Column.name("n"), Column.number("m"), text, text), row))
                .isEqualTo(words("0.3") + "rl" + words("0.3"));
        assertThat(kinds(List.of(text, text, text), row.subList(0, 3)))
                .isEqualTo(words("0.3").repeat(3));
    }

    /** The more columns and the wider the values, the less is left for words. */
    @Test
    void words_share_what_the_values_leave_of_the_line() {
        assertThat(values(2, 48)).isEqualTo(words("0.38") + words("0.4"));
        assertThat(values(3, 48)).isEqualTo(words("0.38") + words("0.27").repeat(2));
        assertThat(values(3, 49)).isEqualTo(words("0.54") + words("0.2").repeat(2));
        assertThat(values(2, 49)).isEqualTo(words("0.54") + words("0.4"));
    }

    private static String values(int columns, int width) {
        List<Column> all = new ArrayList<>(Collections.nCopies(columns, Column.text("a")));
        Expression value = Expression.symbol("x", "1".repeat(width - 2));
        return kindsOf(titled().values(all, List.of(value), List.of(Collections.nCopies(columns - 1, "b"))));
    }

    @Test
    void a_value_stands_as_a_formula_in_its_row() {
        Document document = titled().values(
                        List.of(Column.text("Value"), Column.name("Meaning")),
                        List.of(Expression.relation(m(), "=", m())),
                        List.of(List.of("mass")));
        assertThat(body(document)).contains("\\endhead\n$m = m$ & mass \\\\\n");
    }

    @Test
    void a_word_of_more_than_24_letters_may_go_on_below_behind_a_sign_of_it() {
        String first = "x".repeat(12) + "/";
        assertThat(cell(first + "y".repeat(11))).isEqualTo(first + "y".repeat(11));
        assertThat(cell("see " + first + "y".repeat(12))).isEqualTo("see " + first + "\\allowbreak{}" + "y".repeat(12));
    }

    private static String cell(String text) {
        String page = body(titled().table(List.of(Column.text("a")), List.of(List.of(text))));
        return page.substring(page.indexOf("\\endhead\n") + 9, page.indexOf(" \\\\\n\\end{longtable}"));
    }

    @Test
    void a_heading_with_a_word_of_more_than_16_letters_is_not_stretched() {
        assertThat(body(titled().heading("of " + "x".repeat(16))))
                .isEqualTo("\\subsection*{of " + "x".repeat(16) + "}\n\n");
        assertThat(body(titled().heading("of " + "x".repeat(12) + ".yyyy")))
                .isEqualTo("\\subsection*{\\raggedright of " + "x".repeat(12) + ".\\allowbreak{}yyyy}\n\n");
    }

    @Test
    void equations_stand_behind_their_words_without_an_empty_line() {
        assertThat(body(titled().step(" mass ", List.of(m(), m()), "Rounded & done.")))
                .isEqualTo("mass\n\\begin{align*}\nm \\\\\nm\n\\end{align*}\n\nRounded \\& done.\n\n");
        assertThat(body(titled().equations("", List.of(m())))).isEqualTo("\\begin{align*}\nm\n\\end{align*}\n\n");
    }

    @Test
    void facts_cautions_notes_and_paragraphs_have_their_marks() {
        assertThat(body(titled().fact("a_b", "1 %")
                        .caution("Mind 5 %.")
                        .note("N", "n")
                        .paragraph(" p ")))
                .isEqualTo("\\begin{description}\n\\item[{a\\_b}] 1 \\%\n\\end{description}\n\n"
                        + "\\textbf{! Mind 5 \\%.}\n\n\\textit{N:} n\n\np\n\n");
    }

    @Test
    void lines_to_write_on_are_kept_with_what_stands_above() {
        String rule = "\\hrulefill}\n";
        assertThat(body(titled().writingLines(List.of("50 %", ""))))
                .isEqualTo("\\par\\nobreak\\parbox[b][8mm][b]{\\linewidth}{50 \\%" + rule
                        + "\\par\\nobreak\\parbox[b][8mm][b]{\\linewidth}{" + rule + "\n");
    }

    @Test
    void fields_stand_one_behind_the_other() {
        String blank = "~" + "\\_".repeat(16);
        assertThat(body(titled().fields(List.of("Made on", "by"))))
                .isEqualTo("Made on" + blank + " by" + blank + "\n\n");
    }

    @Test
    void answers_have_boxes_where_words_ask_and_stand_below_one_another_where_something_is_said_of_them() {
        String box = "\\fbox{\\rule{0pt}{1ex}\\rule{1ex}{0pt}}~";
        assertThat(body(titled().question("q").choice("1", false, "").choice("2", true, "")))
                .isEqualTo("q\n\n" + box + "1 \\qquad\n" + box + "\\textbf{2}\n\n");
        assertThat(body(titled().question("").choice("1", false, ""))).isEqualTo(box + "1\n\n");
        assertThat(body(titled().question(m(), "mass").choice("1", false, ""))).isEqualTo("$m$, mass\n\n1\n\n");
        assertThat(body(titled().question(m(), "mass").choice("1", false, "so").choice("2", true, "")))
                .isEqualTo("$m$, mass\n\n\\begin{itemize}\n\\item[] 1: so\n\\item[] \\textbf{2}\n\\end{itemize}\n\n");
    }

    @Test
    void each_document_begins_a_page() {
        assertThat(Document.printAll("All", List.of(titled(), titled()), Format.LATEX))
                .endsWith("\\begin{document}\n" + TITLE + "\\newpage\n" + TITLE + "\\end{document}\n");
    }

    @Test
    void words_in_a_formula_keep_their_signs() {
        Expression less = Expression.relation(m(), "<", m()).judged("50 % ≤ µ_x");
        assertThat(body(titled().equations("", List.of(less))))
                .contains("m &< m \\quad \\text{50 }\\%\\text{ }{\\le}\\text{ }{\\mu}\\_\\text{x}\n");
    }
}
