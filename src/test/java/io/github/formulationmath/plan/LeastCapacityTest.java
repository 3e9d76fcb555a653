package io.github.formulationmath.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.support.Formulas;
import io.github.formulationmath.support.RandomFormulas;
import io.github.formulationmath.support.WorkingAssertions;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Vessel;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;

/** What a balance must carry: on just that capacity a batch can be planned, and on any less it is refused. */
class LeastCapacityTest {

    private static Bench bench(String step, Amount<Mass> capacity, String vessel, Closure closure) {
        Balance balance = Balance.of(Amount.mass(step), capacity);
        return Bench.of(balance).with(Vessel.of("beaker", vessel)).closing(closure);
    }

    @Test
    void a_capacity_is_enough_and_no_less_is() {
        RandomFormulas random = new RandomFormulas(91);
        int byReadings = 0;
        for (int run = 0; run < 300; run++) {
            Formula formula = RandomFormulas.formula(random.parts(12));
            Amount<Mass> mass = Amount.grams(Ratio.of(20 + random.below(4000), 1 + random.below(7)));
            Batch batch = Batch.of(formula, BatchSize.ofMass(mass));
            Closure closure = List.of(Closure.INDEPENDENT, Closure.CLOSED, Closure.WITHIN_TOLERANCE)
                    .get(random.below(3));
            String vessel = List.of("0 g", "21.4 g").get(random.below(2));
            Amount<Mass> least =
                    bench("1 g", Amount.mass("1000 kg"), vessel, closure).leastCapacity(batch);
            WeighingPlan plan = WeighingPlan.of(batch, bench("1 g", least, vessel, closure));
            byReadings += plan.total().compareTo(batch.mass()) > 0 ? 1 : 0;
            Amount<Mass> less = least.minus(Amount.grams(Ratio.of(1, 1_000_000)));
            assertThatExceptionOfType(OverloadException.class)
                    .isThrownBy(() -> WeighingPlan.of(batch, bench("1 g", less, vessel, closure)));
        }
        assertThat(byReadings).isGreaterThan(50);
    }

    /** 50 g in 19 equal lines are 2.63… g each, which read 3 g: 57 g in a beaker of 214 g. */
    @Test
    void rounded_lines_may_need_more_than_the_batch() {
        long[] equal = new long[19];
        Arrays.fill(equal, 1);
        Batch batch = Batch.of(RandomFormulas.formula(equal), BatchSize.ofMass("50 g"));
        Bench bench = bench("1 g", Amount.mass("2 kg"), "214 g", Closure.INDEPENDENT);
        assertThat(bench.leastCapacity(batch)).isEqualTo(Amount.mass("271 g"));
        assertThat(bench.closing(Closure.CLOSED).leastCapacity(batch)).isEqualTo(Amount.mass("264 g"));
        WorkingAssertions.assertSelfChecking(bench.leastCapacity(batch).working());
    }

    @Test
    void of_a_repertoire_the_batch_that_needs_most_asks_for_the_capacity() {
        Formula balm = Formulas.oilAndWax("balm");
        List<Batch> batches =
                List.of(Batch.of(balm, BatchSize.ofMass("50 g")), Batch.of(balm, BatchSize.ofMass("200 g")));
        Bench bench = bench("0.1 g", Amount.mass("300 g"), "214 g", Closure.INDEPENDENT);
        assertThat(batches.stream().max(Comparator.comparing(bench::leastCapacity)))
                .contains(batches.get(1));
        assertThat(bench.leastCapacity(batches.get(1))).isEqualTo(Amount.mass("414 g"));
    }
}
