package io.github.formulationmath.choice;

import static io.github.formulationmath.support.DilutedCream.BALANCE;
import static io.github.formulationmath.support.DilutedCream.CREAM;
import static io.github.formulationmath.support.DilutedCream.diluted;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.oracle.Rational;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.PlannedLine;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.support.HandWeighed;
import io.github.formulationmath.support.Made;
import io.github.formulationmath.weighing.Addition;
import io.github.formulationmath.weighing.MadeMasses;
import io.github.formulationmath.weighing.Weighed;
import io.github.formulationmath.weighing.WeighingMethod;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** A line too small to weigh, planned as a stock: what is weighed, what it may come to, and what is left to read. */
class DilutedBatchTest {

    /** The step of the balance and its largest error of a net reading, in tenths of a gram. */
    private static final int STEP = 1;

    @Test
    void one_step_where_it_is_less_than_the_batch_and_two_where_it_would_be_more() {
        StockMixture one = diluted("500 g", "10 %").stocks().get(0);
        assertThat(one.factors()).containsExactly(Ratio.of(21));
        assertThat(one).hasToString("2.1 g Colour and 42 g Aqua make Colour 1 in 21");
        StockMixture two = diluted("100 g", "10 %").stocks().get(0);
        assertThat(two.factors()).containsExactly(Ratio.of(12), Ratio.of(13));
        assertThat(two.parts()).isEqualTo(Ratio.of(156));
        // 3.2 + 35.2 g, and 38.4 g more; the 3.2 g of the second step come from the first.
        assertThat(two.weighed()).hasToString("76.8 g");
    }

    @Test
    void what_is_weighed_then_holds_what_the_formula_says() {
        DilutedBatch diluted = diluted("100 g", "10 %");
        assertThat(diluted.batch().formula().lines()).hasSize(4);
        assertThat(diluted.batch().formula().composition())
                .hasToString("[Aqua 82.98 %, Glycerin 5 %, Oil 12 %, Colour 0.02 %]");
        assertThat(diluted.batch().mass()).isEqualTo(diluted.asWritten().mass());
        assertThat(diluted.batch().line("Colour 1 in 156").mass()).hasToString("3.12 g");
        assertThat(diluted.batch().line("Aqua").mass()).hasToString("79.88 g");
    }

    @Test
    void what_is_taken_already_is_not_taken_again() {
        DilutedBatch diluted = diluted("500 g", "10 %");
        assertThatThrownBy(
                        () -> diluted.diluting(CREAM.line("Colour"), CREAM.line("Oil"), BALANCE, Tolerances.of("10 %")))
                .hasMessageContaining("take other lines");
        assertThatThrownBy(
                        () -> diluted.diluting(CREAM.line("Oil"), CREAM.line("Colour"), BALANCE, Tolerances.of("10 %")))
                .hasMessageContaining("take other lines");
        assertThatThrownBy(
                        () -> diluted.diluting(CREAM.line("Oil"), CREAM.line("Aqua"), BALANCE, Tolerances.of("10 %")))
                .hasMessageContaining("no dilution helps");
        assertThatThrownBy(() -> diluted.made(
                        diluted.expected(WeighingPlan.of(diluted.batch(), BALANCE), WeighingMethod.TARE_EACH),
                        List.of()))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** In tenths of a gram, every error within a step: taring and reading hide half a step each. */
    @Test
    void whatever_the_errors_of_all_weighings_what_is_made_lies_inside_its_bounds() {
        int plans = 12 * Math.max(1, Integer.getInteger("formulationmath.cases", 1));
        SplittableRandom r = new SplittableRandom(83);
        for (int k = 0; k < plans; k++) {
            String mass = r.nextInt(60, 900) + " g";
            int tolerance = r.nextInt(5, 30);
            DilutedBatch diluted = diluted(mass, tolerance + " %");
            WeighingPlan plan = WeighingPlan.of(diluted.batch(), Bench.of(BALANCE));
            StockMixture stock = diluted.stocks().get(0);
            Weighed expected = diluted.expected(plan, WeighingMethod.TARE_EACH);
            Weighed made = made(diluted, plan);
            assertThat(Made.shareBounds(made.masses(), 3)).isEqualTo(Made.shareBounds(expected.masses(), 3));
            for (int trial = 0; trial < 400; trial++) {
                Rational strength = Rational.of(1, 1);
                for (WeighingPlan step : stock.steps()) {
                    Rational begin = drawn(r, step.lines().get(0));
                    strength = strength.multiply(
                            begin.divide(begin.add(drawn(r, step.lines().get(1)))));
                }
                Rational aliquot = drawn(r, plan.lines().get(3));
                Rational aqua = drawn(r, plan.lines().get(0));
                Rational total = aqua.add(aliquot)
                        .add(drawn(r, plan.lines().get(1)))
                        .add(drawn(r, plan.lines().get(2)));
                Rational colour = aliquot.multiply(strength);
                Rational carrier = aqua.add(aliquot).subtract(colour);
                requireInside(
                        colour.divide(total),
                        Made.shareBounds(expected.masses(), 3).lower().orElseThrow(),
                        Made.shareBounds(expected.masses(), 3).upper().orElseThrow());
                requireInside(
                        carrier.divide(total),
                        Made.shareBounds(expected.masses(), 0).lower().orElseThrow(),
                        Made.shareBounds(expected.masses(), 0).upper().orElseThrow());
                // What is delivered keeps the tolerance that was asked for.
                Rational exact = Rational.of(Integer.parseInt(mass.replace(" g", "")) * 2L, 10_000);
                Rational off = colour.subtract(exact);
                Rational allowed = exact.multiply(Rational.of(tolerance, 100));
                assertThat(off.compare(allowed)).as(mass).isLessThanOrEqualTo(0);
                assertThat(Rational.of(0, 1).subtract(off).compare(allowed))
                        .as(mass)
                        .isLessThanOrEqualTo(0);
            }
        }
    }

    /** Everything read as planned. */
    private static Weighed made(DilutedBatch diluted, WeighingPlan plan) {
        List<List<Weighed>> steps = new ArrayList<>();
        for (StockMixture stock : diluted.stocks()) {
            List<Weighed> own = new ArrayList<>();
            stock.steps().forEach(step -> own.add(read(step)));
            steps.add(own);
        }
        return diluted.made(read(plan), steps);
    }

    private static Weighed read(WeighingPlan plan) {
        return new HandWeighed(
                plan.formula(),
                MadeMasses.of(plan.lines().stream()
                        .map(line -> Addition.of(line.line(), line.target().mass(), line.reading(), BALANCE)
                                .by(WeighingMethod.TARE_EACH))
                        .toList()));
    }

    /** In grams: the reading with an error of up to a step, most often all of it. */
    private static Rational drawn(SplittableRandom r, PlannedLine line) {
        long tenths = line.reading().canonical().times(10).toLongExact();
        long thousandths =
                r.nextInt(4) == 0 ? r.nextLong(-STEP * 1000L, STEP * 1000L + 1) : (r.nextBoolean() ? 1000 : -1000);
        return Rational.of(tenths * 1000 + thousandths, 10_000);
    }

    private static void requireInside(Rational truth, Ratio least, Ratio most) {
        assertThat(truth.compare(rational(least))).isGreaterThanOrEqualTo(0);
        assertThat(truth.compare(rational(most))).isLessThanOrEqualTo(0);
    }

    /** Read from its text, as numerator and denominator. */
    private static Rational rational(Ratio bound) {
        return new Rational(
                new BigInteger(bound.numerator().toString()),
                new BigInteger(bound.denominator().toString()));
    }
}
