package io.github.formulationmath.limit;

import io.github.formulationmath.number.Ratio;
import java.io.IOException;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** One row of a table with its columns by name; every complaint carries the place. */
final class CsvRow {

    private static final Pattern DECIMAL = Pattern.compile("[0-9]{1,9}(\\.[0-9]{1,18})?");

    private final Map<String, Integer> columns;
    private final List<CsvField> fields;

    private CsvRow(Map<String, Integer> columns, List<CsvField> fields) {
        this.columns = columns;
        this.fields = fields;
    }

    /** Reads a header line, which must be just these columns, and all rows. */
    static List<CsvRow> readAll(CsvReader csv, List<String> columns) throws IOException {
        if (!csv.hasNext()) {
            throw new LimitTableException(
                    "the table has no header line: it must read " + String.join(",", columns), 1, 1);
        }
        requireHeader(csv.next(), columns);
        Map<String, Integer> places =
                IntStream.range(0, columns.size()).boxed().collect(Collectors.toMap(columns::get, i -> i));
        List<CsvRow> rows = new ArrayList<>();
        while (csv.hasNext()) {
            List<CsvField> fields = csv.next();
            if (fields.size() != columns.size()) {
                throw fields.get(fields.size() - 1)
                        .wrong("the row has " + fields.size() + " fields, the header " + columns.size());
            }
            rows.add(new CsvRow(places, fields));
        }
        return rows;
    }

    private static void requireHeader(List<CsvField> header, List<String> columns) {
        for (int i = 0; i < Math.max(header.size(), columns.size()); i++) {
            String expected = i < columns.size() ? columns.get(i) : "no more columns";
            CsvField found = header.get(Math.min(i, header.size() - 1));
            if (i >= header.size() || !found.text().equals(expected)) {
                throw found.wrong("column " + (i + 1) + " of the header must be " + expected + ", not \""
                        + (i < header.size() ? found.text() : "") + "\"");
            }
        }
    }

    String text(String column) {
        return field(column).text();
    }

    /** A text that may not be empty. */
    String required(String column) {
        if (text(column).isBlank()) {
            throw wrong(column, "is empty");
        }
        return text(column);
    }

    /** A plain decimal number, as written. */
    String decimal(String column) {
        if (!DECIMAL.matcher(text(column)).matches()) {
            throw wrong(
                    column,
                    "is \"" + shortened(text(column)) + "\": write a plain number such as 0.5, without sign,"
                            + " exponent, comma or %");
        }
        return text(column);
    }

    Ratio number(String column) {
        return Ratio.parse(decimal(column));
    }

    /** A date, or null if the field is empty. */
    @Nullable
    LocalDate date(String column) {
        if (text(column).isEmpty()) {
            return null;
        }
        try {
            return LocalDate.parse(text(column));
        } catch (DateTimeException e) {
            throw wrong(column, "is \"" + shortened(text(column)) + "\": write a date as 2024-05-13");
        }
    }

    /** One of a set of words. */
    <T> T choice(String column, T[] values, Function<T, String> code) {
        for (T value : values) {
            if (code.apply(value).equals(text(column))) {
                return value;
            }
        }
        throw wrong(
                column,
                "is \"" + shortened(text(column)) + "\": it must be one of "
                        + java.util.Arrays.stream(values).map(code).collect(Collectors.joining(", ")));
    }

    /** What a factory makes of the text; its complaints get the place. */
    <T> T read(String column, Function<String, T> factory) {
        try {
            return factory.apply(text(column));
        } catch (LimitTableException e) {
            throw e;
        } catch (IllegalArgumentException | ArithmeticException e) {
            throw wrong(column, "cannot be read: " + e.getMessage());
        }
    }

    LimitTableException wrong(String column, String what) {
        return field(column).wrong(column + " " + what);
    }

    private CsvField field(String column) {
        return fields.get(Objects.requireNonNull(columns.get(column), column));
    }

    static String shortened(String text) {
        return text.length() <= 60 ? text : text.substring(0, 60) + "…";
    }
}
