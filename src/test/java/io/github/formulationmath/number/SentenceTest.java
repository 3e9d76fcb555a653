package io.github.formulationmath.number;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.number.Refusal.Place;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A sentence of a refusal, what is put into it, and where it stands. */
class SentenceTest {

    private static final Sentence LONG =
            Sentence.of("refusal.text.too-long", "longer than {most} {unit}", "most", "60", "unit", "letters");

    @Test
    void a_sentence_is_a_refusal_that_says_itself() {
        Refusal refusal = LONG;
        assertThat(refusal.said()).isSameAs(LONG);
        assertThat(refusal.key()).isEqualTo("refusal.text.too-long");
        assertThat(refusal.fields()).containsExactly(Map.entry("most", "60"), Map.entry("unit", "letters"));
        assertThat(refusal.getMessage()).isEqualTo("longer than 60 letters");
        assertThat(refusal).hasToString("longer than 60 letters");
        assertThat(refusal.remedies()).isEmpty();
        assertThat(refusal.because()).isEmpty();
        assertThat(refusal.place()).isEmpty();
    }

    @Test
    void a_name_without_a_value_is_refused() {
        assertThatThrownBy(() -> Sentence.of("key", "{a} and {b}", "a", "1", "b"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("3 texts")
                .hasMessageContaining("must be even");
    }

    @Test
    void each_text_is_put_in_once_and_an_unknown_name_stays() {
        assertThat(Sentence.of("key", "{a}, {b}, {c}", "a", "{b}", "b", "$1").getMessage())
                .isEqualTo("{b}, $1, {c}");
    }

    @Test
    void placeholders_are_small_names_and_numbers_in_braces() {
        assertThat(Sentence.placeholders("{text}: {reason}; write {0}, {text} or {line-2}; not {This}, {} nor {a b}"))
                .containsExactly("0", "line-2", "reason", "text");
        assertThat(Sentence.placeholders("nothing")).isEmpty();
    }

    @Test
    void a_place_is_told_with_its_file_if_there_is_one() {
        assertThat(new Place("balm.csv", 3, 14)).hasToString("balm.csv, line 3, column 14");
        assertThat(new Place("", 3, 14)).hasToString("line 3, column 14");
    }
}
