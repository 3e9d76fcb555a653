package io.github.formulationmath.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.document.Document;
import io.github.formulationmath.document.Format;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.plan.PlannedLine;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.pot.Reading;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.record.BatchCode;
import io.github.formulationmath.record.BatchRecord;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Sheets of twelve lines as pages, also left in {@code target/print} for {@code src/build/print.sh} to print and measure. */
class SheetsToPrintTest {

    private static final Path FOLDER = Path.of("target", "print");

    private static final Formula CREAM = cream();

    private static Formula cream() {
        FormulaBuilder formula = Formula.inPercent("Day cream of the course in weighing");
        formula.phase("Water phase").quantitySufficient("Aqua").line("Glycerin", "5 %");
        formula.line("Acrylates/C10-30 Alkyl Acrylate Crosspolymer", "0.3 %").line("Sodium Gluconate", "0.15 %");
        formula.phase("Oil phase").line("Caprylic/Capric Triglyceride", "8 %");
        formula.line("Butyrospermum Parkii Butter", "6 %").line("Cetearyl Alcohol", "3 %");
        formula.line("Polyglyceryl-3 Methylglucose Distearate", "5 %").line("Simmondsia Chinensis Seed Oil", "4 %");
        formula.phase("Cool down").line("Tocopherol", "0.5 %");
        return formula.line("Phenoxyethanol (and) Ethylhexylglycerin", "0.9 %")
                .line("Parfum", "0.4 %")
                .build();
    }

    private static WeighingPlan plan(String size, String step, String capacity) {
        return WeighingPlan.of(Batch.of(CREAM, BatchSize.ofMass(size)), Balance.of(step, capacity));
    }

    private static Document record(Wording words) {
        WeighingPlan plan = plan("250 g", "0.1 g", "2 kg");
        List<Reading> readings = new ArrayList<>();
        for (PlannedLine line : plan.lines()) {
            readings.add(Reading.of(line.target().line(), line.reading().toString()));
        }
        return RecordSheet.of(
                BatchRecord.of(
                        BatchCode.of("CREAM", LocalDate.of(2026, 11, 25), 1),
                        Readings.of(plan, WeighingMethod.TARE_EACH, readings),
                        Tolerances.of("5 %")),
                words);
    }

    private static Map<String, Document> sheets(Wording words) {
        return Map.of(
                "sheet-grams", BatchSheet.of(plan("250 g", "0.1 g", "2 kg"), words),
                "sheet-kitchen", BatchSheet.of(plan("2.75 kg", "0.05 g", "6 kg"), words),
                "sheet-ounces", BatchSheet.of(plan("2 lb", "0.05 oz", "11 lb"), words),
                "record", record(words),
                "soap", SoapSheetTest.sheet(words));
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de", "fr"})
    void every_sheet_is_a_page_to_work_with(String language) throws IOException {
        Path folder = Files.createDirectories(FOLDER);
        Wording words = Wording.of(Locale.forLanguageTag(language));
        for (Map.Entry<String, Document> sheet : sheets(words).entrySet()) {
            String page = sheet.getValue().print(Format.HTML);
            Files.writeString(folder.resolve(sheet.getKey() + "-" + language + ".html"), page);
            assertThat(page)
                    .as(sheet.getKey())
                    .contains(
                            "<html lang=\"" + language + "\">",
                            "<title>",
                            "counter(page)",
                            "<table class=\"work\">",
                            "class=\"fields\"")
                    .contains("class=\"number reading\"", "class=\"room\"")
                    .doesNotContain("[ ]");
        }
    }

    @Test
    void a_line_has_a_box_to_tick_its_reading_and_room_for_what_was_read() {
        String page = BatchSheet.of(plan("250 g", "0.1 g", "2 kg")).print(Format.HTML);

        assertThat(page.lines().filter(line -> line.startsWith("<tr><td class=\"tick\"><span class=\"box\">")))
                .hasSize(12)
                .allMatch(row -> row.contains("<td class=\"room\"></td>"));
        assertThat(page).contains("<td class=\"number reading\">12.5 g</td>");
        assertThat(page).contains("data-more=\"5\u00A0% · 12.5\u00A0g · 0\u00A0%\"");
        assertThat(page.split("class=\"caution\"", -1)).hasSize(2);
    }

    @Test
    void columns_are_as_wide_in_every_phase() {
        String page = BatchSheet.of(plan("250 g", "0.1 g", "2 kg")).print(Format.HTML);

        assertThat(page.lines().filter(line -> line.startsWith("<colgroup>")).distinct())
                .hasSize(1);
    }

    @Test
    void other_formats_have_the_blanks_in_a_line_and_no_column_to_write_on() {
        String page = BatchSheet.of(plan("250 g", "0.1 g", "2 kg")).print(Format.TEXT);

        assertThat(page)
                .contains("[ ]", "Batch code\u00A0____", "Made by\u00A0____")
                .doesNotContain("lot");
        assertThat(BatchSheet.of(plan("250 g", "0.1 g", "2 kg")).print(Format.CSV))
                .doesNotContain("lot");
    }
}
