package io.github.formulationmath.csv;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Refusal.Place;
import io.github.formulationmath.number.Sentence;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** One row of a table with its fields by the names of their columns; every complaint carries the place. */
public final class CsvRow {

    private static final String COLUMN = "refusal.csv-column";
    private static final String COLUMN_IN_ENGLISH = "{column} cannot be read: {reason}";

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
        Set<String> words = new LinkedHashSet<>(listed(text(column), ';'));
        words.remove("");
        return List.copyOf(words);
    }

    /**
     * The texts of a list, of a field or a line of comment.
     *
     * @param text the list
     * @param separator what stands between them, a sign
     * @return an unmodifiable list of all of them in their order, stripped, a blank one as an empty text; one empty text if the
     *     list is blank
     */
    public static List<String> listed(String text, char separator) {
        List<String> all = new ArrayList<>();
        for (String one : Objects.requireNonNull(text, "text").split("\\" + separator, -1)) {
            all.add(one.strip());
        }
        return Collections.unmodifiableList(all);
    }

    /**
     * A plain decimal number.
     *
     * @param column the name of its column
     * @return the number as written
     * @throws CsvException if it is not digits, with or without a point between them: at most 9 before and 18 behind it
     */
    public String decimal(String column) {
        if (!isDecimal(text(column))) {
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
            return day(text(column));
        } catch (DateTimeException e) {
            throw wrong(column, "is " + quoted(text(column)) + ": write a date as 2024-02-25");
        }
    }

    /** At most 9 digits before and 18 behind a point; looked at without a pattern, as are dates, because tables are long. */
    private static boolean isDecimal(String text) {
        int point = text.indexOf('.');
        int whole = point < 0 ? text.length() : point;
        int decimals = text.length() - whole - 1;
        return whole >= 1
                && whole <= 9
                && areDigits(text, 0, whole)
                && (point < 0 || decimals >= 1 && decimals <= 18 && areDigits(text, whole + 1, text.length()));
    }

    private static LocalDate day(String text) {
        boolean formed = text.length() == 10
                && text.charAt(4) == '-'
                && text.charAt(7) == '-'
                && areDigits(text, 0, 4)
                && areDigits(text, 5, 7)
                && areDigits(text, 8, 10);
        if (!formed) {
            throw new DateTimeException(text);
        }
        return LocalDate.of(
                Integer.parseInt(text.substring(0, 4)),
                Integer.parseInt(text.substring(5, 7)),
                Integer.parseInt(text.substring(8)));
    }

    private static boolean areDigits(String text, int from, int to) {
        for (int i = from; i < to; i++) {
            if (text.charAt(i) < '0' || text.charAt(i) > '9') {
                return false;
            }
        }
        return true;
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
        Map<String, T> byWord = new LinkedHashMap<>();
        for (T value : values) {
            byWord.put(code.apply(value), value);
        }
        return choice(column, byWord);
    }

    /**
     * One of a set of words.
     *
     * @param <T> what the words stand for
     * @param column the name of the column
     * @param values what each word stands for, in the order in which they are told
     * @return what the word stands for
     * @throws CsvException if it is none of the words
     */
    public <T> T choice(String column, Map<String, T> values) {
        T found = values.get(text(column));
        if (found == null) {
            throw wrong(
                    column, "is " + quoted(text(column)) + ": it must be one of " + String.join(", ", values.keySet()));
        }
        return found;
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
        return field(column).as(COLUMN, COLUMN_IN_ENGLISH, factory);
    }

    /**
     * The complaint of a reader about the text of a field, with its place and the name of the column: what {@link #read}
     * throws, for those who read a long table and catch it themselves.
     *
     * @param column the name of the column
     * @param reason what the reader threw
     * @return the exception, to be thrown; the reason itself if it has a place already
     */
    public CsvException wrong(String column, RuntimeException reason) {
        return field(column).refused(COLUMN, COLUMN_IN_ENGLISH, Objects.requireNonNull(reason, "reason"));
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
            } catch (IllegalArgumentException | ArithmeticException e) {
                throw refused(key, english, e);
            }
        }

        private CsvException refused(String key, String english, RuntimeException e) {
            return e instanceof CsvException placed
                    ? placed
                    : new CsvException(
                            this,
                            said(key, english, Objects.requireNonNullElse(e.getMessage(), "it cannot be read")),
                            e);
        }

        private Sentence said(String key, String english, String reason) {
            return Sentence.of(key, english, "column", header, "value", Excerpt.of(text), "reason", reason);
        }
    }
}
