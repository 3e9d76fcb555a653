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
import io.github.formulationmath.pot.Reading;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Caps that pull in different directions. The smallest totals were found by an integer programming solver (CP-SAT). */
final class OpposingCapsTest {

    @Test
    void four_lines_with_three_caps_and_a_stock() {
        Pot pot = Pot.of(
                "1/100",
                "1 %",
                "2/153:0&33/100&2211/10000 1/340:0&0&0 11/3060:0&0&1/2 50/51:17/50&561/5000&2739/31250",
                "131 29 36 9804",
                "1/3 583/5100 2322287/25500000");
        smallest(pot, pot.rules.withStock(pot.made.lines().get(2).line(), grams("693/100")), "1.91 g");
    }

    @Test
    void five_lines_with_two_caps_and_a_stock() {
        Pot pot = Pot.of(
                "1/10",
                "2 %",
                "3/128:0&0 21/64:0&0 5/64:0&31/100 25/128:27/50&0 3/8:0&0",
                "23 360 78 195 375",
                "5427/51200 6231/256000");
        smallest(pot, pot.rules.withStock(pot.made.lines().get(0).line(), grams("1133/100")), "4.5 g");
    }

    private static void smallest(Pot pot, CorrectionRules rules, String total) {
        DisplayedAdditions displayed = Correction.smallest(pot.made, rules).onDisplay();
        assertThat(displayed.quality()).isEqualTo(DisplayedAdditions.Quality.SMALLEST);
        assertThat(displayed.total()).isEqualTo(Amount.mass(total));
    }

    @Test
    void two_lines_with_room_for_little() {
        Pot pot = Pot.of("1/10", "2 %", "27/32:29/100&3479/5000 5/32:47/50&0", "930 156", "1253/3200 93933/160000");
        DisplayedAdditions displayed = Correction.smallest(pot.made, pot.rules.withRoomFor(grams("5973/50")))
                .onDisplay();
        assertThat(displayed.isWithin()).isTrue();
        assertThat(displayed.additions())
                .extracting(LineAddition::mass)
                .containsExactly(Amount.mass("1.5 g"), Amount.mass("1.9 g"));
    }

    private static Amount<javax.measure.quantity.Mass> grams(String text) {
        return Amount.grams(Ratio.parse(text));
    }

    private record Pot(MadeBatch made, CorrectionRules rules) {

        static Pot of(String step, String tolerance, String lines, String readings, String caps) {
            FormulaBuilder formula = Formula.inParts("opposing");
            int place = 0;
            for (String line : lines.split(" ")) {
                String[] halves = line.split(":");
                BlendBuilder blend = Ingredient.blend("L" + place++);
                String[] strengths = halves[1].split("&");
                for (int c = 0; c < strengths.length; c++) {
                    Ratio strength = Ratio.parse(strengths[c]);
                    if (!strength.isZero()) {
                        blend.part(Substance.of("S" + c), MassFraction.of(strength));
                    }
                }
                formula.line(blend.rest("Rest"), Ratio.parse(halves[0]));
            }
            Balance balance = Balance.of(Amount.grams(Ratio.parse(step)), Amount.mass("100 kg"));
            WeighingPlan plan = WeighingPlan.of(Batch.of(formula.build(), BatchSize.ofMass("100 g")), balance);
            List<Reading> read = new ArrayList<>();
            String[] counts = readings.split(" ");
            for (FormulaLine line : plan.batch().formula().lines()) {
                read.add(Reading.of(line, Amount.grams(Ratio.parse(step).times(Long.parseLong(counts[line.index()])))));
            }
            CorrectionRules rules = CorrectionRules.within(Tolerances.of(tolerance));
            String[] most = caps.split(" ");
            for (int c = 0; c < most.length; c++) {
                rules = rules.withCap(Substance.of("S" + c), MassFraction.of(Ratio.parse(most[c])));
            }
            return new Pot(MadeBatch.of(Readings.of(plan, WeighingMethod.TARE_EACH, read)), rules);
        }
    }
}
