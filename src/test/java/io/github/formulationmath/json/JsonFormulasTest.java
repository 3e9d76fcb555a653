package io.github.formulationmath.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.json.Json.Read;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.pot.Lotion;
import io.github.formulationmath.record.BatchRecord;
import io.github.formulationmath.record.BatchRecordTest;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A formula alone as JSON (RFC 8259), held against its schema (JSON Schema, draft 2020-12) by a validator of others. */
final class JsonFormulasTest {

    /** One of every rule, with blends, densities, CAS numbers, fractions and written digits. */
    static Stream<Formula> formulas() {
        Formula quoted = Formula.inPercent("„Quotes“ \" \\ \t and 𝄞")
                .line("Aqua", "100.00 %")
                .build();
        return Stream.concat(
                Stream.of(quoted),
                JsonRecordsTest.records().stream().map(BatchRecord::formula).distinct());
    }

    @ParameterizedTest
    @MethodSource("formulas")
    void a_formula_is_read_back_to_the_last_digit(Formula formula) throws IOException {
        String json = Json.formulas().write(formula);
        Read<Formula> read = Json.formulas().read(new StringReader(json));
        assertThat(read.value()).isEqualTo(formula).hasToString(formula.toString());
        assertThat(read.value().lines()).isEqualTo(formula.lines());
        assertThat(read.unknownFields()).isEmpty();
        StringWriter again = new StringWriter();
        Json.formulas().write(read.value(), again);
        assertThat(again).hasToString(json);
        assertThat(json).doesNotContainPattern("\":-?[0-9]");
    }

    @ParameterizedTest
    @MethodSource("formulas")
    void what_is_written_follows_the_published_schema(Formula formula) throws IOException {
        assertThat(schema().validate(Json.formulas().write(formula), InputFormat.JSON))
                .isEmpty();
    }

    @Test
    void the_formula_of_a_record_has_the_same_form() {
        String record = Json.records().write(BatchRecordTest.record());
        String alone = Json.formulas().write(BatchRecordTest.record().formula());
        String formula = alone.substring(alone.indexOf("{\"name\""), alone.length() - 1);
        assertThat(record).contains("\"formula\":" + formula);
    }

    @Test
    void both_schemas_define_the_parts_of_a_formula_alike() throws IOException {
        String record = text("batch-record-1.schema.json");
        String formula = text("formula-1.schema.json");
        String definitions = formula.substring(formula.indexOf("\"$defs\""));
        assertThat(Arrays.stream(definitions.split("\n    \\},?\n")).filter(part -> part.startsWith("    \"")))
                .hasSizeGreaterThan(7)
                .allSatisfy(part -> assertThat(record).contains(part));
    }

    @Test
    void the_schema_refuses_what_the_reader_refuses() throws IOException {
        String json = Json.formulas().write(Lotion.FORMULA);
        for (String[] change : new String[][] {
            {"\"version\":\"1\"", "\"version\":\"2\""},
            {"formulation-math/formula", "formulation-math/batch-record"},
            {"\"value\":\"12\"", "\"value\":12"},
            {"\"unit\":\"%\"", "\"unit\":\"percent\""},
            {"\"basis\":\"w/w\"", "\"basis\":\"w/v\""},
            {"\"rule\":\"percent\"", "\"rule\":\"guess\""},
            {"\"phases\":", "\"faces\":"},
        }) {
            String wrong = json.replaceFirst(change[0], change[1]);
            assertThat(wrong).isNotEqualTo(json);
            assertThat(schema().validate(wrong, InputFormat.JSON)).as(change[1]).isNotEmpty();
            refused(wrong, "");
        }
    }

    @Test
    void errors_say_where_and_what() {
        String json = Json.formulas().write(Lotion.FORMULA);
        refused(json.replace("\"version\":\"1\"", "\"version\":\"2\""), "/version: version \"2\" is not known here");
        refused(
                json.replace("\"value\":\"12\"", "\"value\":\"twelve\""),
                "/formula/phases/1/lines/0/amount/share/value");
        refused(json.replace("\"value\":\"12\"", "\"value\":\"120\""), "/formula/phases/1/lines/0/amount/share");
        refused(json.replace("\"value\":\"12\"", "\"value\":\"97\""), "/formula");
        refused(json.replace("Glycerin", "Aqua"), "Aqua");
        refused(Json.records().write(BatchRecordTest.record()), "/format");
    }

    @Test
    void unknown_fields_are_reported() {
        String json = Json.formulas().write(Lotion.FORMULA).replaceFirst("\"rule\"", "\"colour\":\"white\",\"rule\"");
        Read<Formula> read = Json.formulas().read(json);
        assertThat(read.value()).isEqualTo(Lotion.FORMULA);
        assertThat(read.unknownFields()).containsExactly("/formula/colour");
        assertThat(read).asString().contains("not understood: [/formula/colour]");
    }

    @Test
    void hostile_documents_meet_a_limit() {
        String json = Json.formulas().write(Lotion.FORMULA);
        refused("", "it is empty");
        refused("null", "");
        refused(json + json, "something follows");
        refused("[".repeat(100_000), "nesting depth");
        refused("[" + "{},".repeat(1_000_001) + "{}]", "more than 1000000 values");
        refused(json.replace("\"value\":\"12\"", "\"value\":\"1e1000000000\""), "power of ten");
        refused(json.replace("\"value\":\"12\"", "\"value\":\"" + "9".repeat(2000) + "\""), "longer than 1000");
        for (int end = 0; end < json.length(); end += 37) {
            refused(json.substring(0, end), "");
        }
    }

    @Test
    void ten_thousand_lines_are_written_and_read() {
        FormulaBuilder builder = Formula.inParts("Long");
        for (int i = 1; i <= 10_000; i++) {
            builder.line("Ingredient " + i, Ratio.of(i, 7).toString());
        }
        Formula formula = builder.build();
        assertThat(Json.formulas().read(Json.formulas().write(formula)).value()).isEqualTo(formula);
    }

    @Test
    void nulls_are_refused_by_name() {
        assertThatNullPointerException()
                .isThrownBy(() -> Json.formulas().write(null))
                .withMessage("value");
        assertThatNullPointerException()
                .isThrownBy(() -> Json.formulas().write(Lotion.FORMULA, null))
                .withMessage("writer");
        assertThatNullPointerException()
                .isThrownBy(() -> Json.formulas().read((String) null))
                .withMessage("json");
        assertThatNullPointerException()
                .isThrownBy(() -> Json.formulas().read((java.io.Reader) null))
                .withMessage("reader");
    }

    private static void refused(String json, String reason) {
        JsonChecks.refused(Json.formulas(), json, reason);
    }

    private static Schema schema() throws IOException {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(text("formula-1.schema.json"), InputFormat.JSON);
    }

    private static String text(String name) throws IOException {
        try (InputStream in = Json.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
