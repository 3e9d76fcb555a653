package io.github.formulationmath.fuzz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicContainer.dynamicContainer;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import io.github.formulationmath.support.CpuTime;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Replays the corpus that seeds the fuzzer, with what it once found; and texts that are long or deep. */
class CorpusTest {

    private static final Duration PATIENCE = Duration.ofSeconds(10);

    @TestFactory
    Stream<DynamicContainer> every_kept_text_is_read_or_refused() {
        return Stream.of(FuzzTarget.values()).map(target -> dynamicContainer(target.folder(), replays(target)));
    }

    private static List<DynamicNode> replays(FuzzTarget target) {
        List<Path> files = Corpus.filesOf(target);
        assertThat(files).as(target.folder()).hasSizeGreaterThan(2);
        return files.stream()
                .map(file -> (DynamicNode) dynamicTest(file.getFileName().toString(), () -> {
                    String text = Corpus.text(Files.readAllBytes(file));
                    CpuTime.assertWithin(PATIENCE, () -> target.read(text));
                }))
                .toList();
    }

    @ParameterizedTest
    @EnumSource
    void long_texts_do_not_hang(FuzzTarget target) {
        for (String part :
                List.of("9", "1e", "(", ")", "-", "H", " ", ",", "\"", "\n", "[", "{\"a\":", "\u0660", "\\u")) {
            for (String head : List.of("", "0.", "1/", "1e9")) {
                String text = head + part.repeat(100_000);
                CpuTime.assertWithin(PATIENCE, () -> target.read(text));
                CpuTime.assertWithin(PATIENCE, () -> target.read(text + " g"));
            }
        }
    }
}
