package io.github.formulationmath.plan;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.oracle.WholeDivisions;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.support.RandomFormulas;
import io.github.formulationmath.weighing.Balance;
import java.math.BigInteger;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Every displayed digit against an independent oracle in whole numbers, ties included. The number of random displays is
 * 10^6 in the build; {@code -Dformulationmath.displays=100000000} runs 10^8.
 */
class DisplayOracleTest {

    private static final long DISPLAYS = Long.getLong("formulationmath.displays", 1_000_000L);

    private static final long[] STEPS = {1, 2, 5, 10, 20, 50, 100, 250, 1000, 3, 7};

    /** A random batch: shares in parts, mass and display step in whole milligrams. */
    private record Case(long[] parts, long batch, long step) {

        static Case random(SplittableRandom random) {
            long[] parts =
                    random.longs(random.nextInt(2, 13), 1, largestPart(random)).toArray();
            long step = STEPS[random.nextInt(STEPS.length)];
            long sum = Arrays.stream(parts).sum();
            boolean halfWay = random.nextInt(16) == 0 && sum < 1_000_000;
            // An odd number of half divisions per part puts every odd part exactly half-way.
            return halfWay
                    ? new Case(parts, sum * step * random.nextLong(1, 100), 2 * step)
                    : new Case(parts, random.nextLong(1, 2_000) * batchUnit(random), step);
        }

        private static long largestPart(SplittableRandom random) {
            return switch (random.nextInt(4)) {
                case 0 -> 5;
                case 1 -> 101;
                case 2 -> 100_003;
                default -> 10_000_000_019L;
            };
        }

        private static long batchUnit(SplittableRandom random) {
            return random.nextBoolean() ? 500 : random.nextLong(1, 100_000);
        }

        Formula formula() {
            return RandomFormulas.formula(parts);
        }

        Batch batchOf(Formula formula) {
            return Batch.of(formula, BatchSize.ofMass(milligrams(batch)));
        }

        Balance balance() {
            return Balance.of(milligrams(step), milligrams(Long.MAX_VALUE / 4));
        }

        WholeDivisions oracle() {
            return new WholeDivisions(parts, BigInteger.valueOf(batch), BigInteger.valueOf(step));
        }

        private static Amount<Mass> milligrams(long number) {
            return Amount.grams(Ratio.of(number, 1000));
        }
    }

    @Tag("long")
    @Test
    void every_displayed_digit_agrees_with_the_oracle() {
        SplittableRandom random = new SplittableRandom(1967);
        long displays = 0;
        long ties = 0;
        while (displays < DISPLAYS) {
            Case each = Case.random(random);
            WholeDivisions oracle = each.oracle();
            Formula formula = each.formula();
            assertThat(planned(each, formula, Closure.INDEPENDENT))
                    .as("%s", each)
                    .isEqualTo(oracle.independent());
            assertThat(planned(each, formula, Closure.CLOSED)).as("%s", each).isEqualTo(oracle.closed());
            assertThat(inBulk(each, formula)).as("%s", each).isEqualTo(oracle.independent());
            displays += each.parts().length;
            ties += oracle.ties();
        }
        assertThat(ties).as("ties among the displays").isGreaterThan(DISPLAYS / 100);
    }

    @Test
    void the_quantity_sufficient_line_takes_the_rest() {
        SplittableRandom random = new SplittableRandom(1979);
        for (int i = 0; i < 5_000; i++) {
            long[] percents = random.longs(random.nextInt(1, 9), 1, 1_000).toArray();
            long rest = 10_000 - Arrays.stream(percents).sum();
            long batch = random.nextLong(50_000, 5_000_000);
            var draft = Formula.inPercent("random").quantitySufficient("rest");
            for (int line = 0; line < percents.length; line++) {
                draft.line("line " + line, percents[line] + "e-2 %");
            }
            Case each = new Case(concat(rest, percents), batch, 100);
            assertThat(planned(each, draft.build(), Closure.QS_TAKES_REST))
                    .as("%s", each)
                    .isEqualTo(each.oracle().restTo(0));
        }
    }

    private static long[] concat(long first, long[] others) {
        long[] all = new long[others.length + 1];
        all[0] = first;
        System.arraycopy(others, 0, all, 1, others.length);
        return all;
    }

    private static BigInteger[] planned(Case each, Formula formula, Closure closure) {
        WeighingPlan plan =
                WeighingPlan.of(each.batchOf(formula), Bench.of(each.balance()).closing(closure));
        BigInteger[] divisions =
                plan.lines().stream().map(line -> line.divisions().numerator()).toArray(BigInteger[]::new);
        Ratio total = each.balance().divisions(plan.total());
        assertThat(total.numerator()).isEqualTo(Arrays.stream(divisions).reduce(BigInteger.ZERO, BigInteger::add));
        return divisions;
    }

    private static BigInteger[] inBulk(Case each, Formula formula) {
        double[] divisions = new double[each.parts().length];
        BulkPlanner planner = BulkPlanner.of(List.of(formula));
        Ratio batch = Ratio.of(each.batch(), each.step());
        long total = planner.plan(0, batch, divisions);
        assertThat(total).isEqualTo((long) Arrays.stream(divisions).sum());
        return Arrays.stream(divisions)
                .mapToObj(shown -> BigInteger.valueOf((long) shown))
                .toArray(BigInteger[]::new);
    }
}
