package io.github.formulationmath.annex;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * What is written by rule is what the rule makes of the raw exports. Written with {@code -Dformulationmath.annexes=write},
 * see docs/limits-in-the-jar.md.
 */
class AnnexTranscriptionTest {

    @Test
    void the_tables_are_what_the_rule_makes_of_the_raw_exports() throws IOException {
        Map<String, List<String>> made = AnnexTranscription.all();
        if ("write".equals(System.getProperty("formulationmath.annexes"))) {
            AnnexTranscription.write(made);
            return;
        }
        assertThat(made).hasSize(4);
        for (Map.Entry<String, List<String>> one : made.entrySet()) {
            assertThat(Files.readAllLines(AnnexTranscription.file(one.getKey()), StandardCharsets.UTF_8))
                    .as(one.getKey())
                    .isEqualTo(one.getValue());
        }
    }
}
