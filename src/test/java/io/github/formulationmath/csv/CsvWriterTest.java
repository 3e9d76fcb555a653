package io.github.formulationmath.csv;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.support.Cells;
import io.github.formulationmath.support.CpuTime;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** No text is a formula for a spreadsheet, and each comes back to the letter. */
class CsvWriterTest {

    /** RFC 4180, section 2, rules 5 to 7. */
    @Test
    void a_field_stands_in_quotes_if_it_needs_them() {
        assertThat(CsvWriter.row(List.of("a", "b,c", "d \"e\"", "f\ng", "", " h")))
                .isEqualTo("a,\"b,c\",\"d \"\"e\"\"\",\"f\ng\",, h\r\n");
    }

    @Test
    void every_text_put_together_at_random_is_guarded_and_comes_back() {
        Random random = new Random(4180);
        String alphabet = "=+-@';\t\r\n \u200ba1＝,\"";
        for (int i = 0; i < 20_000; i++) {
            StringBuilder text = new StringBuilder();
            for (int length = random.nextInt(8); length > 0; length--) {
                text.append(alphabet.charAt(random.nextInt(alphabet.length())));
            }
            String guarded = CsvWriter.guarded(text.toString());
            assertThat(guarded).doesNotMatch(Cells.FORMULA);
            assertThat(List.of(guarded.split("[;\\t\\r\\n]")))
                    .noneMatch(part -> Cells.FORMULA.matcher(part).matches());
            assertThat(CsvWriter.unguarded(guarded)).isEqualTo(text.toString());
        }
    }

    @Test
    void a_long_text_is_guarded_in_one_walk() {
        for (String part : List.of("\n ", ";'", "\t", "'", " ", "=;", "\r\n")) {
            String text = part.repeat(200_000);
            CpuTime.assertWithin(
                    Duration.ofSeconds(20),
                    () -> assertThat(CsvWriter.unguarded(CsvWriter.guarded(text)))
                            .isEqualTo(text));
        }
    }
}
