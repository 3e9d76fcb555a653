package io.github.formulationmath.csv;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * What a file must look like: its columns, whether lines of comment may stand at its head, and how long it may be. The first
 * line is the header, which must name just these columns in this order; every other line has as many fields.
 *
 * <p>Immutable and thread-safe.
 */
public final class CsvFormat {

    private static final int LONGEST = 20_000_000;

    private final List<String> columns;
    private final Map<String, Integer> places;
    private final boolean commented;
    private final int longest;

    private CsvFormat(List<String> columns, boolean commented, int longest) {
        this.columns = List.copyOf(columns);
        this.places = new HashMap<>();
        for (String column : columns) {
            if (places.put(column, places.size()) != null) {
                throw new IllegalArgumentException("columns has " + column + " a second time: name each another");
            }
        }
        this.commented = commented;
        this.longest = longest;
    }

    /**
     * A file without comments, of 20 million characters at most.
     *
     * @param columns the names of its columns, each another
     * @return the format
     */
    public static CsvFormat of(List<String> columns) {
        return new CsvFormat(Objects.requireNonNull(columns, "columns"), false, LONGEST);
    }

    /**
     * A file without comments whose columns are given as its header line.
     *
     * @param header for example {@code id,name,value}
     * @return the format
     */
    public static CsvFormat ofHeader(String header) {
        return of(List.of(Objects.requireNonNull(header, "header").split(",", -1)));
    }

    /**
     * The same format, with lines at the head that begin with {@code #}, or none.
     *
     * @return the format
     */
    public CsvFormat withCommentHead() {
        return new CsvFormat(columns, true, longest);
    }

    /**
     * The same format for texts of another length.
     *
     * @param characters the most characters that a text may have
     * @return the format
     */
    public CsvFormat ofAtMost(int characters) {
        return new CsvFormat(columns, commented, characters);
    }

    /**
     * The names of the columns.
     *
     * @return an unmodifiable list in the order of the file
     */
    public List<String> columns() {
        return columns;
    }

    /**
     * Reads a file in UTF-8, with or without a byte order mark.
     *
     * @param file the file
     * @return the table
     * @throws IOException if the file cannot be read
     * @throws CsvException if the file is not as it should be, or not in UTF-8
     */
    public Table read(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(Objects.requireNonNull(file, "file"))) {
            return read(file.toString(), in);
        }
    }

    /**
     * Reads a file that comes in the jar.
     *
     * @param owner a type of the jar that has the file
     * @param resource its name there, beside the owner or from the root with {@code /}
     * @return the table
     * @throws IllegalStateException if it is missing: the jar is not whole
     * @throws UncheckedIOException if it cannot be read
     * @throws CsvException if it is not as it should be
     */
    public Table shipped(Class<?> owner, String resource) {
        try (InputStream in = Objects.requireNonNull(owner, "owner")
                .getResourceAsStream(Objects.requireNonNull(resource, "resource"))) {
            if (in == null) {
                throw new IllegalStateException(resource + " is missing from the jar: take a whole one");
            }
            return read(resource.substring(resource.lastIndexOf('/') + 1), in);
        } catch (IOException e) {
            throw new UncheckedIOException(resource + " cannot be read from the jar", e);
        }
    }

    /**
     * Reads bytes in UTF-8, with or without a byte order mark.
     *
     * @param file what the bytes are called in complaints, as {@link CsvException#file()} has it
     * @param bytes the bytes; they are not closed
     * @return the table
     * @throws IOException if the bytes cannot be read
     * @throws CsvException if they are not as they should be, or not in UTF-8
     */
    public Table read(String file, InputStream bytes) throws IOException {
        return read(file, new Utf8Reader(Objects.requireNonNull(bytes, "bytes")));
    }

    /**
     * Reads a text, with or without a byte order mark.
     *
     * @param file what the text is called in complaints, as {@link CsvException#file()} has it
     * @param text the text; it is not closed
     * @return the table
     * @throws IOException if the text cannot be read
     * @throws CsvException if the text is not as it should be
     */
    public Table read(String file, Reader text) throws IOException {
        CsvReader csv =
                new CsvReader(Objects.requireNonNull(file, "file"), Objects.requireNonNull(text, "text"), longest);
        List<String> comments = commented ? csv.comments() : List.of();
        if (!csv.hasNext()) {
            throw csv.wrong("the table has no header line: it must read " + String.join(",", columns));
        }
        // Before what follows is read as if it were right.
        List<CsvRow.Field> fields = csv.next(List.of());
        requireHeader(fields);
        List<CsvRow> rows = new ArrayList<>();
        while (csv.hasNext()) {
            fields = csv.next(columns);
            requireWhole(fields);
            rows.add(new CsvRow(places, fields));
        }
        return new Table(comments, rows, fields.get(0));
    }

    private void requireHeader(List<CsvRow.Field> header) {
        requireCommas(header);
        for (int i = 0; i < Math.max(header.size(), columns.size()); i++) {
            String expected = i < columns.size() ? columns.get(i) : "no more columns";
            CsvRow.Field found = header.get(Math.min(i, header.size() - 1));
            if (i >= header.size() || !found.text().equals(expected)) {
                throw found.wrong("column " + (i + 1) + " of the header must be " + expected + ", not "
                        + CsvRow.quoted(i < header.size() ? found.text() : "") + ": the first line must read "
                        + String.join(",", columns));
            }
        }
    }

    /** What a spreadsheet of another country or a copy by hand writes. */
    private void requireCommas(List<CsvRow.Field> header) {
        for (String separator : List.of(";", "\t")) {
            if (header.size() == 1 && header.get(0).text().startsWith(columns.get(0) + separator)) {
                throw header.get(0)
                        .wrong("the fields are separated by " + (separator.equals(";") ? "semicolons" : "tabs")
                                + ": separate them by commas, and write decimals with a point");
            }
        }
    }

    private void requireWhole(List<CsvRow.Field> fields) {
        int missing = columns.size() - fields.size();
        if (missing != 0) {
            throw fields.get(0)
                    .wrong("the row has " + fields.size() + (fields.size() == 1 ? " field" : " fields")
                            + ", the header " + columns.size() + ": "
                            + (missing > 0
                                    ? "write a comma for each field that is empty, and leave out lines that are"
                                    : "put a field that holds a comma in quotes"));
        }
    }

    @Override
    public String toString() {
        return String.join(",", columns);
    }

    /**
     * What was read.
     *
     * @param comments the lines at the head that begin with {@code #}, without it and without blanks around
     * @param rows the rows below the header, in the order of the text
     * @param last the first field of the last line, which is the header if there is no row: the place of what is missing
     */
    public record Table(List<String> comments, List<CsvRow> rows, CsvRow.Field last) {

        /**
         * Copies the lists, so that nothing changes them.
         *
         * @param comments the lines at the head
         * @param rows the rows
         * @param last the place of what is missing
         */
        public Table {
            comments = List.copyOf(comments);
            rows = List.copyOf(rows);
        }
    }
}
