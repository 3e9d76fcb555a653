package io.github.formulationmath.pot;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.support.CpuTime;
import io.github.formulationmath.support.ManyLines;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The bounds of made shares against their definition, worked out slowly: every indication half a step up or down, every
 * corner of all of them. Everything is counted in half steps of the display. And at sizes at which the slow way never ends.
 */
final class MadeSharesBySlowDefinitionTest {

    private static final Balance BALANCE = Balance.of("1 g", "1000 kg");

    /** Net masses in steps, by line; additions afterwards as line and steps; whether all was tared once. */
    record Pot(List<Integer> steps, List<int[]> later, boolean cumulative) {

        MadeBatch made() {
            Formula formula = ManyLines.formula(steps.size());
            WeighingPlan plan = WeighingPlan.of(Batch.of(formula, BatchSize.ofMass("1 kg")), BALANCE);
            List<Reading> readings = new ArrayList<>();
            int soFar = 0;
            for (int i = 0; i < steps.size(); i++) {
                soFar += steps.get(i);
                int shown = cumulative ? soFar : steps.get(i);
                readings.add(Reading.of(formula.lines().get(i), Amount.grams(Ratio.of(shown))));
            }
            WeighingMethod method = cumulative ? WeighingMethod.CUMULATIVE : WeighingMethod.TARE_EACH;
            MadeBatch made = MadeBatch.of(Readings.of(plan, method, readings));
            for (int[] addition : later) {
                made = made.plus(List.of(
                        LineAddition.of(formula.lines().get(addition[0]), Amount.grams(Ratio.of(addition[1])))));
            }
            return made;
        }

        /** For each line the indications that enter it: all signs of those of the readings, then those of the additions. */
        Bounds[] slowly() {
            int k = steps.size();
            int first = cumulative ? k + 1 : 2 * k;
            int all = first + 2 * later.size();
            Ratio[] low = new Ratio[k];
            Ratio[] high = new Ratio[k];
            for (int corner = 0; corner < 1 << all; corner++) {
                int[] halves = new int[k];
                for (int i = 0; i < k; i++) {
                    halves[i] = 2 * steps.get(i)
                            + (cumulative
                                    ? sign(corner, i + 1) - sign(corner, i)
                                    : sign(corner, 2 * i + 1) - sign(corner, 2 * i));
                }
                for (int j = 0; j < later.size(); j++) {
                    halves[later.get(j)[0]] +=
                            2 * later.get(j)[1] + sign(corner, first + 2 * j + 1) - sign(corner, first + 2 * j);
                }
                int sum = 0;
                for (int half : halves) {
                    sum += half;
                }
                for (int i = 0; i < k; i++) {
                    Ratio share = Ratio.of(halves[i], sum);
                    low[i] = low[i] == null ? share : low[i].min(share);
                    high[i] = high[i] == null ? share : high[i].max(share);
                }
            }
            Bounds[] bounds = new Bounds[k];
            for (int i = 0; i < k; i++) {
                bounds[i] = Bounds.closed(low[i], high[i]);
            }
            return bounds;
        }

        private static int sign(int corner, int indication) {
            return (corner >> indication & 1) == 0 ? -1 : 1;
        }
    }

    @Provide
    Arbitrary<Pot> pots() {
        return Arbitraries.integers()
                .between(2, 4)
                .flatMap(k -> Combinators.combine(
                                Arbitraries.integers().between(2, 40).list().ofSize(k),
                                Combinators.combine(
                                                Arbitraries.integers().between(0, k - 1),
                                                Arbitraries.integers().between(2, 40))
                                        .as((line, steps) -> new int[] {line, steps})
                                        .list()
                                        .ofMaxSize(2),
                                Arbitraries.of(true, false))
                        .as(Pot::new));
    }

    @Property(tries = 200)
    void shares_lie_exactly_between_their_extremes(@ForAll("pots") Pot pot) {
        MadeBatch made = pot.made();
        Bounds[] slowly = pot.slowly();
        for (MadeLine line : made.lines()) {
            assertThat(line.possibleShares()).isEqualTo(slowly[line.line().index()]);
        }
    }

    /** Tared before each line, the extremes have a closed form, at any number of lines: the box of 500 is gone. */
    @ParameterizedTest
    @ValueSource(ints = {3, 499, 500, 501, 1500})
    void tared_shares_have_their_closed_form(int lines) {
        List<Integer> steps = new ArrayList<>();
        long sum = 0;
        for (int i = 0; i < lines; i++) {
            steps.add(2 + i * 31 % 97);
            sum += steps.get(i);
        }
        MadeBatch made = new Pot(steps, List.of(), false).made();
        for (MadeLine line : made.lines()) {
            long own = steps.get(line.line().index());
            long others = sum - own;
            assertThat(line.possibleShares())
                    .isEqualTo(Bounds.closed(
                            Ratio.of(own - 1, own - 1 + others + lines - 1),
                            Ratio.of(own + 1, own + 1 + others - lines + 1)));
        }
    }

    /** Line by line over all lines, this took minutes at 1600 and would take hours here. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void a_check_of_many_lines_costs_as_much_as_the_lines(boolean cumulative) {
        List<Integer> steps = new ArrayList<>();
        for (int i = 0; i < 10_000; i++) {
            steps.add(2 + i * 31 % 97);
        }
        Pot pot = new Pot(steps, List.of(new int[] {17, 5}), cumulative);
        CpuTime.assertWithin(Duration.ofMinutes(1), () -> {
            List<LineCheck> checks = pot.made().check(Tolerances.of("5 %"));
            assertThat(checks).hasSize(10_000);
            assertThat(checks.stream().map(LineCheck::verdict).distinct()).hasSizeGreaterThan(1);
        });
    }

    @Test
    void a_line_left_out_has_no_share_and_hides_nothing() {
        MadeBatch made = MadeBatch.of(Readings.of(
                Lotion.PLAN,
                WeighingMethod.TARE_EACH,
                List.of(
                        Reading.of(Lotion.line("Aqua"), "316 g"),
                        Reading.of(Lotion.line("Glycerin"), "12 g"),
                        Reading.of(Lotion.line("Avena Sativa Kernel Oil"), "48 g"),
                        Reading.of(Lotion.line("Glyceryl Stearate SE"), "20 g"),
                        Reading.leftOut(Lotion.line("Preservative blend")))));
        assertThat(made.line("Preservative blend").possibleShares()).isEqualTo(Bounds.point(Ratio.ZERO));
    }
}
