package io.github.formulationmath.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.support.RandomFormulas;
import io.github.formulationmath.support.WorkingAssertions;
import io.github.formulationmath.weighing.Balance;
import java.math.BigInteger;
import java.util.Arrays;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/** The closure within tolerance, against all whole numbers with the same total, enumerated here in whole numbers. */
class ToleranceClosureTest {

    private static final Bench GRAMS = Bench.of(Balance.of("1 g", "100 kg"));

    private static long[] divisions(WeighingPlan plan) {
        return plan.lines().stream()
                .mapToLong(line -> line.divisions().toLongExact())
                .toArray();
    }

    private static WeighingPlan plan(Bench bench, long total, long... parts) {
        Formula formula = RandomFormulas.formula(parts);
        return WeighingPlan.of(Batch.of(formula, BatchSize.ofMass(Amount.grams(Ratio.of(total)))), bench);
    }

    /** Every choice of whole numbers, at least 0, with a total. */
    private static void forEach(long[] chosen, int place, long left, Consumer<long[]> action) {
        if (place == chosen.length - 1) {
            chosen[place] = left;
            action.accept(chosen);
            return;
        }
        for (long n = 0; n <= left; n++) {
            chosen[place] = n;
            forEach(chosen, place + 1, left - n, action);
        }
    }

    /** |n − x|/x for every line from the greatest down, over one denominator: x = part·N/whole. */
    private static long[] deviations(long[] chosen, long[] parts, long total) {
        long whole = Arrays.stream(parts).sum();
        long common = Arrays.stream(parts)
                .reduce(
                        1,
                        (a, b) -> a
                                / BigInteger.valueOf(a)
                                        .gcd(BigInteger.valueOf(b))
                                        .longValue()
                                * b);
        long[] all = new long[parts.length];
        for (int i = 0; i < parts.length; i++) {
            all[i] = -Math.multiplyExact(Math.abs(chosen[i] * whole - parts[i] * total), common / parts[i]);
        }
        Arrays.sort(all);
        for (int i = 0; i < all.length; i++) {
            all[i] = -all[i];
        }
        return all;
    }

    @Test
    void the_readings_are_the_best_of_all_with_the_same_total() {
        RandomFormulas random = new RandomFormulas(1101);
        for (int run = 0; run < 250; run++) {
            long[] parts = random.parts(run % 2 == 0 ? 4 : 30);
            long total = 1 + random.below(parts.length > 4 ? 10 : 16);
            long[][] best = new long[2][];
            forEach(new long[parts.length], 0, total, chosen -> {
                long[] deviations = deviations(chosen, parts, total);
                int order = best[0] == null ? -1 : Arrays.compare(deviations, best[0]);
                if (order < 0 || order == 0 && Arrays.compare(chosen, best[1]) > 0) {
                    best[0] = deviations;
                    best[1] = chosen.clone();
                }
            });
            WeighingPlan plan = plan(GRAMS.closing(Closure.WITHIN_TOLERANCE), total, parts);
            assertThat(divisions(plan))
                    .as("%s of %s", total, Arrays.toString(parts))
                    .isEqualTo(best[1]);
            WorkingAssertions.assertSelfChecking(plan.lines().get(0));
        }
    }

    /** Lines with tolerances of their own, 0 % among them: whenever some readings are within all, those shown are. */
    @Test
    void readings_within_the_tolerances_of_all_lines_are_found_if_there_are_any() {
        RandomFormulas random = new RandomFormulas(1102);
        int found = 0;
        for (int run = 0; run < 300; run++) {
            long[] parts = random.parts(12);
            long whole = Arrays.stream(parts).sum();
            long total = 1 + random.below(parts.length > 4 ? 12 : 20);
            long[] percent = new long[parts.length];
            Tolerances tolerances = Tolerances.of("5 %");
            for (int i = 0; i < parts.length; i++) {
                percent[i] = random.below(5) == 0 ? 0 : 5 + random.below(60);
                tolerances = tolerances.withLine("material " + (i + 1), percent[i] + " %");
            }
            boolean[] some = {false};
            forEach(
                    new long[parts.length],
                    0,
                    total,
                    chosen -> some[0] |= within(chosen, parts, percent, whole, total));
            WeighingPlan plan = plan(GRAMS.closingWithin(tolerances), total, parts);
            assertThat(within(divisions(plan), parts, percent, whole, total)).isEqualTo(some[0]);
            assertThat(plan.total()).isEqualTo(Amount.grams(Ratio.of(total)));
            WorkingAssertions.assertSelfChecking(plan.lines().get(0));
            found += some[0] ? 1 : 0;
        }
        assertThat(found).isBetween(25, 275);
    }

    private static boolean within(long[] chosen, long[] parts, long[] percent, long whole, long total) {
        for (int i = 0; i < parts.length; i++) {
            if (Math.abs(chosen[i] * whole - parts[i] * total) * 100 > percent[i] * parts[i] * total) {
                return false;
            }
        }
        return true;
    }

    /** With an error e of every reading a share may be (n ± e)/(N ± (2 − k)·e); all are tried against the tolerance. */
    @Test
    void readings_that_stand_their_errors_are_found_if_there_are_any() {
        RandomFormulas random = new RandomFormulas(1103);
        int found = 0;
        for (int run = 0; run < 300; run++) {
            long[] parts = Arrays.copyOf(random.parts(12), 3);
            parts[2] = Math.max(parts[2], 1);
            long total = 3 + random.below(30);
            Ratio e = Ratio.of(1 + random.below(4), 10);
            Ratio tau = Ratio.of(10 + random.below(60), 100);
            Tolerances tolerances = Tolerances.of(tau.times(100) + " %");
            boolean[] some = {false};
            forEach(new long[3], 0, total, chosen -> some[0] |= stands(chosen, parts, tau, e));
            WeighingPlan plan = plan(GRAMS.closingWithin(tolerances, Amount.grams(e)), total, parts);
            assertThat(stands(divisions(plan), parts, tau, e)).isEqualTo(some[0]);
            WorkingAssertions.assertSelfChecking(plan.lines().get(0));
            found += some[0] ? 1 : 0;
        }
        assertThat(found).isBetween(25, 275);
    }

    private static boolean stands(long[] chosen, long[] parts, Ratio tau, Ratio e) {
        long whole = Arrays.stream(parts).sum();
        for (int i = 0; i < chosen.length; i++) {
            Ratio share = Ratio.of(parts[i], whole);
            for (int sign = -1; sign <= 1; sign += 2) {
                Ratio own = Ratio.of(chosen[i]).plus(e.times(sign));
                Ratio all = own;
                for (int j = 0; j < chosen.length; j++) {
                    all = j == i ? all : all.plus(Ratio.of(chosen[j]).minus(e.times(sign)));
                }
                if (all.signum() <= 0 || own.dividedBy(all).minus(share).abs().compareTo(tau.times(share)) > 0) {
                    return false;
                }
            }
        }
        return true;
    }

    /** x = 3.13, 2.47 and 3.4: 3 for the second is 21.6 % too much, 2 is 18.9 % too little and 4 for the third 17.6 % too much. */
    @Test
    void the_largest_remainder_may_leave_a_tolerance_that_can_be_kept() {
        assertThat(divisions(plan(GRAMS.closing(Closure.CLOSED), 9, 47, 37, 51)))
                .containsExactly(3, 3, 3);
        assertThat(divisions(plan(GRAMS.closing(Closure.WITHIN_TOLERANCE), 9, 47, 37, 51)))
                .containsExactly(3, 2, 4);
    }

    @Test
    void many_lines_and_many_divisions_are_closed_at_once() {
        long[] parts = new long[5_000];
        Arrays.setAll(parts, i -> 1 + i % 997);
        WeighingPlan plan = plan(GRAMS.closing(Closure.WITHIN_TOLERANCE), 99_999, parts);
        assertThat(plan.total()).isEqualTo(Amount.grams(Ratio.of(99_999)));
    }

    @Test
    void tolerances_must_be_those_of_the_formula() {
        assertThatThrownBy(() -> plan(GRAMS.closingWithin(Tolerances.of("5 %").withLine("Wax", "1 %")), 9, 1, 2))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("Wax");
        assertThatThrownBy(() -> GRAMS.closingWithin(Tolerances.of("5 %"), Amount.mass("-1 g")))
                .hasMessageContaining("readingError");
        Bench bench = GRAMS.closingWithin(Tolerances.of("5 %"), Amount.mass("0.1 g"));
        assertThat(bench.closingTolerances()).contains(Tolerances.of("5 %"));
        assertThat(bench.closingReadingError()).isEqualTo(Amount.mass("0.1 g"));
        assertThat(bench).isNotEqualTo(GRAMS.closing(Closure.WITHIN_TOLERANCE)).hasToString(bench.toString());
        assertThat(bench.closing(Closure.WITHIN_TOLERANCE).closingTolerances()).isEmpty();
        assertThat(bench.with(bench.vessel())).isEqualTo(bench);
    }
}
