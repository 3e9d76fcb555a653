package io.github.formulationmath.size;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Closure;
import io.github.formulationmath.plan.PlannedLine;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What a window calls safe is safe with the readings that the closure of its bench really shows. */
class ClosuresAndErrorsTest {

    private static Formula formula(Random r) {
        FormulaBuilder builder = Formula.inPercent("Trial").quantitySufficient("Aqua");
        int lines = 2 + r.nextInt(9);
        for (int i = 1; i < lines; i++) {
            int tenths = 1 + r.nextInt(90);
            builder.line("L" + i, tenths / 10 + "." + tenths % 10 + " %");
        }
        return builder.build();
    }

    private static WeighingPlan plan(Formula formula, Ratio size, Bench bench) {
        return WeighingPlan.of(Batch.of(formula, BatchSize.ofMass(Amount.grams(size))), bench);
    }

    private static Closure closure(Random r) {
        return Closure.values()[r.nextInt(Closure.values().length)];
    }

    @Test
    void no_reading_is_further_from_its_target_than_is_said() {
        Random r = new Random(11_005);
        for (int run = 0; run < 1_500; run++) {
            Formula formula = formula(r);
            Closure closure = closure(r);
            Bench bench = Bench.of(Balance.of("1 g", "50 kg")).closing(closure);
            Ratio size = Ratio.of(1 + r.nextInt(9_000), 1 + r.nextInt(10));
            WeighingPlan plan;
            try {
                plan = plan(formula, size, bench);
            } catch (IllegalArgumentException nothingLeftForTheRest) {
                assertThat(closure).isEqualTo(Closure.QS_TAKES_REST);
                continue;
            }
            for (PlannedLine line : plan.lines()) {
                Ratio target = line.target().line().fraction().times(size);
                assertThat(line.divisions().minus(target).abs())
                        .as("%s of %s g of %s, %s", line, size, formula, closure)
                        .isLessThanOrEqualTo(AdditionBound.reach(
                                closure, line.target().line(), formula.lines().size()));
            }
        }
    }

    /** Rounding that happened, half a division at the tare and half at the reading. */
    @Test
    void a_window_by_the_worst_error_keeps_it_whatever_the_closure() {
        Random r = new Random(11_006);
        for (int run = 0; run < 200; run++) {
            Formula formula = formula(r);
            Bench bench = Bench.of(Balance.of("1 g", "500 kg")).closing(closure(r));
            int percent = 1 + r.nextInt(20);
            BatchWindow window = BatchWindow.of(
                    formula,
                    bench,
                    BatchConstraints.of(Criterion.errorBound(Tolerances.of(percent + " %"), WeighingMethod.TARE_EACH)));
            if (window instanceof BatchWindow.Feasible found) {
                Ratio low = found.lowerEnd().mass().canonical();
                found.lowerEnd().working().check();
                for (int k = 0; k < 20; k++) {
                    Ratio size = low.plus(k == 0 ? Ratio.ZERO : Ratio.of(r.nextInt(2_000), 10));
                    for (PlannedLine line : plan(formula, size, bench).lines()) {
                        Ratio target = line.target().line().fraction().times(size);
                        assertThat(line.divisions().minus(target).abs().plus(Ratio.ONE))
                                .as("%s of %s g of %s on %s", line, size, formula, bench)
                                .isLessThanOrEqualTo(target.times(Ratio.of(percent, 100)));
                    }
                }
            }
        }
    }

    @Test
    void a_window_that_keeps_a_cap_keeps_it_whatever_the_closure() {
        Random r = new Random(11_007);
        int asked = 0;
        for (int run = 0; run < 200; run++) {
            Formula formula = formula(r);
            Bench bench = Bench.of(Balance.of("1 g", "500 kg")).closing(closure(r));
            Ratio share = formula.line("L1").fraction();
            Ratio cap = share.times(Ratio.of(101 + r.nextInt(40), 100));
            BatchWindow window = BatchWindow.of(
                    formula,
                    bench,
                    BatchConstraints.of(
                            Criterion.capKept(Substance.of("L1"), MassFraction.of(cap), WeighingMethod.TARE_EACH)));
            if (window instanceof BatchWindow.Feasible found) {
                asked++;
                for (int k = 0; k < 20; k++) {
                    Ratio size = found.lowerEnd()
                            .mass()
                            .canonical()
                            .plus(k == 0 ? Ratio.ZERO : Ratio.of(r.nextInt(2_000), 10));
                    Ratio most = Ratio.ZERO;
                    Ratio whole = Ratio.ZERO;
                    for (PlannedLine line : plan(formula, size, bench).lines()) {
                        Ratio read = line.reading().in(FormulationUnits.GRAM);
                        boolean counted = line.name().equals("L1");
                        most = counted ? read.plus(Ratio.ONE) : most;
                        whole = whole.plus(
                                counted
                                        ? read.plus(Ratio.ONE)
                                        : read.minus(Ratio.ONE).max(Ratio.ZERO));
                    }
                    assertThat(most.dividedBy(whole))
                            .as("L1 of %s g of %s on %s", size, formula, bench)
                            .isLessThanOrEqualTo(cap);
                }
            }
        }
        assertThat(asked).isGreaterThan(50);
    }
}
