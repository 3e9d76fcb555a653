package io.github.formulationmath.mend;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.pot.LineAddition;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.pot.Reading;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.ErrorModel;
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
            Batch batch =
                    Batch.of(formula, BatchSize.ofMass(grams(Arrays.stream(read).sum())));
            WeighingPlan plan = WeighingPlan.of(batch, bench, stations);
            List<Reading> readings = new ArrayList<>();
            for (int i = 0; i < read.length; i++) {
                readings.add(Reading.of(formula.lines().get(i), grams(read[i])));
            }
            MadeBatch made = MadeBatch.of(Readings.of(plan, WeighingMethod.TARE_EACH, readings));
            return Correction.smallest(
                            made, CorrectionRules.within(Tolerances.of(MassFraction.of(Ratio.of(permille, 1000)))))
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

    /**
     * Of a boat in which 0 to 0.04 g stay, 0.02 g are missing in the pot for each pour, in the beginning and in every
     * addition; of all additions that bring every line within, counted one by one, those advised are the least.
     */
    @Test
    void what_stays_in_the_boat_is_counted_for_every_addition() {
        int cases = 40 * Math.max(1, Integer.getInteger("formulationmath.cases", 1));
        int within = 0;
        for (int seed = 0; seed < cases; seed++) {
            SplittableRandom r = new SplittableRandom(87_000_000L + seed);
            long[] parts = {r.nextInt(8, 30), r.nextInt(1, 8), r.nextInt(1, 8)};
            long[] shown = {parts[0] * 10, parts[1] * 10 + 5 * r.nextInt(0, 3), parts[2] * 10 + 5 * r.nextInt(0, 2)};
            int permille = r.nextInt(15, 80);
            long[] put = {shown[0], shown[1] - 2, shown[2] - 2};
            DisplayedAdditions advised = fromBoats(parts, shown, permille);
            long[] more = hundredths(advised, 3);
            long[] after = new long[3];
            for (int i = 0; i < 3; i++) {
                after[i] = put[i] + more[i] - (i > 0 && more[i] > 0 ? 2 : 0);
                assertThat(advised.after().lines().get(i).mass().canonical()).isEqualTo(Ratio.of(after[i], 100));
            }
            assertThat(keeps(parts, after, permille)).as("seed %d", seed).isEqualTo(advised.isWithin());
            long total = Arrays.stream(more).sum();
            long least = leastByEnumeration(parts, put, permille);
            // Nothing to do, or exact additions that do not fit: the nearest are shown, and not called more than they
            // are.
            switch (advised.quality()) {
                case SMALLEST -> assertThat(least).as("seed %d", seed).isEqualTo(total);
                case NONE_WITHIN -> assertThat(least).as("seed %d", seed).isEqualTo(-1);
                case WITHIN -> assertThat(total).as("seed %d", seed).isZero();
                case NOT_WITHIN -> assertThat(least).as("seed %d", seed).isEqualTo(-1);
            }
            within += advised.isWithin() && total > 0 ? 1 : 0;
        }
        assertThat(within).isPositive();
    }

    /** Steps of 0.1 g on the bench, of 0.05 g in the boat; room for 1.5 g more. */
    private static DisplayedAdditions fromBoats(long[] parts, long[] shown, int permille) {
        FormulaBuilder builder = Formula.inParts("Slip");
        for (int i = 0; i < 3; i++) {
            builder.line("L" + i, Long.toString(parts[i]));
        }
        Formula formula = builder.build();
        Bench bench = Bench.of(Balance.of("0.1 g", "1 kg").named("coarse"));
        WeighingStation boat = WeighingStation.fromBoat(
                Balance.of("0.05 g", "200 g")
                        .named("fine")
                        .withErrors(
                                ErrorModel.readabilityOnly().withResidue(Amount.mass("0 g"), Amount.mass("0.04 g"))),
                Vessel.of("boat", "1 g"));
        WeighingPlan plan = WeighingPlan.of(
                Batch.of(formula, BatchSize.ofMass("5 g")), bench, List.of(bench.station(), boat, boat));
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            readings.add(Reading.of(formula.lines().get(i), Slip.grams((int) shown[i])));
        }
        MadeBatch made = MadeBatch.of(Readings.of(plan, WeighingMethod.TARE_EACH, readings));
        return Correction.smallest(
                        made,
                        CorrectionRules.within(Tolerances.of(MassFraction.of(Ratio.of(permille, 1000))))
                                .withRoomFor(made.mass().plus(Amount.mass("1.5 g"))))
                .onDisplay();
    }

    private static boolean keeps(long[] parts, long[] masses, int permille) {
        long whole = Arrays.stream(parts).sum();
        long content = Arrays.stream(masses).sum();
        for (int i = 0; i < parts.length; i++) {
            if (Math.abs(masses[i] * whole - parts[i] * content) * 1000 > permille * parts[i] * content) {
                return false;
            }
        }
        return true;
    }

    /** Room for 1.5 g in the pot; what is shown may be a little more. */
    private static long leastByEnumeration(long[] parts, long[] put, int permille) {
        long least = -1;
        for (long a = 0; a <= 160; a += 10) {
            for (long b = 0; b <= 160; b += 5) {
                for (long c = 0; c <= 160; c += 5) {
                    long[] after = {put[0] + a, put[1] + b - (b > 0 ? 2 : 0), put[2] + c - (c > 0 ? 2 : 0)};
                    long added = Arrays.stream(after).sum() - Arrays.stream(put).sum();
                    boolean counts = added <= 150 && (least < 0 || a + b + c < least);
                    if (counts && keeps(parts, after, permille)) {
                        least = a + b + c;
                    }
                }
            }
        }
        return least;
    }
}
