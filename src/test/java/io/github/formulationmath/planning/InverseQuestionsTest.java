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
import io.github.formulationmath.weighing.Vessel;
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
}
