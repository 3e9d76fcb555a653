package io.github.formulationmath.record;

import io.github.formulationmath.formula.Formula;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.Objects;

/**
 * Formulas as JSON, in the form in which a batch record holds them. Needs Jackson's streaming library ({@code
 * com.fasterxml.jackson.core:jackson-core} 2.x) on the class path, as {@link JsonBatchRecords} does.
 *
 * <p>The form is described by the JSON Schema {@code io/github/formulationmath/record/formula-1.schema.json} in the jar.
 * Shares, parts and masses are kept as they were written; numbers are texts in plain exact notation ({@code "12.50"},
 * {@code "1/3"}). A formula read back is equal to the one written, to the last digit.
 *
 * <p>A document is read whole or not at all, within the limits of {@link JsonBatchRecords}. What the builders of a formula
 * refuse, such as percentages that miss 100, is refused here too, with its place; fields that are not known are reported
 * beside the formula.
 *
 * <p>Example: {@code JsonFormulas.read(JsonFormulas.write(formula)).formula().equals(formula)}.
 */
public final class JsonFormulas {

    private JsonFormulas() {}

    /**
     * Writes a formula.
     *
     * @param formula the formula
     * @return JSON text
     * @throws IllegalArgumentException if the text would be too long to be read again
     * @throws IllegalStateException if Jackson is not on the class path; the message names the dependency
     * @throws UncheckedIOException never, as memory takes every text
     */
    public static String write(Formula formula) {
        StringWriter text = new StringWriter();
        try {
            write(formula, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    /**
     * Writes a formula.
     *
     * @param formula the formula
     * @param writer where the JSON text goes; it is flushed, not closed
     * @throws IllegalStateException if Jackson is not on the class path; the message names the dependency
     * @throws IOException if the writer fails
     * @throws IllegalArgumentException if the text would be too long to be read again; part of it has been written then
     */
    public static void write(Formula formula, Writer writer) throws IOException {
        Objects.requireNonNull(formula, "formula");
        JsonAccess.write(
                FormulaDocument.writeAlone(formula),
                new JsonLimitedWriter(
                        Objects.requireNonNull(writer, "writer"), "the formula", "split it into several formulas"));
    }

    /**
     * Reads a formula.
     *
     * @param json JSON text
     * @return the formula, and the fields that were not understood
     * @throws RecordFormatException if the text is no formula
     * @throws IllegalStateException if Jackson is not on the class path; the message names the dependency
     * @throws UncheckedIOException never, as memory gives every text
     */
    public static ReadFormula read(String json) {
        try {
            return read(new StringReader(Objects.requireNonNull(json, "json")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Reads a formula.
     *
     * @param reader where the JSON text comes from; it is not closed
     * @return the formula, and the fields that were not understood
     * @throws IllegalStateException if Jackson is not on the class path; the message names the dependency
     * @throws IOException if the reader fails
     * @throws RecordFormatException if the text is no formula; nothing is half-read
     */
    public static ReadFormula read(Reader reader) throws IOException {
        return FormulaDocument.readAlone(JsonAccess.read(Objects.requireNonNull(reader, "reader")));
    }
}
