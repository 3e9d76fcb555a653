package io.github.formulationmath.size;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.oracle.BatchOracle;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.support.RandomFormulas;
import io.github.formulationmath.weighing.Balance;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Lines that must be exact and sizes in steps meet at common multiples, which need no search. */
class CommonMultipleTest {

    /** With one line at 0 % and prime parts the two meet after millions of steps: at their least common multiple. */
    @Test
    void the_smallest_multiple_of_a_step_with_an_exact_line_is_found_with_little_effort() {
        Formula formula = RandomFormulas.formula(7919, 104_729);
        Tolerances tolerances = Tolerances.of("20 %").withLine("material 1", "0 %");
        Sizes sizes = Criterion.roundingWithin(tolerances)
                .on(formula, Bench.of(Balance.of("1 g", "1 kg")))
                .with(SearchEffort.ofChecks(1_000));
        // 7919/112648 of a size is whole at the multiples of 112648/7919 g; 1299709 is prime.
        assertThat(sizes.inStepsOf(Amount.mass("1299709 g")).smallest())
                .contains(Amount.grams(Ratio.of(112_648L * 1_299_709)));
    }

    @Test
    void it_is_the_first_multiple_that_passes_by_counting() {
        RandomFormulas random = new RandomFormulas(1141);
        for (int run = 0; run < 200; run++) {
            long[] parts = random.parts(12);
            long whole = Arrays.stream(parts).sum();
            long percent = 5 + random.below(20);
            int step = 1 + random.below(7);
            Formula formula = RandomFormulas.formula(parts);
            BatchOracle others = new BatchOracle(parts, percent, 100);
            Tolerances tolerances =
                    Tolerances.of(MassFraction.of(Ratio.of(percent, 100))).withLine("material 1", "0 %");
            long expected = step;
            while (parts[0] * expected % whole != 0 || !others.roundingPasses(expected, 1)) {
                expected += step;
            }
            Balance balance = Balance.of("1 g", "1000 kg");
            assertThat(Criterion.roundingWithin(tolerances)
                            .on(formula, Bench.of(balance))
                            .inStepsOf(Amount.grams(Ratio.of(step)))
                            .smallest()
                            .orElseThrow()
                            .in(FormulationUnits.GRAM))
                    .isEqualTo(Ratio.of(expected));
            BatchWindow window = BatchWindow.of(
                    formula,
                    Bench.of(balance),
                    BatchConstraints.of(Criterion.roundingWithin(tolerances)).inStepsOf(step + " g"));
            BatchWindow.End low = window.smallest().orElseThrow();
            assertThat(low.mass().canonical()).isEqualTo(Ratio.of(expected));
            low.working().check();
            window.largest().orElseThrow().working().check();
        }
    }
}
