package io.github.formulationmath.json;

import static io.github.formulationmath.pot.Lotion.g;
import static io.github.formulationmath.record.BatchRecordTest.CODE;
import static io.github.formulationmath.record.BatchRecordTest.NOON;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.json.Json.Read;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.packing.PackFill;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Closure;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.pot.LineAddition;
import io.github.formulationmath.pot.Reading;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.record.Amendment;
import io.github.formulationmath.record.BatchRecord;
import io.github.formulationmath.record.BatchRecordTest;
import io.github.formulationmath.record.BenchEntry;
import io.github.formulationmath.record.SeveralBalancesRecordTest;
import io.github.formulationmath.simulation.InputQuantity.Law;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.ErrorModel;
import io.github.formulationmath.weighing.Vessel;
import io.github.formulationmath.weighing.WeighingMethod;
import java.io.IOException;
import java.io.InputStream;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

final class JsonRecordsTest {

    private static final Ingredient OIL = Ingredient.of(
                    "Oil", Substance.of("Glycerin").withCas("56-81-5"))
            .withDensity(Density.ofGramsPerMillilitre("0.92").at(Amount.temperature("20 °C")));

    private static final Balance BALANCE = Balance.of("0.05 oz", "20 lb")
            .named("kitchen scale")
            .withMinimumLoad(Amount.mass("1/3 oz"))
            .withErrors(ErrorModel.readabilityOnly()
                    .withRepeatability("0.05 g")
                    .withLinearityOfNetReading(Amount.mass("0.1 g"), Law.TRIANGULAR)
                    .withCalibration(Ratio.parse("1/3000"))
                    .withTareResolution(Amount.mass("0.01 g"))
                    .withResidue(Amount.mass("0 g"), Amount.mass("0.2 g"))
                    .withBuoyancy(Bounds.closed(Ratio.ZERO, Ratio.parse("0.0012"))));

    private static final Balance OF_INDICATION =
            BALANCE.withErrors(ErrorModel.readabilityOnly().withLinearityOfIndication("0.2 g"));

    /** Records that between them have every field of the schema. */
    static List<BatchRecord> records() {
        Formula parts = Formula.inParts("Balm")
                .line(OIL, Ratio.parse("1/3"))
                .line("Cera Alba", "1")
                .build();
        Formula masses = Formula.inMasses("Scrub")
                .line("Sucrose", "7 oz")
                .line("Oil", "100 g")
                .build();
        Formula toMake = Formula.inMasses("Tonic")
                .quantitySufficient("Aqua")
                .line("Glycerin", "7 g")
                .buildToMake(Amount.mass("99 g"));
        Formula normalised = Formula.inPercent("Powder")
                .line("Talc", "60 %")
                .line("Kaolin", "50.0 %")
                .buildNormalised();
        return List.of(
                BatchRecordTest.record(),
                SeveralBalancesRecordTest.record(),
                BatchRecordTest.record()
                        .amended(Amendment.of("the maker", NOON.plusSeconds(600), "„Quotes“ \" \\ \n and 𝄞")),
                record(parts, BatchSize.ofVolume(Amount.volume("1 US cup"), Density.parse("0.9 g/mL"))),
                record(masses, BatchSize.ofStock(masses.line("Oil"), Amount.mass("55 g"))),
                record(toMake, BatchSize.ofPacks(3, Amount.mass("30 g"), MassFraction.parse("1/3 %"))),
                record(normalised, BatchSize.ofMass("100 g")),
                record(normalised, BatchSize.ofMass("100 g"), bench(OF_INDICATION), WeighingMethod.BY_DIFFERENCE),
                record(
                        normalised,
                        BatchSize.ofMass("100 g"),
                        Bench.of(BALANCE).closing(Closure.WITHIN_TOLERANCE),
                        WeighingMethod.FROM_BOAT),
                record(
                        masses,
                        BatchSize.ofMass("100 g"),
                        Bench.of(BALANCE)
                                .closingWithin(Tolerances.of("1/3 %").withLine("Oil", "0 %"), Amount.mass("0.03 g")),
                        WeighingMethod.FROM_BOAT));
    }

    private static BatchRecord record(Formula formula, BatchSize size) {
        return record(formula, size, bench(BALANCE), WeighingMethod.FROM_BOAT);
    }

    private static Bench bench(Balance balance) {
        return Bench.of(balance)
                .with(Vessel.of("jug", "300 g").holding("1 L", "800 mL"))
                .closing(Closure.CLOSED)
                .withProductDensity(Density.ofGramsPerMillilitre("1"));
    }

    private static BatchRecord record(Formula formula, BatchSize size, Bench bench, WeighingMethod method) {
        WeighingPlan plan = WeighingPlan.of(Batch.of(formula, size), bench);
        Readings readings = Readings.of(
                plan,
                method,
                List.of(
                        Reading.of(formula.lines().get(0), "2.35 oz").at(NOON),
                        Reading.notWrittenDown(formula.lines().get(1))));
        return BatchRecord.of(
                        CODE,
                        readings,
                        Tolerances.of("1/3 %")
                                .withPhase("A", "2.50 %")
                                .withLine(formula.lines().get(0).name(), "1 %"))
                .filled(
                        Amount.mass("1/7 g"),
                        PackFill.ofVolume(Amount.volume("30 mL"), Density.ofGramsPerMillilitre("1.1")));
    }

    @ParameterizedTest
    @MethodSource("records")
    void a_record_is_read_back_to_the_last_digit(BatchRecord record) {
        String json = Json.records().write(record);
        Read<BatchRecord> read = Json.records().read(json);
        assertThat(read.value()).isEqualTo(record);
        assertThat(read.unknownFields()).isEmpty();
        assertThat(Json.records().write(read.value())).isEqualTo(json);
        assertThat(read.value().made().mass().canonical())
                .isEqualTo(record.made().mass().canonical());
        assertThat(json).doesNotContainPattern("\":-?[0-9]");
    }

    @ParameterizedTest
    @MethodSource("records")
    void what_is_written_follows_the_published_schema(BatchRecord record) throws IOException {
        assertThat(schema().validate(Json.records().write(record), InputFormat.JSON))
                .isEmpty();
    }

    @Test
    void the_schema_refuses_what_the_reader_refuses() throws IOException {
        String json = Json.records().write(BatchRecordTest.record());
        for (String[] change : new String[][] {
            {"\"version\":\"1\"", "\"version\":\"2\""},
            {"\"value\":\"12.3\"", "\"value\":12.3"},
            {"\"unit\":\"g\"", "\"unit\":\"stone\""},
            {"\"basis\":\"w/w\"", "\"basis\":\"w/v\""},
            {"\"kind\":\"shown\"", "\"kind\":\"guessed\""},
            {"\"code\":", "\"cude\":"},
        }) {
            String wrong = json.replaceFirst(change[0], change[1]);
            assertThat(wrong).isNotEqualTo(json);
            assertThat(schema().validate(wrong, InputFormat.JSON)).as(change[1]).isNotEmpty();
            assertThatThrownBy(() -> Json.records().read(wrong))
                    .as(change[1])
                    .isInstanceOf(RecordFormatException.class);
        }
    }

    /** There is no default: a linearity that does not say of what it is, as older documents have it, is refused. */
    @Test
    void a_linearity_says_of_what_it_is() {
        int told = 0;
        for (BatchRecord record : records()) {
            String json = Json.records().write(record);
            if (!json.contains("linearityOf")) {
                continue;
            }
            told++;
            String silent = json.replaceFirst("\"linearityOf\":\"[a-z-]*\",", "");
            assertThat(silent).isNotEqualTo(json);
            refused(silent, "linearityOf");
        }
        assertThat(told).isGreaterThan(3);
    }

    private static Schema schema() throws IOException {
        try (InputStream in = Json.class.getResourceAsStream("batch-record-1.schema.json")) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(text, InputFormat.JSON);
        }
    }

    @Test
    void unknown_fields_are_reported_and_unknown_versions_refused() {
        String json = Json.records().write(BatchRecordTest.record());
        String more = json.replaceFirst("\"closure\"", "\"colour\":\"white\",\"closure\"")
                .replaceFirst("^\\{", "{\"a/b~c\":{\"deep\":[\"x\"]},");
        Read<BatchRecord> read = Json.records().read(more);
        assertThat(read.value()).isEqualTo(BatchRecordTest.record());
        assertThat(read.unknownFields()).containsExactlyInAnyOrder("/bench/colour", "/a~1b~0c");
        assertThatThrownBy(() -> Json.records().read(json.replace("\"version\":\"1\"", "\"version\":\"2\"")))
                .isInstanceOf(RecordFormatException.class)
                .hasMessageContaining("/version")
                .hasMessageContaining("version \"2\" is not known here");
    }

    @Test
    void errors_say_where_and_what() {
        String json = Json.records().write(BatchRecordTest.record());
        refused(json.replace("\"value\":\"12.3\"", "\"value\":\"12.35\""), "no multiple of the step 0.1 g");
        refused(json.replace("\"value\":\"12.3\"", "\"value\":\"twelve\""), "/readings/1/shown/value");
        refused(
                json.replace("\"written\":\"3.00 %\"", "\"written\":\"3.01 %\""),
                "/formula/phases/0/lines/1/amount/share/written");
        refused(json.replace("\"line\":\"2\"", "\"line\":\"9\""), "\"9\" is the number of no line: there are 5");
        refused(json.replace(CODE.toString(), CODE.toString().replace("01-", "02-")), "/code: ");
        refused(json.replace("2026-11-25T12:00:00Z", "yesterday"), "/entries/0/time");
        refused(json.replace("2026-11-25T12:02:00Z", "2026-11-25T11:00:00Z"), "before what precedes it");
    }

    @Test
    void what_is_not_whole_is_not_read() {
        String json = Json.records().write(BatchRecordTest.record());
        for (int end = 0; end < json.length(); end += 37) {
            refused(json.substring(0, end), "");
        }
        refused("", "it is empty");
        refused(json + json, "something follows");
        refused(json + "x", "");
        refused("null", "");
        refused("[]", "an object is expected");
        refused(json.replace("\"version\":\"1\"", "\"version\":\"1\",\"version\":\"1\""), "Duplicate field");
        refused("{\"a\":NaN}", "");
        refused("{\"a\":1e999999999}", "numbers are written as texts");
        refused("{\"a\":null}", "/a: ");
    }

    @Test
    void hostile_documents_meet_a_limit() {
        refused("[".repeat(100_000), "nesting depth");
        refused("{\"a\":".repeat(100_000), "nesting depth");
        refused("{\"" + "n".repeat(200_000) + "\":\"x\"}", "");
        refused("{\"a\":\"" + "x".repeat(200_000) + "\"}", "");
        refused("[" + "{},".repeat(1_000_001) + "{}]", "more than 1000000 values");
        refused("{\"a\":" + "9".repeat(200_000) + "}", "");
        String json = Json.records().write(BatchRecordTest.record());
        refused(json.replace("\"value\":\"12.3\"", "\"value\":\"1e1000000000\""), "power of ten");
        refused(json.replace("\"value\":\"12.3\"", "\"value\":\"" + "9".repeat(2000) + "\""), "longer than 1000");
    }

    @Test
    void nothing_is_written_that_could_not_be_read_again() {
        List<String> most = Collections.nCopies(JsonWriter.MAX_VALUES - 1, "");
        assertThatCode(() -> JsonWriter.write(most, Writer.nullWriter())).doesNotThrowAnyException();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> JsonWriter.write(List.of(most), Writer.nullWriter()))
                .withMessageContaining("more than 1000000 values");
    }

    private static void refused(String json, String reason) {
        JsonChecks.refused(Json.records(), json, reason);
    }

    @Test
    void a_hundred_thousand_amendments_are_written_and_read() {
        BatchRecord record = BatchRecordTest.record();
        for (int i = 0; i < 100_000; i++) {
            record = record.amended(Amendment.of("the maker", NOON.plusSeconds(600 + i), "amendment " + i));
        }
        assertThat(Json.records().read(Json.records().write(record)).value()).isEqualTo(record);
        assertThat(g("1")).isNotNull();
    }

    @Test
    void a_record_too_long_to_be_read_is_not_written() {
        BatchRecord record = BatchRecordTest.record();
        for (int i = 0; i < 4_000; i++) {
            record = record.amended(Amendment.of("the maker", NOON.plusSeconds(600 + i), "x".repeat(10_000)));
        }
        BatchRecord tooLong = record;
        assertThatThrownBy(() -> Json.records().write(tooLong))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("start a new record");
    }

    /** Whatever was added or weighed again, on whichever balance, comes back. */
    @Test
    void entries_on_a_balance_of_their_own_come_back() {
        FormulaLine aqua = BatchRecordTest.record().formula().line("Aqua");
        for (String step : List.of("0.01 g", "0.02 g", "0.05 g", "0.1 g", "1 g")) {
            Balance balance = Balance.of(step, "3 kg");
            for (int steps = 1; steps < 40; steps += 3) {
                Amount<Mass> mass = balance.readability().times(steps);
                BenchEntry entry =
                        BenchEntry.addition(LineAddition.of(aqua, mass)).on(balance);
                BatchRecord record = BatchRecordTest.record().with(entry);
                assertThat(Json.records().read(Json.records().write(record)).value())
                        .isEqualTo(record);
            }
        }
    }
}
