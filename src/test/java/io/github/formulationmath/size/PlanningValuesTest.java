package io.github.formulationmath.size;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.simulation.CoverageFactor;
import io.github.formulationmath.support.Formulas;
import io.github.formulationmath.support.ValueContract;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Vessel;
import io.github.formulationmath.weighing.WeighingMethod;
import io.github.formulationmath.weighing.WeighingStation;
import java.io.Serializable;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.function.Supplier;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;

/** Equality, text and serial form of the values that questions are made of and answered with. */
class PlanningValuesTest {

    private static final Formula BALM = Formulas.balm("balm");
    private static final Balance TENTH = Balance.of("0.1 g", "2 kg");
    private static final Substance WAX = Substance.of("Wax");

    private static final List<Supplier<Object>> VALUES = List.of(
            () -> Tolerances.of("5 %").withPhase("A", "3 %").withLine("Wax", "2 %"),
            Criterion::oneDivision,
            Criterion::exactReadings,
            Criterion::minimumWeight,
            () -> Criterion.minimumWeight(MassFraction.parse("1 %"), CoverageFactor.of(3)),
            () -> Criterion.leastNetMass(Amount.mass("1 g")),
            () -> Criterion.roundingWithin(Tolerances.of("5 %")),
            () -> Criterion.madeWithin(Tolerances.of("5 %")),
            () -> Criterion.madeWithin(Tolerances.of("5 %"), Amount.mass("0.1 g")),
            () -> Criterion.errorBound(Tolerances.of("5 %"), WeighingMethod.TARE_EACH),
            () -> Criterion.errorBound(Tolerances.of("5 %"), WeighingMethod.FROM_BOAT, CoverageFactor.of(2)),
            () -> Criterion.capKept(WAX, MassFraction.parse("25 %"), WeighingMethod.TARE_EACH),
            () -> WeighingStation.inVessel(TENTH, Vessel.of("beaker", "200 g")),
            () -> WeighingStation.fromBoat(TENTH, Vessel.of("boat", "2 g")));

    @Test
    void equal_values_are_equal_and_survive_the_serial_form() throws Exception {
        for (Supplier<Object> maker : VALUES) {
            Object one = maker.get();
            assertThat(one).isEqualTo(maker.get()).hasSameHashCodeAs(maker.get());
            if (one instanceof Serializable written) {
                assertThat(ValueContract.copy(written)).isEqualTo(one).hasToString(one.toString());
            }
            for (Supplier<Object> other : VALUES) {
                assertThat(one.equals(other.get())).isEqualTo(other == maker);
            }
        }
    }

    @Test
    void answers_say_what_they_found() {
        MinimumBatch.Found found = (MinimumBatch.Found) MinimumBatch.of(BALM, TENTH, Criterion.oneDivision());
        assertThat(found.mass()).contains(Amount.mass("20 g"));
        assertThat(found.batch().mass()).isEqualTo(Amount.mass("20 g"));
        assertThat(found.working().answer().value()).isEqualTo(Ratio.of(20));
        BatchWindow.Feasible window = (BatchWindow.Feasible) BatchWindow.of(
                BALM,
                Bench.of(TENTH),
                BatchConstraints.of(Criterion.oneDivision()).withStock("Wax", "1 kg"));
        assertThat(window.upperEnd().mass()).isEqualTo(Amount.mass("2000 g"));
        assertThat(window).hasToString("balm: from 20 g to 2000 g");
        BatchWindow.Empty none = (BatchWindow.Empty) BatchWindow.of(
                BALM, Bench.of(Balance.of("1 g", "100 g")), BatchConstraints.of(Criterion.oneDivision()));
        assertThat(none.openings()).hasSize(3);
        CoarsestStep coarsest = CoarsestStep.of(
                Batch.of(BALM, BatchSize.ofMass("200 g")), TENTH, Criterion.roundingWithin(Tolerances.of("5 %")));
        assertThat(coarsest)
                .hasToString(
                        "balm, 200 g: d = 1 g is the coarsest of the series 1-2-5 (rounding of each line within ± 5 %);"
                                + " d at most 1.05 g, counting the rounding of the display alone;"
                                + " every d of at most 0.105 g passes, some in between may fail");
        MinimumBatch.Impossible impossible = (MinimumBatch.Impossible)
                MinimumBatch.of(BALM, TENTH, Criterion.errorBound(Tolerances.of("0 %"), WeighingMethod.TARE_EACH));
        assertThat(impossible.reason().arguments()).contains("Oil");
        assertThat(impossible.toString()).contains("no batch");
        assertThat(found.toString()).contains("20 g").contains("one division");
    }

    @Test
    void questions_below_nothing_are_refused() {
        Sizes sizes = Criterion.roundingWithin(Tolerances.of("5 %")).on(BALM, Bench.of(TENTH));
        assertThatThrownBy(() -> sizes.contains(Amount.mass("0 g"))).hasMessageContaining("size is 0 g");
        assertThatThrownBy(() -> sizes.inStepsOf(Amount.mass("0 g")).smallest()).hasMessageContaining("step is 0 g");
        assertThatThrownBy(() -> SearchEffort.ofChecks(0)).hasMessageContaining("checks is 0");
        assertThatThrownBy(() -> Criterion.madeWithin(Tolerances.of("5 %"), Amount.mass("-1 g")))
                .hasMessageContaining("readingError");
        BatchConstraints constraints = BatchConstraints.of(Criterion.oneDivision());
        assertThatThrownBy(() -> constraints.inStepsOf("0 g")).hasMessageContaining("newStep");
        assertThatThrownBy(() -> constraints.withLeastSize("0 g")).hasMessageContaining("size");
        assertThatThrownBy(() -> constraints.withStock("Wax", "0 g")).hasMessageContaining("inStock");
        assertThatThrownBy(() -> MinimumBatch.of(
                        BALM,
                        TENTH,
                        Criterion.capKept(Substance.of("Aroma"), MassFraction.parse("1 %"), WeighingMethod.TARE_EACH)))
                .hasMessageContaining("does not contain");
        assertThat(SearchEffort.standard()).hasToString("at most 20000000 checks");
        assertThat(constraints
                        .inStepsOf("5 g")
                        .withLeastSize("10 g")
                        .withStock("Wax", "1 g")
                        .toString())
                .contains("5 g", "10 g", "Wax");
    }

    @Test
    void a_part_of_the_passing_sizes_and_its_neighbours() {
        Sizes sizes = Criterion.roundingWithin(Tolerances.of("5 %")).on(BALM, Bench.of(TENTH));
        assertThat(sizes.atMost(Amount.mass("19 g"))).isEmpty();
        assertThat(Listed.parts(sizes, Ratio.ZERO, Ratio.of(45))).hasSize(2);
        assertThat(Listed.parts(sizes, Ratio.of(300), Ratio.of(400)))
                .containsExactly(Bounds.closed(Ratio.of(300), Ratio.of(400)));
        Iterator<Interval<Amount<Mass>>> walk = sizes.islands().iterator();
        walk.forEachRemaining(
                island -> assertThat(sizes.contains(island.greatest())).isTrue());
        assertThatThrownBy(walk::next).isInstanceOf(NoSuchElementException.class);
    }
}
