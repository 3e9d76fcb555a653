package io.github.formulationmath.csv;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import io.github.formulationmath.support.CpuTime;
import java.io.IOException;
import java.io.StringReader;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** RFC 4180 to the letter, and nothing that can hang or fill the memory. */
class CsvReaderHostileTest {

    private static final int LONGEST = 20_000_000;

    private static List<List<String>> fields(String text) throws IOException {
        CsvReader reader = new CsvReader("", new StringReader(text), LONGEST);
        List<List<String>> rows = new ArrayList<>();
        while (reader.hasNext()) {
            rows.add(reader.next(List.of()).stream().map(CsvRow.Field::text).toList());
        }
        return rows;
    }

    /** RFC 4180, section 2, rules 1 to 7. */
    @Test
    void quoted_fields_hold_commas_quotes_and_line_ends() throws IOException {
        assertThat(fields("a,\"b,c\",\"d \"\"e\"\"\",\"f\ng\"\r\n,,\n\"\"\nlast"))
                .containsExactly(
                        List.of("a", "b,c", "d \"e\"", "f\ng"), List.of("", "", ""), List.of(""), List.of("last"));
        assertThat(fields("a,\n\"\"\"\"")).containsExactly(List.of("a", ""), List.of("\""));
        assertThat(fields("")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\'',
            value = {
                "'a,\"b' | never closed | 1 | 3",
                "'\"a\"\"' | never closed | 1 | 1",
                "'a\nb\"c' | double it | 2 | 2",
                "'\"a\"b' | after the closing quote | 1 | 4",
                "'\"a\nb\"c' | after the closing quote | 2 | 3",
                "'\ud83d\ude00,a\"' | double it | 1 | 4",
                "'\ufeff,a\"' | double it | 1 | 3",
                "'a\rb' | a carriage return without a line feed | 1 | 3",
                "'\"\n\u0007\"' | a control character (number 7) | 2 | 1",
                "'a\u009fb' | a control character (number 159) | 1 | 2"
            })
    void what_is_not_csv_is_refused_with_its_place(String text, String message, int line, int column) {
        assertThatExceptionOfType(CsvException.class)
                .isThrownBy(() -> fields(text))
                .withMessageStartingWith("line " + line + ", column " + column + ": ")
                .withMessageContaining(message)
                .satisfies(e -> assertThat(List.of(e.line(), e.column())).containsExactly(line, column));
    }

    @Test
    void a_nul_is_no_text() {
        assertThatExceptionOfType(CsvException.class)
                .isThrownBy(() -> fields("a\0b"))
                .withMessageStartingWith("line 1, column 2: a control character (number 0)");
    }

    @Test
    void a_byte_order_mark_at_the_beginning_is_no_text() throws IOException {
        assertThat(fields("\ufeff\"a\",b")).containsExactly(List.of("a", "b"));
        assertThat(fields("a,\ufeffb")).containsExactly(List.of("a", "\ufeffb"));
        assertThat(fields("\ufeff")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "\"", "#"})
    void a_field_of_a_million_characters_is_refused_after_twenty_thousand(String head) {
        Counting text = new Counting(head + "x".repeat(1_000_000));
        assertThatExceptionOfType(CsvException.class)
                .isThrownBy(() -> new CsvReader("", text, LONGEST).next(List.of()))
                .withMessageStartingWith("line 1, column 1: a field longer than 20000 characters");
        assertThat(text.read).isLessThan(30_000);
    }

    @Test
    void a_comment_of_a_million_characters_is_refused() {
        assertThatExceptionOfType(CsvException.class)
                .isThrownBy(() ->
                        new CsvReader("", new StringReader("#a\n#" + "x".repeat(1_000_000)), LONGEST).comments())
                .withMessageStartingWith("line 2, column 1: a field longer than 20000 characters");
    }

    @Test
    void a_row_of_a_million_fields_is_refused() {
        assertThatExceptionOfType(CsvException.class)
                .isThrownBy(() -> fields(",".repeat(1_000_000)))
                .withMessageStartingWith("line 1, column 101: more than 100 fields");
    }

    @Test
    void rows_are_bounded_to_the_last_one() throws IOException {
        assertThat(fields("a\n".repeat(50_000))).hasSize(50_000);
        assertThatExceptionOfType(CsvException.class)
                .isThrownBy(() -> fields("a\n".repeat(50_001)))
                .withMessageStartingWith("line 50001, column 1: more than 50000 rows");
    }

    @Test
    void the_whole_text_is_bounded_to_the_last_character() throws IOException {
        assertThat(new CsvReader("", new StringReader("a,b\nc\n"), 6).next(List.of()))
                .hasSize(2);
        CsvReader reader = new CsvReader("", new StringReader("a,b\ncd\n"), 6);
        reader.next(List.of());
        assertThatExceptionOfType(CsvException.class)
                .isThrownBy(() -> reader.next(List.of()))
                .withMessageStartingWith("line 2, column 3: the text is longer than 6 characters");
    }

    /** Each is read or refused after one walk; anything that walks twice over what it has read would never end here. */
    @ParameterizedTest
    @ValueSource(
            strings = {"\"\"", "\"", "\"\n", "\"a\",", "a\n", "\r\n", "\r", "#\n", ";", "\t", ",\n", "\ufeff", "\ud83d"
            })
    void a_text_of_a_million_parts_is_read_or_refused_at_once(String part) {
        for (String head : List.of("", "\"", "a,", "#", "a\n")) {
            Counting text = new Counting(head + part.repeat(1_000_000));
            CpuTime.assertWithin(Duration.ofSeconds(20), () -> {
                try {
                    CsvReader reader = new CsvReader("", text, LONGEST);
                    reader.comments();
                    while (reader.hasNext()) {
                        reader.next(List.of());
                    }
                } catch (CsvException e) {
                    assertThat(e.line()).isPositive();
                    assertThat(e.column()).isPositive();
                }
            });
            assertThat(text.read).isLessThanOrEqualTo(head.length() + 1_000_000 * part.length());
        }
    }

    /** Counts what is taken from it. */
    private static final class Counting extends StringReader {
        private int read;

        Counting(String text) {
            super(text);
        }

        @Override
        public int read(char[] buffer, int offset, int length) throws IOException {
            int count = super.read(buffer, offset, length);
            read += Math.max(count, 0);
            return count;
        }
    }
}
