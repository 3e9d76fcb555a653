package io.github.formulationmath.document;

import static io.github.formulationmath.document.Pages.below;
import static io.github.formulationmath.document.Pages.page;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.document.Document.Column;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Each block as CommonMark and the tables of GitHub have it (from memory). */
class MarkdownBlocksTest {

    private static final String START = "# T\n\n";

    private static Expression m() {
        return Expression.symbol("m", "3");
    }

    /** What stands below the title. */
    private static String body(Document document) {
        return below(START, document.print(Format.MARKDOWN));
    }

    @Test
    void a_document_ends_with_one_line_end() {
        assertThat(page().print(Format.MARKDOWN)).isEqualTo("# T\n");
        assertThat(page().heading("A-B").paragraph("c").printPart(Format.MARKDOWN, 5))
                .isEqualTo("##### T\n\n###### A\\-B\n\nc\n");
        assertThat(Document.printAll("all", List.of(page(), page()), Format.MARKDOWN))
                .isEqualTo("# T\n\n# T\n");
    }

    @Test
    void words_are_escaped_in_every_block() {
        assertThat(body(page().paragraph(" 1. <b> & \"c\" "))).isEqualTo("1\\. &lt;b&gt; &amp; \\\"c\\\"\n");
        assertThat(body(page().caution("*Hot*"))).isEqualTo("> **!** \\*Hot\\*\n");
        assertThat(body(page().note("Note", "a_b"))).isEqualTo("> Note\\: a\\_b\n");
        assertThat(body(page().fact("Batch_1", "400 g").fact("Loss", "-1"))).isEqualTo("""
                        - **Batch\\_1:** 400 g
                        - **Loss:** \\-1
                        """);
    }

    @Test
    void fields_and_lines_are_left_to_write_on() {
        String blank = "\\_".repeat(16);
        assertThat(body(page().fields(List.of("Made on", "By"))))
                .isEqualTo("Made on\u00A0" + blank + " By\u00A0" + blank + "\n");
        String line = "\\_".repeat(36);
        assertThat(body(page().writingLines(List.of("Answer", "")))).isEqualTo("Answer " + line + "\n\n" + line + "\n");
    }

    @Test
    void numbers_stand_flush_right_in_a_table() {
        assertThat(body(page().table(
                                List.of(Column.name("line"), Column.number("mass"), Column.of("lot", Column.Use.ROOM)),
                                List.of(List.of("a|b", "1 g", "")))
                        .paragraph("p")))
                .isEqualTo("""
                        | line | mass |
                        | --- | --: |
                        | a\\|b | 1 g |

                        p
                        """);
    }

    @Test
    void arithmetic_stands_in_a_fenced_block_between_its_words() {
        Expression line = Expression.relation(m(), "=", Expression.number("1.5", "g"));
        assertThat(body(page().step("mass.", List.of(line, Expression.continued("=", m())), "exact!")))
                .isEqualTo("""
                        mass\\.

                        ```text
                        m_3 = 1.5 g
                            = m_3
                        ```

                        exact\\!
                        """);
        assertThat(body(page().equations("", List.of(line)))).isEqualTo("```text\nm_3 = 1.5 g\n```\n");
        assertThat(body(page().step("mass", List.of(), ""))).isEqualTo("mass\n");
    }

    @Test
    void a_fence_is_longer_than_any_row_of_backticks_in_it() {
        for (int inside = 1; inside <= 5; inside++) {
            String fence = "`".repeat(Math.max(3, inside + 1));
            String line = "x".repeat(inside) + "`".repeat(inside) + "y` z";
            assertThat(body(page().equations("", List.of(Expression.symbol(line, "")))))
                    .isEqualTo(fence + "text\n" + line + "\n" + fence + "\n");
        }
    }

    @Test
    void answers_stand_in_a_row_unless_something_is_said_of_one() {
        assertThat(body(page().question(m(), "mass").choice("1 g", false, "").choice("2.5 g", true, "")))
                .isEqualTo("m\\_3, mass\n\n1 g &emsp; **2\\.5 g**\n");
        assertThat(body(page().question("Which?")
                        .choice("1 g", false, "too low.")
                        .choice("2 g", true, "")))
                .isEqualTo("Which?\n\n- 1 g\\: too low\\.\n- **2 g**\n");
    }

    @Test
    void a_question_in_words_has_boxes_to_tick() {
        assertThat(body(page().question("Which?").choice("1 g", false, "").choice("2 g", true, "")))
                .isEqualTo("Which?\n\n☐\u00A01 g &emsp; ☐\u00A0**2 g**\n");
        assertThat(body(page().question("").choice("1 g", false, ""))).isEqualTo("☐\u00A01 g\n");
    }
}
