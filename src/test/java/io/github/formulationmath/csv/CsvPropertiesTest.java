package io.github.formulationmath.csv;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/** What holds of every text: it comes back as written, as another library reads it, and its places are where it stands. */
class CsvPropertiesTest {

    private static final String[] PIECES = {
        "a", "é", "水", "\ud83d\ude00", ",", "\"", "\n", "\r\n", "\r", ";", "\t", " ", "'", "=", "#", "\ufeff"
    };

    private static String text(Random random, int most) {
        StringBuilder text = new StringBuilder();
        for (int length = random.nextInt(most + 1); length > 0; length--) {
            text.append(PIECES[random.nextInt(PIECES.length)]);
        }
        return text.toString();
    }

    private static List<List<String>> rows(Random random) {
        List<List<String>> rows = new ArrayList<>();
        for (int i = random.nextInt(6); i >= 0; i--) {
            rows.add(List.of(text(random, 6), text(random, 6), text(random, 6)));
        }
        return rows;
    }

    private static String written(List<List<String>> rows) {
        StringBuilder text = new StringBuilder("x,y,z\r\n");
        rows.forEach(row -> text.append(CsvWriter.row(row)));
        return text.toString();
    }

    private static List<String> texts(CsvRow row) {
        return List.of(row.text("x"), row.text("y"), row.text("z"));
    }

    @Test
    void what_is_written_is_read_back_and_another_library_reads_the_same() throws IOException {
        Random random = new Random(4180);
        for (int i = 0; i < 500; i++) {
            List<List<String>> rows = rows(random);
            String text = written(rows);
            CsvFormat.Table table = CsvFormat.of(List.of("x", "y", "z")).read("", new StringReader(text));
            assertThat(table.rows()).map(CsvPropertiesTest::texts).isEqualTo(rows);
            try (CSVParser parser = CSVParser.parse(text, CSVFormat.RFC4180)) {
                List<CSVRecord> others = parser.getRecords();
                assertThat(others.subList(1, others.size()))
                        .map(CSVRecord::toList)
                        .isEqualTo(rows);
            }
        }
    }

    /** By hand: the lines of the text parted at LF, and the characters of a line counted. */
    @Test
    void every_field_stands_at_its_place() throws IOException {
        Random random = new Random(7);
        for (int i = 0; i < 300; i++) {
            String text = written(rows(random));
            String[] lines = text.split("\n", -1);
            for (CsvRow row : CsvFormat.of(List.of("x", "y", "z"))
                    .read("", new StringReader(text))
                    .rows()) {
                for (String name : List.of("x", "y", "z")) {
                    CsvRow.Field field = row.field(name);
                    String rest = lines[field.place().line() - 1]
                            .codePoints()
                            .skip(field.place().column() - 1)
                            .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                            .toString();
                    String first = field.text().split("\n", -1)[0].replace("\"", "\"\"");
                    assertThat(rest).matches(found -> found.startsWith(first) || found.startsWith('"' + first));
                    int before = lines[field.place().line() - 1].length() - rest.length();
                    assertThat(before == 0 || lines[field.place().line() - 1].charAt(before - 1) == ',')
                            .isTrue();
                }
            }
        }
    }

    /** A byte that is no UTF-8, wherever it is put: around the ends of the buffers of 8192 too. */
    @Test
    void the_place_of_what_is_not_utf8_is_that_of_the_first_such_byte() throws IOException {
        Random random = new Random(8192);
        for (int i = 0; i < 300; i++) {
            int filling = List.of(0, 8180, 16_370).get(i % 3) + random.nextInt(30);
            String before = "x\r\n" + "ab\n".repeat(filling / 3) + "é水\ud83d\ude00".repeat(random.nextInt(6));
            byte[] wrong = List.of(
                            new byte[] {(byte) 0xff},
                            new byte[] {(byte) 0xe4, 'b'},
                            new byte[] {(byte) 0xf0, (byte) 0x9f, (byte) 0x98},
                            new byte[] {(byte) 0xed, (byte) 0xa0, (byte) 0x80})
                    .get(random.nextInt(4));
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            bytes.write(before.getBytes(StandardCharsets.UTF_8));
            bytes.write(wrong);
            InputStream in = new Sparing(bytes.toByteArray(), 1 + random.nextInt(9000));
            CsvException told = catchThrowableOfType(
                    CsvException.class, () -> CsvFormat.of(List.of("x")).read("f", in));
            int lastLine = before.lastIndexOf('\n') + 1;
            assertThat(told).hasMessageContaining("not in UTF-8");
            assertThat(told.line())
                    .isEqualTo(1 + (int) before.chars().filter(c -> c == '\n').count());
            assertThat(told.column()).isEqualTo(1 + before.codePointCount(lastLine, before.length()));
        }
    }

    @Test
    void whatever_is_in_utf8_is_decoded_as_by_the_jdk() throws IOException {
        Random random = new Random(8);
        for (int i = 0; i < 100; i++) {
            String text = text(random, 40).repeat(1 + random.nextInt(400));
            byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
            StringBuilder decoded = new StringBuilder();
            try (Utf8Reader reader = new Utf8Reader(new Sparing(bytes, 1 + random.nextInt(9000)))) {
                char[] buffer = new char[2 + random.nextInt(9000)];
                for (int n = reader.read(buffer); n >= 0; n = reader.read(buffer)) {
                    decoded.append(buffer, 0, n);
                }
            }
            assertThat(decoded).hasToString(text);
        }
    }

    /** Gives at most so many bytes at once. */
    private static final class Sparing extends ByteArrayInputStream {
        private final int most;

        Sparing(byte[] bytes, int most) {
            super(bytes);
            this.most = most;
        }

        @Override
        public synchronized int read(byte[] buffer, int offset, int length) {
            return super.read(buffer, offset, Math.min(most, length));
        }
    }
}
