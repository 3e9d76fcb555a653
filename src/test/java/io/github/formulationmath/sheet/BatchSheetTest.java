package io.github.formulationmath.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.document.Format;
import io.github.formulationmath.examples.BatchSheetExample;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Closure;
import io.github.formulationmath.plan.ExpectedProduct;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.support.Formulas;
import io.github.formulationmath.support.Golden;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Vessel;
import io.github.formulationmath.weighing.WeighingMethod;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Path;
import java.util.List;
import javax.measure.quantity.Dimensionless;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

class BatchSheetTest {

    private static final String HOSTILE = "<script>alert(1)</script> | `x` \"q\", ünïcode";

    private static WeighingPlan hostilePlan() {
        Formula formula = Formula.inPercent(HOSTILE)
                .phase(HOSTILE)
                .quantitySufficient("Aqua")
                .line(HOSTILE, "1 %")
                .line("trace", "0.001 %")
                .build();
        Bench bench = Bench.of(Balance.of("0.1 g", "2 kg").withMinimumLoad(Amount.mass("2 g")))
                .closing(Closure.INDEPENDENT);
        return WeighingPlan.of(Batch.of(formula, BatchSize.ofMass("100 g")), bench);
    }

    /** Our own output, kept so that a change of the layout is seen. */
    @ParameterizedTest
    @EnumSource(Format.class)
    void the_example_is_printed_as_kept(Format format) {
        Golden.assertSameAsFile(
                Path.of("src/test/resources/sheet/hand-cream." + format.name()),
                BatchSheetExample.sheet().print(format));
    }

    @Test
    void what_the_balance_cannot_show_is_said_in_words() {
        String sheet = BatchSheet.of(hostilePlan()).print(Format.TEXT);
        assertThat(sheet)
                .contains("trace: too little for this balance to show")
                .contains(": less than the minimum load of this\nbalance, 2 g.")
                .contains("qualified safety assessor");
    }

    /** 37, 37 and 6 parts on 8 divisions: 3.7, 3.7 and 0.6; the largest remainders take both divisions that are left. */
    @Test
    void what_the_closure_took_is_not_blamed_on_the_balance() {
        Formula formula = Formula.inParts("balm")
                .line("Oil", "37")
                .line("Wax", "37")
                .line("Preservative", "6")
                .build();
        Batch batch = Batch.of(formula, BatchSize.ofMass("8 g"));
        Bench bench = Bench.of(Balance.of("1 g", "100 g"));
        WeighingPlan closed = WeighingPlan.of(batch, bench.closing(Closure.CLOSED));
        assertThat(closed.line("Preservative").isDroppedByClosure()).isTrue();
        assertThat(closed.line("Preservative").nearestReading()).isEqualTo(Amount.mass("1 g"));
        assertThat(BatchSheet.of(closed).print(Format.TEXT).replaceAll("\\s+", " "))
                .contains(
                        "Preservative: left out by the rounding of the total, not by the balance, which would show 1 g")
                .doesNotContain("too little for this balance");
        WeighingPlan alone = WeighingPlan.of(batch, bench);
        assertThat(alone.line("Preservative").reading()).isEqualTo(Amount.mass("1 g"));
        assertThat(alone.line("Preservative").isDroppedByClosure()).isFalse();
    }

    @Test
    void lines_outside_tolerance_are_marked_in_words() {
        ExpectedProduct expected = ExpectedProduct.of(hostilePlan(), WeighingMethod.TARE_EACH);
        String sheet = BatchSheet.of(expected, Tolerances.of("5 %")).print(Format.TEXT);
        assertThat(rowOf(sheet, "1  Aqua")).endsWith("kept");
        assertThat(rowOf(sheet, "2  <script>")).endsWith("NOT SURE");
        assertThat(rowOf(sheet, "3  trace")).endsWith("NOT SURE");
        assertThat(sheet).contains("against its share: ± 5 %");
    }

    /** The last row with a text is the one of the guaranteed shares. */
    private static String rowOf(String sheet, String text) {
        return sheet.lines().filter(row -> row.contains(text)).reduce("", (first, last) -> last);
    }

    @Test
    void intervals_are_rounded_outwards() {
        assertThat(SheetNumbers.interval(Wording.english(), shares(Ratio.parse("0.02425"), Ratio.parse("0.02531"))))
                .isEqualTo("2.42 to 2.54 %");
        assertThat(SheetNumbers.interval(Wording.english(), shares(Ratio.of(1, 3), Ratio.of(2, 3))))
                .isEqualTo("33 to 67 %");
        assertThat(SheetNumbers.interval(Wording.english(), shares(Ratio.of(1, 4), Ratio.of(1, 4))))
                .isEqualTo("25 to 25 %");
    }

    @Test
    void text_keeps_its_columns_whatever_the_names() {
        String sheet = BatchSheet.of(hostilePlan()).print(Format.TEXT);
        List<String> rows = sheet.lines().filter(row -> row.startsWith("[ ]")).toList();
        assertThat(rows).hasSize(3);
        assertThat(rows).allSatisfy(row -> assertThat(row).endsWith("%"));
        assertThat(rows)
                .extracting(row -> row.codePointCount(0, row.length()))
                .containsOnly(rows.get(0).length());
    }

    @Test
    void html_is_well_formed_and_harmless() throws Exception {
        String sheet = BatchSheet.of(hostilePlan()).print(Format.HTML);
        assertThat(sheet).doesNotContain("<script");
        String body = sheet.substring(sheet.indexOf("<main>"), sheet.indexOf("</main>") + 7);
        Document document = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(body)));
        assertThat(document.getElementsByTagName("th").getLength()).isEqualTo(8 + 2 + 3);
        assertThat(document.getElementsByTagName("td").getLength()).isEqualTo(3 * 9);
        assertThat(document.getElementsByTagName("h1").getLength()).isEqualTo(1);
    }

    @Test
    void markdown_takes_names_literally() {
        String sheet = BatchSheet.of(hostilePlan()).print(Format.MARKDOWN);
        assertThat(sheet)
                .doesNotContain("<script>")
                .contains("&lt;script&gt;")
                .contains("\\|")
                .contains("\\`x\\`");
    }

    @Test
    void csv_is_read_back_by_a_general_purpose_reader() throws IOException {
        String sheet = BatchSheet.of(hostilePlan()).print(Format.CSV);
        try (CSVParser parser = CSVParser.parse(sheet, CSVFormat.RFC4180)) {
            List<CSVRecord> records = parser.getRecords();
            assertThat(records.subList(0, 4))
                    .extracting(record -> record.get(0))
                    .containsExactly("Batch", "Balance", "Vessel", "Rounding");
            List<CSVRecord> table =
                    records.stream().filter(record -> record.size() == 8).toList();
            assertThat(table).hasSize(4);
            assertThat(table.get(2).get(2)).isEqualTo(HOSTILE);
        }
    }

    private static Interval<Amount<Dimensionless>> shares(Ratio least, Ratio greatest) {
        return Interval.of(Amount.of(least, FormulationUnits.ONE), Amount.of(greatest, FormulationUnits.ONE));
    }

    @Test
    void a_volume_that_could_not_be_considered_is_said() {
        Bench blind = Bench.of(Balance.of("0.1 g", "2 kg"))
                .with(Vessel.of("jar", "85 g").holding("150 mL", "120 mL"));
        Batch batch = Batch.of(Formulas.oilAndWax("balm"), BatchSize.ofMass("100 g"));
        for (Format format : List.of(Format.TEXT, Format.MARKDOWN, Format.HTML)) {
            assertThat(BatchSheet.of(WeighingPlan.of(batch, blind)).print(format))
                    .contains("The volume of jar was not considered");
        }
        Bench watched = blind.withProductDensity("0.96 g/mL");
        assertThat(BatchSheet.of(WeighingPlan.of(batch, watched)).print(Format.TEXT))
                .doesNotContain("not considered");
    }
}
