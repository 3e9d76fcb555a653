package io.github.formulationmath.number;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The message, its parts and what may be written instead, alone and passed on. */
class NumberTextExceptionTest {

    private static final Sentence NO_COMMA = Sentence.of("refusal.text.comma", "a point, no comma");

    @Test
    void without_remedies_the_message_is_the_text_and_the_reason() {
        NumberTextException refused = new NumberTextException("1,5", NO_COMMA, List.of());
        assertThat(refused).hasMessage("\"1,5\": a point, no comma");
        assertThat(refused.key()).isEqualTo("refusal.number-text");
        assertThat(refused.remedies()).isEmpty();
        assertThat(refused.said().getMessage()).isEqualTo(refused.getMessage());
        assertThat(refused.because()).contains(NO_COMMA);
    }

    @Test
    void remedies_are_listed_with_commas_and_an_or() {
        NumberTextException one = new NumberTextException("1,5", NO_COMMA, List.of("1.5"));
        assertThat(one).hasMessage("\"1,5\": a point, no comma; write 1.5");
        assertThat(one.key()).isEqualTo("refusal.number-text.write");
        assertThat(one.remedies()).containsExactly("1.5");
        assertThat(one.fields())
                .containsEntry("text", "\"1,5\"")
                .containsEntry("reason", "a point, no comma")
                .containsEntry("remedies", "1.5");
        assertThat(new NumberTextException("1,5", NO_COMMA, List.of("1.5", "15")))
                .hasMessage("\"1,5\": a point, no comma; write 1.5 or 15");
        assertThat(new NumberTextException("1,5", NO_COMMA, List.of("1.5", "15", "1")))
                .hasMessage("\"1,5\": a point, no comma; write 1.5, 15 or 1");
    }

    @Test
    void examples_are_told_as_such() {
        NumberTextException refused = NumberTextException.withExamples("much", NO_COMMA, List.of("12.5", "3/4"));
        assertThat(refused).hasMessage("\"much\": a point, no comma; write it like 12.5 or 3/4");
        assertThat(refused.key()).isEqualTo("refusal.number-text.like");
        assertThat(refused.remedies()).containsExactly("12.5", "3/4");
    }

    @Test
    void with_its_place_it_passes_on_the_whole_sentence_and_the_remedies() {
        NumberTextException bare = new NumberTextException("1,5", NO_COMMA, List.of("1.5"));
        NumberTextException placed = bare.at("the amount of Glycerin");
        assertThat(placed)
                .hasMessage("the amount of Glycerin: \"1,5\": a point, no comma; write 1.5")
                .hasCause(bare);
        assertThat(placed.key()).isEqualTo("refusal.number-text.of");
        assertThat(placed.fields()).containsEntry("of", "the amount of Glycerin");
        assertThat(placed.text()).isEqualTo("1,5");
        assertThat(placed.reason()).isEqualTo(NO_COMMA);
        assertThat(placed.remedies()).containsExactly("1.5");
        assertThat(placed.because()).containsSame(bare);
    }

    @Test
    void about_a_longer_text_it_has_the_reason_and_no_remedies() {
        NumberTextException part = new NumberTextException("1,5", NO_COMMA, List.of("1.5"));
        NumberTextException whole = part.in("1,5 + 2");
        assertThat(whole).hasMessage("\"1,5 + 2\": a point, no comma").hasCause(part);
        assertThat(whole.text()).isEqualTo("1,5 + 2");
        assertThat(whole.remedies()).isEmpty();
        assertThat(whole.because()).contains(NO_COMMA);
    }
}
