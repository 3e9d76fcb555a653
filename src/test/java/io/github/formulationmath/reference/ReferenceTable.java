package io.github.formulationmath.reference;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** A table of check values under {@code shared/}: comment lines with the provenance, a header line, rows. */
public record ReferenceTable(Path file, List<String> provenance, List<String> columns, List<Row> rows) {

    private static final CSVFormat FORMAT = CSVFormat.RFC4180
            .builder()
            .setCommentMarker('#')
            .setHeader()
            .setSkipHeaderRecord(true)
            .get();

    /** One row; a column that does not exist is a mistake of the test and throws. */
    public record Row(Map<String, String> fields) {

        /** The text of a column. */
        public String text(String column) {
            String value = fields.get(column);
            if (value == null) {
                throw new IllegalArgumentException("no column " + column + " in " + fields.keySet());
            }
            return value;
        }

        /** The exact decimal of a column. */
        public BigDecimal decimal(String column) {
            return new BigDecimal(text(column));
        }
    }

    /** Reads a table, for example {@code shared/reference/units.csv}. */
    public static ReferenceTable read(String path) {
        return read(Path.of(path));
    }

    /** The rows of a table as plain text fields. */
    public static List<Map<String, String>> fields(String path) {
        return read(path).rows().stream().map(Row::fields).toList();
    }

    static ReferenceTable read(Path file) {
        try (BufferedReader reader = Files.newBufferedReader(file);
                CSVParser parser = FORMAT.parse(reader)) {
            List<Row> rows = parser.stream().map(CSVRecord::toMap).map(Row::new).toList();
            List<String> provenance = Files.readAllLines(file).stream()
                    .takeWhile(line -> line.startsWith("# "))
                    .map(line -> line.substring(2))
                    .toList();
            return new ReferenceTable(file, provenance, parser.getHeaderNames(), rows);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static List<ReferenceTable> all() {
        return Stream.of("shared/reference", "shared/chemistry")
                .flatMap(folder -> list(Path.of(folder)).stream())
                .filter(file -> file.toString().endsWith(".csv"))
                .sorted()
                .map(ReferenceTable::read)
                .toList();
    }

    private static List<Path> list(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public String toString() {
        return file.toString();
    }
}
