package io.github.formulationmath.verification;

import java.util.Objects;
import java.util.function.Function;

/**
 * A field of a table and where it begins.
 *
 * @param text the text without quotes
 * @param line its line, from 1
 * @param column its column, from 1
 */
record Cell(String text, int line, int column) {

    ClaimFormatException wrong(String message) {
        return new ClaimFormatException(line, column, message);
    }

    /** Reads the text; what its reader says against it is said of this place. */
    <T> T as(Function<String, T> reader) {
        try {
            return reader.apply(text);
        } catch (ClaimFormatException e) {
            throw e;
        } catch (IllegalArgumentException e) {
            throw wrong(Objects.requireNonNullElse(e.getMessage(), "it cannot be read"));
        }
    }
}
