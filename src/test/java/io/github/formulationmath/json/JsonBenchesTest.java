package io.github.formulationmath.json;

import static io.github.formulationmath.json.JsonChecks.comesBack;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.packing.PriceList;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Closure;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.pot.LineAddition;
import io.github.formulationmath.pot.Reading;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.pot.UsedLot;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.record.BatchCode;
import io.github.formulationmath.record.BatchRecord;
import io.github.formulationmath.record.BenchEntry;
import io.github.formulationmath.support.ValueContract;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.ErrorModel;
import io.github.formulationmath.weighing.Vessel;
import io.github.formulationmath.weighing.WeighingMethod;
import io.github.formulationmath.weighing.WeighingStation;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What lies on the bench for days: plans on several balances, batches half done, benches, prices. */
class JsonBenchesTest {

    private static final Formula CREAM = Formula.inPercent("Cream")
            .phase("water")
            .quantitySufficient("Aqua")
            .line("Glycerin", "5 %")
            .phase("cool")
            .line("Preservative", "0.9 %")
            .line("Tocopherol", "1/3 %")
            .build();

    private static final List<WeighingStation> STATIONS = List.of(
            WeighingStation.inVessel(
                    Balance.of("1 g", "5 kg").named("kitchen").withMinimumLoad(Amount.mass("2 g")),
                    Vessel.of("beaker", "214 g").holding("600 mL", "500 mL")),
            WeighingStation.fromBoat(
                    Balance.of("0.01 g", "200 g")
                            .named("pocket")
                            .withErrors(ErrorModel.readabilityOnly()
                                    .withLinearityOfIndication("0.01 g")
                                    .withResidue(Amount.mass("0 g"), Amount.mass("0.02 g"))),
                    Vessel.of("boat", "2 g")));

    private static final WeighingPlan PLAN = WeighingPlan.of(
            Batch.of(CREAM, BatchSize.ofMass("250 g")),
            Bench.of(STATIONS.get(0).balance()).with(STATIONS.get(0).vessel()).closing(Closure.CLOSED),
            CREAM.lines().stream()
                    .map(line -> STATIONS.get(line.fraction().compareTo(Ratio.of(1, 20)) > 0 ? 0 : 1))
                    .toList());

    private static Readings begun() {
        return Readings.begun(
                PLAN,
                WeighingMethod.TARE_EACH,
                List.of(
                        Reading.of(CREAM.line("Aqua"), "234 g")
                                .by("first person")
                                .fromLot("W-17")
                                .at(Instant.parse("2025-05-02T09:15:00Z"))
                                .withNote("room", "21 °C")
                                .withNote("water", "boiled, \"soft\""),
                        Reading.of(CREAM.line("Preservative"), "2.26 g").fromLot("P / 3")));
    }

    @Test
    void plans_benches_stations_and_prices_come_back_equal() {
        comesBack(Json.plans(), PLAN);
        comesBack(
                Json.plans(),
                WeighingPlan.of(Batch.of(CREAM, BatchSize.ofPacks(3, "1 oz")), Balance.of("0.05 oz", "5 lb")));
        comesBack(Json.benches(), PLAN.bench());
        comesBack(Json.benches(), Bench.of(Balance.of("0.1 g", "2 kg")).withProductDensity("0.97 g/mL"));
        comesBack(Json.stations(), STATIONS);
        comesBack(
                Json.prices(),
                PriceList.empty()
                        .with("Glycerin", PriceList.Offer.of("4.50 EUR", "250 g"))
                        .with("Glycerin", PriceList.Offer.of("12 EUR", "1 kg"))
                        .with("Aqua", PriceList.Offer.of("1/3 EUR", "1 kg")));
    }

    @Test
    void a_batch_half_done_is_put_away_and_taken_up_again() {
        comesBack(Json.readings(), begun());
        Readings again = Json.readings().read(Json.readings().write(begun())).value();
        assertThat(again.isOpen()).isTrue();
        assertThat(again.toCome()).extracting(line -> line.name()).containsExactly("Glycerin", "Tocopherol");
        Reading first = again.taken().get(0);
        assertThat(first.person()).contains("first person");
        assertThat(first.lots()).containsExactly(UsedLot.of("W-17"));
        assertThat(first.time()).contains(Instant.parse("2025-05-02T09:15:00Z"));
        assertThat(first.notes()).isEqualTo(Map.of("room", "21 °C", "water", "boiled, \"soft\""));
        Readings finished = again.plus(Reading.of(CREAM.line("Glycerin"), "12.50 g"))
                .plus(Reading.of(CREAM.line("Tocopherol"), "0.83 g"))
                .finished();
        assertThat(finished.missing()).isEmpty();
        comesBack(Json.readings(), finished);
    }

    @Test
    void a_record_keeps_balance_lot_person_and_own_fields_of_every_reading() throws Exception {
        Readings all = begun().plus(Reading.of(CREAM.line("Glycerin"), "12.50 g"))
                .plus(Reading.of(CREAM.line("Tocopherol"), "0.83 g")
                        .on(STATIONS.get(1).balance().named("pocket 2")))
                .finished();
        BatchRecord record = BatchRecord.of(
                        BatchCode.of("CREAM", LocalDate.of(2025, 5, 2), 4), all, Tolerances.of("5 %"))
                .with(BenchEntry.addition(LineAddition.of(CREAM.line("Preservative"), Amount.mass("0.02 g"))))
                .with(BenchEntry.addition(LineAddition.of(CREAM.line("Aqua"), Amount.mass("0.5 g")))
                        .on(Balance.of("0.5 g", "3 kg").named("old")));
        comesBack(Json.records(), record);
        assertThat(ValueContract.copy(record)).isEqualTo(record);
    }

    @Test
    void a_line_with_two_places_or_an_unknown_state_is_refused() {
        String plan = Json.plans().write(PLAN);
        assertThat(plan).contains("\"elsewhere\"");
        int last = plan.lastIndexOf('[') + 1;
        String twice = plan.substring(0, last) + "\"2\", " + plan.substring(last);
        assertThatThrownBy(() -> Json.plans().read(twice))
                .isInstanceOf(RecordFormatException.class)
                .hasMessageContaining("two places");
        String readings = Json.readings().write(begun());
        assertThatThrownBy(() -> Json.readings().read(readings.replace("\"begun\"", "\"lost\"")))
                .isInstanceOf(RecordFormatException.class);
        assertThatThrownBy(() -> Json.readings().read(plan)).isInstanceOf(RecordFormatException.class);
        assertThatThrownBy(() -> Json.readings().read(readings.replace("\"2.26\"", "\"2.265\"")))
                .isInstanceOf(RecordFormatException.class)
                .hasMessageContaining("/readings/1");
    }
}
