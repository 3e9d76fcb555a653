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
    void noKeyStandsTwice() {
        List<String> keys = roomsWithWords().stream()
                .flatMap(room -> lines("/io/github/formulationmath/" + room + "/words-en.properties").stream())
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .map(line -> line.substring(0, line.indexOf('=')))
                .toList();
        assertThat(keys).doesNotHaveDuplicates().hasSizeGreaterThan(600);
        assertThat(Wording.english().keys()).hasSameElementsAs(keys);
    }

    @Test
    void theIndexHasEveryRoomThatHasWords() {
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
    void aNameThatLooksLikeAPlaceholderStaysAName() {
        assertThat(Wording.english().text(Phrase.of("rounding.grid", "{1} $1 \\", "x")))
                .isEqualTo("to a multiple of {1} $1 \\, x");
        assertThat(Wording.english().text(Phrase.of("rounding.grid"))).isEqualTo("to a multiple of {0}, {1}");
    }

    @Test
    void aPhraseReadsAsEnglishAndShowsItsKeyWhereThereIsNoText() {
        assertThat(Phrase.of("rounding.grid", "0.1 g", "ties to even"))
                .hasToString("to a multiple of 0.1 g, ties to even");
        assertThat(Phrase.of("my.own", "a", "b")).hasToString("my.own[a, b]");
    }

    @Test
    void aTranslationIsLaidOverEnglish() throws IOException {
        Wording german = Wording.read(new StringReader("language=de\nsheet.phase=Phase {0}\nworking.given=Gegeben"));
        assertThat(german.say("working.given")).isEqualTo("Gegeben");
        assertThat(german.say("working.answer")).isEqualTo("Answer");
        assertThat(german.keys()).isEqualTo(Wording.english().keys());
        assertThat(Wording.english().say("working.given")).isEqualTo("Given");
        assertThat(Wording.read(new StringReader("")).keys())
                .isEqualTo(Wording.english().keys());
    }

    @Test
    void aTranslationMayTurnTheOrderRound() throws IOException {
        Wording other = Wording.read(new StringReader("rounding.grid={1}: {0}, {1}"));
        assertThat(other.say("rounding.grid", "a", "b")).isEqualTo("b: a, b");
    }

    @Test
    void aKeyThatNothingSaysIsRefused() {
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
    void aTextThatPutsInSomethingElseIsRefused(String line, String found, String wanted) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Wording.read(new StringReader(line)))
                .withMessageStartingWith("the text under the key " + line.substring(0, line.indexOf('=')) + " puts in "
                        + found + ": it must put in " + wanted + ", as the English \"");
    }
}
