package io.github.formulationmath.reckoning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WordingTest {

    private static final Path RESOURCES = Path.of("src", "main", "resources");

    @Test
    void no_key_stands_twice() {
        List<String> keys = roomsWithWords().stream()
                .flatMap(room -> lines("/io/github/formulationmath/" + room + "/words-en.properties").stream())
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .map(line -> line.substring(0, line.indexOf('=')))
                .toList();
        assertThat(keys).doesNotHaveDuplicates().hasSizeGreaterThan(600);
        assertThat(Wording.english().keys()).hasSameElementsAs(keys);
    }

    @Test
    void the_index_has_every_room_that_has_words() {
        assertThat(lines("/io/github/formulationmath/reckoning/words.index")).isEqualTo(roomsWithWords());
    }

    private static List<String> roomsWithWords() {
        try (Stream<Path> files = Files.walk(RESOURCES)) {
            return files.filter(file -> file.getFileName().toString().equals("words-en.properties"))
                    .map(file -> file.getParent().getFileName().toString())
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> lines(String resource) {
        try (InputStream in = Wording.class.getResourceAsStream(resource)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void a_name_that_looks_like_a_placeholder_stays_a_name() {
        assertThat(Wording.english().text(Phrase.of("rounding.grid", "{1} $1 \\", "x")))
                .isEqualTo("to a multiple of {1} $1 \\, x");
        assertThat(Wording.english().text(Phrase.of("rounding.grid"))).isEqualTo("to a multiple of {0}, {1}");
    }

    @Test
    void a_phrase_reads_as_english_and_shows_its_key_where_there_is_no_text() {
        assertThat(Phrase.of("rounding.grid", "0.1 g", "ties to even"))
                .hasToString("to a multiple of 0.1 g, ties to even");
        assertThat(Phrase.of("my.own", "a", "b")).hasToString("my.own[a, b]");
    }

    @Test
    void a_translation_is_laid_over_english() throws IOException {
        Wording german = Wording.read(new StringReader("language=de\nsheet.phase=Phase {0}\nworking.given=Gegeben"));
        assertThat(german.say("working.given")).isEqualTo("Gegeben");
        assertThat(german.say("working.answer")).isEqualTo("Answer");
        assertThat(german.keys()).isEqualTo(Wording.english().keys());
        assertThat(Wording.english().say("working.given")).isEqualTo("Given");
        assertThat(Wording.read(new StringReader("")).keys())
                .isEqualTo(Wording.english().keys());
    }

    @Test
    void a_translation_may_turn_the_order_round() throws IOException {
        Wording other = Wording.read(new StringReader("rounding.grid={1}: {0}, {1}"));
        assertThat(other.say("rounding.grid", "a", "b")).isEqualTo("b: a, b");
    }

    @Test
    void a_key_that_nothing_says_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Wording.read(new StringReader("language=de\nworking.gievn=Gegeben")))
                .withMessage("the key working.gievn is not one of the wording: leave it out, or write one of "
                        + "Wording.english().keys()");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Wording.english().text(Phrase.of("no.such.key")))
                .withMessageContaining("no.such.key");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "rounding.grid=auf ein Vielfaches von {0} | {0} | {0}, {1}",
                "rounding.grid=auf {0}, {1}, {2} | {0}, {1}, {2} | {0}, {1}",
                "working.given=Gegeben {0} | {0} | nothing",
                "refusal.overload={batch} ist zu viel | {batch} | {batch}, {capacity}, {excess}, {largest}, {vessel}",
                "sheet.phase=Phase | nothing | {0}"
            })
    void a_text_that_puts_in_something_else_is_refused(String line, String found, String wanted) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Wording.read(new StringReader(line)))
                .withMessageStartingWith("the text under the key " + line.substring(0, line.indexOf('=')) + " puts in "
                        + found + ": it must put in " + wanted + ", as the English \"");
    }

    @Test
    void numbers_in_compound_units_have_the_comma_of_a_language() {
        assertThat(Wording.german().number("4.2 J/(kg·K)")).isEqualTo("4,2 J/(kg·K)");
        assertThat(Wording.german().number("0.08 g⁻¹")).isEqualTo("0,08 g⁻¹");
    }
}
