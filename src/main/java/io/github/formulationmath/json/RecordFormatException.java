package io.github.formulationmath.json;

import io.github.formulationmath.number.Refusal;
import io.github.formulationmath.number.Sentence;
import java.io.Serial;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A document that is no batch record, or no formula; says where in it, and what was expected there. */
public final class RecordFormatException extends IllegalArgumentException implements Refusal {

    @Serial
    private static final long serialVersionUID = 2L;

    private final Sentence said;
    private final String pointer;

    RecordFormatException(String pointer, String reason) {
        this(pointer, reason, null);
    }

    RecordFormatException(String pointer, String reason, @Nullable Throwable cause) {
        this(
                Sentence.of(
                        pointer.isEmpty() ? "refusal.document" : "refusal.document-at",
                        pointer.isEmpty() ? "the document: {reason}" : "{pointer}: {reason}",
                        "pointer",
                        pointer,
                        "reason",
                        reason),
                pointer,
                cause);
    }

    private RecordFormatException(Sentence said, String pointer, @Nullable Throwable cause) {
        super(said.getMessage(), cause);
        this.said = said;
        this.pointer = pointer;
    }

    @Override
    public Sentence said() {
        return said;
    }

    @Override
    public Optional<Refusal> because() {
        return getCause() instanceof Refusal refusal ? Optional.of(refusal) : Optional.empty();
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
