package io.github.formulationmath.size;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Closure;
import io.github.formulationmath.plan.PlannedLine;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.support.Formulas;
import io.github.formulationmath.support.WorkingAssertions;
import io.github.formulationmath.weighing.Balance;
import java.util.Random;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;

/** No plan of a window asks the display for more of an ingredient than there is, whatever becomes of the rounding difference. */
class StockOfReadingsTest {

    private static Ratio read(WeighingPlan plan, String name) {
        Ratio sum = Ratio.ZERO;
        for (PlannedLine line : plan.lines()) {
            if (line.target().line().isNamed(name)) {
                sum = sum.plus(line.reading().in(FormulationUnits.GRAM));
            }
        }
        return sum;
    }

    /** Tenths of a percent, the ingredient "Wax" on one line or two, "Aqua" q.s. */
    private static Formula formula(Random r, int lines) {
        FormulaBuilder builder = Formula.inPercent("Trial").phase("a").quantitySufficient("Aqua");
        int left = 1000;
        for (int i = 1; i < lines; i++) {
            int tenths = 10 + r.nextInt(Math.max(1, left / lines));
            left -= tenths;
            if (i == lines - 1) {
                builder.phase("b");
            }
            builder.line(
                    i == 1 || (i == lines - 1 && r.nextBoolean()) ? "Wax" : "L" + i,
                    tenths / 10 + "." + tenths % 10 + " %");
        }
        return builder.build();
    }

    @Test
    void no_reading_of_a_window_needs_more_than_the_stock() {
        Random r = new Random(11_003);
        int bound = 0;
        for (int run = 0; run < 400; run++) {
            Formula formula = formula(r, 3 + r.nextInt(8));
            String name = r.nextInt(3) == 0 ? "Aqua" : "Wax";
            Closure closure = Closure.values()[r.nextInt(Closure.values().length)];
            Bench bench = Bench.of(Balance.of("1 g", "5 kg")).closing(closure);
            Amount<Mass> stock =
                    Amount.grams(Ratio.of(40 + r.nextInt(r.nextBoolean() ? 300 : 3000), 1 + r.nextInt(10)));
            Criterion criterion = switch (r.nextInt(3)) {
                case 0 -> Criterion.madeWithin(Tolerances.of("30 %"));
                case 1 -> Criterion.roundingWithin(Tolerances.of("30 %"));
                default -> Criterion.oneDivision();
            };
            BatchWindow window = BatchWindow.of(
                    formula, bench, BatchConstraints.of(criterion).withStock(name, stock));
            if (!(window instanceof BatchWindow.Feasible found)) {
                for (WindowOpening opening : ((BatchWindow.Empty) window).openings()) {
                    assertThat(opening.toString()).isNotBlank();
                }
                continue;
            }
            found.upperEnd().working().check();
            bound += found.upperEnd().boundBy().key().equals("ceiling.stock") ? 1 : 0;
            Ratio low = found.lowerEnd().mass().canonical();
            Ratio span = found.upperEnd().mass().canonical().minus(low);
            for (int part = 0; part <= 12; part++) {
                Ratio size = part == 12 ? low.plus(span) : low.plus(span.times(Ratio.of(r.nextInt(1000), 1000)));
                if (part != 12 && part % 2 == 0) {
                    size = found.nearest(Amount.grams(size)).orElseThrow().in(FormulationUnits.GRAM);
                }
                if (found.contains(Amount.grams(size))) {
                    Ratio there = stock.in(FormulationUnits.GRAM);
                    assertThat(read(found.plan(Amount.grams(size)), name))
                            .as("%s of %s at %s g in %s", name, stock, size, found)
                            .isLessThanOrEqualTo(there);
                    assertThat(read(
                                    WeighingPlan.of(Batch.of(formula, BatchSize.ofMass(Amount.grams(size))), bench),
                                    name))
                            .as("%s of %s at %s g on %s", name, stock, size, bench)
                            .isLessThanOrEqualTo(there);
                } else {
                    assertThat(part).as("the largest is in its own window").isNotEqualTo(12);
                }
            }
        }
        assertThat(bound).as("windows that the stock ends").isGreaterThan(150);
    }

    /** Both ways: a stock that the display can show to the last division is used up, where each line is rounded by itself. */
    @Test
    void a_stock_of_whole_divisions_is_used_up() {
        Random r = new Random(11_004);
        for (int run = 0; run < 200; run++) {
            Formula formula = Formula.inPercent("Trial")
                    .quantitySufficient("Aqua")
                    .line("Wax", (1 + r.nextInt(40)) + "." + r.nextInt(10) + " %")
                    .line("Oil", (1 + r.nextInt(40)) + "." + r.nextInt(10) + " %")
                    .build();
            int stock = 500 + r.nextInt(5_000);
            Closure closure = r.nextBoolean() ? Closure.INDEPENDENT : Closure.CLOSED;
            BatchWindow window = BatchWindow.of(
                    formula,
                    Bench.of(Balance.of("1 g", "9000 kg")).closing(closure),
                    BatchConstraints.of(Criterion.oneDivision()).withStock("Wax", stock + " g"));
            assertThat(window.largest().orElseThrow().mass().canonical())
                    .isEqualTo(Ratio.of(stock).dividedBy(formula.line("Wax").fraction()));
        }
    }

    /** A fifth of 175 g is 35 g; beyond it a reading may be 36 g, and there are 35.5 g. In 177.5 g all of it would go. */
    @Test
    void a_stock_between_two_divisions_ends_the_window_at_the_lower_one() {
        BatchConstraints stock = BatchConstraints.of(Criterion.oneDivision()).withStock("Wax", "35.5 g");
        BatchWindow.Feasible window = (BatchWindow.Feasible)
                BatchWindow.of(Formulas.oilAndWax("balm"), Bench.of(Balance.of("1 g", "2 kg")), stock);
        assertThat(window.upperEnd().mass()).isEqualTo(Amount.mass("175 g"));
        WorkingAssertions.assertSelfChecking(window.upperEnd());
    }
}
