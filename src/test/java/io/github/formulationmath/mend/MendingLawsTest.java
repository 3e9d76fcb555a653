package io.github.formulationmath.mend;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.BlendBuilder;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.pot.LineAddition;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.pot.MadeLine;
import io.github.formulationmath.pot.Reading;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Laws of mending, held to plain enumeration in integers: displayed additions stay within stock and room, none smaller are
 * within, caps are exceeded by the least part of themselves, and every obstacle is needed.
 */
final class MendingLawsTest {

    /**
     * A mishap in whole numbers. Masses are counted in steps of the display (0.1 g); the parts add up to 1 000, strengths and
     * tolerances are in thousandths, so that every condition is an inequality between integers.
     */
    private record Mishap(
            int[] parts, int[][] strength, int[] poured, int tolerance, int[] cap, int[] stock, int room) {

        static Mishap random(Random random) {
            int lines = 2 + random.nextInt(2);
            int[] parts = new int[lines];
            int left = 1_000;
            for (int i = 0; i < lines - 1; i++) {
                parts[i] = 50 + random.nextInt(left / 2 - 60);
                left -= parts[i];
            }
            parts[lines - 1] = left;
            int[] poured = new int[lines];
            int[] stock = new int[lines];
            int total = 0;
            for (int i = 0; i < lines; i++) {
                poured[i] = Math.max(1, parts[i] * (60 + random.nextInt(80)) / 1_000);
                stock[i] = random.nextInt(3) == 0 ? random.nextInt(12) : 1_000;
                total += poured[i];
            }
            int caps = random.nextInt(3);
            int[] cap = new int[caps];
            int[][] strength = new int[caps][lines];
            for (int c = 0; c < caps; c++) {
                int middle = 0;
                for (int i = 0; i < lines; i++) {
                    strength[c][i] = random.nextInt(3) == 0 ? 0 : random.nextInt(caps == 1 ? 900 : 480);
                    middle += strength[c][i] * parts[i];
                }
                if (middle == 0) {
                    strength[c][0] = 1 + random.nextInt(400);
                    middle = strength[c][0] * parts[0];
                }
                cap[c] = Math.max(1, middle * (850 + random.nextInt(300)) / 1_000_000);
            }
            return new Mishap(
                    parts, strength, poured, 20 + random.nextInt(150), cap, stock, total + random.nextInt(26));
        }

        int lines() {
            return parts.length;
        }

        Formula formula() {
            FormulaBuilder formula = Formula.inParts("mishap");
            for (int i = 0; i < lines(); i++) {
                BlendBuilder blend = Ingredient.blend("L" + i);
                for (int c = 0; c < cap.length; c++) {
                    if (strength[c][i] > 0) {
                        blend.part(Substance.of("S" + c), MassFraction.of(Ratio.of(strength[c][i], 1_000)));
                    }
                }
                formula.line(blend.rest("Rest"), Ratio.of(parts[i]));
            }
            return formula.build();
        }

        MadeBatch made() {
            WeighingPlan plan =
                    WeighingPlan.of(Batch.of(formula(), BatchSize.ofMass("10 g")), Balance.of("0.1 g", "5 kg"));
            List<Reading> readings = new ArrayList<>();
            for (FormulaLine line : plan.batch().formula().lines()) {
                readings.add(Reading.of(line, grams(poured[line.index()])));
            }
            return MadeBatch.of(Readings.of(plan, WeighingMethod.TARE_EACH, readings));
        }

        CorrectionRules rules(MadeBatch made) {
            CorrectionRules rules = CorrectionRules.within(Tolerances.of(MassFraction.of(Ratio.of(tolerance, 1_000))))
                    .withRoomFor(grams(room));
            for (int c = 0; c < cap.length; c++) {
                rules = rules.withCap(Substance.of("S" + c), MassFraction.of(Ratio.of(cap[c], 1_000)));
            }
            for (MadeLine line : made.lines()) {
                rules = rules.withStock(line.line(), grams(stock[line.line().index()]));
            }
            return rules;
        }

        private static Amount<javax.measure.quantity.Mass> grams(int steps) {
            return Amount.grams(Ratio.of(steps, 10));
        }

        boolean isThere(int[] x) {
            int total = 0;
            for (int i = 0; i < lines(); i++) {
                total += poured[i] + x[i];
                if (x[i] < 0 || x[i] > stock[i]) {
                    return false;
                }
            }
            return total <= room;
        }

        boolean isWithin(int[] x) {
            long total = total(x);
            for (int i = 0; i < lines(); i++) {
                long off = Math.abs(1_000L * (poured[i] + x[i]) - parts[i] * total);
                if (1_000L * off > (long) tolerance * parts[i] * total) {
                    return false;
                }
            }
            for (int c = 0; c < cap.length; c++) {
                if (there(c, x) > cap[c] * total) {
                    return false;
                }
            }
            return true;
        }

        long total(int[] x) {
            long total = 0;
            for (int i = 0; i < lines(); i++) {
                total += poured[i] + x[i];
            }
            return total;
        }

        /** Thousandths of steps of a capped substance. */
        long there(int c, int[] x) {
            long sum = 0;
            for (int i = 0; i < lines(); i++) {
                sum += (long) strength[c][i] * (poured[i] + x[i]);
            }
            return sum;
        }

        /** The worst of share over cap, as a fraction. */
        Ratio worstOfCaps(int[] x) {
            Ratio worst = Ratio.ONE;
            for (int c = 0; c < cap.length; c++) {
                worst = worst.max(Ratio.of(there(c, x), cap[c] * total(x)));
            }
            return worst;
        }

        /** All additions that stock and room allow. */
        List<int[]> all() {
            List<int[]> all = new ArrayList<>();
            choose(new int[lines()], 0, room - (int) total(new int[lines()]), all);
            return all;
        }

        private void choose(int[] x, int i, int left, List<int[]> all) {
            if (i == lines()) {
                all.add(x.clone());
                return;
            }
            for (x[i] = 0; x[i] <= Math.min(left, stock[i]); x[i]++) {
                choose(x, i + 1, left - x[i], all);
            }
            x[i] = 0;
        }
    }

    private static int[] steps(MadeBatch made, List<LineAddition> additions) {
        int[] x = new int[made.lines().size()];
        for (LineAddition addition : additions) {
            x[addition.line().index()] =
                    (int) addition.mass().ratioTo(Amount.mass("0.1 g")).toLongExact();
        }
        return x;
    }

    @Test
    void displayed_additions_are_the_smallest_that_stock_and_room_allow() {
        Random random = new Random(17);
        int mended = 0;
        int none = 0;
        for (int n = 0; n < 400; n++) {
            Mishap mishap = Mishap.random(random);
            MadeBatch made = mishap.made();
            Correction correction = Correction.smallest(made, mishap.rules(made));
            DisplayedAdditions displayed = correction.onDisplay();
            int[] x = steps(made, displayed.additions());
            assertThat(mishap.isThere(x)).isTrue();
            assertThat(displayed.isWithin()).isEqualTo(mishap.isWithin(x));
            List<int[]> good = mishap.all().stream().filter(mishap::isWithin).toList();
            long least = good.stream().mapToLong(mishap::total).min().orElse(-1);
            if (least < 0) {
                none++;
                assertThat(displayed.isWithin()).isFalse();
                assertThat(displayed.quality()).isNotIn(DisplayedAdditions.Quality.SMALLEST);
            } else if (correction.outcome() == Correction.Outcome.MENDED) {
                mended++;
                assertThat(displayed.quality()).isEqualTo(DisplayedAdditions.Quality.SMALLEST);
                assertThat(mishap.total(x)).isEqualTo(least);
            } else {
                assertThat(correction.outcome()).isEqualTo(Correction.Outcome.NOTHING_TO_DO);
            }
        }
        assertThat(mended).isGreaterThan(40);
        assertThat(none).isGreaterThan(40);
    }

    @Test
    void no_other_additions_leave_the_worst_cap_exceeded_by_a_smaller_part_of_itself() {
        Random random = new Random(18);
        int exceeded = 0;
        for (int n = 0; n < 600; n++) {
            Mishap mishap = Mishap.random(random);
            MadeBatch made = mishap.made();
            Correction correction = Correction.smallest(made, mishap.rules(made));
            Ratio worst = correction.exceededCaps().stream()
                    .map(cap -> cap.least().fraction().dividedBy(cap.cap().fraction()))
                    .reduce(Ratio.ONE, Ratio::max);
            exceeded += worst.equals(Ratio.ONE) ? 0 : 1;
            for (int[] x : mishap.all()) {
                assertThat(mishap.worstOfCaps(x)).isGreaterThanOrEqualTo(worst);
            }
            // And what is promised is reached by the exact additions.
            MadeBatch after = correction.after();
            for (int c = 0; c < mishap.cap().length; c++) {
                Ratio share = Ratio.ZERO;
                for (MadeLine line : after.lines()) {
                    int strength = mishap.strength()[c][line.line().index()];
                    share = share.plus(line.share().fraction().times(strength).dividedBy(1_000));
                }
                Ratio cap = Ratio.of(mishap.cap()[c], 1_000);
                assertThat(share.dividedBy(cap).max(Ratio.ONE)).isLessThanOrEqualTo(worst);
            }
        }
        assertThat(exceeded).isGreaterThan(30);
    }

    /**
     * Whatever is added, A makes up 40 % where 30 % is its cap. B is at 0.3 % and may be 0.4 %; to be closest to the formula,
     * 40 g of the first line would bring it to 0.5 %. With x g of it (0.3 + x/100)/(100 + x) = 0.4 % at x = 50/3.
     */
    @Test
    void a_cap_that_can_be_kept_is_kept_though_another_cannot() {
        Ingredient both =
                Ingredient.blend("Both").part("A", "40 %").part("B", "1 %").rest("Rest");
        Ingredient one = Ingredient.blend("One").part("A", "40 %").rest("Rest");
        Formula formula = Formula.inParts("halves")
                .line(both, Ratio.ONE)
                .line(one, Ratio.ONE)
                .build();
        WeighingPlan plan = WeighingPlan.of(Batch.of(formula, BatchSize.ofMass("100 g")), Balance.of("0.1 g", "2 kg"));
        MadeBatch made = MadeBatch.of(Readings.of(
                plan,
                WeighingMethod.TARE_EACH,
                List.of(
                        Reading.of(formula.line("Both"), Amount.mass("30 g")),
                        Reading.of(formula.line("One"), Amount.mass("70 g")))));
        CorrectionRules rules = CorrectionRules.within(Tolerances.of("2 %"))
                .withCap(Substance.of("A"), MassFraction.parse("30 %"))
                .withCap(Substance.of("B"), MassFraction.parse("0.4 %"));
        Correction correction = Correction.smallest(made, rules);
        assertThat(correction.exceededCaps())
                .containsExactly(
                        new ExceededCap(Substance.of("A"), MassFraction.parse("30 %"), MassFraction.parse("40 %")));
        assertThat(correction.additions())
                .containsExactly(LineAddition.of(formula.line("Both"), Amount.grams(Ratio.of(50, 3))));
    }

    /** What must not be there at all is brought as low as the room allows. */
    @Test
    void a_substance_that_must_not_be_there_is_thinned_as_far_as_there_is_room() {
        Formula formula = Formula.inPercent("ban")
                .line("A", "50 %")
                .quantitySufficient("Aqua")
                .build();
        WeighingPlan plan = WeighingPlan.of(Batch.of(formula, BatchSize.ofMass("100 g")), Balance.of("0.1 g", "2 kg"));
        MadeBatch made = MadeBatch.of(Readings.of(
                plan,
                WeighingMethod.TARE_EACH,
                List.of(
                        Reading.of(formula.line("A"), Amount.mass("50 g")),
                        Reading.of(formula.line("Aqua"), Amount.mass("50 g")))));
        CorrectionRules rules = CorrectionRules.within(Tolerances.of("2 %"))
                .withCap(Substance.of("A"), MassFraction.parse("0 %"))
                .withRoomFor(Amount.mass("200 g"));
        assertThat(Correction.smallest(made, rules).exceededCaps())
                .containsExactly(
                        new ExceededCap(Substance.of("A"), MassFraction.parse("0 %"), MassFraction.parse("25 %")));
    }

    @Test
    void two_obstacles_are_named_where_two_suffice() {
        // Shares 7/12, 3/20, 4/15; poured 29, 8, 32 g, tolerance 20 %, nothing can be added to the first.
        Formula formula = Formula.inParts("three")
                .line("L0", "35")
                .line("L1", "9")
                .line("L2", "16")
                .build();
        WeighingPlan plan = WeighingPlan.of(Batch.of(formula, BatchSize.ofMass("60 g")), Balance.of("1 g", "2 kg"));
        List<Reading> readings = new ArrayList<>();
        int[] poured = {29, 8, 32};
        for (FormulaLine line : formula.lines()) {
            readings.add(Reading.of(line, Amount.grams(Ratio.of(poured[line.index()]))));
        }
        MadeBatch made = MadeBatch.of(Readings.of(plan, WeighingMethod.TARE_EACH, readings));
        CorrectionRules rules = CorrectionRules.within(Tolerances.of("20 %")).freezing(formula.line("L0"));
        assertThat(Correction.smallest(made, rules).obstacles())
                .extracting(Obstacle::kind)
                .containsExactly(Obstacle.Kind.LINE_TOO_LITTLE, Obstacle.Kind.LINE_FROZEN);
    }
}
