package io.github.formulationmath.record;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.Objects;

/**
 * Batch records as JSON; a formula alone is written by {@link JsonFormulas}. Needs Jackson's streaming library ({@code com.fasterxml.jackson.core:jackson-core} 2.x) on the
 * class path; nothing else in this library does.
 *
 * <p>The form is described by the JSON Schema {@code io/github/formulationmath/record/batch-record-1.schema.json} in the
 * jar. All numbers are texts in plain exact notation ({@code "12.50"}, {@code "1/3"}), units and bases are fields of their
 * own, so that no JSON tool can round them. A record read back is equal to the one written, to the last digit.
 *
 * <p>A document is read whole or not at all: at most 32 MiB of text, one million values, 32 levels deep. Versions other
 * than 1, fields given twice, anything after the end, and values that the record's own rules refuse are errors that say
 * where; fields that are not known are reported beside the record.
 *
 * <p>Example: {@code JsonBatchRecords.read(JsonBatchRecords.write(record)).record().equals(record)}.
 */
public final class JsonBatchRecords {

    private JsonBatchRecords() {}

    /**
     * Writes a record.
     *
     * @param record the record
     * @return JSON text
     * @throws IllegalArgumentException if the text would be too long to be read again
     * @throws IllegalStateException if Jackson is not on the class path; the message names the dependency
     * @throws UncheckedIOException never, as memory takes every text
     */
    public static String write(BatchRecord record) {
        StringWriter text = new StringWriter();
        try {
            write(record, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    /**
     * Writes a record.
     *
     * @param record the record
     * @param writer where the JSON text goes; it is flushed, not closed
     * @throws IllegalStateException if Jackson is not on the class path; the message names the dependency
     * @throws IOException if the writer fails
     * @throws IllegalArgumentException if the text would be too long to be read again; part of it has been written then
     */
    public static void write(BatchRecord record, Writer writer) throws IOException {
        Objects.requireNonNull(record, "record");
        JsonAccess.write(
                RecordDocument.write(record),
                new JsonLimitedWriter(
                        Objects.requireNonNull(writer, "writer"),
                        "the record",
                        "start a new record and refer to this one"));
    }

    /**
     * Reads a record.
     *
     * @param json JSON text
     * @return the record, and the fields that were not understood
     * @throws RecordFormatException if the text is no batch record
     * @throws IllegalStateException if Jackson is not on the class path; the message names the dependency
     * @throws UncheckedIOException never, as memory gives every text
     */
    public static ReadRecord read(String json) {
        try {
            return read(new StringReader(Objects.requireNonNull(json, "json")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Reads a record.
     *
     * @param reader where the JSON text comes from; it is not closed
     * @return the record, and the fields that were not understood
     * @throws IllegalStateException if Jackson is not on the class path; the message names the dependency
     * @throws IOException if the reader fails
     * @throws RecordFormatException if the text is no batch record; nothing is half-read
     */
    public static ReadRecord read(Reader reader) throws IOException {
        return RecordDocument.read(JsonAccess.read(Objects.requireNonNull(reader, "reader")));
    }
}
