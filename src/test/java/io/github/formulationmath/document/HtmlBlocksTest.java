package io.github.formulationmath.document;

import static io.github.formulationmath.document.Pages.m;
import static io.github.formulationmath.document.Pages.page;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.document.Document.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** Each block as HTML: the elements it stands for, and where lists and sections begin and end. */
class HtmlBlocksTest {

    private static final String START = "<article lang=\"en\">\n<h1>T</h1>\n";
    private static final String END = "</article>\n";
    private static final String M = "<math><mi>m</mi></math>";

    /** What stands below the title. */
    private static String body(Document document) {
        String part = document.printPart(Format.HTML, 1);
        assertThat(part).startsWith(START).endsWith(END);
        return part.substring(START.length(), part.length() - END.length());
    }

    @Test
    void a_title_opens_an_article_in_its_language_and_headings_are_one_level_deeper() {
        assertThat(page().printPart(Format.HTML, 1)).isEqualTo(START + END);
        assertThat(Document.titled("A < B", "ar").heading("C").printPart(Format.HTML, 5))
                .isEqualTo("<article lang=\"ar\" dir=\"rtl\">\n<h5>A &lt; B</h5>\n"
                        + "<section>\n<h6>C</h6>\n</section>\n</article>\n");
    }

    @Test
    void a_heading_ends_the_section_before_it_and_begins_one() {
        assertThat(body(page().heading("A").paragraph("x > 1").heading("B"))).isEqualTo("""
                        <section>
                        <h2>A</h2>
                        <p>x &gt; 1</p>
                        </section>
                        <section>
                        <h2>B</h2>
                        </section>
                        """);
    }

    @Test
    void a_caution_stands_outside_the_section_above_it() {
        assertThat(body(page().heading("A").caution("Hot oil & steam"))).isEqualTo("""
                        <section>
                        <h2>A</h2>
                        </section>
                        <p class="caution">Hot oil &amp; steam</p>
                        """);
    }

    @Test
    void facts_are_one_list_of_terms() {
        assertThat(body(page().fact("Batch", "400 g").fact("Loss", "< 1 %"))).isEqualTo("""
                        <dl>
                        <div><dt>Batch</dt><dd>400 g</dd></div>
                        <div><dt>Loss</dt><dd>&lt; 1 %</dd></div>
                        </dl>
                        """);
    }

    @Test
    void fields_are_blanks_with_their_names() {
        assertThat(body(page().fields(List.of("Made on", "Lot & notes")))).isEqualTo("""
                        <div class="fields">
                        <div>Made on</div>
                        <div>Lot &amp; notes</div>
                        </div>
                        """);
    }

    @Test
    void a_section_with_lines_to_write_on_is_a_task_which_is_said_once() {
        assertThat(body(page().heading("A")
                        .writingLines(List.of("Answer", ""))
                        .writingLines(List.of("Check"))
                        .heading("B")
                        .paragraph("no task")))
                .isEqualTo("""
                        <section class="task">
                        <h2>A</h2>
                        <div class="write">
                        <div>Answer</div>
                        <div></div>
                        </div>
                        <div class="write">
                        <div>Check</div>
                        </div>
                        </section>
                        <section>
                        <h2>B</h2>
                        <p>no task</p>
                        </section>
                        """);
        assertThat(body(page().heading("A")
                        .writingLines(List.of("a"))
                        .heading("B")
                        .writingLines(List.of("b"))))
                .containsSubsequence("<section class=\"task\">\n<h2>A</h2>", "<section class=\"task\">\n<h2>B</h2>");
    }

    @Test
    void lines_outside_of_a_section_mark_none() {
        assertThat(body(page().writingLines(List.of("a")))).isEqualTo("<div class=\"write\">\n<div>a</div>\n</div>\n");
        assertThat(body(page().heading("A").caution("c").writingLines(List.of("a"))))
                .startsWith("<section>\n<h2>A</h2>\n</section>\n<p class=\"caution\">");
    }

    @Test
    void steps_notes_and_questions_about_a_symbol_are_items_of_one_list() {
        Expression line = Expression.relation(m(), "=", Expression.number("10", "g"));
        String arithmetic =
                "<math><mi>m</mi><mo form=\"infix\">=</mo><mrow><mn>10</mn><mtext>\u00A0g</mtext></mrow>" + "</math>";
        assertThat(body(page().step("mass", List.of(line), "exact")
                        .note("Note", "a < b")
                        .question(m(), "mass & unit")
                        .choice("1 g", false, "")
                        .choice("10 g", true, "")
                        .step("", List.of(line), "")))
                .isEqualTo("<ol>\n"
                        + "<li><p>mass</p>\n<p class=\"line\">" + arithmetic + "</p>\n<p>exact</p>\n</li>\n"
                        + "<li><p><strong>Note:</strong> a &lt; b</p></li>\n"
                        + "<li><p>" + M + ", mass &amp; unit</p>\n<ul class=\"row\">\n<li>1 g</li>\n"
                        + "<li><strong>10 g</strong></li>\n</ul></li>\n"
                        + "<li><p class=\"line\">" + arithmetic + "</p>\n</li>\n"
                        + "</ol>\n");
    }

    @Test
    void every_other_block_ends_the_list_of_steps() {
        String list = "<ol>\n<li><p><strong>N:</strong> t</p></li>\n</ol>\n";
        List<Column> columns = List.of(Column.name("a"));
        List<UnaryOperator<Document>> others = List.of(
                document -> document,
                document -> document.heading("h"),
                document -> document.paragraph("p"),
                document -> document.caution("c"),
                document -> document.fact("n", "v"),
                document -> document.fields(List.of("f")),
                document -> document.table(columns, List.of()),
                document -> document.equations("", List.of(m())),
                document -> document.writingLines(List.of("l")),
                document -> document.question("q"));
        List<String> bodies = new ArrayList<>();
        others.forEach(other -> bodies.add(body(other.apply(page().note("N", "t")))));
        assertThat(bodies).allMatch(body -> body.startsWith(list)).doesNotHaveDuplicates();
    }

    @Test
    void equations_by_themselves_are_no_items_and_leave_out_what_is_empty() {
        assertThat(body(page().equations("a & b", List.of(m()))))
                .isEqualTo("<p>a &amp; b</p>\n<p class=\"line\">" + M + "</p>\n");
        assertThat(body(page().equations("", List.of(m())))).isEqualTo("<p class=\"line\">" + M + "</p>\n");
        assertThat(body(page().equations("alone", List.of()))).isEqualTo("<p>alone</p>\n");
    }

    @Test
    void a_line_that_goes_on_stands_further_in_and_an_outcome_is_strong() {
        String m = "<mi>m</mi>";
        assertThat(body(page().equations(
                                "",
                                List.of(
                                        Expression.relation(m(), "=", m()),
                                        Expression.continued("=", m()).judged("in < range")))))
                .isEqualTo("<p class=\"line\"><math>" + m + "<mo form=\"infix\">=</mo>" + m + "</math></p>\n"
                        + "<p class=\"line next\"><math><mo form=\"infix\">=</mo>" + m
                        + "</math>: <strong>in &lt; range</strong></p>\n");
    }

    @Test
    void answers_stand_in_a_row_unless_something_is_said_of_one() {
        assertThat(body(page().question(m(), "mass").choice("1 g", false, "too low")))
                .isEqualTo("<ol>\n<li><p>" + M + ", mass</p>\n<ul>\n<li>1 g: too low</li>\n</ul></li>\n</ol>\n");
    }

    @Test
    void a_question_in_words_has_boxes_to_tick() {
        assertThat(body(page().question("Which?").choice("A & B", true, "").choice("C", false, "")))
                .isEqualTo("""
                        <p>Which?</p>
                        <ul class="row boxes">
                        <li><strong>A &amp; B</strong></li>
                        <li>C</li>
                        </ul>
                        """);
        assertThat(body(page().question("").choice("A", false, "x < y")))
                .isEqualTo("<ul>\n<li>A: x &lt; y</li>\n</ul>\n");
    }

    @Test
    void a_table_has_a_head_and_a_row_is_named_by_its_name() {
        assertThat(body(page().table(
                                List.of(Column.text("use"), Column.name("line"), Column.number("mass & unit")),
                                List.of(List.of("oil", "Wax", "1.0 g"), List.of("", " ", "< 1 g")))))
                .isEqualTo("""
                        <table>
                        <thead>
                        <tr><th scope="col">use</th><th scope="col">line</th><th scope="col" class="number">mass &amp; unit</th></tr>
                        </thead>
                        <tbody>
                        <tr><td>oil</td><th scope="row">Wax</th><td class="number">1.0 g</td></tr>
                        <tr><td></td><td> </td><td class="number">&lt; 1 g</td></tr>
                        </tbody>
                        </table>
                        """);
    }

    @Test
    void a_table_of_more_than_four_columns_can_be_moved_sideways_and_is_named_by_its_section() {
        List<Column> five = new ArrayList<>();
        for (String name : new String[] {"a", "b", "c", "d", "e"}) {
            five.add(Column.text(name));
        }
        assertThat(body(page().table(five.subList(0, 4), List.of())))
                .startsWith("<table>\n")
                .endsWith("</table>\n");
        String region = "<div class=\"scroll\" role=\"region\" tabindex=\"0\" aria-label=\"";
        assertThat(body(page().table(five, List.of())))
                .startsWith(region + "T\">\n<table>\n")
                .endsWith("</table>\n</div>\n");
        assertThat(body(page().heading("A \"&\" B").table(five, List.of())))
                .contains(region + "A &quot;&amp;&quot; B\">\n<table>\n");
    }

    @Test
    void a_formula_takes_the_first_cell_of_its_row_and_may_go_on_below_at_its_sign() {
        Expression value = Expression.relation(m(), "=", Expression.number("10", "g"));
        assertThat(body(page().values(
                                List.of(Column.text("Value"), Column.name("Meaning")),
                                List.of(value),
                                List.of(List.of("batch")))))
                .contains("<tbody>\n<tr><td>" + M + "<wbr/><math><mo form=\"infix\">=</mo><mrow><mn>10</mn>"
                        + "<mtext>\u00A0g</mtext></mrow></math></td><th scope=\"row\">batch</th></tr>\n</tbody>\n");
    }

    @Test
    void a_table_with_room_to_write_is_one_of_a_bench() {
        Document bench = page().table(
                        List.of(
                                Column.name("line"),
                                Column.of("to read", Column.Use.READING),
                                Column.of("share", Column.Use.DETAIL),
                                Column.of("lot", Column.Use.ROOM)),
                        List.of(List.of("Wax", "12.30 g", "3.0 %", "")));
        assertThat(bench.printPart(Format.HTML, 1)).isEqualTo("""
                        <article class="bench" lang="en">
                        <h1>T</h1>
                        <table class="work">
                        <colgroup><col/>\
                        <col class="number reading" style="width: calc(max(var(--size, 1) * 7ch, 4ch * 0.95) + 0.7em)"/>\
                        <col class="number detail" style="width: calc(max(var(--size, 1) * 5ch, 5ch * 0.95) + 0.7em)"/>\
                        <col class="room"/></colgroup>
                        <thead>
                        <tr><th scope="col" data-more="share">line</th><th scope="col" class="number reading">to read</th>\
                        <th scope="col" class="number detail">share</th><th scope="col" class="room">lot</th></tr>
                        </thead>
                        <tbody>
                        <tr><th scope="row" data-more="3.0\u00A0%">Wax</th><td class="number reading">12.30 g</td>\
                        <td class="number detail">3.0 %</td><td class="room"></td></tr>
                        </tbody>
                        </table>
                        </article>
                        """);
    }

    @Test
    void what_is_looked_up_goes_below_the_name_of_its_row() {
        assertThat(body(page().table(
                                List.of(
                                        Column.name("line"),
                                        Column.of("share", Column.Use.DETAIL),
                                        Column.of("limit", Column.Use.DETAIL)),
                                List.of(List.of("Wax", "< 3 %", "5 %")))))
                .contains(
                        "<th scope=\"col\" data-more=\"share · limit\">line</th>",
                        "<th scope=\"row\" data-more=\"&lt;\u00A03\u00A0% · 5\u00A0%\">Wax</th>");
    }

    @Test
    void a_box_to_tick_is_drawn_in_each_row_but_not_at_the_head() {
        assertThat(body(page().table(
                                List.of(Column.of("done", Column.Use.TICK), Column.name("line")),
                                List.of(List.of("[ ]", "Wax")))))
                .contains(
                        "<tr><th scope=\"col\" class=\"tick\">done</th>",
                        "<tr><td class=\"tick\"><span class=\"box\">☐</span></td><th scope=\"row\">Wax</th></tr>");
    }
}
