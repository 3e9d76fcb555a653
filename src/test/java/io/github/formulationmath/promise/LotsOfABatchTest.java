package io.github.formulationmath.promise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.choice.DilutedBatch;
import io.github.formulationmath.document.Format;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.json.Json;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.pot.LineAddition;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.pot.Reading;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.pot.UsedLot;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.record.Amendment;
import io.github.formulationmath.record.BatchCode;
import io.github.formulationmath.record.BatchRecord;
import io.github.formulationmath.record.BenchEntry;
import io.github.formulationmath.sheet.BatchSheet;
import io.github.formulationmath.sheet.LabelText;
import io.github.formulationmath.sheet.RecordSheet;
import io.github.formulationmath.shelf.Lot;
import io.github.formulationmath.shelf.Picking;
import io.github.formulationmath.shelf.Shelf;
import io.github.formulationmath.shelf.Taking;
import io.github.formulationmath.support.ValueContract;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** From the shelf into the notebook: which lot went into which line, on the sheet, behind the label, and through a file. */
final class LotsOfABatchTest {

    private static final Formula LOTION = Formula.inPercent("Oat lotion")
            .phase("water")
            .quantitySufficient("Aqua")
            .line("Glycerin", "3 %")
            .phase("oil")
            .line("Oil", "10 %")
            .phase("cool-down")
            .line("Glycerin", "2 %")
            .build();

    private static final WeighingPlan PLAN =
            WeighingPlan.of(Batch.of(LOTION, BatchSize.ofMass("300 g")), Balance.of("0.1 g", "2 kg"));

    private static final Shelf SHELF = Shelf.of(List.of(
            Lot.of("Glycerin", "G-21", "8 g"),
            Lot.of("Oil", "O-3", "50 g"),
            Lot.of("Aqua", "tap", "5 kg"),
            Lot.of("Glycerin", "G-17", "12 g").useBy("2026-12-31")));

    private static final Picking TODAY = Picking.on("2026-11-26");
    private static final BatchCode CODE = BatchCode.of("OATLOT", LocalDate.of(2026, 11, 26), 1);

    private static Readings read(String oil) {
        return Readings.of(
                PLAN,
                WeighingMethod.TARE_EACH,
                PLAN.lines().stream()
                        .map(line -> line.name().equals("Oil")
                                ? Reading.of(line.line(), oil)
                                : Reading.of(line.line(), line.reading()))
                        .toList());
    }

    private static BatchRecord record() {
        Readings noted = SHELF.take(read("30.2 g"), TODAY).notedIn(read("30.2 g"));
        return BatchRecord.of(CODE, noted, Tolerances.of("5 %"))
                .with(BenchEntry.addition(LineAddition.of(LOTION.lines().get(3), Amount.mass("0.4 g")))
                        .from(UsedLot.of("G-21", "0.4 g"))
                        .by("second person"))
                .withBatchNumber("L 27");
    }

    @Test
    void each_line_keeps_its_lots_by_what_was_read() {
        BatchRecord record = record();
        assertThat(record.lotsOf(LOTION.lines().get(1))).containsExactly(UsedLot.of("G-17", "9 g"));
        assertThat(record.lotsOf(LOTION.lines().get(2))).containsExactly(UsedLot.of("O-3", "30.2 g"));
        assertThat(record.lotsOf(LOTION.lines().get(3)))
                .containsExactly(UsedLot.of("G-17", "3 g"), UsedLot.of("G-21", "3.4 g"));
        assertThat(record.lots()).hasSize(4);
        assertThat(record.lots().keySet()).containsExactlyElementsOf(LOTION.lines());
    }

    @Test
    void what_was_planned_is_not_noted_with_what_was_read() {
        Taking planned = SHELF.take(PLAN, TODAY);
        assertThat(planned.notedIn(Readings.asPlanned(PLAN)).taken())
                .allMatch(each -> !each.lots().isEmpty());
        assertThatThrownBy(() -> planned.notedIn(read("30.2 g")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("shelf.take(readings, picking)");
    }

    @Test
    void cumulative_readings_take_what_lies_between_them() {
        Readings sums = Readings.of(
                PLAN,
                WeighingMethod.CUMULATIVE,
                List.of(
                        Reading.of(LOTION.lines().get(0), "255.0 g"),
                        Reading.of(LOTION.lines().get(1), "264.1 g"),
                        Reading.leftOut(LOTION.lines().get(2)),
                        Reading.of(LOTION.lines().get(3), "270.0 g").fromLot("my own jar")));
        Taking taken = SHELF.take(sums, TODAY);
        assertThat(taken.toString())
                .isEqualTo("Aqua: 255 g of tap; Glycerin: 9.1 g of G-17; Glycerin: 2.9 g of G-17 and 3 g of G-21");
        Readings noted = taken.notedIn(sums);
        assertThat(noted.taken().get(1).lots()).containsExactly(UsedLot.of("G-17", "9.1 g"));
        assertThat(noted.taken().get(2).lots()).isEmpty();
        assertThat(noted.taken().get(3).lots()).containsExactly(UsedLot.of("my own jar"));
        assertThat(taken.left().lots().get(0).left()).isEqualTo(Amount.mass("5 g"));
    }

    @Test
    void a_batch_half_done_takes_what_was_read_so_far() {
        Readings begun = Readings.begun(
                PLAN,
                WeighingMethod.TARE_EACH,
                List.of(Reading.of(LOTION.lines().get(0), "255.0 g")));
        Taking taken = SHELF.take(begun, TODAY);
        assertThat(taken.uses()).hasSize(1);
        assertThat(taken.notedIn(begun).isOpen()).isTrue();
        Readings unread = Readings.of(
                PLAN,
                WeighingMethod.TARE_EACH,
                List.of(
                        Reading.of(LOTION.lines().get(0), "255.0 g"),
                        Reading.notWrittenDown(LOTION.lines().get(1))));
        assertThat(unread.poured(LOTION.lines().get(1))).isEmpty();
        assertThat(SHELF.take(unread, TODAY).uses()).hasSize(1);
    }

    @Test
    void sheet_and_label_name_them() {
        String sheet = RecordSheet.of(record()).print(Format.TEXT);
        assertThat(sheet)
                .contains("Batch number  L 27")
                .contains("O-3: 30.2 g")
                .contains("G-17: 3 g; G-21: 3 g")
                .contains("added 0.4 g of Glycerin, from lot G-21: 0.4 g, by second person");
        String label = LabelText.of(record()).document().print(Format.TEXT);
        assertThat(label.replaceAll("\\s+", " "))
                .contains("Batch L 27")
                .contains("Batch L 27 stands in the notebook under " + CODE + ".")
                .contains("Lots that went into this batch: Aqua (tap: 255 g), Glycerin (G-17: 9 g), Oil (O-3: 30.2 g), "
                        + "Glycerin (G-17: 3 g; G-21: 3.4 g).");
        assertThat(LabelText.of(BatchRecord.of(CODE, read("30.0 g"), Tolerances.of("5 %")))
                        .document()
                        .print(Format.TEXT))
                .contains(CODE.toString())
                .doesNotContain("Lots");
        assertThat(RecordSheet.of(record(), Wording.german()).print(Format.TEXT))
                .contains("O-3: 30,2 g", "aus Charge G-21: 0,4 g");
    }

    @Test
    void a_file_and_a_stream_bring_them_back() throws Exception {
        BatchRecord record = record();
        String json = Json.records().write(record);
        Json.Read<BatchRecord> read = Json.records().read(json);
        assertThat(read.value()).isEqualTo(record);
        assertThat(read.unknownFields()).isEmpty();
        assertThat(read.value().batchNumber()).isEqualTo("L 27");
        assertThat(Json.records().write(read.value())).isEqualTo(json);
        assertThat(ValueContract.copy(record)).isEqualTo(record);
        assertThat(record).isNotEqualTo(BatchRecord.of(CODE, read("30.2 g"), Tolerances.of("5 %")));
    }

    /** A stock that was made up first stands in the record of the batch, with its lots, its balance and its errors. */
    @Test
    void what_was_made_up_first_is_kept() {
        Formula tinted = Formula.inPercent("Tinted")
                .quantitySufficient("Aqua")
                .line("Oil", "15 %")
                .line("Colour", "0.02 %")
                .build();
        Balance tenth = Balance.of("0.1 g", "2 kg");
        Balance fine = Balance.of("0.05 g", "500 g").named("fine");
        DilutedBatch diluted = DilutedBatch.of(Batch.of(tinted, BatchSize.ofMass("100 g")))
                .diluting(tinted.line("Colour"), tinted.line("Aqua"), fine, Tolerances.of("10 %"));
        WeighingPlan plan = WeighingPlan.of(diluted.batch(), tenth);
        assertThat(BatchSheet.of(diluted, plan).print(Format.TEXT)).contains("weigh on", "fine");
        List<WeighingPlan> steps = diluted.stocks().get(0).steps();
        BatchRecord begun = BatchRecord.of(CODE, Readings.asPlanned(plan), Tolerances.of("10 %"));
        BatchRecord record = begun;
        for (WeighingPlan step : steps) {
            Readings read = Readings.asPlanned(step);
            Reading first = read.taken().get(0).fromLot("C-" + step.formula().name());
            record = record.withPreparation(Readings.of(
                    step, WeighingMethod.TARE_EACH, List.of(first, read.taken().get(1))));
        }
        assertThat(record).isNotEqualTo(begun);
        BatchRecord again = Json.records().read(Json.records().write(record)).value();
        assertThat(again).isEqualTo(record);
        assertThat(again.preparations()).hasSameSizeAs(steps);
        assertThat(again.lots().keySet().iterator().next().name()).isEqualTo("Colour");
        assertThat(RecordSheet.of(record).print(Format.TEXT))
                .contains("First: " + steps.get(0).formula().name())
                .contains("C-" + steps.get(0).formula().name())
                .contains(steps.get(0).lines().get(0).reading().toString());
        var made = diluted.made(
                again.made(),
                List.of(again.preparations().stream().map(MadeBatch::of).toList()));
        var expected = diluted.expected(plan, WeighingMethod.TARE_EACH);
        assertThat(made.masses().madeShare(2).bounds())
                .isEqualTo(expected.masses().madeShare(2).bounds());
        Readings half = Readings.begun(
                steps.get(0),
                WeighingMethod.TARE_EACH,
                List.of(Readings.asPlanned(steps.get(0)).taken().get(0)));
        assertThatThrownBy(() -> begun.withPreparation(half))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("lines still to come");
    }

    @Test
    void a_lot_is_noted_once_and_only_where_something_went_in() {
        Reading reading = Reading.of(LOTION.line("Aqua"), "255.0 g").fromLot("tap");
        assertThatThrownBy(() -> reading.fromLot("tap", "3 g"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("lot is tap, which is noted with this reading already");
        assertThatThrownBy(() -> UsedLot.of("tap", "0 g")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> BenchEntry.observation("smooth").fromLot("tap"))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("say it in its text");
        assertThatThrownBy(() -> BenchEntry.weighedAgain(Amount.mass("290 g"), LOTION.line("Aqua"))
                        .fromLot("tap"))
                .isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(
                        () -> record().amended(Amendment.of("a", java.time.Instant.parse("2026-11-27T00:00:00Z"), "x"))
                                .withBatchNumber("L 28"))
                .isInstanceOf(IllegalStateException.class);
    }
}
