package io.github.formulationmath.size;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.weighing.Balance;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Passing sizes between two ends in steps, against every multiple of the step tried in whole numbers. */
class SizesInStepsTest {

    /** In tenths of a percent; the first line is the rest. */
    private static final int[] SHARES = {763, 50, 3, 120, 50, 9, 5};

    private static Formula cream() {
        var builder = Formula.inPercent("Cream").quantitySufficient("L0");
        for (int i = 1; i < SHARES.length; i++) {
            builder.line("L" + i, SHARES[i] / 10 + "." + SHARES[i] % 10 + " %");
        }
        return builder.build();
    }

    /** Whether a batch of so many grams has every line within 5 % on a display of 0.1 g, in ten-thousandths of a gram. */
    private static boolean passes(int grams) {
        for (int share : SHARES) {
            // share · grams / 1000 g is share · grams · 10 ten-thousandths; a division is 1000 of them.
            long target = (long) share * grams * 10;
            long below = target / 1000 * 1000;
            long off = Math.min(target - below, below + 1000 - target);
            if (off * 100 > 5 * target) {
                return false;
            }
        }
        return true;
    }

    @Test
    void every_size_that_passes_is_listed_and_no_other() {
        Bench bench = Bench.of(Balance.of("0.1 g", "450 g"));
        BatchConstraints asked = BatchConstraints.of(Criterion.roundingWithin(Tolerances.of("5 %")))
                .inStepsOf("10 g");
        List<String> expected = new ArrayList<>();
        for (int grams = 50; grams <= 450; grams += 10) {
            if (passes(grams)) {
                expected.add(grams + " g");
            }
        }
        assertThat(BatchWindow.of(cream(), bench, asked).within("50 g", "500 g", "10 g"))
                .extracting(Object::toString)
                .containsExactlyElementsOf(expected);
        // The sizes alone do not look at what the bench carries.
        assertThat(BatchWindow.of(cream(), bench, asked).sizes().within("460 g", "500 g", "10 g"))
                .hasSize(5);
    }
}
