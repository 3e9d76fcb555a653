package io.github.formulationmath.document;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.document.Document.Column;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every kind of block as HTML, to the letter: sections, lists and tables begin and end where they should. */
class HtmlBlocksTest {

    private static final String M = "<math><mi>m</mi></math>";

    private static Document titled() {
        return Document.titled("T & U", "en");
    }

    private static Expression m() {
        return Expression.symbol("m", "");
    }

    /** The article behind its title. */
    private static String body(Document document) {
        String page = document.printPart(Format.HTML, 1);
        String start = "<article lang=\"en\">\n<h1>T &amp; U</h1>\n";
        assertThat(page).startsWith(start).endsWith("</article>\n");
        return page.substring(start.length(), page.length() - "</article>\n".length());
    }

    private static Document table(Column... columns) {
        return titled().heading("Phase \"A\"")
                .table(List.of(columns), List.of(Collections.nCopies(columns.length, "1 g")));
    }

    @Test
    void facts_and_paragraphs_stand_one_behind_the_other() {
        assertThat(body(titled().fact("Batch", "< 400 g").fact("Vessel", "jar").paragraph("All & well.")))
                .isEqualTo("<dl>\n<div><dt>Batch</dt><dd>&lt; 400 g</dd></div>\n"
                        + "<div><dt>Vessel</dt><dd>jar</dd></div>\n</dl>\n<p>All &amp; well.</p>\n");
    }

    @Test
    void a_section_ends_before_the_next_before_a_caution_and_at_the_end() {
        assertThat(body(titled().heading("A")
                        .paragraph("a")
                        .heading("B")
                        .caution("Mind it.")
                        .heading("C")))
                .isEqualTo("<section>\n<h2>A</h2>\n<p>a</p>\n</section>\n<section>\n<h2>B</h2>\n</section>\n"
                        + "<p class=\"caution\">Mind it.</p>\n<section>\n<h2>C</h2>\n</section>\n");
    }

    @Test
    void steps_and_notes_are_one_list_with_their_formulas_and_remarks() {
        Document steps = titled().step(
                        "mass", List.of(Expression.relation(m(), "=", m()), Expression.continued("=", m())), "Rounded.")
                .note("Note", "Volumes add up.")
                .step("", List.of(Expression.relation(m(), "<", m()).judged("holds")), "");
        String equals = "<mo form=\"infix\">=</mo><mi>m</mi></math></p>\n";
        assertThat(body(steps))
                .isEqualTo("<ol>\n<li><p>mass</p>\n<p class=\"line\"><math><mi>m</mi>" + equals
                        + "<p class=\"line next\"><math>" + equals + "<p>Rounded.</p>\n</li>\n"
                        + "<li><p><strong>Note:</strong> Volumes add up.</p></li>\n"
                        + "<li><p class=\"line\"><math><mi>m</mi><mo form=\"infix\">&lt;</mo><mi>m</mi></math>:"
                        + " <strong>holds</strong></p>\n</li>\n</ol>\n");
    }

    @Test
    void a_list_of_steps_ends_before_whatever_is_no_step() {
        Document note = titled().note("Note", "n");
        String list = "<ol>\n<li><p><strong>Note:</strong> n</p></li>\n</ol>\n";
        List<Column> columns = List.of(Column.text("a"));
        assertThat(body(note.paragraph("p"))).isEqualTo(list + "<p>p</p>\n");
        assertThat(body(note.fact("a", "b"))).startsWith(list + "<dl>");
        assertThat(body(note.fields(List.of("a")))).startsWith(list + "<div class=\"fields\">");
        assertThat(body(note.table(columns, List.of()))).startsWith(list + "<table>");
        assertThat(body(note.equations("e", List.of(m())))).startsWith(list + "<p>e</p>");
        assertThat(body(note.writingLines(List.of("a")))).startsWith(list + "<div class=\"write\">");
        assertThat(body(note.question("q"))).startsWith(list + "<p>q</p>");
        assertThat(body(note.caution("c"))).startsWith(list + "<p class=\"caution\">");
        assertThat(body(note)).isEqualTo(list);
    }

    @Test
    void equations_by_themselves_are_no_item_of_a_list() {
        assertThat(body(titled().equations("", List.of(m())))).isEqualTo("<p class=\"line\">" + M + "</p>\n");
        assertThat(body(titled().equations("so", List.of(m()))))
                .isEqualTo("<p>so</p>\n<p class=\"line\">" + M + "</p>\n");
    }

    @Test
    void a_table_has_a_head_and_names_its_rows() {
        Document document = titled().table(
                        List.of(Column.name("line"), Column.number("mass"), Column.text("<why>")),
                        List.of(List.of("Wax", "40 g", "&"), List.of(" ", "1 g", "")));
        assertThat(body(document))
                .isEqualTo("<table>\n<thead>\n<tr><th scope=\"col\">line</th>"
                        + "<th scope=\"col\" class=\"number\">mass</th><th scope=\"col\">&lt;why&gt;</th></tr>\n"
                        + "</thead>\n<tbody>\n"
                        + "<tr><th scope=\"row\">Wax</th><td class=\"number\">40 g</td><td>&amp;</td></tr>\n"
                        + "<tr><td> </td><td class=\"number\">1 g</td><td></td></tr>\n</tbody>\n</table>\n");
    }

    @Test
    void a_table_of_values_has_a_formula_in_the_first_cell_of_each_row() {
        Document document = titled().values(
                        List.of(Column.text("Value"), Column.name("Meaning")), List.of(m()), List.of(List.of("mass")));
        assertThat(body(document))
                .endsWith("<tbody>\n<tr><td>" + M + "</td><th scope=\"row\">mass</th></tr>\n</tbody>\n</table>\n");
    }

    @Test
    void a_table_of_more_than_four_columns_can_be_moved_sideways() {
        Column text = Column.text("a");
        assertThat(body(table(text, text, text, text))).doesNotContain("scroll");
        assertThat(body(table(text, text, text, text, text)))
                .contains(
                        "</h2>\n<div class=\"scroll\" role=\"region\" tabindex=\"0\" aria-label=\"Phase &quot;A&quot;\">"
                                + "\n<table>\n<thead>")
                .endsWith("</table>\n</div>\n</section>\n");
    }

    /** The name of a row is followed on a narrow page by what the columns of details say of it. */
    @Test
    void details_go_below_the_name_of_a_row() {
        Document document = titled().table(
                        List.of(Column.name("line"), Column.of("share", Column.Use.DETAIL), detail("lot")),
                        List.of(List.of("Wax", "2.5 %", "<7>")));
        assertThat(body(document))
                .contains(
                        "<tr><th scope=\"col\" data-more=\"share · lot\">line</th><th scope=\"col\" class=\"number"
                                + " detail\">share</th>",
                        "<tr><th scope=\"row\" data-more=\"2.5\u00A0% · &lt;7&gt;\">Wax</th><td class=\"number"
                                + " detail\">2.5 %</td>");
    }

    private static Column detail(String name) {
        return Column.of(name, Column.Use.DETAIL);
    }

    /** Cells and head decide how wide a column is: in the table and in the others of the same name. */
    @Test
    void a_table_to_work_with_has_columns_of_the_same_width_in_each_phase() {
        List<Column> columns = List.of(
                Column.of("done", Column.Use.TICK),
                Column.name("name"),
                Column.of("mass", Column.Use.READING),
                Column.text("why"),
                Column.text("remark"),
                Column.of("lot no", Column.Use.ROOM));
        String page = titled().table(columns, List.of(List.of("", "Wax", "10.0 g", "so", "x".repeat(30), "")))
                .table(columns, List.of(List.of("", "Oil", "123.0 g", "so-so", "", "")))
                .table(columns, List.of())
                .printPart(Format.HTML, 1);
        String work = "<table class=\"work\">\n<colgroup><col class=\"tick\"" + width(2, 4) + "/><col/>"
                + "<col class=\"number reading\"" + width(7, 4) + "/><col " + width(5, 3) + "/><col " + width(10, 6)
                + "/><col class=\"room\"/></colgroup>\n<thead>\n";
        assertThat(page.split(java.util.regex.Pattern.quote(work), -1)).hasSize(4);
        assertThat(page)
                .startsWith("<article class=\"bench\" lang=\"en\">\n")
                .contains("<td class=\"tick\"><span class=\"box\">☐</span></td><th scope=\"row\">Wax</th>")
                .contains("<th scope=\"col\" class=\"tick\">done</th>")
                .contains("<td class=\"room\"></td>");
    }

    private static String width(int cells, int head) {
        return " style=\"width: calc(max(var(--size, 1) * " + cells + "ch, " + head + "ch * 0.95) + 0.7em)\"";
    }

    @ParameterizedTest
    @CsvSource({"lot, false", "lotcode, false", "lotcodes, true", "lot code, false", "lot-codes, false"})
    void room_to_write_on_is_widened_by_a_word_of_more_than_seven_letters(String name, boolean widened) {
        String page = table(Column.text("a"), Column.of(name, Column.Use.ROOM)).printPart(Format.HTML, 1);
        assertThat(page).contains("<col class=\"room\"" + (widened ? width(1, 8) : "") + "/></colgroup>");
    }

    /** A word of the head is wider than the cells; a number is given one column if there is no row. */
    @Test
    void a_head_is_never_narrower_than_its_longest_word() {
        List<Column> columns = List.of(Column.text("because of"), Column.number("g"), Column.of("", Column.Use.ROOM));
        assertThat(titled().table(columns, List.of()).printPart(Format.HTML, 1))
                .contains("<col " + width(7, 7) + "/><col class=\"number\"" + width(1, 1) + "/>");
    }

    @Test
    void fields_stand_side_by_side() {
        assertThat(body(titled().fields(List.of("Made on", "Made by"))))
                .isEqualTo("<div class=\"fields\">\n<div>Made on</div>\n<div>Made by</div>\n</div>\n");
    }

    @Test
    void a_section_with_lines_to_write_on_is_a_task() {
        String lines = "<div class=\"write\">\n<div>Why?</div>\n<div></div>\n</div>\n";
        List<String> labels = List.of("Why?", "");
        assertThat(body(titled().writingLines(labels))).isEqualTo(lines);
        assertThat(body(titled().heading("A")
                        .heading("B")
                        .writingLines(labels)
                        .writingLines(labels)
                        .heading("C")))
                .isEqualTo("<section>\n<h2>A</h2>\n</section>\n<section class=\"task\">\n<h2>B</h2>\n" + lines + lines
                        + "</section>\n<section>\n<h2>C</h2>\n</section>\n");
        assertThat(body(titled().heading("A").writingLines(labels).heading("B").writingLines(labels)))
                .contains("<section class=\"task\">\n<h2>A</h2>", "<section class=\"task\">\n<h2>B</h2>");
    }

    @Test
    void a_question_in_words_has_boxes_or_answers_below_one_another() {
        Document asked = titled().question("How much?").choice("1 g", false, "").choice("2 g", true, "");
        assertThat(body(asked))
                .isEqualTo("<p>How much?</p>\n<ul class=\"row boxes\">\n<li>1 g</li>\n"
                        + "<li><strong>2 g</strong></li>\n</ul>\n");
        assertThat(body(asked.choice("3 g", false, "too much")))
                .startsWith("<p>How much?</p>\n<ul>\n<li>1 g</li>\n")
                .endsWith("<li>3 g: too much</li>\n</ul>\n");
        assertThat(body(titled().question("").choice("1 g", false, "")))
                .isEqualTo("<ul class=\"row boxes\">\n<li>1 g</li>\n</ul>\n");
    }

    @Test
    void a_question_for_a_value_is_an_item_with_its_symbol() {
        Document asked = titled().note("Note", "n").question(m(), "mass & more").choice("1 g", false, "");
        assertThat(body(asked))
                .isEqualTo("<ol>\n<li><p><strong>Note:</strong> n</p></li>\n<li><p>" + M + ", mass &amp; more</p>\n"
                        + "<ul class=\"row\">\n<li>1 g</li>\n</ul></li>\n</ol>\n");
        assertThat(body(asked.choice("2 g", true, "right")))
                .contains("<ul>\n<li>1 g</li>\n<li><strong>2 g</strong>: right");
    }

    @Test
    void documents_on_one_page_follow_each_other_as_articles() {
        String page = Document.printAll("All", List.of(titled(), titled()), Format.HTML);
        assertThat(page).contains("<h1>T &amp; U</h1>\n</article>\n<article lang=\"en\">\n<h1>");
    }
}
