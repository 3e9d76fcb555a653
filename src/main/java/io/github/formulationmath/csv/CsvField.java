package io.github.formulationmath.csv;

import java.util.Objects;
import java.util.function.Function;

/**
 * One field with the place where it begins.
 *
 * @param file the file, as {@link CsvException#file()} has it
 * @param header the name of its column; empty for a field of the header itself
 * @param text the text without quotes
 * @param line its line, from 1
 * @param column the number of its first character in the line, from 1
 */
public record CsvField(String file, String header, String text, int line, int column) {

    /**
     * The complaint about this field.
     *
     * @param message what is wrong with it, and what to write instead
     * @return the exception, to be thrown
     */
    public CsvException wrong(String message) {
        return new CsvException(this, message, null);
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
        return as("", reader);
    }

    <T> T as(String lead, Function<String, T> reader) {
        try {
            return reader.apply(text);
        } catch (CsvException e) {
            throw e;
        } catch (IllegalArgumentException | ArithmeticException e) {
            throw new CsvException(this, lead + Objects.requireNonNullElse(e.getMessage(), "it cannot be read"), e);
        }
    }
}
