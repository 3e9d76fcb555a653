package io.github.formulationmath.record;

import static io.github.formulationmath.support.ManyLines.cumulative;
import static io.github.formulationmath.support.ManyLines.plan;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.pot.Evaporation;
import io.github.formulationmath.pot.LineAddition;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.weighing.Balance;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import javax.measure.quantity.Mass;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** What many entries leave is what they leave one after another. */
class ManyEntriesTest {

    private static final int MANY = 20_000;
    private static final Balance FINE = Balance.of("0.01 g", "10 kg").named("fine");
    private static final Tolerances TOLERANCES = Tolerances.of("1 %");

    private static BatchRecord record(Readings readings) {
        return BatchRecord.of(BatchCode.of("MANY", LocalDate.of(2026, 1, 1), 1), readings, TOLERANCES);
    }

    @Property(tries = 60)
    void many_entries_leave_what_they_leave_one_after_another(@ForAll long seed) {
        Random random = new Random(seed);
        WeighingPlan plan = plan(2 + random.nextInt(5));
        BatchRecord listed = record(cumulative(plan, 1 + random.nextInt(3)));
        BatchRecord oneByOne = listed;
        MadeBatch slow = listed.madeAtFirst();
        List<BenchEntry> entries = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            FormulaLine line = plan.batch()
                    .formula()
                    .lines()
                    .get(random.nextInt(plan.lines().size()));
            BenchEntry entry;
            int kind = random.nextInt(6);
            if (kind == 0) {
                entry = BenchEntry.observation("smooth");
            } else if (kind == 1) {
                Ratio now = slow.mass().in(FormulationUnits.GRAM).times(10);
                Ratio tenths = now.toWhole(RoundingMode.FLOOR).minus(Ratio.of(random.nextInt(2)));
                Amount<Mass> content = Amount.grams(tenths.dividedBy(10));
                entry = BenchEntry.weighedAgain(content, line);
                slow = Evaporation.of(slow, content, line).notAddedBack();
            } else {
                LineAddition addition = LineAddition.of(line, Amount.grams(Ratio.of(1 + random.nextInt(9), 10)));
                LineAddition on = kind == 2 ? addition.on(FINE) : addition;
                entry = BenchEntry.addition(on);
                slow = slow.plus(List.of(on));
            }
            entries.add(entry);
            oneByOne = oneByOne.with(entry);
            if (random.nextInt(3) == 0) {
                assertThat(oneByOne.made()).isEqualTo(slow);
            }
        }
        assertThat(oneByOne.made()).isEqualTo(slow);
        assertThat(listed.with(entries).made()).isEqualTo(slow);
        assertThat(listed.with(entries).made().mass().canonical())
                .isEqualTo(slow.mass().canonical());
    }
}
