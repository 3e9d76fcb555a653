package io.github.formulationmath.reckoning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class WordingTest {

    @Test
    void noKeyStandsTwice() throws IOException {
        try (InputStream in = Wording.class.getResourceAsStream("wording-en.properties")) {
            List<String> keys = new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .map(line -> line.substring(0, line.indexOf('=')))
                    .toList();
            assertThat(keys).doesNotHaveDuplicates();
            assertThat(Wording.english().keys()).hasSameElementsAs(keys);
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
    void aTranslationIsWhole() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Wording.read(new StringReader("language=de")))
                .withMessageContaining("has no text for the key");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Wording.english().text(Phrase.of("no.such.key")))
                .withMessageContaining("no.such.key");
    }
}
