package io.github.formulationmath.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.oracle.BatchOracle;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.scaling.Batch;
import io.github.formulationmath.scaling.BatchSize;
import io.github.formulationmath.support.WorkingAssertions;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.ErrorModel;
import io.github.formulationmath.weighing.Vessel;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.List;
import org.junit.jupiter.api.Test;

class InverseQuestionsTest {

    private static final Formula BALM = Formula.inPercent("balm")
            .line("Oil", "79.5 %")
            .line("Wax", "20 %")
            .line("Tocopherol", "0.5 %")
            .build();
    private static final Formula CREAM =
            Formula.inPercent("cream").line("Aqua", "99 %").line("Gum", "1 %").build();

    private static Batch batch(Formula formula, String mass) {
        return Batch.of(formula, BatchSize.ofMass(mass));
    }

    @Test
    void the_coarsest_display_for_a_batch() {
        CoarsestReadability coarsest = CoarsestReadability.of(batch(BALM, "200 g"), Tolerances.of("5 %"));
        assertThat(coarsest.step()).isEqualTo(Amount.mass("1.05 g"));
        assertThat(coarsest.bindingLine().name()).isEqualTo("Tocopherol");
        assertThat(coarsest.stepOfSeries()).contains(Amount.mass("1 g"));
        assertThat(coarsest.serves(Amount.mass("0.5 g"))).isTrue();
        assertThat(coarsest.serves(Amount.mass("0.7 g"))).isFalse();
        assertThat(coarsest.everyFinerFrom()).contains(Amount.mass("0.105 g"));
        WorkingAssertions.assertSelfChecking(coarsest);
    }

    @Test
    void a_repertoire_needs_one_display_for_all() {
        List<Batch> repertoire = List.of(batch(BALM, "200 g"), batch(CREAM, "35 g"));
        CoarsestReadability coarsest =
                CoarsestReadability.of(repertoire, Tolerances.of("5 %"), SearchEffort.standard());
        assertThat(coarsest.step()).isLessThanOrEqualTo(Amount.mass("0.3675 g"));
        WorkingAssertions.assertSelfChecking(coarsest);
        LeastCapacity capacity = LeastCapacity.of(repertoire, Vessel.of("beaker", "214 g"));
        assertThat(capacity.capacity()).isEqualTo(Amount.mass("414 g"));
        assertThat(capacity.bindingBatch()).isSameAs(repertoire.get(0));
        WorkingAssertions.assertSelfChecking(capacity);
        assertThatThrownBy(() -> LeastCapacity.of(List.of(), Vessel.none())).hasMessageContaining("batches");
        assertThatThrownBy(() -> CoarsestReadability.of(List.of(), Tolerances.of("5 %"), SearchEffort.standard()))
                .hasMessageContaining("batches");
    }

    /** A batch of 1 g on a step d is a batch of 1/d divisions: the oracle's smallest one turned over. */
    @Test
    void the_coarsest_display_is_the_smallest_batch_turned_over() {
        RandomFormulas random = new RandomFormulas(61);
        for (int run = 0; run < 500; run++) {
            long[] parts = random.parts(40);
            long p = 2 + random.below(28);
            Batch batch = batch(RandomFormulas.formula(parts), "1 g");
            CoarsestReadability coarsest =
                    CoarsestReadability.of(batch, Tolerances.of(MassFraction.of(Ratio.of(p, 100))));
            long[] best = new BatchOracle(parts, p, 100)
                    .smallestRounding(coarsest.result().reciprocal().ceil().toLongExact());
            assertThat(coarsest.result()).isEqualTo(Ratio.of(best[1], best[0]));
            coarsest.working().check();
        }
    }

    @Test
    void several_benches_side_by_side() {
        Bench kitchen = Bench.of(Balance.of("1 g", "5 kg"));
        Bench pocket = Bench.of(Balance.of("0.01 g", "200 g")).with(Vessel.of("jar", "45 g"));
        Bench tiny = Bench.of(Balance.of("1 g", "100 g"));
        BenchComparison comparison = BenchComparison.of(
                BALM, List.of(kitchen, pocket, tiny), BatchConstraints.of(BatchCriterion.oneDivision()));
        assertThat(comparison.rows()).hasSize(3);
        assertThat(comparison.feasible()).hasSize(2);
        assertThat(comparison.finest().orElseThrow().bench()).isEqualTo(pocket);
        assertThat(comparison.finest().orElseThrow().upperEnd().mass()).isEqualTo(Amount.mass("155 g"));
        assertThat(comparison.rows().get(2)).isInstanceOf(EmptyWindow.class);
        assertThat(comparison.toString()).contains("no batch").contains("from 2 g to 155 g");
        assertThatThrownBy(() -> BenchComparison.of(BALM, List.of(), BatchConstraints.of(BatchCriterion.oneDivision())))
                .hasMessageContaining("benches");
    }

    /** By hand: 2 % of 60 g is 1.2 g; a worst error of 1.5 d within 5 % of it, 0.06 g, allows d = 0.04 g. */
    @Test
    void the_coarsest_step_of_the_series_under_any_criterion() {
        Formula salve = Formula.inPercent("salve")
                .line("Oil", "98 %")
                .line("Wax", "2 %")
                .build();
        Batch batch = batch(salve, "60 g");
        Balance balance = Balance.of("0.1 g", "2 kg");
        assertThat(CoarsestStep.of(batch, balance, BatchCriterion.oneDivision()).step())
                .contains(Amount.mass("1 g"));
        BatchCriterion worst = BatchCriterion.errorBound(Tolerances.of("5 %"), WeighingMethod.TARE_EACH);
        CoarsestStep coarsest = CoarsestStep.of(batch, balance, worst);
        assertThat(coarsest.step()).contains(Amount.mass("0.02 g"));
        assertThat(coarsest.serves(Amount.mass("0.04 g"))).isTrue();
        assertThat(coarsest.serves(Amount.mass("0.041 g"))).isFalse();
        assertThat(coarsest.toString())
                .contains("0.02 g is the coarsest of the series 1-2-5")
                .contains("worst error");
        assertThatThrownBy(() -> coarsest.serves(Amount.mass("0 g"))).hasMessageContaining("readability is 0 g");
        Balance crooked = balance.withErrors(ErrorModel.readabilityOnly().withLinearityOfNetReading("0.1 g"));
        CoarsestStep none = CoarsestStep.of(batch, crooked, worst);
        assertThat(none.step()).isEmpty();
        assertThat(none.toString()).contains("no step of the series 1-2-5 serves");
    }

    /** For rounding, the step of the series is the one that the exact answer finds by another way. */
    @Test
    void both_ways_to_the_coarsest_step_agree_for_rounding() {
        RandomFormulas random = new RandomFormulas(67);
        for (int run = 0; run < 100; run++) {
            Tolerances tolerances = Tolerances.of((2 + random.below(28)) + " %");
            Batch batch = batch(RandomFormulas.formula(random.parts(40)), "100 g");
            CoarsestReadability exact = CoarsestReadability.of(batch, tolerances);
            CoarsestStep tried =
                    CoarsestStep.of(batch, Balance.of("0.1 g", "2 kg"), BatchCriterion.roundingWithin(tolerances));
            assertThat(tried.step()).isEqualTo(exact.stepOfSeries());
            assertThat(exact.serves("0.7 g")).isEqualTo(tried.serves(Amount.mass("0.7 g")));
        }
    }

    /** By hand: of 1.2 g, 0.6 g is half and 0.4 g a third, but 0.5 g shows 1 g, 17 % too little. */
    @Test
    void a_finer_display_may_fail_where_a_coarser_one_serves() {
        Formula salve = Formula.inPercent("salve")
                .line("Oil", "98 %")
                .line("Wax", "2 %")
                .build();
        CoarsestReadability coarsest = CoarsestReadability.of(batch(salve, "60 g"), Tolerances.of("5 %"));
        assertThat(coarsest.serves("0.6 g")).isTrue();
        assertThat(coarsest.serves("0.5 g")).isFalse();
        assertThat(coarsest.serves("0.4 g")).isTrue();
    }
}
