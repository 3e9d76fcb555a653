package io.github.formulationmath.plan;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.support.RandomBenches;
import io.github.formulationmath.support.RandomFormulas;
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

    /** What an overload says would fit does fit, and it speaks of the batch that was asked for. */
    @Test
    void what_would_fit_fits() {
        RandomFormulas random = new RandomFormulas(1112);
        int refused = 0;
        for (int run = 0; run < 300; run++) {
            Formula formula = RandomFormulas.formula(random.parts(30));
            Bench bench = RandomBenches.next(random);
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
