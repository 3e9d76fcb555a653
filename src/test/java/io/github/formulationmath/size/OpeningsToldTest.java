package io.github.formulationmath.size;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Closure;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.support.Formulas;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Vessel;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What opens a window, in words and at the edge where it is told no more. */
class OpeningsToldTest {

    private static final Formula BALM = Formulas.balm("balm");

    private static BatchWindow.Empty empty(Formula formula, Bench bench, BatchConstraints constraints) {
        return (BatchWindow.Empty) BatchWindow.of(formula, bench, constraints);
    }

    /** 700/3 is 233.33…: what has to be at least so much is told as more, what may be at most so much as less. */
    @Test
    void a_figure_told_in_few_digits_opens_the_window_still() {
        Ratio third = Ratio.of(700, 3);
        WindowOpening capacity = new WindowOpening.HigherCapacity(Amount.grams(third));
        WindowOpening stock = new WindowOpening.MoreStock("Wax", Amount.grams(third));
        assertThat(capacity).hasToString("a balance that carries at least 233.4 g");
        assertThat(new WindowOpening.LighterVessel(Amount.grams(third))).hasToString("a vessel of at most 233.3 g");
        assertThat(new WindowOpening.LargerVessel(Amount.of(third, FormulationUnits.MILLILITRE)))
                .hasToString("a vessel with a working volume of at least 233.4 mL");
        assertThat(stock).hasToString("at least 233.4 g of Wax");
        assertThat(new WindowOpening.FinerBalance(Amount.mass("0.05 g"))).hasToString("a balance with d = 0.05 g");
        assertThat(new WindowOpening.Together(List.of(capacity, stock)))
                .hasToString("all of: a balance that carries at least 233.4 g; at least 233.4 g of Wax");
        assertThat(new WindowOpening.PreDilute(
                        List.of(new WindowOpening.Dilution(BALM.line("Tocopherol"), Ratio.of(8))), BALM.line("Oil")))
                .hasToString("pre-diluting in Oil: Tocopherol 8 times");
    }

    /** 0.5 % on 1 g needs 200 g, which a balance of 200 g carries without a vessel; one of 201 g leaves it 1 g. */
    @Test
    void a_vessel_of_no_mass_at_all_is_not_asked_for() {
        BatchConstraints oneDivision = BatchConstraints.of(Criterion.oneDivision());
        Vessel jar = Vessel.of("jar", "50 g");
        assertThat(empty(BALM, Bench.of(Balance.of("1 g", "200 g")).with(jar), oneDivision)
                        .openings())
                .contains(new WindowOpening.HigherCapacity(Amount.mass("250 g")))
                .noneMatch(WindowOpening.LighterVessel.class::isInstance);
        assertThat(empty(BALM, Bench.of(Balance.of("1 g", "201 g")).with(jar), oneDivision)
                        .openings())
                .contains(new WindowOpening.LighterVessel(Amount.mass("1 g")));
    }

    /** Halves of 15 g are 7.5 g each: the display shows 8 and 8, one gram more than the balance carries. */
    @Test
    void a_batch_whose_readings_are_too_much_does_not_fit() {
        Formula halves =
                Formula.inPercent("halves").line("A", "50 %").line("B", "50 %").build();
        BatchConstraints wish = BatchConstraints.of(Criterion.oneDivision()).withLeastSize("15 g");
        Bench bench = Bench.of(Balance.of("1 g", "15 g")).closing(Closure.INDEPENDENT);
        BatchWindow.Empty none = empty(halves, bench, wish);
        assertThat(none.smallestNeeded().orElseThrow().mass()).isEqualTo(Amount.mass("15 g"));
        assertThat(none.openings()).contains(new WindowOpening.HigherCapacity(Amount.mass("16 g")));
        assertThat(BatchWindow.of(halves, bench.closing(Closure.CLOSED), wish))
                .isInstanceOf(BatchWindow.Feasible.class);
    }

    /** Of the multiples of 70 g only 70 g fits 120 g; one division of 1 g is then 1/70, three times 0.5 % and not two. */
    @Test
    void where_no_line_binds_the_smallest_is_diluted() {
        BatchConstraints steps = BatchConstraints.of(Criterion.oneDivision()).inStepsOf("70 g");
        BatchWindow.Empty none = empty(BALM, Bench.of(Balance.of("1 g", "120 g")), steps);
        assertThat(none.smallestNeeded().orElseThrow().bindingLine()).isEmpty();
        assertThat(none.openings())
                .contains(new WindowOpening.PreDilute(
                        List.of(new WindowOpening.Dilution(BALM.line("Tocopherol"), Ratio.of(3))), BALM.line("Oil")));
    }

    @Test
    void a_bench_that_allows_nothing_says_so() {
        Bench full = Bench.of(Balance.of("1 g", "500 g")).with(Vessel.of("crock", "500 g"));
        BatchWindow.Empty none = empty(BALM, full, BatchConstraints.of(Criterion.oneDivision()));
        assertThat(none.largestAllowed().toString()).startsWith("0 g (");
    }
}
