package io.github.formulationmath.document;

import static io.github.formulationmath.document.Pages.m;
import static io.github.formulationmath.document.Pages.page;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.document.Document.Column;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Each block as plain text: where it begins, and what lines up with what. */
class TextBlocksTest {

    private static final List<Column> MASSES = List.of(Column.name("line"), Column.number("mass"));

    private static String text(Document document) {
        return document.print(Format.TEXT);
    }

    @Test
    void a_blank_line_stands_above_each_block_but_not_between_a_heading_and_what_it_heads() {
        assertThat(text(page().paragraph("a")
                        .caution("b")
                        .heading("H")
                        .fact("c", "d")
                        .paragraph("e")
                        .heading("I")
                        .note("Note", "f")
                        .paragraph("g")
                        .heading("J")
                        .question("k")
                        .choice("x", false, "")
                        .paragraph("l")
                        .heading("M")
                        .equations("", List.of(m()))
                        .paragraph("n")))
                .isEqualTo("""
                        T

                        a

                        ! b

                        H
                        c  d

                        e

                        I
                          Note: f

                        g

                        J
                          k
                            [ ] x

                        l

                        M
                            m

                        n
                        """);
    }

    @Test
    void long_words_of_a_block_go_on_further_in() {
        String word = "w".repeat(70);
        assertThat(text(page().caution("a " + word + " bbbbbbb"))).endsWith("\n! a " + word + "\n  bbbbbbb\n");
        assertThat(text(page().note("N", word + " bbbbbb"))).endsWith("\n  N: " + word + "\n    bbbbbb\n");
        assertThat(text(page().step(word + " bbbbbbbb", List.of(), word + " bbbbbb")))
                .endsWith("\n  " + word + "\n  bbbbbbbb\n    " + word + "\n      bbbbbb\n");
    }

    @Test
    void values_of_facts_line_up_behind_the_widest_name() {
        assertThat(text(page().fact("水水", "1").fact("abcde", "2").fact("a", "3")))
                .endsWith("""

                        水水   1
                        abcde  2
                        a      3
                        """);
    }

    @Test
    void words_line_up_behind_the_formulas_that_are_at_most_thirty_wide() {
        String thirty = "7".repeat(30);
        assertThat(text(page().values(
                                List.of(
                                        Column.text("Value"),
                                        Column.name("Meaning"),
                                        Column.text("x"),
                                        Column.text("y")),
                                List.of(m(), Expression.number(thirty, ""), Expression.number(thirty + "7", "")),
                                List.of(
                                        List.of("first", "", ""),
                                        List.of("second", "", "more"),
                                        List.of("", "third", "")))))
                .isEqualTo("T\n\n"
                        + "  m" + " ".repeat(29) + "  first\n"
                        + "  " + thirty + "  second; more\n"
                        + "  " + thirty + "7\n"
                        + " ".repeat(34) + "third\n");
    }

    @Test
    void a_wide_formula_goes_on_further_in_and_its_words_stand_below() {
        Expression number = Expression.number("7".repeat(30), "");
        assertThat(text(page().values(
                                List.of(Column.text("Value"), Column.name("Meaning")),
                                List.of(Expression.relation(m(), "=", Expression.sum(List.of(number, number, number)))),
                                List.of(List.of("words")))))
                .isEqualTo("T\n\n  m = " + "7".repeat(30) + " + " + "7".repeat(30) + "\n      + " + "7".repeat(30)
                        + "\n    words\n");
    }

    @Test
    void a_row_of_words_is_named_by_its_name_or_else_by_its_first_cell() {
        assertThat(text(page().table(
                                List.of(Column.text("use"), Column.name("line"), Column.text("lot")),
                                List.of(List.of("oil phase", "Wax", ""), List.of("", "Salt", "7")))))
                .isEqualTo("""
                        T

                          Wax
                            use: oil phase
                          Salt
                            lot: 7
                        """);
        assertThat(text(page().table(List.of(Column.text("a"), Column.text("b")), List.of(List.of("x", "y")))))
                .isEqualTo("T\n\n  x\n    b: y\n");
    }

    @Test
    void tables_with_the_same_columns_are_as_wide_as_each_other_within_a_document_only() {
        Document both = page().table(MASSES, List.of(List.of("Wax", "1.0 g")))
                .table(MASSES, List.of(List.of("Glycerin", "12.0 g")));
        assertThat(text(both)).isEqualTo("""
                        T

                        line        mass
                        --------  ------
                        Wax        1.0 g

                        line        mass
                        --------  ------
                        Glycerin  12.0 g
                        """);
        Document small = Document.titled("U", "en").table(MASSES, List.of(List.of("Wax", "1 g")));
        assertThat(Document.printAll("all", List.of(both, small), Format.TEXT))
                .isEqualTo(text(both) + "\n" + text(small));
        assertThat(text(small)).isEqualTo("U\n\nline  mass\n----  ----\nWax    1 g\n");
    }

    @Test
    void room_to_write_is_left_out_of_a_table_and_does_not_name_a_row() {
        Column room = Column.of("lot", Column.Use.ROOM);
        assertThat(text(page().table(
                                List.of(room, Column.name("line"), Column.number("mass")),
                                List.of(List.of("", "Wax", "1 g")))))
                .isEqualTo("T\n\nline  mass\n----  ----\nWax    1 g\n");
        assertThat(text(page().table(List.of(room, Column.text("line")), List.of(List.of("", "Wax")))))
                .isEqualTo("T\n\n  Wax\n");
    }

    @Test
    void lines_to_write_on_go_to_the_margin_and_are_never_shorter_than_twenty() {
        assertThat(text(page().heading("H").writingLines(List.of("Answer", "", "x".repeat(70)))))
                .isEqualTo("T\n\nH\n"
                        + "Answer " + "_".repeat(73) + "\n\n"
                        + "_".repeat(80) + "\n\n"
                        + "x".repeat(70) + " " + "_".repeat(20) + "\n");
        assertThat(text(page().writingLines(List.of("x".repeat(58))))).endsWith("x " + "_".repeat(21) + "\n");
    }

    @Test
    void fields_stand_one_after_the_other() {
        assertThat(text(page().fields(List.of("Made on", "By"))))
                .isEqualTo("T\n\nMade on\u00A0" + "_".repeat(16) + " By\u00A0" + "_".repeat(16) + "\n");
    }

    @Test
    void answers_stand_in_a_row_of_at_most_76_columns_and_else_below_one_another() {
        String answer = "a".repeat(36);
        assertThat(text(page().question(m(), "mass").choice(answer, true, "").choice(answer, false, "")))
                .isEqualTo("T\n  m, mass\n    " + answer + "    " + answer + "\n");
        assertThat(text(page().question(m(), "mass").choice(answer, true, "").choice(answer + "b", false, "")))
                .isEqualTo("T\n  m, mass\n    " + answer + "\n    " + answer + "b\n");
        assertThat(text(page().question(m(), "mass")
                        .choice("1 g", false, "too low")
                        .choice("2 g", true, "")))
                .isEqualTo("T\n  m, mass\n    1 g: too low\n    2 g\n");
    }

    @Test
    void a_question_in_words_has_boxes_to_tick() {
        assertThat(text(page().question("Which?").choice("A", false, "").choice("B", true, "")))
                .isEqualTo("T\n  Which?\n    [ ] A    [ ] B\n");
        assertThat(text(page().question("").choice("A", false, ""))).isEqualTo("T\n    [ ] A\n");
    }
}
