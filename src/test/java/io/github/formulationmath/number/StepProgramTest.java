package io.github.formulationmath.number;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Against plain enumeration in long integers, which knows nothing of linear programs. */
final class StepProgramTest {

    private static final int MOST = 24;

    /** Rows and steps as integers: Σ a_j·d_j·n_j ≥ b. */
    private record Plain(long[][] a, long[] b, long[] d) {

        static Plain random(Random random) {
            int unknowns = 2 + random.nextInt(3);
            int rows = 1 + random.nextInt(4);
            long[][] a = new long[rows][unknowns];
            long[] b = new long[rows];
            for (int k = 0; k < rows; k++) {
                for (int j = 0; j < unknowns; j++) {
                    a[k][j] = random.nextInt(15) - 6;
                }
                b[k] = random.nextInt(60) - 25;
            }
            long[] d = new long[unknowns];
            for (int j = 0; j < unknowns; j++) {
                d[j] = random.nextInt(3) == 0 ? 1 + random.nextInt(4) : 1;
            }
            return new Plain(a, b, d);
        }

        /** The smallest total up to the most there may be; −1 if there is none. */
        long smallest() {
            return smallest(new long[d.length], 0, 0, -1);
        }

        private long smallest(long[] x, int j, long total, long best) {
            if (total > MOST || best >= 0 && total >= best) {
                return best;
            }
            if (j == d.length) {
                return isKept(x) ? total : best;
            }
            long found = best;
            for (long value = 0; total + value <= MOST; value += d[j]) {
                x[j] = value;
                found = smallest(x, j + 1, total + value, found);
            }
            return found;
        }

        boolean isKept(long[] x) {
            for (int k = 0; k < b.length; k++) {
                long sum = 0;
                for (int j = 0; j < x.length; j++) {
                    sum += a[k][j] * x[j];
                }
                if (sum < b[k]) {
                    return false;
                }
            }
            return true;
        }

        /** The same problem with every number divided, so that nothing is whole any more. */
        StepProgram program(long under) {
            List<LinearProgram.Row> rows = new ArrayList<>();
            for (int k = 0; k < b.length; k++) {
                List<Ratio> row = new ArrayList<>();
                for (long coefficient : a[k]) {
                    row.add(Ratio.of(coefficient, 7));
                }
                rows.add(new LinearProgram.Row(row, Ratio.of(b[k], 7 * under)));
            }
            List<Ratio> steps = new ArrayList<>();
            for (long step : d) {
                steps.add(Ratio.of(step, under));
            }
            return new StepProgram(rows, steps);
        }
    }

    @Test
    void the_smallest_total_is_that_of_plain_enumeration() {
        Random random = new Random(11);
        int found = 0;
        for (int i = 0; i < 3_000; i++) {
            Plain plain = Plain.random(random);
            long under = 1 + random.nextInt(12);
            long smallest = plain.smallest();
            StepProgram.Answer answer = plain.program(under).solve(Ratio.of(MOST, under));
            assertThat(answer.isCertain()).isTrue();
            assertThat(answer.values().isPresent()).isEqualTo(smallest >= 0);
            if (smallest >= 0) {
                found++;
                long[] x = whole(answer.values().get(), under, plain.d());
                assertThat(plain.isKept(x)).isTrue();
                assertThat(Arrays.stream(x).sum()).isEqualTo(smallest);
            }
        }
        assertThat(found).isBetween(1_000, 2_900);
    }

    private static long[] whole(List<Ratio> values, long under, long[] steps) {
        long[] x = new long[values.size()];
        for (int j = 0; j < x.length; j++) {
            x[j] = values.get(j).times(under).toLongExact();
            assertThat(x[j] % steps[j]).isZero();
            assertThat(x[j]).isNotNegative();
        }
        return x;
    }

    @Test
    void steps_that_share_no_total_are_told_apart_at_once() {
        // x + y = 1/10 exactly, in steps of 2 and of 4 hundredths up to a million: 5 is odd.
        List<LinearProgram.Row> rows = List.of(
                new LinearProgram.Row(List.of(Ratio.ONE, Ratio.ONE), Ratio.parse("999.99")),
                new LinearProgram.Row(List.of(Ratio.of(-1), Ratio.of(-1)), Ratio.parse("-999.99")));
        StepProgram program = new StepProgram(rows, List.of(Ratio.parse("0.02"), Ratio.parse("0.04")));
        assertThat(program.solve(Ratio.of(2_000))).isEqualTo(new StepProgram.Answer(Optional.empty(), true));
    }

    /** Each at least 1/2 is at least 1 in steps of 1, so that a total of 2, which the linear program allows, cannot be. */
    @Test
    void least_amounts_in_whole_steps_add_up() {
        StepProgram program = program(row("0.5", 1, 0, 0), row("0.5", 0, 1, 0), row("0.5", 0, 0, 1));
        assertThat(program.solve(Ratio.of(10)))
                .isEqualTo(new StepProgram.Answer(Optional.of(List.of(Ratio.ONE, Ratio.ONE, Ratio.ONE)), true));
        assertThat(program.solve(Ratio.of(2))).isEqualTo(new StepProgram.Answer(Optional.empty(), true));
    }

    /** Each at most 3/2 is at most 1 in steps of 1, so that a total of 4, which the linear program allows, cannot be. */
    @Test
    void greatest_amounts_in_whole_steps_add_up() {
        StepProgram program =
                program(row("-1.5", -1, 0, 0), row("-1.5", 0, -1, 0), row("-1.5", 0, 0, -1), row("3.5", 1, 1, 1));
        assertThat(program.solve(Ratio.of(10))).isEqualTo(new StepProgram.Answer(Optional.empty(), true));
    }

    /**
     * No whole x lies between 1/4 and 3/4, whatever y is in steps of 1/20000. From 5000 of these steps on 10 000 totals are tried,
     * up to 14 999 of them; whether 15 000 would do is then not known.
     */
    @Test
    void after_ten_thousand_totals_the_search_is_broken_off_and_says_so() {
        List<LinearProgram.Row> rows = List.of(row("0.25", 1, 0), row("-0.75", -1, 0));
        StepProgram program = new StepProgram(rows, List.of(Ratio.ONE, Ratio.of(1, 20_000)));
        assertThat(program.solve(Ratio.of(14_999, 20_000))).isEqualTo(new StepProgram.Answer(Optional.empty(), true));
        assertThat(program.solve(Ratio.of(15_000, 20_000))).isEqualTo(new StepProgram.Answer(Optional.empty(), false));
    }

    private static StepProgram program(LinearProgram.Row... rows) {
        return new StepProgram(List.of(rows), List.of(Ratio.ONE, Ratio.ONE, Ratio.ONE));
    }

    private static LinearProgram.Row row(String least, long... coefficients) {
        return new LinearProgram.Row(
                Arrays.stream(coefficients).mapToObj(Ratio::of).toList(), Ratio.parse(least));
    }

    @Test
    void a_step_of_0_is_refused() {
        assertThatThrownBy(() -> new StepProgram(List.of(), List.of(Ratio.ZERO)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("a step is 0");
    }
}
