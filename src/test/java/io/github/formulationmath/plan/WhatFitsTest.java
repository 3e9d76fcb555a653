package io.github.formulationmath.plan;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.support.RandomFormulas;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Vessel;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;

/** An overload or an overfill says what would fit, and it does. */
class WhatFitsTest {

    private static Amount<Mass> grams(Ratio grams) {
        return Amount.grams(grams);
    }

    private static WeighingPlan plan(Formula formula, Ratio size, Bench bench) {
        return WeighingPlan.of(Batch.of(formula, BatchSize.ofMass(grams(size))), bench);
    }

    /** Balance, vessel and room of a few hundred divisions, in halves and thirds of a gram too. */
    private static Bench bench(RandomFormulas random) {
        Ratio capacity = Ratio.of(60 + random.below(2_000), 1 + random.below(3));
        Bench bench = Bench.of(Balance.of(Amount.mass("1 g"), grams(capacity.max(Ratio.of(40)))))
                .with(Vessel.of("jar", grams(Ratio.of(random.below(60), 2).min(Ratio.of(20))))
                        .holding((20 + random.below(400)) + " mL"));
        bench = random.below(2) == 0 ? bench : bench.withProductDensity("0.9" + random.below(9) + " g/mL");
        return bench.closing(
                random.below(3) == 0
                        ? Closure.CLOSED
                        : random.below(2) == 0 ? Closure.INDEPENDENT : Closure.WITHIN_TOLERANCE);
    }

    /** What an overload says would fit does fit, and it speaks of the batch that was asked for. */
    @Test
    void what_would_fit_fits() {
        RandomFormulas random = new RandomFormulas(1112);
        int refused = 0;
        for (int run = 0; run < 300; run++) {
            Formula formula = RandomFormulas.formula(random.parts(30));
            Bench bench = bench(random);
            Ratio size = Ratio.of(100 + random.below(1_000), 2);
            try {
                plan(formula, size, bench);
            } catch (OverloadException e) {
                refused++;
                assertThat(e).hasMessageContaining("a batch of " + grams(size));
                assertThat(e.excess().signum()).isPositive();
                assertThat(WeighingPlan.of(Batch.of(formula, BatchSize.ofMass(e.largestContent())), bench))
                        .isNotNull();
            } catch (OverfillException e) {
                refused++;
                assertThat(e).hasMessageContaining("a batch of " + grams(size));
                assertThat(WeighingPlan.of(Batch.of(formula, BatchSize.ofMass(e.largestContent())), bench))
                        .isNotNull();
            }
        }
        assertThat(refused).isBetween(50, 280);
    }
}
