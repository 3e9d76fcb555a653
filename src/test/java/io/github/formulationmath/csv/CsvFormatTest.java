package io.github.formulationmath.csv;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import io.github.formulationmath.number.Refusal.Place;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A table is read whole, by the names of its columns, or refused with file, line, column, field and value. */
class CsvFormatTest {

    private static final CsvFormat FORMAT = CsvFormat.of(List.of("name", "mass"));

    private static CsvFormat.Table read(CsvFormat format, String text) throws IOException {
        return format.read("house", new StringReader(text));
    }

    @Test
    void fields_know_their_file_column_name_and_place() throws IOException {
        CsvFormat.Table table = read(FORMAT.withCommentHead(), "# one\n#two \nname,mass\nA,\"1\"\n");
        assertThat(table.comments()).containsExactly("one", "two");
        assertThat(table.rows()).singleElement().satisfies(row -> {
            assertThat(row.field("name")).isEqualTo(new CsvRow.Field(new Place("house", 4, 1), "name", "A"));
            assertThat(row.field("mass")).isEqualTo(new CsvRow.Field(new Place("house", 4, 3), "mass", "1"));
        });
        assertThat(table.last()).isEqualTo(new CsvRow.Field(new Place("house", 4, 1), "name", "A"));
        assertThat(read(FORMAT, "name,mass").last()).isEqualTo(new CsvRow.Field(new Place("house", 1, 1), "", "name"));
        assertThat(FORMAT.columns()).containsExactly("name", "mass");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\'',
            value = {
                "'' | 1 | 1 | 'no header line: it must read name,mass'",
                "'# one\nname,mass' | 1 | 1 | 'of the header must be name, not \"# one\": the first line must read name,mass'",
                "'name,weight' | 1 | 6 | 'column 2 of the header must be mass, not \"weight\"'",
                "'name' | 1 | 1 | 'column 2 of the header must be mass, not \"\"'",
                "'name,mass,note' | 1 | 11 | 'column 3 of the header must be no more columns, not \"note\"'",
                "'name;mass\nA;1,5' | 1 | 1 | 'separated by semicolons: separate them by commas, and write decimals with'",
                "'name\tmass\nA\t1' | 1 | 1 | 'separated by tabs: separate them by commas'",
                "'name,mass\nA' | 2 | 1 | 'the row has 1 field, the header 2: write a comma for each field that is'",
                "'name,mass\n\nA,1' | 2 | 1 | 'the row has 1 field, the header 2: write a comma for each field that is'",
                "'name,mass\nA,1,5' | 2 | 1 | 'the row has 3 fields, the header 2: put a field that holds a comma in quotes'"
            })
    void what_is_no_such_table_is_refused_with_its_place(String text, int line, int column, String message) {
        assertThatExceptionOfType(CsvException.class)
                .isThrownBy(() -> read(FORMAT, text))
                .withMessageStartingWith("house, line " + line + ", column " + column + ": ")
                .withMessageContaining(message)
                .satisfies(e -> assertThat(e.file()).isEqualTo("house"));
    }

    /** A header that is wrong is told before what follows is read as if it were right. */
    @Test
    void the_header_is_judged_first() {
        assertThatExceptionOfType(CsvException.class)
                .isThrownBy(() -> read(FORMAT, "name;mass\nA \"B\";1"))
                .withMessageContaining("semicolons");
    }

    @Test
    void a_text_longer_than_the_format_allows_is_refused() throws IOException {
        assertThat(read(FORMAT.ofAtMost(13), "name,mass\nA,1").rows()).hasSize(1);
        assertThatExceptionOfType(CsvException.class)
                .isThrownBy(() -> read(FORMAT.ofAtMost(12), "name,mass\nA,1"))
                .withMessage("house, line 2, column 3: the text is longer than 12 characters: split the table");
    }

    @Test
    void what_is_said_of_a_field_has_its_name_and_value() throws IOException {
        CsvRow row = read(FORMAT, "name,mass\n ,1e3").rows().get(0);
        assertThatExceptionOfType(CsvException.class)
                .isThrownBy(() -> row.decimal("mass"))
                .withMessage(
                        "house, line 2, column 3: mass is \"1e3\": write a plain number such as 0.5, without sign, "
                                + "exponent, comma or %")
                .satisfies(e -> assertThat(e.field()).contains("mass"))
                .satisfies(e -> assertThat(e.value()).contains("1e3"));
        assertThatExceptionOfType(CsvException.class)
                .isThrownBy(() -> row.required("name"))
                .withMessage("house, line 2, column 1: name is empty: fill it in");
        assertThatExceptionOfType(CsvException.class)
                .isThrownBy(() -> row.date("mass"))
                .withMessageEndingWith("mass is \"1e3\": write a date as 2024-02-25");
        assertThatExceptionOfType(CsvException.class)
                .isThrownBy(() -> row.choice("mass", List.of("a", "b"), word -> word))
                .withMessageEndingWith("mass is \"1e3\": it must be one of a, b");
        assertThatExceptionOfType(CsvException.class)
                .isThrownBy(() -> row.read("mass", Integer::valueOf))
                .withMessageContaining("column 3: mass cannot be read: For input string")
                .withCauseInstanceOf(NumberFormatException.class);
        assertThatExceptionOfType(CsvException.class)
                .isThrownBy(() -> row.field("mass").as(text -> {
                    throw new IllegalArgumentException();
                }))
                .withMessage("house, line 2, column 3: it cannot be read");
        assertThatExceptionOfType(CsvException.class)
                .isThrownBy(() -> row.read("name", name -> row.decimal("mass")))
                .satisfies(e -> assertThat(e.field()).contains("mass"));
        assertThatNullPointerException().isThrownBy(() -> row.text("none")).withMessage("none");
    }

    @Test
    void what_is_right_is_read() throws IOException {
        CsvRow row = read(FORMAT, "name,mass\n2024-02-25,0.50").rows().get(0);
        assertThat(row.decimal("mass")).isEqualTo("0.50");
        assertThat(row.date("name")).isEqualTo(LocalDate.of(2024, 2, 25));
        assertThat(row.<String>choice("mass", List.of("0.5", "0.50"), word -> word))
                .isEqualTo("0.50");
        assertThat(read(FORMAT, "name,mass\n,").rows().get(0).date("name")).isNull();
    }

    @Test
    void a_file_is_named_in_what_is_said_of_it(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("a.csv"), "\ufeffname,mass\nWäsche,x\n");
        CsvRow row = FORMAT.read(file).rows().get(0);
        assertThat(row.text("name")).isEqualTo("Wäsche");
        assertThatExceptionOfType(CsvException.class)
                .isThrownBy(() -> row.decimal("mass"))
                .withMessageStartingWith(file + ", line 2, column 8: ");
        Path latin = Files.writeString(
                folder.resolve("latin.csv"), "name,mass\nA,1\nWäsche,2\n", StandardCharsets.ISO_8859_1);
        assertThatExceptionOfType(CsvException.class)
                .isThrownBy(() -> FORMAT.read(latin))
                .withMessage(
                        latin + ", line 3, column 2: from here on the file is not in UTF-8: save it as CSV in UTF-8");
        Path wide = Files.writeString(folder.resolve("wide.csv"), "\ufeffname,mass\n", StandardCharsets.UTF_16BE);
        assertThatExceptionOfType(CsvException.class)
                .isThrownBy(() -> FORMAT.read(wide))
                .withMessageStartingWith(wide + ", line 1, column 1: from here on the file is not in UTF-8");
        assertThatExceptionOfType(java.nio.file.NoSuchFileException.class)
                .isThrownBy(() -> FORMAT.read(folder.resolve("none.csv")));
    }

    @Test
    void nulls_are_refused_by_name() {
        assertThatNullPointerException().isThrownBy(() -> FORMAT.read(null)).withMessage("file");
        assertThatNullPointerException()
                .isThrownBy(() -> FORMAT.read("a", (Reader) null))
                .withMessage("text");
        assertThatNullPointerException()
                .isThrownBy(() -> FORMAT.read("a", (InputStream) null))
                .withMessage("bytes");
        assertThatNullPointerException()
                .isThrownBy(() -> FORMAT.read(null, new ByteArrayInputStream(new byte[0])))
                .withMessage("file");
    }

    @Test
    void a_file_that_is_missing_from_the_jar_is_named() {
        CsvFormat format = CsvFormat.of(List.of("name"));
        assertThatExceptionOfType(IllegalStateException.class)
                .isThrownBy(() -> format.shipped(CsvFormat.class, "not-there.csv"))
                .withMessage("not-there.csv is missing from the jar: take a whole one");
    }
}
