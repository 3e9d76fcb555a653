package io.github.formulationmath.csv;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Refusal.Place;
import io.github.formulationmath.number.Sentence;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** One row of a table with its fields by the names of their columns; every complaint carries the place. */
public final class CsvRow {

    private static final Pattern DECIMAL = Pattern.compile("[0-9]{1,9}(\\.[0-9]{1,18})?");

    /** Read without a formatter, whose start costs more than a table of dates. */
    private static final Pattern DATE = Pattern.compile("([0-9]{4})-([0-9]{2})-([0-9]{2})");

    private final Map<String, Integer> places;
    private final List<Field> fields;

    CsvRow(Map<String, Integer> places, List<Field> fields) {
        this.places = places;
        this.fields = fields;
    }

    /**
     * A field.
     *
     * @param column the name of its column
     * @return the field
     * @throws NullPointerException if the format has no such column
     */
    public Field field(String column) {
        return fields.get(Objects.requireNonNull(places.get(column), column));
    }

    /**
     * The text of a field.
     *
     * @param column the name of its column
     * @return the text without quotes, as it stands
     */
    public String text(String column) {
        return field(column).text();
    }

    /**
     * A text that may not be empty.
     *
     * @param column the name of its column
     * @return the text, as it stands
     * @throws CsvException if it is blank
     */
    public String required(String column) {
        if (text(column).isBlank()) {
            throw wrong(column, "is empty: fill it in");
        }
        return text(column);
    }

    /**
     * Several texts in one field, with semicolons between them.
     *
     * @param column the name of its column
     * @return an unmodifiable list of those that are not blank, stripped, each once
     */
    public List<String> list(String column) {
        return Stream.of(text(column).split(";", -1))
                .map(String::strip)
                .filter(word -> !word.isEmpty())
                .distinct()
                .toList();
    }

    /**
     * A plain decimal number.
     *
     * @param column the name of its column
     * @return the number as written
     * @throws CsvException if it is not digits, with or without a point between them: at most 9 before and 18 behind it
     */
    public String decimal(String column) {
        if (!DECIMAL.matcher(text(column)).matches()) {
            throw wrong(
                    column,
                    "is " + quoted(text(column)) + ": write a plain number such as 0.5, without sign,"
                            + " exponent, comma or %");
        }
        return text(column);
    }

    /**
     * A date.
     *
     * @param column the name of its column
     * @return the date, or null if the field is empty
     * @throws CsvException if it is no day of ISO 8601
     */
    public @Nullable LocalDate date(String column) {
        if (text(column).isEmpty()) {
            return null;
        }
        try {
            Matcher date = DATE.matcher(text(column));
            if (!date.matches()) {
                throw new DateTimeException(text(column));
            }
            return LocalDate.of(
                    Integer.parseInt(date.group(1)), Integer.parseInt(date.group(2)), Integer.parseInt(date.group(3)));
        } catch (DateTimeException e) {
            throw wrong(column, "is " + quoted(text(column)) + ": write a date as 2024-02-25");
        }
    }

    /**
     * One of a set of words.
     *
     * @param <T> what the words stand for
     * @param column the name of the column
     * @param values what may be chosen
     * @param code the word for each
     * @return what the word stands for
     * @throws CsvException if it is none of the words
     */
    public <T> T choice(String column, List<T> values, Function<T, String> code) {
        return values.stream()
                .filter(value -> code.apply(value).equals(text(column)))
                .findFirst()
                .orElseThrow(() -> wrong(
                        column,
                        "is " + quoted(text(column)) + ": it must be one of "
                                + values.stream().map(code).collect(Collectors.joining(", "))));
    }

    /**
     * What a factory makes of the text; its complaints get the place and the name of the column.
     *
     * @param <T> what is made
     * @param column the name of the column
     * @param factory the factory
     * @return what the factory makes of the text
     * @throws CsvException if the factory refuses the text
     */
    public <T> T read(String column, Function<String, T> factory) {
        return field(column).as("refusal.csv-column", "{column} cannot be read: {reason}", factory);
    }

    /**
     * The complaint about a field; the message begins with the name of its column.
     *
     * @param column the name of the column
     * @param what what is wrong with it, and what to write instead
     * @return the exception, to be thrown
     */
    public CsvException wrong(String column, String what) {
        return field(column).wrong(column + " " + what);
    }

    static String quoted(String text) {
        return '"' + Excerpt.of(text) + '"';
    }

    @Override
    public String toString() {
        return fields.toString();
    }

    /**
     * One field with the place where it begins.
     *
     * @param place where its first character stands
     * @param header the name of its column; empty for a field of the header itself
     * @param text the text without quotes
     */
    public record Field(Place place, String header, String text) {

        /**
         * Nothing may be missing.
         *
         * @param place where its first character stands
         * @param header the name of its column; empty for a field of the header itself
         * @param text the text without quotes
         */
        public Field {
            Objects.requireNonNull(place, "place");
            Objects.requireNonNull(header, "header");
            Objects.requireNonNull(text, "text");
        }

        /**
         * The complaint about this field.
         *
         * @param message what is wrong with it, and what to write instead
         * @return the exception, to be thrown
         */
        public CsvException wrong(String message) {
            return new CsvException(this, said("refusal.csv", "{reason}", message), null);
        }

        /**
         * Makes something of the text; what its reader says against it is said of this place.
         *
         * @param <T> what is made
         * @param reader the reader of the text
         * @return what the reader makes of the text
         * @throws CsvException if the reader refuses the text
         */
        public <T> T as(Function<String, T> reader) {
            return as("refusal.csv", "{reason}", reader);
        }

        <T> T as(String key, String english, Function<String, T> reader) {
            try {
                return reader.apply(text);
            } catch (CsvException e) {
                throw e;
            } catch (IllegalArgumentException | ArithmeticException e) {
                String reason = Objects.requireNonNullElse(e.getMessage(), "it cannot be read");
                throw new CsvException(this, said(key, english, reason), e);
            }
        }

        private Sentence said(String key, String english, String reason) {
            return Sentence.of(key, english, "column", header, "value", Excerpt.of(text), "reason", reason);
        }
    }
}
