package io.github.formulationmath.support;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.plan.Bench;
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
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** 100 g of a cream on two balances: tenths of a gram in the pot, hundredths of its preservative from a boat. */
public final class TwoBalances {

    public static final Formula CREAM = Formulas.closeToTheCap("Cream");

    public static final Bench BENCH = Bench.of(Balance.of("0.1 g", "5 kg").named("kitchen"));

    public static final WeighingPlan PLAN = WeighingPlan.of(
            Batch.of(CREAM, BatchSize.ofMass("100 g")),
            BENCH,
            List.of(
                    BENCH.station(),
                    BENCH.station(),
                    WeighingStation.fromBoat(Balance.of("0.01 g", "200 g").named("pocket"), Vessel.of("boat", "2 g"))));

    private TwoBalances() {}

    /** What was made of it, by what the displays showed. */
    public static BatchRecord record(int number, String... shown) {
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < shown.length; i++) {
            readings.add(Reading.of(CREAM.lines().get(i), shown[i]));
        }
        return BatchRecord.of(
                BatchCode.of("CREAM", LocalDate.of(2025, 5, 2), number),
                Readings.of(PLAN, WeighingMethod.TARE_EACH, readings),
                Tolerances.of("5 %"));
    }
}
