package io.github.formulationmath.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.formulationmath.document.Document.Column;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What holds of a document in every format: its title, its end, and blocks that stand in one format alone. */
class PartsOfDocumentsTest {

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

    @Test
    void a_document_without_a_title_begins_with_an_empty_line() {
        assertThat(Document.titled("", "en").print(Format.TEXT)).isEqualTo("\n");
        assertThat(Document.titled("T", "en").print(Format.MARKDOWN)).isEqualTo("# T\n");
    }

    @Test
    void a_step_has_its_words_above_it_and_its_remark_below() {
        Document step = titled().step("mass", List.of(m()), "Rounded.");
        assertThat(text(step)).isEqualTo("  mass\n    m\n    Rounded.\n");
        assertThat(markdown(step)).isEqualTo("\nmass\n\n```text\nm\n```\n\nRounded\\.\n");
        assertThat(markdown(titled().equations("", List.of(m())))).isEqualTo("\n```text\nm\n```\n");
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
