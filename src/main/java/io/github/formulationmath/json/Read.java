package io.github.formulationmath.json;

import java.util.List;
import java.util.Objects;

/**
 * What was read from a document, and the fields of the document that this version of the library does not know. They are
 * not part of what was read: writing it again would lose them.
 *
 * <p>Example: {@code Json.formulas().read(json).value()}.
 *
 * <p>Immutable and thread-safe.
 *
 * @param <T> what was read
 * @param value what was read
 * @param unknownFields the JSON Pointers (RFC 6901) of what was not understood, in the order of the document; empty if
 *     everything was understood
 */
public record Read<T>(T value, List<String> unknownFields) {

    /**
     * Copies the fields.
     *
     * @param value what was read
     * @param unknownFields the JSON Pointers of what was not understood
     */
    public Read {
        Objects.requireNonNull(value, "value");
        unknownFields = List.copyOf(unknownFields);
    }

    @Override
    public String toString() {
        return value + (unknownFields.isEmpty() ? "" : ", not understood: " + unknownFields);
    }
}
