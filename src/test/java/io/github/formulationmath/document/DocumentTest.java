package io.github.formulationmath.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.document.Document.Column;
import io.github.formulationmath.support.HtmlChecks;
import io.github.formulationmath.support.NullTester;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Every kind of block in every format. */
class DocumentTest {

    private static final Document REPORT = Document.titled("Trial & error", "en")
            .heading("Masses")
            .paragraph("All within 1 %.")
            .table(
                    List.of(Column.name("line"), Column.text("mass")),
                    List.of(List.of("Wax", "40 g"), List.of("Oil", "159 g")));

    private static final Document SHEET = Document.titled("Sheet", "en")
            .fact("Batch", "400 g")
            .fact("Vessel", "jar")
            .heading("Phase <A>")
            .table(
                    List.of(Column.text("done"), Column.name("name"), Column.number("mass")),
                    List.of(List.of("[ ]", "水", "1.0 g"), List.of("[ ]", "Wax", "123.0 g")))
            .caution("Mind the lye.");

    private static final Document ALL = SHEET.heading("Given")
            .values(
                    List.of(Column.text("Value"), Column.name("Meaning")),
                    List.of(Expression.relation(
                            Expression.symbol("M", ""), "=", Expression.fraction("-400", "3", "g"))),
                    List.of(List.of("batch mass")))
            .heading("Working")
            .step(
                    "mass",
                    List.of(
                            Expression.relation(
                                    Expression.symbol("m", "3"),
                                    "=",
                                    Expression.product(List.of(
                                            Expression.sum(List.of(
                                                    Expression.symbol("a", ""),
                                                    Expression.minus(Expression.symbol("b", "")))),
                                            Expression.symbol("c", "")))),
                            Expression.continued("=", Expression.blank("g"))),
                    "Rounding changed nothing.")
            .note("Note", "Volumes add up.")
            .heading("Answer")
            .equations(
                    "",
                    List.of(Expression.continued(
                            "=", Expression.number("10", "g").bold())))
            .question(Expression.symbol("m", "3"), "mass")
            .choice("a) 1 g", false, "")
            .choice("b) 10 g", true, "");

    @Test
    void plain_text_reads_from_top_to_bottom() {
        assertThat(REPORT.print(Format.TEXT)).isEqualTo("""
                        Trial & error

                        Masses
                        All within 1 %.

                          Wax
                            mass: 40 g
                          Oil
                            mass: 159 g
                        """);
        assertThat(REPORT).hasToString(REPORT.print(Format.TEXT));
        assertThat(Document.titled("Alone", "en").print(Format.TEXT)).isEqualTo("Alone\n");
    }

    @Test
    void columns_of_numbers_line_up_by_what_letters_take() {
        assertThat(SHEET.print(Format.TEXT)).isEqualTo("""
                        Sheet

                        Batch   400 g
                        Vessel  jar

                        Phase <A>
                        done  name     mass
                        ----  ----  -------
                        [ ]   水      1.0 g
                        [ ]   Wax   123.0 g

                        ! Mind the lye.
                        """);
    }

    @Test
    void formulas_stand_in_text_with_the_brackets_they_need() {
        assertThat(ALL.print(Format.TEXT)).endsWith("""

                        Given
                          M = −400/3 g  batch mass

                        Working
                          mass
                            m_3 = (a − b) · c
                                = ____________ g
                            Rounding changed nothing.
                          Note: Volumes add up.

                        Answer
                            = 10 g
                          m_3, mass
                            a) 1 g    b) 10 g
                        """.replace("    = 10 g", "     = 10 g"));
    }

    @Test
    void markdown_marks_title_heading_and_tables() {
        assertThat(REPORT.print(Format.MARKDOWN))
                .startsWith("# Trial &amp; error\n")
                .containsSubsequence("## Masses", "All within 1 %", "| line | mass |", "| Wax | 40 g |");
        assertThat(ALL.print(Format.MARKDOWN))
                .contains(
                        "- **Batch:** 400 g\n- **Vessel:** jar\n\n",
                        "## Phase &lt;A&gt;\n",
                        "| done | name | mass |\n| --- | --- | --: |\n",
                        "> **!** Mind the lye\\.\n",
                        "> Note\\: Volumes add up\\.\n",
                        "```text\nm_3 = (a − b) · c\n    = ____________ g\n```\n",
                        "a\\) 1 g &emsp; **b\\) 10 g**\n");
    }

    @Test
    void html_is_a_whole_page_with_its_signs_escaped() {
        assertThat(REPORT.print(Format.HTML))
                .startsWith("<!DOCTYPE html>\n<html lang=\"en\">")
                .containsSubsequence(
                        "<title>Trial &amp; error</title>",
                        "<h1>Trial &amp; error</h1>",
                        "<h2>Masses</h2>",
                        "<p>All within 1 %.</p>",
                        "<th scope=\"row\">Wax</th><td>40 g</td>")
                .endsWith("</html>\n");
        assertThat(ALL.print(Format.HTML))
                .contains(
                        "<dl>\n<div><dt>Batch</dt><dd>400 g</dd></div>\n<div><dt>Vessel</dt><dd>jar</dd></div>\n</dl>\n",
                        "<h2>Phase &lt;A&gt;</h2>\n",
                        "<td>[ ]</td><th scope=\"row\">Wax</th><td class=\"number\">123.0 g</td>",
                        "<p class=\"caution\">Mind the lye.</p>\n",
                        "<ol>\n<li><p>mass</p>\n<p class=\"line\"><math>",
                        "<li><p><strong>Note:</strong> Volumes add up.</p></li>\n</ol>\n</section>\n",
                        "<mrow class=\"filled\"><mn>10</mn>",
                        "<li><strong>b) 10 g</strong></li>\n");
    }

    @Test
    void latex_has_a_place_for_every_block() {
        assertThat(ALL.print(Format.LATEX))
                .startsWith("\\documentclass")
                .contains(
                        "\\item[{Batch}] 400 g\n",
                        "\\subsection*{Phase \\textless{}A\\textgreater{}}",
                        "\\endhead\n{}[ ] & 水 & 1.0 g",
                        "Wax & 123.0 g \\\\\n",
                        "\\textbf{! Mind the lye.}",
                        "$M = -\\tfrac{400}{3}\\,\\text{g}$ & batch mass \\\\\n",
                        "m_{3} &= \\left(a - b\\right) \\cdot c \\\\\n",
                        "\\textit{Note:} Volumes add up.",
                        "a) 1 g \\qquad\n\\textbf{b) 10 g}")
                .endsWith("\\end{document}\n");
        assertThat(ALL.printPart(Format.LATEX, 2))
                .startsWith("\\subsection*{Sheet}")
                .doesNotContain("document");
    }

    @Test
    void csv_holds_facts_and_tables_and_the_document_says_what_it_leaves_out() {
        assertThat(SHEET.print(Format.CSV))
                .isEqualTo("Batch,400 g\r\nVessel,jar\r\n\r\ndone,name,mass\r\n[ ],水,1.0 g\r\n[ ],Wax,123.0 g\r\n");
        assertThat(SHEET.leftOut(Format.CSV)).isEqualTo("1 Caution, 1 Heading");
        assertThat(ALL.leftOut(Format.CSV)).isEqualTo("1 Caution, 2 Equations, 4 Heading, 1 Note, 1 Question");
        assertThat(ALL.print(Format.CSV)).endsWith("Value,Meaning\r\nM = −400/3 g,batch mass\r\n");
        assertThat(ALL.leftOut(Format.HTML)).isEmpty();
    }

    @Tag("long")
    @Test
    void every_page_can_be_read_by_everybody() {
        for (Document document :
                List.of(REPORT, SHEET, ALL, Document.titled("عنوان", "ar").paragraph("فقرة"))) {
            HtmlChecks.assertAccessible(document.print(Format.HTML));
        }
    }

    @ParameterizedTest
    @CsvSource({"en, false", "de-AT, false", "ar, true", "fa-IR, true", "he, true", "zh, false"})
    void the_language_tells_the_direction(String language, boolean rightToLeft) {
        Document document = Document.titled("t", language);
        assertThat(document.isRightToLeft()).isEqualTo(rightToLeft);
        assertThat(document.language()).isEqualTo(language);
        assertThat(document.print(Format.HTML))
                .contains(
                        rightToLeft
                                ? "<html lang=\"" + language + "\" dir=\"rtl\">"
                                : "<html lang=\"" + language + "\">");
    }

    @ParameterizedTest
    @EnumSource(Format.class)
    void two_documents_stand_one_behind_the_other(Format format) {
        String both = Document.printAll("Both", List.of(REPORT, SHEET), format);
        assertThat(both).containsSubsequence("159 g", "123");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Document.printAll("None", List.of(), format))
                .withMessage("documents is empty: give at least one");
    }

    @Test
    void texts_are_cleaned_when_a_block_is_made() {
        Document hostile = Document.titled("a\nb", "en")
                .heading("\u202ex")
                .fact("n\u2067", "ماء")
                .paragraph("one\ntwo");
        for (Format format : List.of(Format.TEXT, Format.MARKDOWN, Format.HTML)) {
            assertThat(hostile.print(format))
                    .contains("a b", "\ufffdx", "n\ufffd", "\u2068ماء\u2069", "one two")
                    .doesNotContainPattern("[\u202a-\u202e\u2066\u2067]");
        }
        assertThat(hostile.title()).isEqualTo("a b");
    }

    @Test
    void documents_are_equal_if_they_say_the_same() {
        Document again = Document.titled("Trial & error", "en").followedBy(REPORT);
        assertThat(again).isEqualTo(REPORT).hasSameHashCodeAs(REPORT);
        assertThat(again.paragraph("more")).isNotEqualTo(REPORT);
        assertThat(Document.titled("Other", "en").followedBy(REPORT)).isNotEqualTo(REPORT);
        assertThat(Document.titled("Trial & error", "de").followedBy(REPORT)).isNotEqualTo(REPORT);
    }

    @Test
    void null_is_refused_by_name() throws IllegalAccessException {
        Map<Class<?>, Object> samples = Map.of(
                String.class,
                "a",
                List.class,
                List.of(),
                Format.class,
                Format.TEXT,
                Document.class,
                REPORT,
                Expression.class,
                Expression.symbol("m", ""),
                int.class,
                1,
                boolean.class,
                true,
                Column.Use.class,
                Column.Use.ROOM);
        assertThat(new NullTester(samples).test(Document.class, REPORT)).isGreaterThan(30);
        assertThat(new NullTester(samples).test(Expression.class, Expression.number("1", "g")))
                .isGreaterThan(20);
        assertThat(new NullTester(samples).test(Column.class, Column.text("a"))).isEqualTo(5);
    }

    @Test
    void what_does_not_fit_together_is_refused() {
        assertThatThrownBy(
                        () -> REPORT.table(List.of(Column.text("a"), Column.text("b")), List.of(List.of("only one"))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("has 1 cells for 2 columns");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> REPORT.values(List.of(Column.text("a")), List.of(), List.of(List.of("b"))))
                .withMessage("values has 0 formulas for 1 rows: give one for each");
        assertThatIllegalStateException()
                .isThrownBy(() -> REPORT.choice("a", true, ""))
                .withMessage("no question stands before the answer a");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Expression.sum(List.of()))
                .withMessage("terms is empty: give at least one");
        assertThatIllegalArgumentException().isThrownBy(() -> REPORT.printPart(Format.HTML, 0));
        assertThat(REPORT.table(List.of(Column.text("a")), List.of()).print(Format.TEXT))
                .startsWith(REPORT.print(Format.TEXT));
    }

    @Test
    void a_part_has_a_title_of_one_of_five_levels() {
        Document document = Document.titled("T", "en");
        assertThat(document.printPart(Format.MARKDOWN, 1)).isEqualTo("# T\n");
        assertThat(document.printPart(Format.MARKDOWN, 5)).isEqualTo("##### T\n");
        for (int level : new int[] {0, 6}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> document.printPart(Format.MARKDOWN, level))
                    .withMessage("level is " + level + ": it must lie between 1 and 5");
        }
    }

    @Test
    void a_table_without_columns_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> REPORT.table(List.of(), List.of()))
                .withMessage("columns is empty: give at least one");
    }

    @Test
    void what_documents_say_goes_into_their_hash() {
        assertThat(Document.titled("T", "en").paragraph("a").hashCode())
                .isNotEqualTo(Document.titled("T", "en").paragraph("b").hashCode())
                .isNotEqualTo(Document.titled("U", "en").paragraph("a").hashCode())
                .isNotEqualTo(Document.titled("T", "de").paragraph("a").hashCode());
    }

    @Test
    void spreadsheets_have_one_empty_line_between_parts_and_no_room_to_write() {
        Document room = Document.titled("T", "en")
                .heading("left out")
                .fact("Batch", "=400 g")
                .paragraph("left out")
                .table(
                        List.of(Column.name("line"), Column.of("lot", Column.Use.ROOM), Column.number("mass")),
                        List.of(List.of("\u2068=ماء\u2069", "", "-1 g")));
        String csv = "Batch,'=400 g\r\n\r\nline,mass\r\n'=ماء,-1 g\r\n";
        assertThat(room.print(Format.CSV)).isEqualTo(csv);
        assertThat(Document.printAll("all", List.of(room, room), Format.CSV)).isEqualTo(csv + "\r\n" + csv);
    }
}
