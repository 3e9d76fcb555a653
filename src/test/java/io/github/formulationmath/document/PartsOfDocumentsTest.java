package io.github.formulationmath.document;

import static io.github.formulationmath.document.Pages.below;
import static io.github.formulationmath.document.Pages.m;
import static io.github.formulationmath.document.Pages.page;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.formulationmath.document.Document.Column;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What holds of a document in every format: its title, its end, and blocks that stand in one format alone. */
class PartsOfDocumentsTest {

    /** What stands below the title. */
    private static String text(Document document) {
        return below("T\n", document.print(Format.TEXT));
    }

    private static String markdown(Document document) {
        return below("# T\n", document.printPart(Format.MARKDOWN, 1));
    }

    @Test
    void a_document_without_a_title_begins_with_an_empty_line() {
        assertThat(Document.titled("", "en").print(Format.TEXT)).isEqualTo("\n");
        assertThat(Document.titled("T", "en").print(Format.MARKDOWN)).isEqualTo("# T\n");
    }

    @Test
    void a_step_has_its_words_above_it_and_its_remark_below() {
        Document step = page().step("mass", List.of(m()), "Rounded.");
        assertThat(text(step)).isEqualTo("  mass\n    m\n    Rounded.\n");
        assertThat(markdown(step)).isEqualTo("\nmass\n\n```text\nm\n```\n\nRounded\\.\n");
        assertThat(markdown(page().equations("", List.of(m())))).isEqualTo("\n```text\nm\n```\n");
    }

    /** Room to write on is left out where nobody can write on it. */
    @Test
    void columns_to_write_on_stand_in_html_alone() {
        Document document = page().table(
                        List.of(Column.name("line"), Column.of("lot", Column.Use.ROOM), Column.number("g")),
                        List.of(List.of("Wax", "", "1")));
        assertThat(text(document)).isEqualTo("\nline  g\n----  -\nWax   1\n");
        assertThat(markdown(document)).isEqualTo("\n| line | g |\n| --- | --: |\n| Wax | 1 |\n");
        assertThat(document.print(Format.CSV)).isEqualTo("line,g\r\nWax,1\r\n");
        assertThat(document.print(Format.HTML)).contains("<td class=\"room\"></td>");
        Document formulas = page().values(
                        List.of(Column.text("v"), Column.of("lot", Column.Use.ROOM), Column.name("n")),
                        List.of(Expression.symbol("x".repeat(31), "")),
                        List.of(List.of("", "mass")));
        assertThat(text(formulas)).isEqualTo("\n  " + "x".repeat(31) + "\n    mass\n");
    }

    @Test
    void documents_are_parted_by_an_empty_line() {
        Document fact = page().fact("a", "b");
        assertThat(Document.printAll("All", List.of(fact, fact), Format.CSV)).isEqualTo("a,b\r\n\r\na,b\r\n");
        assertThat(Document.printAll("All", List.of(page(), page()), Format.TEXT))
                .isEqualTo("T\n\nT\n");
        assertThat(Document.printAll("All", List.of(page(), page()), Format.MARKDOWN))
                .isEqualTo("# T\n\n# T\n");
    }

    @Test
    void a_title_stands_at_level_1_to_5() {
        assertThat(page().printPart(Format.MARKDOWN, 1)).isEqualTo("# T\n");
        assertThat(page().printPart(Format.MARKDOWN, 5)).isEqualTo("##### T\n");
        for (int level : new int[] {0, 6}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> page().printPart(Format.MARKDOWN, level))
                    .withMessage("level is " + level + ": it must lie between 1 and 5");
        }
    }

    @Test
    void each_block_makes_a_document_that_says_more() {
        assertThat(page().caution("c").fact("a", "b").fact("c", "d"))
                .isEqualTo(page().caution("c").fact("a", "b").fact("c", "d"));
        assertThat(text(page().caution("c").fact("a", "b").fact("cc", "d"))).isEqualTo("\n! c\n\na   b\ncc  d\n");
        assertThat(page().hashCode())
                .isNotEqualTo(Document.titled("U", "en").hashCode())
                .isNotEqualTo(page().paragraph("p").hashCode());
    }
}
