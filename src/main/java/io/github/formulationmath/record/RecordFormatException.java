package io.github.formulationmath.record;

import java.io.Serial;

/** A document that is no batch record, or no formula; says where in it, and what was expected there. */
public final class RecordFormatException extends IllegalArgumentException {

    @Serial
    private static final long serialVersionUID = 1L;

    private final String pointer;

    RecordFormatException(String pointer, String reason) {
        super((pointer.isEmpty() ? "the document" : pointer) + ": " + reason);
        this.pointer = pointer;
    }

    RecordFormatException(String pointer, String reason, Throwable cause) {
        super((pointer.isEmpty() ? "the document" : pointer) + ": " + reason, cause);
        this.pointer = pointer;
    }

    /**
     * Where in the document.
     *
     * @return a JSON Pointer (RFC 6901), such as {@code /readings/2/shown}; empty for the document as a whole
     */
    public String pointer() {
        return pointer;
    }
}
