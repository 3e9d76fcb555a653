package io.github.formulationmath.pot;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.mend.Correction;
import io.github.formulationmath.mend.CorrectionRules;
import io.github.formulationmath.mend.DisplayedAdditions;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Vessel;
import io.github.formulationmath.weighing.WeighingMethod;
import io.github.formulationmath.weighing.WeighingStation;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;

/**
 * A slip in a batch that was planned on a coarse and a fine balance: what is to be added is shown by the display of each
 * line, keeps every tolerance in whole numbers, and is never more than the coarse balance alone would ask for.
 */
class MendingOnItsOwnBalanceTest {

    /** Everything in hundredths of a gram. */
    private static final int COARSE = 100;

    private static final int FINE = 10;

    private record Slip(int[] parts, boolean[] fine, int[] read, int permille) {

        static Slip random(SplittableRandom r) {
            int lines = r.nextInt(2, 5);
            int[] parts = new int[lines];
            boolean[] fine = new boolean[lines];
            int[] read = new int[lines];
            int times = r.nextInt(1, 4);
            for (int i = 0; i < lines; i++) {
                parts[i] = r.nextInt(1, 12);
                fine[i] = i > 0 && r.nextBoolean();
                int slip = r.nextInt(3) == 0 ? r.nextInt(1, 6) : 0;
                // What the coarse display could have shown too, so that both mend the same pot.
                read[i] = (parts[i] * times + slip) * COARSE;
            }
            return new Slip(parts, fine, read, r.nextInt(10, 120));
        }

        int step(int line) {
            return fine[line] ? FINE : COARSE;
        }

        DisplayedAdditions mended(boolean onTwo) {
            FormulaBuilder builder = Formula.inParts("Slip");
            for (int i = 0; i < parts.length; i++) {
                builder.line("L" + i, Integer.toString(parts[i]));
            }
            Formula formula = builder.build();
            Bench bench = Bench.of(Balance.of(grams(COARSE), grams(1_000_000)).named("coarse"));
            WeighingStation boat = WeighingStation.fromBoat(
                    Balance.of(grams(FINE), grams(100_000)).named("fine"), Vessel.of("boat", "1 g"));
            List<WeighingStation> stations = new ArrayList<>();
            for (boolean line : fine) {
                stations.add(line && onTwo ? boat : bench.station());
            }
            Batch batch = Batch.of(formula, BatchSize.ofMass(grams(Arrays.stream(read).sum())));
            WeighingPlan plan = WeighingPlan.of(batch, bench, stations);
            List<Reading> readings = new ArrayList<>();
            for (int i = 0; i < read.length; i++) {
                readings.add(Reading.of(formula.lines().get(i), grams(read[i])));
            }
            MadeBatch made = MadeBatch.of(Readings.of(plan, WeighingMethod.TARE_EACH, readings));
            return Correction.smallest(made, CorrectionRules.within(Tolerances.of(MassFraction.of(Ratio.of(permille, 1000)))))
                    .onDisplay();
        }

        private static Amount<Mass> grams(int hundredths) {
            return Amount.grams(Ratio.of(hundredths, 100));
        }

        /** Whether these additions, in hundredths, bring every line within its tolerance. */
        boolean isWithin(long[] more) {
            long whole = Arrays.stream(parts).sum();
            long content = Arrays.stream(read).sum() + Arrays.stream(more).sum();
            for (int i = 0; i < parts.length; i++) {
                long off = Math.abs((read[i] + more[i]) * whole - parts[i] * content);
                if (off * 1000 > permille * parts[i] * content) {
                    return false;
                }
            }
            return true;
        }
    }

    private static long[] hundredths(DisplayedAdditions additions, int lines) {
        long[] more = new long[lines];
        for (LineAddition addition : additions.additions()) {
            more[addition.line().index()] =
                    addition.mass().canonical().times(100).toLongExact();
        }
        return more;
    }

    @Test
    void what_is_added_is_shown_by_the_balance_of_the_line_and_never_more_than_on_the_coarse_one() {
        int cases = 120 * Math.max(1, Integer.getInteger("formulationmath.cases", 1));
        int less = 0;
        for (int seed = 0; seed < cases; seed++) {
            Slip slip = Slip.random(new SplittableRandom(82_000_000L + seed));
            DisplayedAdditions onTwo = slip.mended(true);
            DisplayedAdditions onOne = slip.mended(false);
            long[] two = hundredths(onTwo, slip.parts.length);
            long[] one = hundredths(onOne, slip.parts.length);
            for (int i = 0; i < two.length; i++) {
                assertThat(two[i] % slip.step(i)).as("seed %d", seed).isZero();
            }
            assertThat(slip.isWithin(two)).as("seed %d", seed).isEqualTo(onTwo.isWithin());
            assertThat(slip.isWithin(one)).as("seed %d", seed).isEqualTo(onOne.isWithin());
            if (onOne.isWithin()) {
                assertThat(onTwo.isWithin()).as("seed %d", seed).isTrue();
                assertThat(Arrays.stream(two).sum())
                        .as("seed %d", seed)
                        .isLessThanOrEqualTo(Arrays.stream(one).sum());
                less += Arrays.stream(two).sum() < Arrays.stream(one).sum() ? 1 : 0;
            }
        }
        assertThat(less).isPositive();
    }
}
