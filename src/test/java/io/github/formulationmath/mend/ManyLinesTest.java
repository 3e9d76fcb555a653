package io.github.formulationmath.mend;

import static io.github.formulationmath.support.ManyLines.cumulative;
import static io.github.formulationmath.support.ManyLines.plan;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.number.LinearProgram;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.support.CpuTime;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.Callable;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/**
 * Short ways are held against the long ones that they stand for; and at sizes that would take hours if a step were taken for
 * every pair of lines, there is an answer at all.
 */
class ManyLinesTest {

    private static final int MANY = 20_000;
    private static final Tolerances TOLERANCES = Tolerances.of("1 %");

    private static <T> T inTime(Callable<T> work) {
        return CpuTime.assertWithin(Duration.ofMinutes(5), work::call);
    }

    @Property(tries = 60)
    void a_short_condition_is_the_row_of_the_linear_program(@ForAll long seed) {
        Random random = new Random(seed);
        int lines = 1 + random.nextInt(5);
        MadeBatch made = MadeBatch.of(cumulative(plan(lines), 1));
        List<FormulaLine> all = made.plan().batch().formula().lines();
        CorrectionRules rules = CorrectionRules.within(Tolerances.of("2 %"))
                .withCap(Substance.of("line 0"), MassFraction.ofPercent("30"))
                .withStock(all.get(random.nextInt(lines)), Amount.mass("3 g"))
                .freezing(all.get(random.nextInt(lines)));
        List<PotConstraint> conditions = PotConstraint.of(made, rules);
        List<LinearProgram.Row> rows =
                SmallestCorrection.program(made, conditions).rows();
        List<Ratio> x = new ArrayList<>();
        Ratio total = Ratio.ZERO;
        for (int i = 0; i < lines; i++) {
            x.add(Ratio.of(random.nextInt(5)));
            total = total.plus(x.get(i));
        }
        for (int k = 0; k < rows.size(); k++) {
            PotConstraint.Row row = conditions.get(k).row(lines);
            assertThat(row.dense(lines)).isEqualTo(rows.get(k));
            assertThat(row.slack(x, total).signum() >= 0).isEqualTo(rows.get(k).isKeptBy(x));
        }
    }

    @Test
    void every_line_is_mended_in_steps() {
        MadeBatch made = MadeBatch.of(cumulative(plan(MANY), 1));
        List<Ratio> exact = made.lines().stream().map(line -> Ratio.of(3, 100)).toList();
        DisplayedAdditions shown =
                inTime(() -> DisplayedAdditions.nearest(made, CorrectionRules.within(TOLERANCES), exact));
        assertThat(shown.additions()).isEmpty();
    }
}
