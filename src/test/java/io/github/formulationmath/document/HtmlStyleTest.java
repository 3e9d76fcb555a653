package io.github.formulationmath.document;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.document.Document.Column;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** How wide the columns of tables to work with are, so that each phase is lined up with the others. */
class HtmlStyleTest {

    private static final Column ROOM = Column.of("lot", Column.Use.ROOM);

    private static Document bench(Document before, Column column, String cell) {
        return before.table(List.of(column, ROOM), List.of(List.of(cell, "")));
    }

    private static HtmlStyle style(Column column, String... cells) {
        Document document = Document.titled("T", "en");
        for (String cell : cells) {
            document = bench(document, column, cell);
        }
        return HtmlStyle.of(document.blocks());
    }

    /** So many signs of the cells, and so many of the longest word at the head. */
    private static String wide(int cells, int head) {
        return String.format(
                Locale.ROOT, " style=\"width: calc(max(var(--size, 1) * %dch, %dch * 0.95) + 0.7em)\"", cells, head);
    }

    @Test
    void only_a_table_with_room_to_write_makes_a_page_one_of_the_bench() {
        Column mass = Column.number("mass");
        Document read = Document.titled("T", "en").table(List.of(mass), List.of(List.of("12345.0 g")));
        assertThat(HtmlStyle.of(List.of()).isOfBench()).isFalse();
        assertThat(HtmlStyle.of(read.blocks()).isOfBench()).isFalse();
        assertThat(HtmlStyle.of(read.paragraph("x").blocks()).isOfBench()).isFalse();
        HtmlStyle both = HtmlStyle.of(bench(read, mass, "1.0 g").blocks());
        assertThat(both.isOfBench()).isTrue();
        assertThat(both.widthOf(mass)).isEqualTo(wide(5, 4));
    }

    @Test
    void numbers_have_space_for_the_longest_in_any_table_of_the_page() {
        Column mass = Column.number("mass");
        assertThat(style(mass, "1.0 g", "123.0 g", "12.0 g").widthOf(mass)).isEqualTo(wide(7, 4));
        assertThat(style(mass, "").widthOf(mass)).isEqualTo(wide(1, 4));
        assertThat(style(mass, "1").widthOf(mass)).isEqualTo(wide(1, 4));
        assertThat(style(mass).widthOf(mass)).isEqualTo(wide(1, 4));
        Document empty = Document.titled("T", "en").table(List.of(mass, ROOM), List.of());
        assertThat(HtmlStyle.of(empty.blocks()).widthOf(mass)).isEqualTo(wide(1, 4));
        Column reading = Column.of("read", Column.Use.READING);
        Column detail = Column.of("more", Column.Use.DETAIL);
        assertThat(style(reading, "1.0 g").widthOf(reading)).isEqualTo(wide(5, 4));
        assertThat(style(detail, "1.0 g").widthOf(detail)).isEqualTo(wide(5, 4));
    }

    @Test
    void words_break_after_ten_signs_or_after_the_longest_word_of_the_head() {
        Column use = Column.text("use");
        assertThat(style(use, "123456789").widthOf(use)).isEqualTo(wide(9, 3));
        assertThat(style(use, "12345678901").widthOf(use)).isEqualTo(wide(10, 3));
        Column longer = Column.text("temperatures");
        assertThat(style(longer, "1").widthOf(longer)).isEqualTo(wide(12, 12));
    }

    @Test
    void a_head_breaks_at_blanks_hyphens_and_soft_hyphens() {
        for (String name : new String[] {"to read now", "self-read", "un\u00ADread"}) {
            Column column = Column.of(name, Column.Use.TICK);
            assertThat(style(column, "[ ]").widthOf(column)).as(name).isEqualTo(wide(2, 4));
        }
    }

    @Test
    void room_is_wider_only_for_a_word_of_more_than_seven_letters_and_a_name_takes_what_is_left() {
        assertThat(style(ROOM).widthOf(Column.of("seven77", Column.Use.ROOM))).isEmpty();
        assertThat(style(ROOM).widthOf(Column.of("eight888", Column.Use.ROOM))).isEqualTo(wide(1, 8));
        assertThat(style(ROOM).widthOf(Column.name("a name as long as it likes")))
                .isEmpty();
    }
}
