package io.github.formulationmath.document;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Columns of a terminal; wide characters by the blocks of Unicode Standard Annex #11, East Asian Width (from memory). */
class ColumnsTest {

    @ParameterizedTest
    @CsvSource({
        "1100, 115F", // Hangul Jamo, leading consonants
        "2E80, A4CF", // radicals to Yi
        "AC00, D7A3", // Hangul syllables
        "F900, FAFF", // compatibility ideographs
        "FE30, FE6F", // vertical and small forms
        "FF00, FF60", // fullwidth forms
        "FFE0, FFE6", // fullwidth signs
        "1F300, 1FAFF", // pictographs
        "20000, 3FFFD", // ideographs of the second and third plane
    })
    void wide_blocks_take_two_columns_from_their_first_to_their_last_character(String first, String last) {
        int from = Integer.parseInt(first, 16);
        int to = Integer.parseInt(last, 16);
        assertThat(Columns.width(from)).isEqualTo(2);
        assertThat(Columns.width(to)).isEqualTo(2);
        assertThat(Columns.width((from + to) / 2)).isEqualTo(2);
        assertThat(Columns.width(from - 1)).isLessThan(2);
        assertThat(Columns.width(to + 1)).isLessThan(2);
    }

    @ParameterizedTest
    @ValueSource(ints = {'a', 'é', 'Ω', '·', '≈', 0x10FF, 0x1160, 0xA4D0, 0x10000})
    void other_characters_take_one(int c) {
        assertThat(Columns.width(c)).isEqualTo(1);
    }

    @ParameterizedTest
    @ValueSource(ints = {0x0301, 0x20DD, 0x200D, 0xFE2F})
    void marks_and_format_characters_take_none(int c) {
        assertThat(Columns.width(c)).isZero();
    }

    @Test
    void a_text_takes_what_its_characters_take() {
        assertThat(Columns.width("g")).isEqualTo(1);
        assertThat(Columns.width("e\u0301")).isEqualTo(1);
        assertThat(Columns.width("\u6C34 5")).isEqualTo(4);
    }

    private static String filled(String first, String rest, String text) {
        StringBuilder out = new StringBuilder();
        Columns.fill(out, first, rest, text, ' ');
        return out.toString();
    }

    @Test
    void words_fill_a_line_up_to_column_80_and_go_on_in_the_next() {
        String word = "x".repeat(39);
        assertThat(filled("", "", word + " " + word + "x")).isEqualTo(word + " " + word + "x\n");
        assertThat(filled("", "> ", word + " " + word + "xx")).isEqualTo(word + "\n> " + word + "xx\n");
        assertThat(filled("- ", "  ", "a b")).isEqualTo("- a b\n");
        assertThat(filled("", "", "")).isEqualTo("\n");
    }

    @Test
    void a_word_longer_than_a_line_is_broken_with_a_sign() {
        assertThat(filled("", "", "y".repeat(80))).isEqualTo("y".repeat(80) + "\n");
        assertThat(filled("", "", "y".repeat(81))).isEqualTo("y".repeat(79) + "\\\n" + "y".repeat(2) + "\n");
    }

    @Test
    void the_blanks_between_words_count() {
        assertThat(filled("", "> ", "a ".repeat(40) + "b")).isEqualTo("a ".repeat(39) + "a\n> b\n");
        assertThat(filled("", "", "a  b ")).isEqualTo("a  b \n");
    }

    @Test
    void a_blank_before_the_first_word_does_not_keep_the_others_from_being_broken() {
        String word = "x".repeat(50);
        assertThat(filled("", "> ", " " + word + " " + word)).isEqualTo(" " + word + "\n> " + word + "\n");
    }

    /** The broken part of a word is followed by the next word on its line. */
    @Test
    void a_line_that_a_word_has_begun_is_filled_by_the_next() {
        assertThat(filled("", "", "y".repeat(81) + " " + "z".repeat(77)))
                .isEqualTo("y".repeat(79) + "\\\nyy " + "z".repeat(77) + "\n");
        assertThat(filled("", "", "y".repeat(81) + " " + "z".repeat(78)))
                .isEqualTo("y".repeat(79) + "\\\nyy\n" + "z".repeat(78) + "\n");
    }
}
