package io.github.formulationmath.mend;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
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
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Lines read on different balances are added to in the steps of those balances: held against an enumeration in integers. */
final class MendingOnSeveralBalancesTest {

    /** The least of all: everything below is counted in tenths of a gram. */
    private static final int UNIT = 10;

    /** A line: parts asked for, tenths that were read, the step of its balance in tenths, what that balance carries. */
    record Line(int parts, int read, int step, int carries) {}

    /** Lines, tolerance in permille, room for more in tenths; the first line is on the bench. */
    record Mishap(List<Line> lines, int tolerance, int room) {

        int content() {
            return lines.stream().mapToInt(Line::read).sum();
        }

        MadeBatch made() {
            FormulaBuilder parts = Formula.inParts("random");
            for (int i = 0; i < lines.size(); i++) {
                parts.line("L" + i, Integer.toString(lines.get(i).parts));
            }
            Formula formula = parts.build();
            Balance bench = balance("bench", lines.get(0).step, content() + room);
            WeighingPlan plan = WeighingPlan.of(Batch.of(formula, BatchSize.ofMass("0.1 g")), bench);
            List<Reading> readings = new ArrayList<>();
            for (int i = 0; i < lines.size(); i++) {
                Line line = lines.get(i);
                Reading reading = Reading.of(formula.lines().get(i), tenths(line.read));
                readings.add(i == 0 ? reading : reading.on(balance("pocket " + i, line.step, line.carries)));
            }
            return MadeBatch.of(Readings.of(plan, WeighingMethod.TARE_EACH, readings));
        }

        private static Balance balance(String name, int step, int capacity) {
            return Balance.of(tenths(step), tenths(capacity)).named(name);
        }

        CorrectionRules rules() {
            return CorrectionRules.within(Tolerances.of(MassFraction.of(Ratio.of(tolerance, 1000))));
        }

        /** The least total in tenths that brings all lines within, or -1: every vector of additions is looked at. */
        int enumerated() {
            for (int total = 0; total <= room; total++) {
                if (exists(0, total, content() + total)) {
                    return total;
                }
            }
            return -1;
        }

        private boolean exists(int i, int left, int content) {
            if (i == lines.size()) {
                return left == 0;
            }
            int most = i == 0 ? left : Math.min(left, lines.get(i).carries);
            for (int more = 0; more <= most; more += lines.get(i).step) {
                if (isWithin(lines.get(i), more, content) && exists(i + 1, left - more, content)) {
                    return true;
                }
            }
            return false;
        }

        private boolean isWithin(Line line, int more, int content) {
            int whole = lines.stream().mapToInt(Line::parts).sum();
            long off = Math.abs((long) (line.read + more) * whole - (long) line.parts * content);
            return off * 1000 <= (long) tolerance * line.parts * content;
        }
    }

    private static Amount<javax.measure.quantity.Mass> tenths(int number) {
        return Amount.grams(Ratio.of(number, UNIT));
    }

    @Provide
    Arbitrary<Mishap> mishaps() {
        Arbitrary<Integer> steps = Arbitraries.of(1, 2, 5, 10);
        Arbitrary<Line> line = Combinators.combine(
                        Arbitraries.integers().between(1, 9),
                        Arbitraries.integers().between(1, 12),
                        steps,
                        Arbitraries.integers().between(0, 5))
                .as((parts, times, step, more) -> new Line(parts, times * step, step, (times + more) * step));
        return Combinators.combine(
                        line.list().ofMinSize(2).ofMaxSize(4),
                        Arbitraries.integers().between(5, 200),
                        Arbitraries.integers().between(0, 40))
                .as(Mishap::new);
    }

    @Property(tries = 400)
    void additions_are_the_smallest_in_the_steps_of_each_balance(@ForAll("mishaps") Mishap mishap) {
        MadeBatch made = mishap.made();
        Correction correction = Correction.smallest(made, mishap.rules());
        DisplayedAdditions displayed = correction.onDisplay();
        int least = mishap.enumerated();
        Ratio total = displayed.total().exactValue().times(UNIT);
        switch (displayed.quality()) {
            case SMALLEST -> assertThat(total).isEqualTo(Ratio.of(least));
            case WITHIN ->
                assertThat(least).isNotNegative().isLessThanOrEqualTo((int)
                        total.toBigDecimal().longValueExact());
            case NONE_WITHIN -> assertThat(least).isNegative();
            case NOT_WITHIN -> assertThat(isWithin(displayed, mishap)).isFalse();
        }
        for (LineAddition addition : displayed.additions()) {
            Balance balance = addition.balance().orElse(made.plan().bench().balance());
            assertThat(balance)
                    .isEqualTo(made.lines().get(addition.line().index()).balance());
            assertThat(addition.mass().ratioTo(balance.readability()).isInteger())
                    .isTrue();
            assertThat(isCarried(addition) || !displayed.isWithin()).isTrue();
        }
    }

    private static boolean isWithin(DisplayedAdditions displayed, Mishap mishap) {
        boolean roomy = displayed.total().exactValue().times(UNIT).compareTo(Ratio.of(mishap.room())) <= 0;
        boolean carried = displayed.additions().stream().allMatch(MendingOnSeveralBalancesTest::isCarried);
        return roomy
                && carried
                && displayed.after().check(mishap.rules().tolerances()).stream()
                        .allMatch(check -> check.allowed().contains(check.line().share()));
    }

    private static boolean isCarried(LineAddition addition) {
        return addition.balance()
                .map(balance -> addition.mass().compareTo(balance.capacity()) <= 0)
                .orElse(true);
    }

    /** Where every step divides the next, nothing is left open without a cap. */
    @Property(tries = 400)
    void the_answer_is_certain_where_steps_divide_each_other(@ForAll("mishaps") Mishap mishap) {
        boolean divide = mishap.lines().stream()
                .allMatch(a -> mishap.lines().stream().allMatch(b -> a.step % b.step == 0 || b.step % a.step == 0));
        Correction correction = Correction.smallest(mishap.made(), mishap.rules());
        Set<DisplayedAdditions.Quality> certain =
                EnumSet.of(DisplayedAdditions.Quality.SMALLEST, DisplayedAdditions.Quality.NONE_WITHIN);
        if (divide && correction.outcome() == Correction.Outcome.MENDED) {
            assertThat(certain).contains(correction.onDisplay().quality());
        }
    }
}
