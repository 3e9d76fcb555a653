package io.github.formulationmath.reckoning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.github.formulationmath.number.NumberTextException;
import io.github.formulationmath.number.Ratio;
import java.io.IOException;
import java.io.StringReader;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** German and French say all that English says, and put in the same. */
class LanguagesTest {

    private static final Pattern CLOSE_TO_A_WORD = Pattern.compile("[\\p{L})}] [:;?!%»]|« ");

    @ParameterizedTest
    @ValueSource(strings = {"de", "fr"})
    void every_key_is_said(String language) {
        assertThat(Translation.rooms()).hasSizeGreaterThan(25);
        assertThat(Translation.rooms().stream()
                        .flatMap(room ->
                                Translation.of(room, language).faultsBeside(Translation.of(room, "en")).stream())
                        .toList())
                .isEmpty();
    }

    @Test
    void a_missing_key_a_changed_placeholder_and_a_text_left_in_english_are_noticed() {
        Translation english = new Translation(
                "x",
                Map.of("a", "How much is {0}?", "b", "round {0} to {1}", "c", "nothing is known of this", "d", "Yes."));
        Map<String, String> texts = new LinkedHashMap<>();
        texts.put("b", "runde {0}");
        texts.put("c", "nothing is known of this");
        texts.put("d", "Ja");
        texts.put("e", "zu viel");
        assertThat(new Translation("x", texts).faultsBeside(english))
                .containsExactlyInAnyOrder(
                        "x: a is missing: How much is {0}?",
                        "x: b puts in [{0}], not [{0}, {1}]",
                        "x: c is still in English",
                        "x: d ends otherwise than Yes.",
                        "x: e is in no English file");
    }

    @Test
    void what_was_read_is_what_is_said() {
        Map<String, Wording> wordings = Map.of("de", Wording.german(), "fr", Wording.french());
        wordings.forEach((language, wording) -> {
            assertThat(wording.keys()).isEqualTo(Wording.english().keys());
            assertThat(wording.say("language")).isEqualTo(language);
            for (String room : Translation.rooms()) {
                Translation.of(room, language)
                        .texts()
                        .forEach((key, text) -> assertThat(wording.say(key))
                                .as(key + " of the room " + room)
                                .isEqualTo(text.replace("\\u00A0", "\u00a0")));
            }
        });
    }

    /** A line must not begin with a colon or a question mark, so French has them behind a space that does not break. */
    @Test
    void french_marks_stand_behind_a_space_that_does_not_break() {
        for (String room : Translation.rooms()) {
            Translation.of(room, "fr")
                    .texts()
                    .forEach((key, text) -> assertThat(text).as(key).doesNotContainPattern(CLOSE_TO_A_WORD));
        }
    }

    @Test
    void german_quotes_stand_low_and_high() {
        for (String room : Translation.rooms()) {
            Translation.of(room, "de")
                    .texts()
                    .forEach((key, text) -> assertThat(
                                    text.chars().filter(c -> c == '„').count())
                            .as(key)
                            .isEqualTo(text.chars().filter(c -> c == '“').count()));
        }
    }

    @ParameterizedTest
    @CsvSource({"de, de, '0,5 g'", "fr-CA, fr, '0,5 g'", "de-CH, de, 0.5 g", "en, en, 0.5 g", "en-ZA, en, '0,5 g'"})
    void a_locale_has_its_words_and_its_digits(String tag, String language, String half) {
        Wording wording = Wording.of(Locale.forLanguageTag(tag));
        assertThat(wording.say("language")).isEqualTo(language);
        assertThat(wording.locale()).isEqualTo(Locale.forLanguageTag(tag));
        assertThat(wording.number("0.5 g")).isEqualTo(half);
        assertThat(wording.say("sheet.unnamed-balance", "0.5 g")).endsWith(half);
    }

    @Test
    void a_language_that_is_not_there_is_refused_with_those_that_are() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Wording.of(Locale.forLanguageTag("es-MX")))
                .withMessage(
                        "locale is \"es-MX\": the library speaks en, de and fr; take one of them, or lay your own words"
                                + " over one with Wording.read");
    }

    @Test
    void an_overlay_lies_over_any_language() throws IOException {
        Wording swiss = Wording.of(Locale.forLanguageTag("de-CH")).withTexts(new StringReader("sheet.vessel=Gefäss"));
        assertThat(swiss.say("sheet.vessel")).isEqualTo("Gefäss");
        assertThat(swiss.say("sheet.balance")).isEqualTo("Waage");
        assertThat(swiss.number("1.5 g")).isEqualTo("1.5 g");
        Wording danish = Wording.read(new StringReader("language=da\nsheet.balance=Vægt"));
        assertThat(danish.number("1.5 g")).isEqualTo("1,5 g");
        assertThat(danish.say("sheet.vessel")).isEqualTo("Vessel");
    }

    @Test
    void names_keep_their_points_and_numbers_do_not() {
        Wording german = Wording.german();
        assertThat(german.say("sheet.from-boat", "Gel 2.5", "0.5 g")).isEqualTo("Gel 2.5, aus 0,5 g");
        assertThat(german.say("sheet.batch-title", "Creme v1.2 (0.5 %)"))
                .isEqualTo("Herstellungsanweisung: Creme v1.2 (0.5 %)");
    }

    @Test
    void a_refusal_is_told_in_german_and_what_was_typed_stays() {
        NumberTextException e = catchThrowableOfType(NumberTextException.class, () -> Ratio.parse("12.5x"));
        assertThat(Wording.german().text(e)).startsWith("\"12.5x\": keine Zahl");
        assertThat(Wording.french().text(e)).startsWith("\"12.5x\"\u00a0: ce n'est pas un nombre");
    }

    @Test
    void a_working_follows_its_words_and_data_do_not() {
        assertThat(Style.steps().with(Wording.german()).text(Ratio.of(1, 2))).isEqualTo("0,5");
        assertThat(Style.steps().text(Ratio.of(1, 2))).isEqualTo("0.5");
        assertThat(Style.steps().with(Wording.german()).with(Locale.ENGLISH).text(Ratio.of(1, 2)))
                .isEqualTo("0.5");
    }

    @Test
    void the_languages_are_three() {
        assertThat(List.of(Wording.english(), Wording.german(), Wording.french()).stream()
                        .map(wording -> wording.say("working.answer")))
                .containsExactly("Answer", "Antwort", "Réponse");
    }
}
