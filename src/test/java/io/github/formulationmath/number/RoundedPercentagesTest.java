package io.github.formulationmath.number;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.formulationmath.reference.ReferenceTable;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * How often independently rounded percentages add up to exactly 100: F. Mosteller, C. Youtz, D. Zahn, The distribution of
 * sums of rounded percentages, Demography 4 (1967) 850-858; the table is shared/reference/
 * rounded-percentages-probability.csv.
 */
class RoundedPercentagesTest {

    private static final Rounding WHOLE = Rounding.toDecimalPlaces(0);

    /** Whether the rounded parts keep the total; the last part is what the others leave of it. */
    private static boolean closes(long[] parts, long grid, long total) {
        Ratio exact = Ratio.ZERO;
        Ratio shown = Ratio.ZERO;
        for (long part : parts) {
            exact = exact.plus(Ratio.of(part, grid));
            shown = shown.plus(WHOLE.apply(Ratio.of(part, grid)));
        }
        Ratio last = Ratio.of(total).minus(exact);
        return shown.plus(WHOLE.apply(last)).equals(Ratio.of(total));
    }

    @Test
    void two_parts_close_unless_both_are_ties() {
        for (long a = 0; a < 101; a++) {
            assertThat(closes(new long[] {a}, 101, 100)).isTrue();
        }
    }

    /**
     * With three parts on an odd grid of n steps the remainders of the first two run through all n² pairs, without ties.
     * The share that closes must approach 3/4: it is exactly (3n² + 1) / 4n².
     */
    @Test
    void three_parts_close_three_times_in_four() {
        int n = 101;
        long closing = 0;
        for (int a = 0; a < n; a++) {
            for (int b = 0; b < n; b++) {
                closing += closes(new long[] {a, b}, n, 100) ? 1 : 0;
            }
        }
        assertThat(Ratio.of(closing, (long) n * n)).isEqualTo(Ratio.of(3L * n * n + 1, 4L * n * n));
        assertThat(Ratio.of(closing, (long) n * n).minus(Ratio.of(3, 4)).abs()).isLessThan(Ratio.of(1, n));
    }

    /** As above with four parts: n³ triples, and the share approaches 2/3. */
    @Test
    void four_parts_close_two_times_in_three() {
        int n = 41;
        long closing = 0;
        for (int a = 0; a < n; a++) {
            for (int b = 0; b < n; b++) {
                for (int c = 0; c < n; c++) {
                    closing += closes(new long[] {a, b, c}, n, 100) ? 1 : 0;
                }
            }
        }
        assertThat(Ratio.of(closing, (long) n * n * n).minus(Ratio.of(2, 3)).abs())
                .isLessThan(Ratio.of(1, n));
    }

    @Tag("long")
    @Test
    void more_parts_close_as_often_as_published() {
        SplittableRandom random = new SplittableRandom(1967);
        int trials = 20_000;
        long grid = 1_000_003;
        for (ReferenceTable.Row row : ReferenceTable.read("shared/reference/rounded-percentages-probability.csv")
                .rows()) {
            int parts = Integer.parseInt(row.text("categories"));
            int closing = 0;
            for (int i = 0; i < trials; i++) {
                long[] first = random.longs(parts - 1, 0, 5 * grid).toArray();
                closing += closes(first, grid, 100) ? 1 : 0;
            }
            double p = row.decimal("decimal").doubleValue();
            // Five standard deviations of the share of successes in that many trials.
            assertThat((double) closing / trials)
                    .as("%d parts", parts)
                    .isCloseTo(p, within(5 * Math.sqrt(p * (1 - p) / trials)));
        }
    }
}
