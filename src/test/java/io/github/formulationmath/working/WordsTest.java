package io.github.formulationmath.working;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Controls of the writing direction, which could move what stands around a name. */
class WordsTest {

    @ParameterizedTest
    @ValueSource(ints = {0x202A, 0x202C, 0x202E, 0x2066, 0x2067, 0x2069, 0xFEFF, 0xFFFE, 0xFFFF, 0xD800})
    void noise_is_replaced(int c) {
        assertThat(Words.clean("a" + Character.toString(c) + "b")).isEqualTo("a\uFFFDb");
    }

    @ParameterizedTest
    @ValueSource(ints = {0x2029, 0x0A, 0x00})
    void what_ends_a_line_becomes_a_space(int c) {
        assertThat(Words.clean("a" + Character.toString(c) + "b")).isEqualTo("a b");
    }

    @ParameterizedTest
    @ValueSource(ints = {0x202F, 0x2065, 0x206A, 'é', 0xFEFE, 0x1F600})
    void the_rest_stays(int c) {
        assertThat(Words.clean("a" + Character.toString(c) + "b")).isEqualTo("a" + Character.toString(c) + "b");
    }
}
