package io.github.formulationmath.csv;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Refusal.Place;
import io.github.formulationmath.number.Sentence;
import java.util.Objects;
import java.util.function.Function;

/**
 * One field with the place where it begins.
 *
 * @param place where its first character stands
 * @param header the name of its column; empty for a field of the header itself
 * @param text the text without quotes
 */
public record CsvField(Place place, String header, String text) {

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
