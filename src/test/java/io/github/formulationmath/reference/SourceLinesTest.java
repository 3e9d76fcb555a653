package io.github.formulationmath.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.csv.CsvException;
import io.github.formulationmath.reference.ReferenceTable.Row;
import io.github.formulationmath.soap.AlkaliGradeTable;
import io.github.formulationmath.soap.FatTable;
import io.github.formulationmath.solution.AcidTable;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A row without the line of its source does not ship: not in any table of the chemistry, and the readers refuse it. */
class SourceLinesTest {

    private static final Path FOLDER = Path.of("shared", "chemistry");

    /** How the library reads each table whose rows have sources of their own. */
    private interface Read {
        Object from(String name, Reader text) throws IOException;
    }

    private static final Map<String, Read> READERS = Map.of(
            "saponification-values.csv", FatTable::read,
            "alkali-grades.csv", AlkaliGradeTable::read,
            "acid-constants.csv", AcidTable::read);

    @Test
    void every_table_of_the_folder_says_where_it_is_from() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            List<Path> tables =
                    files.filter(file -> file.toString().endsWith(".csv")).toList();
            assertThat(tables).hasSizeGreaterThanOrEqualTo(5);
            for (Path table : tables) {
                assertThat(Files.readAllLines(table))
                        .as(table.toString())
                        .anyMatch(line -> line.matches("# (source|transcription)\\b.*: ?\\S.*"));
                ReferenceTable rows = ReferenceTable.read(table.toString());
                assertThat(rows.columns()).as(table.toString()).contains("source", "tag");
                assertThat(rows.rows()).isNotEmpty().allSatisfy(SourceLinesTest::isSourced);
            }
        }
    }

    private static void isSourced(Row row) {
        assertThat(row.text("source")).isNotBlank();
        assertThat(row.text("tag")).startsWith("SEEN");
    }

    /** The last two fields of each row are its source and its tag. */
    @ParameterizedTest
    @ValueSource(strings = {"saponification-values.csv", "alkali-grades.csv", "acid-constants.csv"})
    void a_row_whose_source_is_struck_out_is_refused(String table) throws IOException {
        List<String> lines = Files.readAllLines(FOLDER.resolve(table));
        Read reader = READERS.get(table);
        reader.from(table, new StringReader(String.join("\n", lines) + "\n"));
        int head = 0;
        while (lines.get(head).startsWith("#")) {
            head++;
        }
        int tried = 0;
        for (int i = head + 1; i < lines.size(); i++) {
            String row = lines.get(i);
            String tag = row.substring(row.lastIndexOf(',') + 1);
            String before = row.substring(0, row.lastIndexOf(','));
            int source = before.endsWith("\"") ? before.lastIndexOf(",\"") : before.lastIndexOf(',');
            for (String struck : List.of(before.substring(0, source) + ",," + tag, before + ",")) {
                List<String> changed = new ArrayList<>(lines);
                changed.set(i, struck);
                int line = i + 1;
                assertThatThrownBy(() -> reader.from(table, new StringReader(String.join("\n", changed) + "\n")))
                        .as(struck)
                        .isInstanceOf(CsvException.class)
                        .hasMessageContaining("line " + line);
                tried++;
            }
        }
        assertThat(tried).isEqualTo(2 * (lines.size() - head - 1));
    }
}
