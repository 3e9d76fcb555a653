package io.github.formulationmath.csv;

import java.io.Serial;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A text of comma-separated values that cannot be read, with the place. The message names the file, if there are several or
 * the text came from one, the line and the column, what stands there, and what to write instead.
 */
public final class CsvException extends IllegalArgumentException {

    @Serial
    private static final long serialVersionUID = 1L;

    private final String file;
    private final int line;
    private final int column;
    private final @Nullable String field;
    private final @Nullable String value;

    CsvException(CsvField place, String message, @Nullable Throwable cause) {
        this(place.file(), place.line(), place.column(), place.header(), place.text(), message, cause);
    }

    CsvException(String file, int line, int column, String message) {
        this(file, line, column, null, null, message, null);
    }

    private CsvException(
            String file,
            int line,
            int column,
            @Nullable String field,
            @Nullable String value,
            String message,
            @Nullable Throwable cause) {
        super((file.isEmpty() ? "" : file + ", ") + "line " + line + ", column " + column + ": " + message, cause);
        this.file = file;
        this.line = line;
        this.column = column;
        this.field = field;
        this.value = value;
    }

    /**
     * The file.
     *
     * @return its path; for a text that comes from no file what it holds, for example {@code substances}, or nothing if it
     *     is the only one
     */
    public String file() {
        return file;
    }

    /**
     * The line.
     *
     * @return the number of the line in the file, counted from 1, lines of comment included
     */
    public int line() {
        return line;
    }

    /**
     * The column.
     *
     * @return the number of the character in the line, counted from 1; of a field the first one, its quote included
     */
    public int column() {
        return column;
    }

    /**
     * The field.
     *
     * @return the name that the header gives it; empty if the text is wrong before it has fields
     */
    public Optional<String> field() {
        return Optional.ofNullable(field);
    }

    /**
     * What stands in the field.
     *
     * @return its text without quotes; empty if the text is wrong before it has fields
     */
    public Optional<String> value() {
        return Optional.ofNullable(value);
    }
}
