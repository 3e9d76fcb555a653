package io.github.formulationmath.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.formulationmath.document.Document.Column;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Every kind of block as plain text, as Markdown and for a spreadsheet, to the letter. */
class PlainBlocksTest {

    private static Document titled() {
        return Document.titled("T", "en");
    }

    private static Expression m() {
        return Expression.symbol("m", "");
    }

    /** What stands below the title. */
    private static String text(Document document) {
        String page = document.print(Format.TEXT);
        assertThat(page).startsWith("T\n");
        return page.substring(2);
    }

    private static String markdown(Document document) {
        String page = document.printPart(Format.MARKDOWN, 1);
        assertThat(page).startsWith("# T\n");
        return page.substring(4);
    }

    private static Document values(Expression value, String... words) {
        return titled().values(
                        Collections.nCopies(words.length + 1, Column.text("a")),
                        List.of(value),
                        List.of(List.of(words)));
    }

    @Test
    void a_document_without_a_title_begins_with_an_empty_line() {
        assertThat(Document.titled("", "en").print(Format.TEXT)).isEqualTo("\n");
        assertThat(Document.titled("T", "en").print(Format.MARKDOWN)).isEqualTo("# T\n");
    }

    /** A value of up to 30 columns sets the place of the words; a wider one stands on lines of its own. */
    @Test
    void words_stand_beside_a_value_or_below_a_wide_one() {
        assertThat(text(values(m(), "mass", "", "given"))).isEqualTo("\n  m  mass; given\n");
        Expression thirty = Expression.symbol("x".repeat(30), "");
        assertThat(text(values(thirty, "mass"))).isEqualTo("\n  " + "x".repeat(30) + "  mass\n");
        Expression wide = Expression.relation(thirty, "=", m());
        assertThat(text(values(wide, "mass"))).isEqualTo("\n  " + "x".repeat(30) + " = m\n    mass\n");
        Expression long80 =
                Expression.relation(Expression.symbol("x".repeat(70), ""), "=", Expression.symbol("y".repeat(20), ""));
        assertThat(text(values(long80, "mass")))
                .isEqualTo("\n  " + "x".repeat(70) + "\n      = " + "y".repeat(20) + "\n    mass\n");
    }

    @Test
    void a_row_of_words_begins_with_its_name_wherever_that_stands() {
        Document document = titled().table(
                        List.of(Column.text("why"), Column.name("line"), Column.text("how")),
                        List.of(List.of("so", "Wax", ""), List.of("", "Oil", "thus")));
        assertThat(text(document)).isEqualTo("\n  Wax\n    why: so\n  Oil\n    how: thus\n");
        assertThat(text(titled().table(List.of(Column.text("a"), Column.text("b")), List.of(List.of("1", "2")))))
                .isEqualTo("\n  1\n    b: 2\n");
    }

    @Test
    void a_line_to_write_on_goes_to_the_edge_of_the_page_and_has_at_least_20_columns() {
        assertThat(text(titled().writingLines(List.of("Why?", ""))))
                .isEqualTo("\nWhy? " + "_".repeat(75) + "\n\n" + "_".repeat(80) + "\n");
        assertThat(text(titled().writingLines(List.of("x".repeat(59)))))
                .isEqualTo("\n" + "x".repeat(59) + " " + "_".repeat(20) + "\n");
        assertThat(text(titled().writingLines(List.of("x".repeat(70)))))
                .isEqualTo("\n" + "x".repeat(70) + " " + "_".repeat(20) + "\n");
        assertThat(text(titled().heading("H").writingLines(List.of("")))).isEqualTo("\nH\n" + "_".repeat(80) + "\n");
    }

    /** Answers stand in a row of up to 76 columns. */
    @Test
    void answers_stand_in_a_row_if_there_is_room() {
        assertThat(text(titled().question("q").choice("1", false, "").choice("2", true, "")))
                .isEqualTo("  q\n    [ ] 1    [ ] 2\n");
        String row = "x".repeat(36) + "    " + "y".repeat(36);
        assertThat(text(asked(36, 36))).isEqualTo("  m, mass\n    " + row + "\n");
        assertThat(text(asked(36, 37)))
                .isEqualTo("  m, mass\n    " + "x".repeat(36) + "\n    " + "y".repeat(37) + "\n");
        assertThat(text(titled().question("").choice("1", false, "so").choice("2", true, "")))
                .isEqualTo("    1: so\n    2\n");
    }

    private static Document asked(int first, int second) {
        return titled().question(m(), "mass")
                .choice("x".repeat(first), false, "")
                .choice("y".repeat(second), true, "");
    }

    @Test
    void fields_stand_one_behind_the_other() {
        String blank = "_".repeat(16);
        assertThat(text(titled().fields(List.of("Made on", "by"))))
                .isEqualTo("\nMade on\u00A0" + blank + " by\u00A0" + blank + "\n");
    }

    @Test
    void a_step_has_its_words_above_it_and_its_remark_below() {
        Document step = titled().step("mass", List.of(m()), "Rounded.");
        assertThat(text(step)).isEqualTo("  mass\n    m\n    Rounded.\n");
        assertThat(markdown(step)).isEqualTo("\nmass\n\n```text\nm\n```\n\nRounded\\.\n");
        assertThat(markdown(titled().equations("", List.of(m())))).isEqualTo("\n```text\nm\n```\n");
    }

    @Test
    void a_fence_is_longer_than_the_backticks_inside() {
        Expression ticks = Expression.symbol("a````b``c", "");
        assertThat(markdown(titled().equations("", List.of(ticks)))).isEqualTo("\n`````text\na````b``c\n`````\n");
    }

    @Test
    void markdown_has_lines_to_write_on_and_questions() {
        String blank = "\\_".repeat(36);
        assertThat(markdown(titled().writingLines(List.of("Why?", ""))))
                .isEqualTo("\nWhy? " + blank + "\n\n" + blank + "\n");
        assertThat(markdown(titled().question("q").choice("1", false, "").choice("2", true, "")))
                .isEqualTo("\nq\n\n1 &emsp; **2**\n");
        assertThat(markdown(
                        titled().question(m(), "mass").choice("1", false, "so").choice("2", true, "")))
                .isEqualTo("\nm, mass\n\n- 1\\: so\n- **2**\n");
        assertThat(markdown(titled().question("").choice("1", false, ""))).isEqualTo("\n1\n");
    }

    /** Room to write on is left out where nobody can write on it. */
    @Test
    void columns_to_write_on_stand_in_html_alone() {
        Document document = titled().table(
                        List.of(Column.name("line"), Column.of("lot", Column.Use.ROOM), Column.number("g")),
                        List.of(List.of("Wax", "", "1")));
        assertThat(text(document)).isEqualTo("\nline  g\n----  -\nWax   1\n");
        assertThat(markdown(document)).isEqualTo("\n| line | g |\n| --- | --: |\n| Wax | 1 |\n");
        assertThat(document.print(Format.CSV)).isEqualTo("line,g\r\nWax,1\r\n");
        assertThat(document.print(Format.HTML)).contains("<td class=\"room\"></td>");
        Document formulas = titled().values(
                        List.of(Column.text("v"), Column.of("lot", Column.Use.ROOM), Column.name("n")),
                        List.of(Expression.symbol("x".repeat(31), "")),
                        List.of(List.of("", "mass")));
        assertThat(text(formulas)).isEqualTo("\n  " + "x".repeat(31) + "\n    mass\n");
    }

    @Test
    void documents_are_parted_by_an_empty_line() {
        Document fact = titled().fact("a", "b");
        assertThat(Document.printAll("All", List.of(fact, fact), Format.CSV)).isEqualTo("a,b\r\n\r\na,b\r\n");
        assertThat(Document.printAll("All", List.of(titled(), titled()), Format.TEXT))
                .isEqualTo("T\n\nT\n");
        assertThat(Document.printAll("All", List.of(titled(), titled()), Format.MARKDOWN))
                .isEqualTo("# T\n\n# T\n");
    }

    /** The columns of the first document are not those of the second. */
    @Test
    void a_table_is_as_wide_as_its_own_document_needs() {
        List<Column> columns = List.of(Column.name("n"), Column.number("g"));
        Document wide = titled().table(columns, List.of(List.of("a long name", "1")));
        Document narrow = titled().table(columns, List.of(List.of("x", "2")));
        assertThat(Document.printAll("All", List.of(wide, narrow), Format.TEXT)).endsWith("\nn  g\n-  -\nx  2\n");
    }

    @Test
    void a_title_stands_at_level_1_to_5() {
        assertThat(titled().printPart(Format.MARKDOWN, 1)).isEqualTo("# T\n");
        assertThat(titled().printPart(Format.MARKDOWN, 5)).isEqualTo("##### T\n");
        for (int level : new int[] {0, 6}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> titled().printPart(Format.MARKDOWN, level))
                    .withMessage("level is " + level + ": it must lie between 1 and 5");
        }
    }

    @Test
    void each_block_makes_a_document_that_says_more() {
        assertThat(titled().caution("c").fact("a", "b").fact("c", "d"))
                .isEqualTo(titled().caution("c").fact("a", "b").fact("c", "d"));
        assertThat(text(titled().caution("c").fact("a", "b").fact("cc", "d"))).isEqualTo("\n! c\n\na   b\ncc  d\n");
        assertThat(titled().hashCode())
                .isNotEqualTo(Document.titled("U", "en").hashCode())
                .isNotEqualTo(titled().paragraph("p").hashCode());
    }
}
