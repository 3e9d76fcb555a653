package io.github.formulationmath.quantity;

import java.io.InvalidObjectException;
import java.util.function.Supplier;

/** What came out of a stream is made again by its constructor, so that no stream can bring in what nobody could make. */
final class Deserialized {

    private Deserialized() {}

    static <T> T checked(String name, Supplier<T> value) throws InvalidObjectException {
        try {
            return value.get();
        } catch (IllegalArgumentException | NullPointerException e) {
            throw (InvalidObjectException)
                    new InvalidObjectException("no " + name + ": " + e.getMessage()).initCause(e);
        }
    }
}
