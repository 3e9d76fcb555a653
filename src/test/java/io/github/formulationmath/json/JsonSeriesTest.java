package io.github.formulationmath.json;

import static io.github.formulationmath.json.JsonChecks.comesBack;
import static io.github.formulationmath.support.Trials.COARSE;
import static io.github.formulationmath.support.Trials.THREE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Closure;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.pot.Reading;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.series.SeriesPlan;
import io.github.formulationmath.series.SeriesReadings;
import io.github.formulationmath.series.Trial;
import io.github.formulationmath.series.TrialSeries;
import io.github.formulationmath.support.Trials;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A series of trials is put away, planned or half-done, and taken up again. */
final class JsonSeriesTest {

    private static final TrialSeries SERIES = TrialSeries.of(THREE, COARSE, "20 g", "5 %");
    private static final SeriesPlan PLAN =
            Trials.way(SERIES.withoutInBase("Parfum").withLeftInVessel("2 g"), SeriesPlan.Way.FROM_BASE);

    @Test
    void every_way_comes_back_with_its_shares() {
        List<SeriesPlan> plans = new ArrayList<>(SERIES.ways());
        plans.add(PLAN);
        plans.addAll(TrialSeries.of(
                        THREE,
                        COARSE.closing(Closure.CLOSED),
                        io.github.formulationmath.quantity.Amount.mass("1 oz"),
                        Tolerances.of("5 %").withLine("Parfum", "20 %"))
                .withBaseOn(Bench.of(Balance.of("0.05 oz", "5 lb").named("large")))
                .by(WeighingMethod.CUMULATIVE)
                .ways());
        assertThat(plans).hasSizeGreaterThan(4);
        for (SeriesPlan plan : plans) {
            SeriesPlan again = comesBack(Json.seriesPlans(), plan);
            assertThat(again.total()).isEqualTo(plan.total());
            assertThat(again.way()).isEqualTo(plan.way());
            assertThat(again.needs()).isEqualTo(plan.needs());
            assertThat(again.isLeast()).isFalse();
            for (int i = 0; i < plan.trials().size(); i++) {
                Trial trial = plan.trials().get(i);
                for (Trial.Share share : trial.lines()) {
                    Trial.Share own = again.trials().get(i).lines().get(share.index());
                    assertThat(own.bounds()).isEqualTo(share.bounds());
                    assertThat(own.verdict()).isEqualTo(share.verdict());
                }
            }
        }
    }

    @Test
    void a_series_half_done_is_put_away_and_taken_up_again() {
        WeighingPlan base = PLAN.base().orElseThrow();
        WeighingPlan richer = PLAN.trial("Richer").plan();
        SeriesReadings begun = SeriesReadings.begun(PLAN);
        comesBack(Json.series(), begun);
        SeriesReadings half = begun.with(Readings.asPlanned(base))
                .with(Readings.asPlanned(PLAN.trial("Plain").plan()))
                .with(Readings.begun(
                        richer,
                        WeighingMethod.TARE_EACH,
                        List.of(Reading.of(
                                        richer.lines().get(0).line(),
                                        richer.lines().get(0).reading())
                                .by("first person")
                                .fromLot("base of today"))));
        SeriesReadings again = comesBack(Json.series(), half);
        assertThat(again.toCome()).containsExactly(richer, PLAN.trial("Scent").plan());
        assertThat(again.forTrial("richer").orElseThrow().taken().get(0).person())
                .contains("first person");
        assertThat(again.made()).hasSize(2);
        assertThat(again.leftOfBase().orElseThrow())
                .isEqualTo(PLAN.leftOfBase()
                        .orElseThrow()
                        .plus(PLAN.trial("Scent").portionOfBase().orElseThrow().reading()));
        assertThat(again.toString()).endsWith("; still to come: Richer from Oil on, Scent");
        SeriesReadings done = again.with(Readings.asPlanned(richer))
                .with(Readings.asPlanned(PLAN.trial("Scent").plan()));
        assertThat(done.toCome()).isEmpty();
        assertThat(done.toString()).endsWith("; all weighed");
        assertThat(comesBack(Json.series(), done).comparison().between("Plain", "Scent"))
                .hasSameSizeAs(THREE.get(0).lines());
    }

    @Test
    void what_does_not_belong_together_is_refused() {
        SeriesReadings begun = SeriesReadings.begun(PLAN);
        assertThatThrownBy(
                        () -> begun.with(Readings.asPlanned(PLAN.trial("Plain").plan())))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("readings of the base are missing");
        WeighingPlan stranger = WeighingPlan.of(Batch.of(THREE.get(0), BatchSize.ofMass("20 g")), COARSE);
        assertThatThrownBy(() -> begun.with(Readings.asPlanned(stranger)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("no plan of this series");
        List<WeighingPlan> plans = PLAN.trials().stream().map(Trial::plan).toList();
        Tolerances tolerances = Tolerances.of("5 %");
        WeighingMethod tared = WeighingMethod.TARE_EACH;
        assertThatThrownBy(() -> SeriesPlan.of(THREE, tolerances, tared, Optional.empty(), plans))
                .hasMessageContaining("give the base");
        assertThatThrownBy(() -> SeriesPlan.of(THREE, tolerances, tared, Optional.of(stranger), plans))
                .hasMessageContaining("no base that the trials take a portion of");
        assertThatThrownBy(() ->
                        SeriesPlan.of(THREE, tolerances, tared, PLAN.base(), List.of(stranger, stranger, stranger)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() ->
                        SeriesPlan.of(THREE, tolerances, tared, PLAN.base(), Collections.nCopies(2, plans.get(0))))
                .hasMessageContaining("give one plan for each");
        WeighingPlan little =
                WeighingPlan.of(Batch.of(PLAN.base().orElseThrow().formula(), BatchSize.ofMass("20 g")), COARSE);
        assertThatThrownBy(() -> SeriesPlan.of(THREE, tolerances, tared, Optional.of(little), plans))
                .hasMessageContaining("make more base, or smaller trials");
        assertThatThrownBy(begun::comparison).isInstanceOf(IllegalArgumentException.class);
        String text =
                Json.series().write(begun.with(Readings.asPlanned(PLAN.base().orElseThrow())));
        assertThatThrownBy(() -> Json.series().read(text.replace("\"of\":\"base\"", "\"of\":\"9\"")))
                .isInstanceOf(RecordFormatException.class)
                .hasMessageContaining("/readings/0/of");
    }
}
