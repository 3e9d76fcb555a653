package io.github.formulationmath.csv;

import io.github.formulationmath.number.Refusal;
import io.github.formulationmath.number.Sentence;
import java.io.Serial;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A text of comma-separated values that cannot be read, with the place. The message names the file, if there are several or
 * the text came from one, the line and the column, what stands there, and what to write instead.
 */
public final class CsvException extends IllegalArgumentException implements Refusal {

    @Serial
    private static final long serialVersionUID = 2L;

    private final Sentence said;
    private final Place place;
    private final @Nullable String field;
    private final @Nullable String value;

    CsvException(CsvRow.Field field, Sentence said, @Nullable Throwable cause) {
        this(field.place(), field.header(), field.text(), said, cause);
    }

    CsvException(Place place, String reason) {
        this(place, null, null, Sentence.of("refusal.csv", "{reason}", "reason", reason), null);
    }

    private CsvException(
            Place place, @Nullable String field, @Nullable String value, Sentence said, @Nullable Throwable cause) {
        super(place + ": " + said.getMessage(), cause);
        this.said = said;
        this.place = place;
        this.field = field;
        this.value = value;
    }

    @Override
    public Sentence said() {
        return said;
    }

    @Override
    public Optional<Refusal> because() {
        return getCause() instanceof Refusal refusal ? Optional.of(refusal) : Optional.empty();
    }

    @Override
    public Optional<Place> place() {
        return Optional.of(place);
    }

    /**
     * The file.
     *
     * @return its path; for a text that comes from no file what it holds, for example {@code substances}, or nothing if it
     *     is the only one
     */
    public String file() {
        return place.file();
    }

    /**
     * The line.
     *
     * @return the number of the line in the file, counted from 1, lines of comment included
     */
    public int line() {
        return place.line();
    }

    /**
     * The column.
     *
     * @return the number of the character in the line, counted from 1; of a field the first one, its quote included
     */
    public int column() {
        return place.column();
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
