package io.github.formulationmath.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.planning.Bench;
import io.github.formulationmath.planning.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.scaling.Batch;
import io.github.formulationmath.scaling.BatchSize;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.ErrorModel;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A covered pot loses nothing, and the balance, erring within its bounds, may show more of it than went in. */
class NothingWentOffTest {

    private static final Formula FORMULA = Formula.inPercent("Trial")
            .line("Aqua", "70 %")
            .line("Oil", "25 %")
            .line("Wax", "5 %")
            .build();

    /** In hundredths of a gram: the display shows tenths. */
    @Test
    void a_pot_that_shows_a_little_more_than_went_in_lost_nothing() {
        Random r = new Random(11_008);
        int more = 0;
        for (int run = 0; run < 300; run++) {
            int linearity = r.nextInt(20);
            Balance balance = Balance.of("0.1 g", "2 kg")
                    .withErrors(ErrorModel.readabilityOnly()
                            .withLinearityOfNetReading(Amount.grams(Ratio.of(linearity, 100))));
            WeighingPlan plan = WeighingPlan.of(Batch.of(FORMULA, BatchSize.ofMass("400 g")), Bench.of(balance));
            List<Reading> readings = new ArrayList<>();
            long there = 0;
            long shown = 0;
            for (FormulaLine line : FORMULA.lines()) {
                long read = 10L * (100 + r.nextInt(2000));
                readings.add(Reading.of(line, Amount.grams(Ratio.of(read, 100))));
                shown += read;
                there += read + error(r, linearity);
            }
            MadeBatch made = MadeBatch.of(Readings.of(plan, WeighingMethod.TARE_EACH, readings));
            long content = Math.floorDiv(there + error(r, linearity - 5), 10L) * 10;
            Evaporation loss = Evaporation.of(made, Amount.grams(Ratio.of(content, 100)), FORMULA.line("Aqua"));
            assertThat(loss.loss().in(FormulationUnits.GRAM))
                    .isEqualTo(Ratio.of(shown - content, 100).max(Ratio.ZERO));
            loss.working().check();
            MadeBatch after = loss.notAddedBack();
            for (MadeLine line : after.lines()) {
                assertThat(line.massBounds().contains(line.result())).isTrue();
                assertThat(line.shareBounds().contains(line.share().fraction())).isTrue();
            }
            more += content > shown ? 1 : 0;
            long tooMuch = shown + 4 * (10 + linearity) + 10;
            assertThatThrownBy(() -> Evaporation.of(made, Amount.grams(Ratio.of(tooMuch, 100)), FORMULA.line("Aqua")))
                    .hasMessageContaining("more than the")
                    .hasMessageContaining("was the vessel weighed with it");
        }
        assertThat(more).isBetween(50, 250);
    }

    /** Tare, reading and linearity of a net reading: up to 0.1 g and the linearity, either way; mostly as far as it goes. */
    private static long error(Random r, int linearity) {
        int most = Math.max(0, 10 + linearity);
        return r.nextInt(3) == 0 ? r.nextInt(2 * most + 1) - most : r.nextBoolean() ? most : -most;
    }
}
