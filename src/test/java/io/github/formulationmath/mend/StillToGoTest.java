package io.github.formulationmath.mend;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.pot.LineAddition;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.pot.Reading;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.support.Formulas;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** "I poured 3.2 instead of 2.5, four lines still to go." */
class StillToGoTest {

    private static final Formula CREAM = Formulas.cream("Cream");

    private static final WeighingPlan PLAN =
            WeighingPlan.of(Batch.of(CREAM, BatchSize.ofMass("50 g")), Balance.of("0.1 g", "2 kg"));

    @Test
    void the_pot_so_far_and_in_the_end_are_told() {
        StillToGo still = StillToGo.of(Readings.upTo(PLAN, "Glycerin", "3.2 g"), Tolerances.of("5 %"));
        assertThat(still.soFar().mass()).hasToString("40.7 g");
        assertThat(still.asPlanned().mass()).hasToString("50.7 g");
        assertThat(still.isFineAsPlanned()).isFalse();
        // 3.2 g are 5 % of 64 g: what restores the formula is on paper.
        assertThat(still.restoring().onDisplay().additions())
                .extracting(LineAddition::toString)
                .containsExactly("10.5 g Aqua", "7.7 g Oil", "3.2 g Emulsifier", "1.3 g Wax", "0.6 g Preservative");
        assertThat(still)
                .asString()
                .contains("Glycerin: too much by 0.7 g, planned 2.5 g")
                .contains("still to go: Oil, Emulsifier, Wax, Preservative")
                .contains("going on as planned: Glycerin comes to ≈ 6.31164 % instead of 5 %")
                .contains("as the formula has it: another 10.5 g Aqua, 7.7 g Oil");
    }

    @Test
    void where_nothing_is_off_one_goes_on_as_planned() {
        StillToGo still = StillToGo.of(Readings.upTo(PLAN, "Glycerin", "2.5 g"), Tolerances.of("5 %"));
        assertThat(still.isFineAsPlanned()).isTrue();
        assertThat(still).asString().endsWith("go on as planned: every line is then within ± 5 %");
    }

    /** Whatever was poured up to whatever line: the additions advised, poured, keep the tolerance, counted in tenths. */
    @Test
    void what_is_advised_keeps_the_tolerance_in_whole_numbers() {
        int[] percent = {75, 5, 12, 5, 2, 1};
        SplittableRandom r = new SplittableRandom(84);
        int cases = 60 * Math.max(1, Integer.getInteger("formulationmath.cases", 1));
        for (int k = 0; k < cases; k++) {
            int last = r.nextInt(0, 6);
            long[] tenths = new long[6];
            List<Reading> readings = new java.util.ArrayList<>();
            for (int i = 0; i <= last; i++) {
                tenths[i] = 5 * percent[i] + (i == last ? r.nextInt(0, 12) : 0);
                readings.add(Reading.of(CREAM.lines().get(i), tenths[i] / 10 + "." + tenths[i] % 10 + " g"));
            }
            Tolerances tolerances = Tolerances.of("6 %");
            StillToGo still = StillToGo.of(Readings.begun(PLAN, WeighingMethod.TARE_EACH, readings), tolerances);
            DisplayedAdditions least = still.smallest();
            assertThat(least.isWithin()).isTrue();
            for (LineAddition addition : least.additions()) {
                tenths[addition.line().index()] +=
                        addition.mass().canonical().times(10).toLongExact();
            }
            long total = java.util.Arrays.stream(tenths).sum();
            for (int i = 0; i < 6; i++) {
                assertThat(Math.abs(tenths[i] * 100 - percent[i] * total) * 100)
                        .isLessThanOrEqualTo(6 * percent[i] * total);
            }
            MadeBatch after = least.after();
            assertThat(after.mass().canonical()).isEqualTo(Ratio.of(total, 10));
        }
    }
}
