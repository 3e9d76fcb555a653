package io.github.formulationmath.plan;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.support.RandomFormulas;
import io.github.formulationmath.support.WorkingAssertions;
import io.github.formulationmath.weighing.Balance;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import javax.measure.quantity.Mass;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Size;

/** Laws that hold for every formula, batch and display. */
class PlanPropertiesTest {

    private static Amount<Mass> milligrams(long number) {
        return Amount.grams(Ratio.of(number, 1000));
    }

    private static Balance balance(long step) {
        return Balance.of(milligrams(step), milligrams(Long.MAX_VALUE / 2));
    }

    private static Batch batch(Formula formula, long milligrams) {
        return Batch.of(formula, BatchSize.ofMass(milligrams(milligrams)));
    }

    @Property
    void no_reading_is_further_off_than_the_closure_allows(
            @ForAll @Size(min = 1, max = 12) List<@IntRange(min = 1, max = 99_999) Integer> parts,
            @ForAll @LongRange(min = 1, max = 10_000_000) long mass,
            @ForAll @LongRange(min = 1, max = 1_000) long step) {
        Batch batch = batch(RandomFormulas.formula(parts), mass);
        Ratio d = Ratio.of(step, 1000);
        for (PlannedLine line : WeighingPlan.of(batch, balance(step)).lines()) {
            Ratio error = line.reading()
                    .canonical()
                    .minus(line.target().mass().canonical())
                    .abs();
            assertThat(error).isLessThanOrEqualTo(d.dividedBy(2));
        }
        WeighingPlan closed = WeighingPlan.of(batch, Bench.of(balance(step)).closing(Closure.CLOSED));
        for (PlannedLine line : closed.lines()) {
            Ratio error = line.reading()
                    .canonical()
                    .minus(line.target().mass().canonical())
                    .abs();
            assertThat(error).isLessThanOrEqualTo(d);
        }
        assertThat(closed.total().canonical().minus(batch.mass().canonical()).abs())
                .isLessThanOrEqualTo(d.dividedBy(2));
    }

    @Property
    void the_order_of_lines_changes_no_reading_of_a_line_by_itself(
            @ForAll @Size(min = 2, max = 10) List<@IntRange(min = 1, max = 99_999) Integer> parts,
            @ForAll @LongRange(min = 1, max = 10_000_000) long mass) {
        List<Integer> reversed = new ArrayList<>(parts);
        Collections.reverse(reversed);
        List<Ratio> forwards = divisions(parts, mass);
        List<Ratio> backwards = new ArrayList<>(divisions(reversed, mass));
        Collections.reverse(backwards);
        assertThat(backwards).isEqualTo(forwards);
    }

    private static List<Ratio> divisions(List<Integer> parts, long mass) {
        return WeighingPlan.of(batch(RandomFormulas.formula(parts), mass), balance(100)).lines().stream()
                .map(PlannedLine::divisions)
                .toList();
    }

    @Property(tries = 100)
    void every_working_checks_itself(
            @ForAll @Size(min = 1, max = 5) List<@IntRange(min = 1, max = 999) Integer> parts,
            @ForAll @LongRange(min = 1, max = 1_000_000) long mass,
            @ForAll Closure closure) {
        Closure usable = closure == Closure.QS_TAKES_REST ? Closure.CLOSED : closure;
        WeighingPlan plan = WeighingPlan.of(
                batch(RandomFormulas.formula(parts), mass),
                Bench.of(balance(100)).closing(usable));
        WorkingAssertions.assertSelfChecking(plan.total());
        for (PlannedLine line : plan.lines()) {
            WorkingAssertions.assertSelfChecking(line);
            WorkingAssertions.assertSelfChecking(line.relativeRoundingError().working());
        }
    }
}
