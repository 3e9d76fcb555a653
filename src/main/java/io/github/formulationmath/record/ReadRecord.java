package io.github.formulationmath.record;

import java.util.List;

/**
 * A record as it was read, and the fields of the document that this version of the library does not know. They are not
 * part of the record: writing it again would lose them.
 *
 * <p>Immutable and thread-safe.
 */
public final class ReadRecord {

    private final BatchRecord record;
    private final List<String> unknownFields;

    ReadRecord(BatchRecord record, List<String> unknownFields) {
        this.record = record;
        this.unknownFields = List.copyOf(unknownFields);
    }

    /**
     * The record.
     *
     * @return the record
     */
    public BatchRecord record() {
        return record;
    }

    /**
     * Fields that were not understood.
     *
     * @return their JSON Pointers (RFC 6901) in the order of the document; empty if everything was understood
     */
    public List<String> unknownFields() {
        return unknownFields;
    }

    @Override
    public String toString() {
        return record + (unknownFields.isEmpty() ? "" : ", not understood: " + unknownFields);
    }
}
