package io.github.formulationmath.sheet;

import static io.github.formulationmath.support.TwoBalances.CREAM;
import static io.github.formulationmath.support.TwoBalances.PLAN;
import static io.github.formulationmath.support.TwoBalances.record;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.document.Format;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Closure;
import io.github.formulationmath.plan.ExpectedProduct;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.pot.Reading;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.record.BatchCode;
import io.github.formulationmath.record.BatchRecord;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Vessel;
import io.github.formulationmath.weighing.WeighingMethod;
import io.github.formulationmath.weighing.WeighingStation;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A sheet says on which balance each line is weighed. */
class SheetsNameBalancesTest {

    @Test
    void the_sheet_of_the_record_says_the_balance_and_what_was_noted() {
        BatchRecord record = BatchRecord.of(
                BatchCode.of("CREAM", LocalDate.of(2025, 5, 2), 3),
                Readings.of(
                        PLAN,
                        WeighingMethod.TARE_EACH,
                        List.of(
                                Reading.of(CREAM.line("Aqua"), "94.0 g"),
                                Reading.of(CREAM.line("Glycerin"), "5.0 g")
                                        .by("second person")
                                        .fromLot("G-4"),
                                Reading.of(CREAM.line("Phenoxyethanol"), "0.98 g")
                                        .at(Instant.parse("2025-05-02T10:00:00Z"))
                                        .withNote("room", "21 °C"))),
                Tolerances.of("5 %"));
        String sheet = RecordSheet.of(record).print(Format.TEXT);
        assertThat(sheet)
                .contains("0.98 g (balance pocket)")
                .contains("Noted with the readings")
                .containsPattern("2  Glycerin +second person +G-4")
                .containsPattern("3  Phenoxyethanol +2025-05-02T10:00:00Z +room: 21 °C");
        assertThat(RecordSheet.of(record(1, "94.0 g", "5.0 g", "0.98 g")).print(Format.TEXT))
                .doesNotContain("Noted with");
    }

    /** Cream on two balances: whole grams in the beaker, hundredths in the boat. */
    @Test
    void each_line_has_the_digits_of_its_display_and_the_sheet_says_where() {
        Formula cream = Formula.inPercent("Cream")
                .quantitySufficient("Aqua")
                .line("Oil", "12 %")
                .line("Glycerin", "5 %")
                .line("Preservative", "0.9 %")
                .build();
        Bench kitchen = Bench.of(Balance.of("1 g", "5 kg").named("kitchen")).with(Vessel.of("beaker", "214 g"));
        WeighingStation boat =
                WeighingStation.fromBoat(Balance.of("0.01 g", "200 g").named("pocket"), Vessel.of("boat", "2 g"));
        WeighingPlan plan = WeighingPlan.of(
                Batch.of(cream, BatchSize.ofMass("250 g")),
                kitchen.closing(Closure.INDEPENDENT),
                List.of(kitchen.station(), kitchen.station(), boat, boat));
        String sheet = BatchSheet.of(ExpectedProduct.of(plan, WeighingMethod.TARE_EACH), Tolerances.of("5 %"))
                .print(Format.TEXT);
        assertThat(sheet)
                .containsPattern("1  Aqua +kitchen +205 g")
                .containsPattern("3  Glycerin +pocket, from boat +12\\.50 g")
                .containsPattern("4  Preservative +pocket, from boat +2\\.25 g")
                .contains("Readings together        249.75 g");
    }
}
