package io.github.formulationmath.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.support.RandomFormulas;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Bulk plans against division and rounding by {@link BigDecimal}, near and beyond what a double can divide exactly. */
class BulkPlannerTest {

    private static final long LARGEST_WHOLE = 1L << 53;

    private static final long[][] FORMULAS = {
        {1, 1}, {1, 2}, {3, 5, 11}, {1, 1_000_003}, {7, 4_503_599_627_370_449L}, {5, 18_014_398_509_481_951L}
    };

    private static BulkPlanner planner(long... parts) {
        return BulkPlanner.of(List.of(RandomFormulas.formula(parts)));
    }

    private static long rounded(long part, long whole, Ratio size) {
        BigInteger up = size.numerator().multiply(BigInteger.valueOf(part));
        BigInteger down = size.denominator().multiply(BigInteger.valueOf(whole));
        BigInteger[] twice = up.shiftLeft(1).divideAndRemainder(down);
        // Twice the quotient, rounded to the even half only where nothing remains; else a little more than shown.
        BigDecimal halves =
                new BigDecimal(twice[0]).add(twice[1].signum() == 0 ? BigDecimal.ZERO : new BigDecimal("0.5"));
        return halves.divide(BigDecimal.valueOf(2))
                .setScale(0, RoundingMode.HALF_EVEN)
                .longValueExact();
    }

    @Test
    void every_digit_is_that_of_exact_division_whatever_the_size_of_the_numbers() {
        for (long[] parts : FORMULAS) {
            long whole = Arrays.stream(parts).sum();
            BulkPlanner planner = planner(parts);
            assertThat(planner.lineCount(0)).isEqualTo(parts.length);
            double[] divisions = new double[parts.length];
            for (int bits = 1; bits <= 53; bits++) {
                for (long off = -3; off <= 3; off++) {
                    for (long den : new long[] {1, 2, 3, 1_000_007, 9_007_199_254_740_881L}) {
                        long num = (1L << bits) + off;
                        if (num > 0) {
                            check(planner, parts, whole, Ratio.of(num, den), divisions);
                        }
                    }
                }
            }
        }
    }

    private static void check(BulkPlanner planner, long[] parts, long whole, Ratio size, double[] divisions) {
        long total = planner.plan(0, size, divisions);
        long sum = 0;
        for (int i = 0; i < parts.length; i++) {
            long shown = rounded(parts[i], whole, size);
            if ((long) divisions[i] != shown) {
                assertThat(divisions[i]).as("%s of %s", size, parts[i]).isEqualTo(shown);
            }
            sum += shown;
        }
        assertThat(total).isEqualTo(sum);
    }

    @Test
    void a_batch_of_more_than_64_bits_below_and_above_the_line_is_planned_too() {
        BigInteger huge = BigInteger.TEN.pow(30);
        double[] divisions = new double[2];
        Ratio size = Ratio.of(huge.multiply(BigInteger.valueOf(10)).add(BigInteger.ONE), huge);
        assertThat(planner(1, 3).plan(0, size, divisions)).isEqualTo(11);
        // 2.5 and a little: 3; 7.5 and a little: 8
        assertThat(divisions).containsExactly(3, 8);
    }

    @Test
    void a_line_takes_up_to_2_to_the_53_divisions_and_no_more() {
        double[] divisions = new double[2];
        assertThat(planner(1, 1).plan(0, Ratio.of(2 * LARGEST_WHOLE), divisions))
                .isEqualTo(2 * LARGEST_WHOLE);
        assertThat(divisions).containsExactly(LARGEST_WHOLE, LARGEST_WHOLE);
        assertThatThrownBy(() -> planner(1, 1).plan(0, Ratio.of(2 * LARGEST_WHOLE + 2), divisions))
                .isInstanceOf(ArithmeticException.class)
                .hasMessageContaining("line 1 takes 9007199254740993 divisions");
        assertThatThrownBy(() -> planner(1, 3).plan(0, Ratio.of(2 * LARGEST_WHOLE), divisions))
                .isInstanceOf(ArithmeticException.class)
                .hasMessageContaining("line 2 takes");
    }

    @Test
    void a_plan_needs_a_batch_and_room() {
        BulkPlanner planner = planner(1, 3);
        assertThat(planner.size()).isEqualTo(1);
        assertThatThrownBy(() -> planner.plan(0, Ratio.ZERO, new double[2]))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("batchDivisions is 0");
        assertThatThrownBy(() -> planner.plan(0, Ratio.ONE, new double[1]))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("room for 1 lines")
                .hasMessageContaining("has 2");
        assertThat(planner.plan(0, Ratio.of(4), new double[] {0, 0, -1})).isEqualTo(4);
    }
}
