package io.github.formulationmath.document;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Controls of the writing direction, which could move what stands around a name. */
class CleanTest {

    @ParameterizedTest
    @ValueSource(ints = {0x202A, 0x202C, 0x202E, 0x2066, 0x2067, 0x2069, 0xFEFF, 0xFFFE, 0xFFFF, 0xD800})
    void noise_is_replaced(int c) {
        assertThat(Clean.text("a" + Character.toString(c) + "b")).isEqualTo("a\uFFFDb");
    }

    @ParameterizedTest
    @ValueSource(ints = {0x2029, 0x0A, 0x00})
    void what_ends_a_line_becomes_a_space(int c) {
        assertThat(Clean.text("a" + Character.toString(c) + "b")).isEqualTo("a b");
    }

    @ParameterizedTest
    @ValueSource(ints = {0x202F, 0x2065, 0x206A, 'é', 0xFEFE, 0x1F600})
    void the_rest_stays(int c) {
        assertThat(Clean.text("a" + Character.toString(c) + "b")).isEqualTo("a" + Character.toString(c) + "b");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "a\nb",
                "ماء",
                "a ماء b",
                "\u2068",
                "\u2069\u2068",
                "\u2068\u2068x\u2069",
                "\u2068ماء\u2069 b",
                "\u2068a\u2069 ماء",
                "\u202e\ufffd"
            })
    void what_is_clean_stays_as_it_is(String text) {
        String clean = Clean.text(text);
        assertThat(Clean.text(clean)).isEqualTo(clean);
        assertThat(clean.chars().filter(c -> c == 0x2068))
                .hasSameSizeAs(clean.chars().filter(c -> c == 0x2069).boxed().toList());
    }

    @Test
    void letters_from_right_to_left_are_isolated_once() {
        assertThat(Clean.text("ماء")).isEqualTo("\u2068ماء\u2069");
        assertThat(Clean.text("of \u2068ماء\u2069 and")).isEqualTo("of \u2068ماء\u2069 and");
        assertThat(Clean.text("x\u2069\u2068y")).isEqualTo("x\ufffd\ufffdy");
    }
}
