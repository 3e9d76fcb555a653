package io.github.formulationmath.pot;

import static io.github.formulationmath.pot.Lotion.g;
import static io.github.formulationmath.pot.Lotion.line;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.ToleranceVerdict;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.support.WorkingAssertions;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

final class MadeBatchTest {

    private static final Instant NOON = Instant.parse("2026-11-25T12:00:00Z");

    @Test
    void tared_readings_are_the_masses() {
        MadeBatch made = Lotion.made("316.0", "12.3", "48.0", "20.0", "4.0");
        assertThat(made.mass()).isEqualTo(g("400.3"));
        MadeLine glycerin = made.line("Glycerin");
        assertThat(glycerin.mass()).isEqualTo(g("12.3"));
        assertThat(made.line(glycerin.line().phase(), "Glycerin")).isSameAs(glycerin);
        assertThat(glycerin.share().fraction()).isEqualTo(Ratio.of(123, 4003));
        assertThat(glycerin.deviation()).isEqualTo(g("0.3"));
        assertThat(made.lines().stream().map(MadeLine::grams).reduce(Ratio.ZERO, Ratio::plus))
                .isEqualTo(made.grams());
        made.lines().forEach(WorkingAssertions::assertSelfChecking);
        WorkingAssertions.assertSelfChecking(made);
        WorkingAssertions.assertSelfChecking(glycerin.share().working());
        WorkingAssertions.assertSelfChecking(glycerin.deviation().working());
    }

    @Test
    void cumulative_readings_are_subtracted() {
        Readings readings =
                Lotion.readings(Lotion.PLAN, WeighingMethod.CUMULATIVE, "316.0", "328.3", "376.3", "396.3", "400.3");
        MadeBatch made = MadeBatch.of(readings);
        MadeBatch tared = Lotion.made("316.0", "12.3", "48.0", "20.0", "4.0");
        for (int i = 0; i < 5; i++) {
            assertThat(made.lines().get(i).mass())
                    .isEqualTo(tared.lines().get(i).mass());
        }
        WorkingAssertions.assertSelfChecking(made);
        // An addition between two readings hides half a step at either end; so does one that was tared.
        assertThat(made.line("Glycerin").bounds()).isEqualTo(Bounds.closed(Ratio.parse("12.2"), Ratio.parse("12.4")));
    }

    /** 10.0 + 30.0 g on 0.1 g, each tared: worked by hand as 9.9/(9.9 + 30.1) and 10.1/(10.1 + 29.9). */
    @Test
    void shares_lie_between_their_true_extremes() {
        MadeBatch made = Lotion.made("30.0", "10.0", "0.0", "0.0", "0.0");
        Bounds bounds = made.line("Glycerin").possibleShares();
        // The three lines read as 0 may hold up to 0.1 g each.
        assertThat(bounds).isEqualTo(Bounds.closed(Ratio.of(99, 403), Ratio.of(101, 400)));
    }

    @Test
    void a_line_left_out_is_exactly_nothing() {
        MadeBatch made = MadeBatch.of(Readings.of(
                Lotion.PLAN,
                WeighingMethod.TARE_EACH,
                List.of(
                        Reading.of(line("Aqua"), "30.0 g"),
                        Reading.of(line("Glycerin"), "10.0 g"),
                        Reading.leftOut(line("Avena Sativa Kernel Oil")),
                        Reading.leftOut(line("Glyceryl Stearate SE")),
                        Reading.leftOut(line("Preservative blend")))));
        assertThat(made.line("Glycerin").possibleShares())
                .isEqualTo(Bounds.closed(Ratio.of(99, 400), Ratio.of(101, 400)));
        assertThat(made.line("Preservative blend").check(Tolerances.of("5 %")).verdict())
                .isEqualTo(ToleranceVerdict.OUTSIDE);
        assertThat(made.asFormula().lines()).hasSize(2);
    }

    @Test
    void a_missing_reading_is_known_to_be_missing() {
        List<Reading> some = new ArrayList<>(
                Lotion.tared("316.0", "12.0", "48.0", "20.0", "4.0").taken());
        some.remove(1);
        Readings readings = Readings.of(Lotion.PLAN, WeighingMethod.TARE_EACH, some);
        assertThat(readings.missing()).containsExactly(line("Glycerin"));
        MadeBatch made = MadeBatch.of(readings);
        MadeLine glycerin = made.line("Glycerin");
        assertThat(glycerin.isAssumed()).isTrue();
        assertThat(glycerin.mass()).isEqualTo(g("12"));
        assertThat(glycerin.check(Tolerances.of("5 %")).verdict()).isEqualTo(ToleranceVerdict.NOT_KNOWN);
        // Anything up to the capacity may have gone in, so no other line is sure to be within either.
        assertThat(made.line("Aqua").check(Tolerances.of("5 %")).verdict()).isEqualTo(ToleranceVerdict.WITHIN_AS_READ);
        assertThat(made.line("Aqua").possibleShares().contains(Ratio.parse("0.2")))
                .isTrue();
        WorkingAssertions.assertSelfChecking(made);
    }

    @Test
    void cumulative_readings_bound_what_is_missing_between_them() {
        Readings readings = Readings.of(
                Lotion.PLAN,
                WeighingMethod.CUMULATIVE,
                List.of(
                        Reading.of(line("Aqua"), "316.0 g"),
                        Reading.notWrittenDown(line("Glycerin")),
                        Reading.of(line("Avena Sativa Kernel Oil"), "376.0 g"),
                        Reading.of(line("Glyceryl Stearate SE"), "396.0 g"),
                        Reading.leftOut(line("Preservative blend"))));
        MadeBatch made = MadeBatch.of(readings);
        assertThat(made.mass()).isEqualTo(g("396"));
        assertThat(made.line("Glycerin").mass()).isEqualTo(g("12"));
        assertThat(made.line("Avena Sativa Kernel Oil").isAssumed()).isTrue();
        assertThat(made.line("Glycerin").bounds()).isEqualTo(Bounds.closed(Ratio.ZERO, Ratio.parse("60.1")));
        WorkingAssertions.assertSelfChecking(made);
    }

    @Test
    void verdicts_say_how_sure_they_are() {
        // 12.0 g of 400 g are 3 %; one step of 0.1 g is 0.83 % of the line.
        assertThat(verdict("12.0", "5 %")).isEqualTo(ToleranceVerdict.WITHIN);
        assertThat(verdict("12.6", "5 %")).isEqualTo(ToleranceVerdict.WITHIN_AS_READ);
        assertThat(verdict("12.7", "5 %")).isEqualTo(ToleranceVerdict.OUTSIDE_AS_READ);
        assertThat(verdict("13.5", "5 %")).isEqualTo(ToleranceVerdict.OUTSIDE);
        assertThat(ToleranceVerdict.WITHIN.asksForCorrection()).isFalse();
        assertThat(ToleranceVerdict.OUTSIDE_AS_READ.asksForCorrection()).isTrue();
    }

    private static ToleranceVerdict verdict(String glycerin, String tolerance) {
        LineCheck check = Lotion.made("316.0", glycerin, "48.0", "20.0", "4.0")
                .line("Glycerin")
                .check(Tolerances.of(tolerance));
        WorkingAssertions.assertSelfChecking(check);
        return check.verdict();
    }

    @Test
    void what_no_display_can_show_is_refused() {
        assertThatThrownBy(() -> Lotion.made("316.05", "12.0"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("316.05 g")
                .hasMessageContaining("316 g or 316.1 g");
        assertThatThrownBy(() -> Reading.of(line("Aqua"), "-0.1 g")).hasMessageContaining("-0.1 g");
        assertThatThrownBy(() -> Lotion.readings(
                        Lotion.PLAN, WeighingMethod.CUMULATIVE, "316.0", "315.9", "400.0", "400.0", "400.0"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("below the one before it (316 g)");
        assertThatThrownBy(() -> Lotion.made("1700.0", "100.0"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("overloads the balance by 14 g");
        assertThatThrownBy(() -> Lotion.readings(Lotion.PLAN, WeighingMethod.CUMULATIVE, "316.0"))
                .hasMessageContaining("no reading is given for Glycerin");
        assertThatThrownBy(() -> Lotion.made("0.0", "0.0", "0.0", "0.0", "0.0")).hasMessageContaining("add up to 0");
    }

    @Test
    void lines_are_read_once_and_in_order_of_time() {
        Reading water = Reading.of(line("Aqua"), "316.0 g").at(NOON);
        Reading oil = Reading.of(line("Avena Sativa Kernel Oil"), "48.0 g").at(NOON.minusSeconds(1));
        assertThatThrownBy(() -> Readings.of(Lotion.PLAN, WeighingMethod.TARE_EACH, List.of(water, oil)))
                .hasMessageContaining("11:59:59Z")
                .hasMessageContaining("before the one that precedes it");
        assertThatThrownBy(() -> Readings.of(Lotion.PLAN, WeighingMethod.TARE_EACH, List.of(water, water)))
                .hasMessageContaining("two readings are given for Aqua");
        assertThatThrownBy(() -> Readings.of(Lotion.PLAN, WeighingMethod.TARE_EACH, Collections.singletonList(null)))
                .isInstanceOf(NullPointerException.class);
    }

    @Test
    void another_balance_has_its_own_step_and_capacity() {
        Balance fine = Balance.of("0.01 g", "50 g").named("fine balance");
        Reading reading = Reading.of(line("Preservative blend"), "4.03 g").on(fine);
        Readings readings = Readings.of(Lotion.PLAN, WeighingMethod.TARE_EACH, List.of(reading));
        MadeLine made = MadeBatch.of(readings).line("Preservative blend");
        assertThat(made.massBounds()).isEqualTo(Interval.of(g("4.02"), g("4.04")));
        assertThatThrownBy(() -> Readings.of(
                        Lotion.PLAN,
                        WeighingMethod.FROM_BOAT,
                        List.of(Reading.of(line("Preservative blend"), "60 g").on(fine))))
                .hasMessageContaining("overloads");
    }
}
