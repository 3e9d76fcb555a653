package io.github.formulationmath.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What keyboards, scripts and typographers write for one text, in its plain form. */
class TypedTextTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "12.5 g | 12.5 g",
                "' 12.5 g' | 12.5 g",
                "'12.5 g ' | 12.5 g",
                "'12.5  g' | 12.5 g",
                "'12.5\tg' | 12.5 g",
                "12.5\u202fg | 12.5 g",
                "１２.５　ｇ | 12.5 g",
                "～！ | ~!",
                "١٢ | 12",
                "\u200f١٢ | 12",
                "1⁄2 oz | 1/2 oz",
                "1½ oz | 1 1/2 oz",
                "−5 ℃ | -5 °C",
            })
    void one_plain_form_stands_for_all(String typed, String plain) {
        assertThat(TypedText.plain(typed, '.')).isEqualTo(plain);
        assertThat(TypedText.characters(typed)).isEqualTo(plain);
    }

    /** An apostrophe parts groups everywhere; a comma and a point do if they come twice, or before the decimal mark of here. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1'234 | 1234",
                "1'234,5 g | 1234,5 g",
                "1.234.567 g | 1234567 g",
                "1.234.567,5 g | 1234567,5 g",
                "1.234,5 g | 1234,5 g",
                "1,234,567 g | 1234567 g",
                "1,23,456 g | 123456 g",
            })
    void marks_that_can_only_part_groups_go_where_a_comma_is_the_decimal_mark(String typed, String plain) {
        assertThat(TypedText.plain(typed, ',')).isEqualTo(plain);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1.234 g | 1.234 g",
                "1.234\u00a0g | 1.234 g",
                "1.234, g | 1.234, g",
                "1.234, | 1.234,",
                "1.23,456 g | 1.23,456 g"
            })
    void a_mark_that_could_be_either_stays(String typed, String plain) {
        assertThat(TypedText.plain(typed, ',')).isEqualTo(plain);
    }

    @Test
    void nothing_is_left_of_spaces() {
        assertThat(TypedText.plain(" ", '.')).isEmpty();
        assertThat(TypedText.plain("", '.')).isEmpty();
    }
}
