package io.github.formulationmath.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.document.Format;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.label.Label;
import io.github.formulationmath.label.LabelRule;
import io.github.formulationmath.label.NetContents;
import io.github.formulationmath.packing.PackFill;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.pot.LineAddition;
import io.github.formulationmath.pot.Reading;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.record.Amendment;
import io.github.formulationmath.record.BatchCode;
import io.github.formulationmath.record.BatchRecord;
import io.github.formulationmath.record.BenchEntry;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

final class RecordSheetTest {

    private static final Instant NOON = Instant.parse("2026-11-25T12:00:00Z");

    private static final Formula FORMULA = Formula.inPercent("Oat lotion <extra>")
            .phase("water")
            .quantitySufficient("Aqua")
            .line("Glycerin", "3 %")
            .phase("oil")
            .line("Avena Sativa Kernel Oil", "12 %")
            .line("Glyceryl Stearate SE", "5 %")
            .phase("cool-down")
            .line(
                    Ingredient.blend("Preservative blend")
                            .part("Phenoxyethanol", "90 %")
                            .rest("Ethylhexylglycerin"),
                    "1 %")
            .build();

    private static BatchRecord record() {
        WeighingPlan plan = WeighingPlan.of(Batch.of(FORMULA, BatchSize.ofMass("400 g")), Balance.of("0.1 g", "2 kg"));
        Readings readings = Readings.of(
                plan,
                WeighingMethod.TARE_EACH,
                List.of(
                        Reading.of(FORMULA.line("Aqua"), "316 g"),
                        Reading.of(FORMULA.line("Glycerin"), "13.5 g"),
                        Reading.of(FORMULA.line("Avena Sativa Kernel Oil"), "48 g"),
                        Reading.of(FORMULA.line("Preservative blend"), "4 g")));
        BatchCode code = BatchCode.of("OATLOT", LocalDate.of(2026, 11, 25), 1);
        return BatchRecord.of(code, readings, Tolerances.of("5 %"))
                .with(BenchEntry.observation("Smooth; thickened at 45 °C.").at(NOON))
                .with(BenchEntry.weighedAgain(Amount.mass("395.0 g"), FORMULA.line("Aqua")))
                .with(BenchEntry.addition(LineAddition.of(FORMULA.line("Aqua"), Amount.mass("6.5 g")))
                        .at(NOON.plusSeconds(300)))
                .filled(Amount.mass("8 g"), PackFill.ofMass("50 g"))
                .amended(Amendment.of("the maker", NOON.plusSeconds(900), "The oil was of another lot."));
    }

    @Test
    void the_page_says_what_was_read_what_came_of_it_and_what_is_missing() {
        String page = RecordSheet.of(record()).print(Format.TEXT);
        assertThat(page)
                .contains("OATLOT-20261125-01-")
                .contains("13.5 g")
                .contains("316.0 g")
                .contains("outside")
                .contains("not written down")
                .contains("20 g ?")
                .contains("Glyceryl Stearate SE: nobody wrote down")
                .contains("Smooth; thickened at 45 °C.")
                .contains("weighed again: 395.0 g in the pot; what is missing is Aqua that went off")
                .contains("added 6.5 g of Aqua")
                .contains("Full packs      7")
                .contains("The oil was of another lot.")
                .contains("qualified safety assessor");
        assertThat(page.lines()
                        .filter(line -> line.contains("Glycerin "))
                        .findFirst()
                        .orElseThrow())
                .containsPattern("12 g +13\\.5 g +13\\.5 g +3 % .*outside");
    }

    @Test
    void what_was_weighed_elsewhere_says_where_with_the_digits_of_that_display() {
        Balance pocket = Balance.of("0.01 g", "100 g").named("pocket");
        Balance unnamed = Balance.of("0.05 g", "1 kg");
        BatchRecord open = BatchRecord.of(
                record().code(),
                Readings.of(
                        record().plan(),
                        WeighingMethod.TARE_EACH,
                        List.of(
                                Reading.of(FORMULA.line("Aqua"), "316 g"),
                                Reading.of(FORMULA.line("Preservative blend"), "3.9 g")
                                        .on(pocket))),
                Tolerances.of("5 %"));
        String page = RecordSheet.of(open.with(BenchEntry.addition(
                                LineAddition.of(FORMULA.line("Preservative blend"), Amount.mass("0.1 g"))
                                        .on(pocket)))
                        .with(BenchEntry.addition(LineAddition.of(FORMULA.line("Aqua"), Amount.mass("2 g"))))
                        .with(BenchEntry.weighedAgain(Amount.mass("391.25 g"), FORMULA.line("Aqua"))
                                .on(unnamed)))
                .print(Format.TEXT);
        assertThat(page)
                .contains("3.90 g (balance pocket)")
                .contains("added 0.10 g (balance pocket) of Preservative blend")
                .contains("added 2.0 g of Aqua")
                .contains("weighed again: 391.25 g (balance in steps of 0.05 g) in the pot");
    }

    @Test
    void every_format_prints_and_html_is_escaped() {
        for (Format format : Format.values()) {
            assertThat(RecordSheet.of(record()).print(format)).isNotEmpty();
        }
        assertThat(RecordSheet.of(record()).print(Format.HTML))
                .contains("Oat lotion &lt;extra&gt;")
                .doesNotContain("<extra>");
    }

    @Test
    void a_label_has_name_contents_ingredients_day_and_code() {
        LabelText label = LabelText.of(record())
                .with(Label.of(LabelRule.eu()).list(record().made()))
                .with(NetContents.byMass(Amount.mass("50.7 g"), Amount.mass("1 g")))
                .withNotice("For external use only.");
        String text = label.document().print(Format.TEXT);
        assertThat(text)
                .contains("Net contents  50 g")
                .contains("Aqua, Avena Sativa Kernel Oil, Glyceryl Stearate SE, Glycerin")
                .contains(record().code().toString())
                .contains("2026-11-25")
                .contains("For external use only.")
                .contains("Not part of the label");
        assertThat(label.document().print(Format.HTML)).contains("Oat lotion &lt;extra&gt;");
        assertThat(label.document().print(Format.CSV))
                .contains("Net contents,50 g\r\n")
                .doesNotContain("Not part of the label");
        assertThat(label.document().leftOut(Format.CSV)).endsWith("Caution, 1 Paragraph");
        assertThat(LabelText.of(record()).document().print(Format.TEXT))
                .contains("Net contents  50 g")
                .contains("The list of ingredients is missing.");
    }
}
