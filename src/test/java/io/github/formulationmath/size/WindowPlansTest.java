package io.github.formulationmath.size;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.oracle.BatchOracle;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Closure;
import io.github.formulationmath.plan.OverfillException;
import io.github.formulationmath.plan.OverloadException;
import io.github.formulationmath.plan.PlannedLine;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.support.RandomBenches;
import io.github.formulationmath.support.RandomFormulas;
import io.github.formulationmath.weighing.Balance;
import java.util.Arrays;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;

/** What a window says can be made is made: planned on the bench it was asked for, and within what was asked. */
class WindowPlansTest {

    private static Amount<Mass> grams(Ratio grams) {
        return Amount.grams(grams);
    }

    private static WeighingPlan plan(Formula formula, Ratio size, Bench bench) {
        return WeighingPlan.of(Batch.of(formula, BatchSize.ofMass(grams(size))), bench);
    }

    private static boolean canBePlanned(Formula formula, Ratio size, Bench bench) {
        try {
            plan(formula, size, bench);
            return true;
        } catch (OverloadException | OverfillException e) {
            return false;
        }
    }

    /** One division is enough: every larger size is good too, so only the bench can end the window. */
    @Test
    void both_ends_of_a_window_can_be_planned_and_the_next_size_up_can_not() {
        RandomFormulas random = new RandomFormulas(1111);
        int open = 0;
        for (int run = 0; run < 300; run++) {
            Formula formula = RandomFormulas.formula(random.parts(30));
            Bench bench = RandomBenches.next(random);
            Ratio step = random.below(2) == 0 ? Ratio.ONE : Ratio.of(1 + random.below(9), 1 + random.below(4));
            BatchConstraints constraints = BatchConstraints.of(Criterion.oneDivision());
            BatchWindow window = BatchWindow.of(
                    formula, bench, step.equals(Ratio.ONE) ? constraints : constraints.inStepsOf(step + " g"));
            if (window instanceof BatchWindow.Feasible found) {
                open++;
                Ratio high = found.upperEnd().mass().canonical();
                assertThat(canBePlanned(formula, found.lowerEnd().mass().canonical(), bench))
                        .isTrue();
                assertThat(canBePlanned(formula, high, bench)).isTrue();
                Ratio next = high.dividedBy(step).floor().plus(Ratio.ONE).times(step);
                assertThat(canBePlanned(formula, next, bench))
                        .as("%s after %s on %s", next, found, bench)
                        .isFalse();
                found.lowerEnd().working().check();
                found.upperEnd().working().check();
            }
        }
        assertThat(open).isGreaterThan(150);
    }

    /** Whole sizes, all of them: the window has those that some readings of the oracle pass, and shows such readings. */
    @Test
    void a_size_is_called_good_if_and_only_if_its_plan_shows_every_line_within_tolerance() {
        RandomFormulas random = new RandomFormulas(1113);
        int good = 0;
        for (int run = 0; run < 80; run++) {
            long[] parts = random.parts(20);
            long whole = Arrays.stream(parts).sum();
            long percent = 3 + random.below(30);
            Formula formula = RandomFormulas.formula(parts);
            BatchOracle oracle = new BatchOracle(parts, percent, 100);
            Tolerances tolerances = Tolerances.of(percent + " %");
            Criterion made = Criterion.madeWithin(tolerances);
            int most = 30 + random.below(90);
            Bench bench = Bench.of(Balance.of("1 g", most + " g"));
            if (!(BatchWindow.of(formula, bench, made) instanceof BatchWindow.Feasible window)) {
                continue;
            }
            int highest = (int) window.upperEnd().mass().canonical().floor().toLongExact();
            for (int total = 1; total <= highest; total++) {
                boolean contained = window.contains(total + " g");
                assertThat(contained).isEqualTo(oracle.madePasses(total, 0, 1));
                WeighingPlan plan = plan(
                        formula,
                        Ratio.of(total),
                        made.showing(Bench.of(Balance.of("1 g", "1 kg"))).orElseThrow());
                assertThat(within(plan, parts, whole, percent, total)).isEqualTo(contained);
                if (contained) {
                    good++;
                    assertThat(window.plan(total + " g").lines()).hasSameSizeAs(plan.lines());
                    assertThat(within(window.plan(total + " g"), parts, whole, percent, total))
                            .isTrue();
                }
            }
        }
        assertThat(good).isGreaterThan(300);
    }

    private static boolean within(WeighingPlan plan, long[] parts, long whole, long percent, long total) {
        long sum = 0;
        boolean all = true;
        for (int i = 0; i < parts.length; i++) {
            long n = plan.lines().get(i).divisions().toLongExact();
            sum += n;
            all &= Math.abs(n * whole - parts[i] * total) * 100 <= percent * parts[i] * total;
        }
        return all && sum == total;
    }

    /** The smallest batch shows itself too, whatever the tolerances of the lines and the error of a reading. */
    @Test
    void the_plan_of_the_smallest_batch_has_its_readings() {
        RandomFormulas random = new RandomFormulas(1114);
        for (int run = 0; run < 100; run++) {
            Formula formula = RandomFormulas.formula(random.parts(20));
            Tolerances tolerances =
                    Tolerances.of((5 + random.below(20)) + " %").withLine("material 1", (5 + random.below(20)) + " %");
            Amount<Mass> error = Amount.mass("0.0" + random.below(9) + " g");
            MinimumBatch.Found found = (MinimumBatch.Found)
                    MinimumBatch.of(formula, Balance.of("0.1 g", "100 kg"), Criterion.madeWithin(tolerances, error));
            WeighingPlan plan = found.plan();
            assertThat(plan.lines().stream().map(PlannedLine::reading)).isEqualTo(found.readings());
            assertThat(plan.closes()).isTrue();
            found.working().check();
        }
    }

    /** q.s. of half a division: the others, rounded up, pass the batch, and there is no plan. */
    @Test
    void a_rest_that_the_other_lines_leave_nothing_for_is_no_size_of_a_window() {
        Formula formula = Formula.inPercent("toner")
                .line("a", "33.2 %")
                .line("b", "33.2 %")
                .line("c", "33.2 %")
                .quantitySufficient("Aqua")
                .build();
        Bench bench = Bench.of(Balance.of("1 g", "200 g")).closing(Closure.QS_TAKES_REST);
        BatchWindow.Feasible window =
                (BatchWindow.Feasible) BatchWindow.of(formula, bench, Criterion.roundingWithin(Tolerances.of("99 %")));
        int refused = 0;
        for (int half = 2; half <= 400; half++) {
            Ratio size = Ratio.of(half, 2);
            boolean contained = window.contains(grams(size));
            refused += contained ? 0 : 1;
            if (contained) {
                assertThat(plan(formula, size, bench).lines()).hasSize(4);
            }
        }
        assertThat(refused).isGreaterThan(0);
        window.lowerEnd().working().check();
        assertThatThrownBy(() -> BatchWindow.of(RandomFormulas.formula(1, 2), bench, Criterion.oneDivision()))
                .hasMessageContaining("is q.s.");
    }

    @Test
    void a_plan_outside_the_window_is_refused_with_a_size_that_is_not() {
        Criterion made = Criterion.madeWithin(Tolerances.of("20 %"));
        Formula formula = RandomFormulas.formula(47, 37, 51);
        BatchWindow.Feasible window = (BatchWindow.Feasible) BatchWindow.of(formula, Balance.of("1 g", "60 g"), made);
        assertThat(window.plan("9 g").lines().stream().map(PlannedLine::reading))
                .containsExactly(Amount.mass("3 g"), Amount.mass("2 g"), Amount.mass("4 g"));
        assertThatThrownBy(() -> window.plan("8.9 g"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("9 g for example");
        assertThatThrownBy(() -> BatchConstraints.of(made, Criterion.madeWithin(Tolerances.of("10 %"))))
                .hasMessageContaining("tighter");
    }
}
