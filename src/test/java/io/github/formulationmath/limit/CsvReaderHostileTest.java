package io.github.formulationmath.limit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** RFC 4180 to the letter, and nothing that can hang or fill the memory. */
class CsvReaderHostileTest {

    private static final String HEADER = String.join(",", LimitTableReader.LIMIT_COLUMNS) + "\n";
    private static final String SUBSTANCES =
            String.join(",", LimitTableReader.SUBSTANCE_COLUMNS) + "\nG1,Tocopherol,,,,,TOCOPHEROL,member,\n";
    private static final String ROW = ",own,1,,G1,Tocopherol,max,0.50,active,,,,any,any,any,any,any,any,none,product,"
            + "single,,,,,,,,2024-05-13,House rule,,\n";

    private static List<List<String>> fields(String text) throws IOException {
        CsvReader reader = new CsvReader(new StringReader(text));
        List<List<String>> rows = new ArrayList<>();
        while (reader.hasNext()) {
            rows.add(reader.next().stream().map(CsvField::text).toList());
        }
        return rows;
    }

    /** RFC 4180, section 2, rules 1 to 7. */
    @Test
    void quoted_fields_hold_commas_quotes_and_line_ends() throws IOException {
        assertThat(fields("a,\"b,c\",\"d \"\"e\"\"\",\"f\ng\"\r\n,,\n\"\"\nlast"))
                .containsExactly(
                        List.of("a", "b,c", "d \"e\"", "f\ng"), List.of("", "", ""), List.of(""), List.of("last"));
        assertThat(fields("")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\'',
            value = {
                "'a,\"b' | never closed | 1 | 3",
                "'a\nb\"c' | double it | 2 | 2",
                "'\"a\"b' | after the closing quote | 1 | 4",
                "'\ufeffa' | byte order mark | 1 | 1"
            })
    void what_is_not_csv_is_refused_with_its_place(String text, String message, int line, int column) {
        assertThatExceptionOfType(LimitTableException.class)
                .isThrownBy(() -> fields(text))
                .withMessageContaining(message)
                .satisfies(e -> assertThat(List.of(e.line(), e.column())).containsExactly(line, column));
    }

    @Test
    void a_nul_is_no_text() {
        assertThatExceptionOfType(LimitTableException.class)
                .isThrownBy(() -> fields("a\0b"))
                .withMessageStartingWith("line 1, column 2: a control character (number 0)");
    }

    @Test
    void a_carriage_return_alone_ends_no_line() {
        assertThatExceptionOfType(LimitTableException.class)
                .isThrownBy(() -> fields("a\rb"))
                .withMessageStartingWith("line 1, column 3: a carriage return without a line feed");
    }

    @Test
    void a_field_of_a_million_characters_is_refused_after_twenty_thousand() {
        Counting reader = new Counting("x".repeat(1_000_000));
        assertThatExceptionOfType(LimitTableException.class)
                .isThrownBy(() -> new CsvReader(reader).next())
                .withMessageContaining("more than 20000 characters");
        assertThat(reader.read).isLessThan(20_010);
        assertThatExceptionOfType(LimitTableException.class)
                .isThrownBy(() -> fields("#" + "x".repeat(1_000_000)))
                .withMessageContaining("more than 20000 characters");
        assertThatExceptionOfType(LimitTableException.class)
                .isThrownBy(() -> fields("\"" + "x\n".repeat(1_000_000)))
                .withMessageContaining("more than 20000 characters");
    }

    @Test
    void a_row_of_a_million_fields_is_refused() {
        assertThatExceptionOfType(LimitTableException.class)
                .isThrownBy(() -> fields(",".repeat(1_000_000)))
                .withMessageContaining("more than 100 fields");
    }

    @Test
    void a_hundred_thousand_rows_are_refused_and_ten_thousand_are_read() throws IOException {
        assertTimeoutPreemptively(Duration.ofSeconds(60), () -> {
            assertThatExceptionOfType(LimitTableException.class)
                    .isThrownBy(() -> LimitTable.read("house", rows(100_000), new StringReader(SUBSTANCES)))
                    .withMessageContaining("more than 50000 rows");
            assertThat(LimitTable.read("house", rows(10_000), new StringReader(SUBSTANCES))
                            .limits())
                    .hasSize(10_000);
        });
    }

    private static Reader rows(int count) {
        StringBuilder text = new StringBuilder(HEADER);
        for (int i = 0; i < count; i++) {
            text.append("HOUSE-").append(i).append(ROW);
        }
        return new StringReader(text.toString());
    }

    @Test
    void an_id_a_second_time_is_refused_with_its_line() {
        assertThatExceptionOfType(LimitTableException.class)
                .isThrownBy(() -> LimitTable.read(
                        "house", new StringReader(HEADER + "A" + ROW + "A" + ROW), new StringReader(SUBSTANCES)))
                .withMessageStartingWith("line 3, column 1: limit_id is \"A\" a second time");
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '\'',
            value = {"limit_id, limit-id", "'annex,ref_no', 'ref_no,annex'", "',note', ''", "'note\n', 'note,more\n'"})
    void a_header_that_differs_is_refused(String right, String wrong) {
        String header = HEADER.replace(right, wrong);
        assertThatExceptionOfType(LimitTableException.class)
                .isThrownBy(() -> LimitTable.read("house", new StringReader(header), new StringReader(SUBSTANCES)))
                .withMessageContaining("of the header must be");
    }

    @Test
    void an_empty_file_and_a_short_row_are_refused() {
        assertThatExceptionOfType(LimitTableException.class)
                .isThrownBy(() -> LimitTable.read("house", new StringReader(""), new StringReader(SUBSTANCES)))
                .withMessageContaining("no header line");
        assertThatExceptionOfType(LimitTableException.class)
                .isThrownBy(() ->
                        LimitTable.read("house", new StringReader(HEADER + "A,b\n"), new StringReader(SUBSTANCES)))
                .withMessageContaining("2 fields, the header 32");
    }

    /** Counts what is asked of it. */
    private static final class Counting extends StringReader {
        private int read;

        Counting(String text) {
            super(text);
        }

        @Override
        public int read() throws IOException {
            read++;
            return super.read();
        }
    }
}
