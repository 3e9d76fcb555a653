package io.github.formulationmath.json;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.packing.PriceList;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.reckoning.Working;
import io.github.formulationmath.record.BatchRecord;
import io.github.formulationmath.series.SeriesPlan;
import io.github.formulationmath.series.SeriesReadings;
import io.github.formulationmath.shelf.Shelf;
import io.github.formulationmath.soap.LyeCalculation;
import io.github.formulationmath.soap.Soap;
import io.github.formulationmath.weighing.WeighingStation;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;

/**
 * Batch records ({@link #records}), formulas ({@link #formulas}), plans, batches that are only begun, benches, prices, shelves
 * ({@link #shelves}), series of trials ({@link #series}), soaps ({@link #soaps}) and lyes ({@link #lyes}) as JSON, and workings ({@link #ofWorking}). Reading needs
 * Jackson's streaming library ({@code com.fasterxml.jackson.core:jackson-core} 2.x) on the class path; writing does not, nor
 * does anything else in this library.
 *
 * <p>The form of a record is described by the JSON Schema {@code
 * io/github/formulationmath/record/batch-record-1.schema.json} in the jar, that of a formula by {@code
 * formula-1.schema.json} beside it. Shares, parts and masses are kept as they were written; all numbers are texts in plain
 * exact notation ({@code "12.50"}, {@code "1/3"}), units and bases are fields of their own, so that no JSON tool can round
 * them. What is read back is equal to what was written, to the last digit.
 *
 * <p>A document is read whole or not at all: at most 32 MiB of text, one million values, 32 levels deep. Versions other
 * than 1, fields given twice, anything after the end, and values that the rules of records and formulas refuse, such as
 * percentages that miss 100, are errors that say where; fields that are not known are reported beside what was read.
 *
 * <p>Example: {@code Json.records().read(Json.records().write(record)).value().equals(record)}.
 *
 * <p>Immutable and thread-safe.
 *
 * @param <T> what is written and read
 */
public final class Json<T> {

    private static final Json<BatchRecord> RECORDS = new Json<>(
            "the record", "start a new record and refer to this one", RecordDocument::write, RecordDocument::read);
    private static final Json<Formula> FORMULAS = new Json<>(
            "the formula", "split it into several formulas", FormulaDocument::writeAlone, FormulaDocument::readAlone);

    private static final Json<Soap> SOAPS =
            new Json<>("the soap", "split its formula", SoapDocument::writeAlone, SoapDocument::readAlone);
    private static final Json<LyeCalculation> LYES =
            new Json<>("the calculation", "split it into several", LyeDocument::write, LyeDocument::read);
    private static final Json<WeighingPlan> PLANS =
            new Json<>("the plan", "plan several formulas", PlanDocument::writePlan, PlanDocument::readPlan);
    private static final Json<Readings> READINGS =
            new Json<>("the readings", "start another batch", PlanDocument::writeReadings, PlanDocument::readReadings);
    private static final Json<Bench> BENCHES =
            new Json<>("the bench", "shorten its names", PlanDocument::writeBench, PlanDocument::readBench);
    private static final Json<List<WeighingStation>> STATIONS =
            new Json<>("the stations", "write fewer", PlanDocument::writeStations, PlanDocument::readStations);
    private static final Json<PriceList> PRICES =
            new Json<>("the prices", "split them into several lists", PricesDocument::write, PricesDocument::read);
    private static final Json<Shelf> SHELVES =
            new Json<>("the shelf", "split it into several shelves", ShelfDocument::write, ShelfDocument::read);

    private static final Json<SeriesPlan> SERIES_PLANS =
            new Json<>("the series", "split it into two", SeriesDocument::writePlan, SeriesDocument::readPlan);
    private static final Json<SeriesReadings> SERIES =
            new Json<>("the series", "split it into two", SeriesDocument::write, SeriesDocument::read);

    /** What the JVM names when the first class of Jackson is not found, and when our own class could not be started. */
    private static final String JACKSON = "com/fasterxml/jackson/";

    private static final String OURS = Json.class.getPackageName() + ".JsonText";

    private final String what;
    private final String remedy;
    private final Function<T, Written> toDocument;
    private final Function<Node, T> fromDocument;

    private Json(String what, String remedy, Function<T, Written> toDocument, Function<Node, T> fromDocument) {
        this.what = what;
        this.remedy = remedy;
        this.toDocument = toDocument;
        this.fromDocument = fromDocument;
    }

    /**
     * Batch records.
     *
     * @return what writes and reads them
     */
    public static Json<BatchRecord> records() {
        return RECORDS;
    }

    /**
     * Formulas that stand alone.
     *
     * @return what writes and reads them
     */
    public static Json<Formula> formulas() {
        return FORMULAS;
    }

    /**
     * A working, or the certificate of an answer, which is one, for whoever wants to check it without Java: numbered lines of
     * one number, operation, comparison or remark each, in the form of {@code working-1.schema.json} in the jar. Needs no
     * Jackson. {@code shared/workings/check_working.py} in the source of this library computes all of it again in exact
     * fractions, with nothing but Python.
     *
     * <p>Numbers are kept exactly, in the one unit of their kind that the line names (grams, millilitres, shares as parts of
     * 1); a reader who works in another converts them. The SHA-256 of the canonical form (RFC 8785) stands last.
     *
     * <p>Example: {@code Json.ofWorking(plan.line("Glycerin").working())}.
     *
     * @param working the working
     * @return JSON text, in one line
     * @throws IllegalArgumentException if there are more than a million values in it, or a name holds half a surrogate pair
     * @throws UncheckedIOException never, as memory takes every text
     */
    public static String ofWorking(Working working) {
        StringWriter text = new StringWriter();
        try {
            JsonWriter.write(Seal.on(ReckonedDocument.write(Objects.requireNonNull(working, "working"))), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    /**
     * Soaps: a formula and what is declared of its lines, each range with what it rests on and where it was read.
     *
     * @return what writes and reads them
     */
    public static Json<Soap> soaps() {
        return SOAPS;
    }

    /**
     * What lyes are reckoned from: fats, acids, alkalis, conventions. The alkali and the water are reckoned again when it is read.
     *
     * @return what writes and reads them
     */
    public static Json<LyeCalculation> lyes() {
        return LYES;
    }

    /**
     * Plans, on one balance or several.
     *
     * @return what writes and reads them
     */
    public static Json<WeighingPlan> plans() {
        return PLANS;
    }

    /**
     * Readings with their plan: a batch that is only begun, to be taken up again, or all of one.
     *
     * @return what writes and reads them
     */
    public static Json<Readings> readings() {
        return READINGS;
    }

    /**
     * Benches: a balance, the vessel on it, and how a total is closed.
     *
     * @return what writes and reads them
     */
    public static Json<Bench> benches() {
        return BENCHES;
    }

    /**
     * The balances of a workshop with what stands on them.
     *
     * @return what writes and reads them
     */
    public static Json<List<WeighingStation>> stations() {
        return STATIONS;
    }

    /**
     * Lists of prices.
     *
     * @return what writes and reads them
     */
    public static Json<PriceList> prices() {
        return PRICES;
    }

    /**
     * Shelves: lots with what is left of them, their prices and dates.
     *
     * @return what writes and reads them
     */
    public static Json<Shelf> shelves() {
        return SHELVES;
    }

    /**
     * Series of trials as they are planned: the versions, and the plans of the base and of each trial. When one is read, nothing is searched
     * for, so that it does not claim to be the least.
     *
     * @return what writes and reads them
     */
    public static Json<SeriesPlan> seriesPlans() {
        return SERIES_PLANS;
    }

    /**
     * Series of trials while they are made: the plan, and what was read of the base and of each trial so far.
     *
     * @return what writes and reads them
     */
    public static Json<SeriesReadings> series() {
        return SERIES;
    }

    /**
     * Writes a value.
     *
     * @param value the record or formula
     * @return JSON text
     * @throws IllegalArgumentException if the text would be too long to be read again
     * @throws UncheckedIOException never, as memory takes every text
     */
    public String write(T value) {
        StringWriter text = new StringWriter();
        try {
            write(value, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    /**
     * Writes a value.
     *
     * @param value the record or formula
     * @param writer where the JSON text goes; it is flushed, not closed
     * @throws IOException if the writer fails
     * @throws IllegalArgumentException if the text would be too long to be read again; part of it has been written then
     */
    public void write(T value, Writer writer) throws IOException {
        Written document = toDocument.apply(Objects.requireNonNull(value, "value"));
        Objects.requireNonNull(writer, "writer");
        JsonWriter.write(document, new Limited(writer));
    }

    /**
     * Reads a value.
     *
     * @param json JSON text
     * @return the record or formula, and the fields that were not understood
     * @throws RecordFormatException if the text is no record or formula
     * @throws IllegalStateException if Jackson is not on the class path; the message names the dependency
     * @throws UncheckedIOException never, as memory gives every text
     */
    public Read<T> read(String json) {
        try {
            return read(new StringReader(Objects.requireNonNull(json, "json")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Reads a value.
     *
     * @param reader where the JSON text comes from; it is not closed
     * @return the record or formula, and the fields that were not understood
     * @throws IllegalStateException if Jackson is not on the class path; the message names the dependency
     * @throws IOException if the reader fails
     * @throws RecordFormatException if the text is no record or formula; nothing is half-read
     */
    public Read<T> read(Reader reader) throws IOException {
        Objects.requireNonNull(reader, "reader");
        try {
            Node root = Node.root(JsonText.read(reader));
            return new Read<>(fromDocument.apply(root), root.unknownFields());
        } catch (NoClassDefFoundError e) {
            throw translated(e);
        }
    }

    private static IllegalStateException translated(NoClassDefFoundError e) {
        String missing = String.valueOf(e.getMessage());
        if (!missing.contains(JACKSON) && !missing.contains(OURS)) {
            throw e;
        }
        return new IllegalStateException(
                "reading JSON needs Jackson, which is not on the class path: add the dependency"
                        + " com.fasterxml.jackson.core:jackson-core (2.x) to your build",
                e);
    }

    /** Refuses to write what could not be read again. */
    private final class Limited extends Writer {

        private final Writer to;
        private long written;

        Limited(Writer to) {
            this.to = to;
        }

        @Override
        public void write(char[] buffer, int from, int length) throws IOException {
            written += length;
            if (written > Written.MAX_CHARACTERS) {
                throw new IllegalArgumentException(
                        what + " takes more than " + Written.MAX_CHARACTERS + " characters: " + remedy);
            }
            to.write(buffer, from, length);
        }

        @Override
        public void flush() throws IOException {
            to.flush();
        }

        @Override
        public void close() throws IOException {
            to.flush();
        }
    }

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
            unknownFields = List.copyOf(Objects.requireNonNull(unknownFields, "unknownFields"));
        }

        @Override
        public String toString() {
            return value + (unknownFields.isEmpty() ? "" : ", not understood: " + unknownFields);
        }
    }
}
